// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/console/console_runner.h"

namespace {

using support::run;
using testing::HasSubstr;

double powerOf(const std::vector<std::string>& more) {
    std::vector<std::string> words{"power", "--json"};
    words.insert(words.end(), more.begin(), more.end());
    const support::Ran ran = run(words);
    EXPECT_EQ(ran.status, 0) << ran.err;
    return ran.json()["power"].get<double>();
}

TEST(PowerCommand, GivesTheReferenceValues) {
    // Fleiss (1981), table A.3: 160 per arm; exact power by enumeration in two independent ways.
    EXPECT_NEAR(powerOf({"--rates", "0.05", "0.15", "--per-arm", "160", "--test", "fisher"}), 0.824056659265751, 1e-8);
    EXPECT_NEAR(powerOf({"--rates", "0.3", "0.8", "--per-arm", "20", "--test", "fisher"}), 0.846050082428439, 1e-8);
    EXPECT_NEAR(powerOf({"--rates", "0.5", "0.75", "--per-arm", "60"}), 0.810483811659927, 1e-8);
}

TEST(PowerCommand, FindsNoLessWithBoschloosTest) {
    for (const char* perArm : {"5", "12", "20", "33", "48"})
        EXPECT_GE(powerOf({"--rates", "0.4", "0.8", "--per-arm", perArm}),
                  powerOf({"--rates", "0.4", "0.8", "--per-arm", perArm, "--test", "fisher"}))
            << perArm;
}

TEST(PowerCommand, GivesTheNumberPerArm) {
    const support::Ran ran = run({"power", "--rates", "0.5", "0.75", "--power", "0.8", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json()["per_arm"], 60);
    EXPECT_EQ(ran.json()["independent_per_arm"], 60);
    EXPECT_NEAR(ran.json()["power"].get<double>(), 0.810483811659927, 1e-8);
    // One more can find less: 81 have the power, 82 and 83 lose it, 84 and those beyond keep it.
    const auto toothed = run({"power", "--rates", "0.6", "0.8", "--power", "0.8", "--json"}).json();
    EXPECT_EQ(toothed["per_arm"], 84);
    EXPECT_EQ(toothed["first_independent_per_arm"], 81);
    EXPECT_THAT(run({"power", "--rates", "0.5", "0.75", "--power", "0.8"}).out, HasSubstr("60 per arm"));
}

TEST(PowerCommand, CountsCuttingsThatShareATrayForLess) {
    const support::Ran ran =
        run({"power", "--rates", "0.5", "0.75", "--power", "0.8", "--design-effect", "2.9", "--json"});
    EXPECT_EQ(ran.json()["per_arm"], 174);
    EXPECT_EQ(ran.json()["independent_per_arm"], 60);
    EXPECT_NEAR(powerOf({"--rates", "0.5", "0.75", "--per-arm", "174", "--design-effect", "2.9"}),
                powerOf({"--rates", "0.5", "0.75", "--per-arm", "60"}), 1e-12);
    EXPECT_THAT(run({"power", "--rates", "0.5", "0.75", "--per-arm", "60", "--design-effect", "2"}).out,
                HasSubstr("worth 30 cuttings"));
}

TEST(PowerCommand, SaysWhenThereIsNothingToFind) {
    const support::Ran same = run({"power", "--rates", "0.5", "0.5", "--power", "0.8"});
    EXPECT_EQ(same.status, 1);
    EXPECT_THAT(same.out, HasSubstr("nothing to find"));
    const support::Ran close = run({"power", "--rates", "0.5", "0.51", "--power", "0.8", "--json"});
    EXPECT_EQ(close.status, 1);
    EXPECT_TRUE(close.json()["per_arm"].is_null());
    EXPECT_GT(close.json()["normal_per_arm"].get<double>(), 10'000);
}

TEST(PowerCommand, SaysWhatIsWrong) {
    const auto fault = [](std::vector<std::string> words) {
        words.insert(words.begin(), "power");
        const support::Ran ran = run(words);
        EXPECT_EQ(ran.status, 2) << ran.out;
        return ran.err;
    };
    EXPECT_THAT(fault({"--power", "0.8"}), HasSubstr("--rates P1 P2 is missing."));
    EXPECT_THAT(fault({"--rates", "0.5", "--power", "0.8"}), HasSubstr("--rates has 1 values; two are needed"));
    EXPECT_THAT(fault({"--rates", "0.5", "0.6", "0.7", "--power", "0.8"}), HasSubstr("--rates has 3 values"));
    EXPECT_THAT(fault({"--rates", "0.5", "1.6", "--power", "0.8"}), HasSubstr("--rates is \"1.6\""));
    EXPECT_THAT(fault({"--rates", "-0.5", "0.6", "--power", "0.8"}), HasSubstr("--rates is \"-0.5\""));
    EXPECT_THAT(fault({"--rates", "0.5", "0.75"}), HasSubstr("Of --per-arm N and --power P one is needed"));
    EXPECT_THAT(fault({"--rates", "0.5", "0.75", "--power", "1"}), HasSubstr("--power is \"1\""));
    EXPECT_THAT(fault({"--rates", "0.5", "0.75", "--per-arm", "0"}), HasSubstr("--per-arm is \"0\""));
    EXPECT_THAT(fault({"--rates", "0.5", "0.75", "--per-arm", "901"}), HasSubstr("up to 900 can be counted through"));
    EXPECT_THAT(fault({"--rates", "0.5", "0.75", "--per-arm", "9", "--test", "t"}), HasSubstr("boschloo or fisher"));
    EXPECT_THAT(fault({"--rates", "0.5", "0.75", "--per-arm", "9", "--design-effect", "0.5"}),
                HasSubstr("--design-effect is \"0.5\"; a number from 1 to 1000"));
}

}  // namespace
