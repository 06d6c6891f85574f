// SPDX-License-Identifier: MIT
// The names in compare's JSON that came after the first ones, and the options that go with them.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;
using testing::Not;

void expectNames(const nlohmann::json& object, const std::vector<const char*>& names) {
    for (const char* name : names) EXPECT_TRUE(object.contains(name)) << name << " in " << object.dump().substr(0, 200);
}

class CompareDemo : public testing::Test {
  protected:
    static void SetUpTestSuite() {
        folder = new support::TemporaryFolder;
        ASSERT_EQ(run({"demo", log()}).status, 0);
    }
    static void TearDownTestSuite() {
        delete folder;
        folder = nullptr;
    }
    static std::string log() { return *folder / "demo.strikebook"; }

    static support::TemporaryFolder* folder;
};

support::TemporaryFolder* CompareDemo::folder = nullptr;

TEST_F(CompareDemo, TellsWhoRootsAndHowFast) {
    const nlohmann::json json = run({"compare", log(), "--by", "method", "--json"}).json();
    bool isAnyFitted = false;
    for (const nlohmann::json& arm : json["arms"]) {
        expectNames(arm, {"speed"});
        expectNames(arm["speed"], {"fits", "why_not"});
        EXPECT_EQ(arm["speed"]["fits"].empty(), arm["speed"]["why_not"].is_string());
        double before = 0;
        for (const nlohmann::json& fit : arm["speed"]["fits"]) {
            expectNames(fit, {"shape", "rooting_share", "rooting_share_limits", "median_day", "median_day_limits",
                              "by_batch", "akaike"});
            EXPECT_GT(fit["rooting_share"].get<double>(), 0);
            EXPECT_LE(fit["rooting_share"].get<double>(), 1);
            EXPECT_GE(fit["akaike"].get<double>(), before);  // best first
            before = fit["akaike"].get<double>();
            isAnyFitted = true;
        }
    }
    EXPECT_TRUE(isAnyFitted);
    for (const nlohmann::json& pair : json["pairs"]) {
        expectNames(pair["speed"],
                    {"shape", "ratio", "as_counted", "p_as_counted", "by_batch", "p_by_batch", "why_not"});
        EXPECT_NE(pair["speed"]["ratio"].is_null(), pair["speed"]["why_not"].is_null());
    }
}

TEST_F(CompareDemo, TellsTheSpeedInTextToo) {
    const std::string out = run({"compare", log(), "--by", "method"}).out;
    EXPECT_THAT(out, HasSubstr("who roots and how fast"));
    EXPECT_THAT(out, HasSubstr("ratio of median days"));
}

TEST_F(CompareDemo, KeepsItsPromiseOfTheNewerNames) {
    const nlohmann::json json = run({"compare", log(), "--by", "treatment", "--margin", "10", "--json"}).json();
    expectNames(json, {"interval", "several_arms", "doses", "goes_with"});
    expectNames(json["spread"], {"icc_limits", "icc_used", "weight_of_records", "groups"});
    ASSERT_TRUE(json["several_arms"].is_object());
    expectNames(json["several_arms"], {"arms", "chi_square", "degrees_of_freedom", "p_as_counted", "smallest_expected",
                                       "f_of_batch_rates", "p_batch_rates"});
    ASSERT_FALSE(json["doses"].empty());
    for (const nlohmann::json& series : json["doses"]) {
        expectNames(series,
                    {"auxin", "unit", "points", "trend_p", "batch_trend_p", "trend_per_step", "best", "estimator",
                     "best_dose", "best_rate", "best_dose_as_counted", "best_dose_with_spread", "in_words"});
        expectNames(series["points"][0], {"dose", "batches", "rooted", "assessed", "rate", "as_counted"});
    }
    expectNames(json["goes_with"],
                {"associations", "cannot_be_told", "left_out", "dispersion", "batches", "cuttings", "in_words"});
    for (const nlohmann::json& each : json["goes_with"]["associations"])
        expectNames(each, {"name", "batches", "odds_ratio", "as_counted", "with_spread", "p_as_counted",
                           "p_with_spread", "p_holm"});
    for (const nlohmann::json& pair : json["pairs"]) {
        expectNames(pair, {"first_as_good", "second_as_good", "verdict", "in_words"});
        expectNames(pair["pooled"], {"odds_ratio_with_spread", "risk_difference_with_spread"});
        expectNames(pair["p"], {"batch_rates", "batch_permutation", "batch_rates_holm", "boschloo_holm"});
        for (const char* which : {"first_as_good", "second_as_good"})
            if (pair[which].is_object())
                expectNames(pair[which],
                            {"margin", "shown", "as_counted", "p_as_counted", "with_spread", "p_with_spread"});
    }
}

TEST_F(CompareDemo, TakesEveryInterval) {
    for (const char* interval :
         {"wilson", "wilson_continuity", "clopper_pearson", "jeffreys", "agresti_coull", "mid_p"}) {
        const support::Ran ran =
            run({"compare", log(), "--species", "Hebe albicans", "--interval", interval, "--json"});
        ASSERT_EQ(ran.status, 0) << ran.err;
        EXPECT_EQ(ran.json()["interval"], interval);
    }
    const auto exact =
        run({"compare", log(), "--species", "Hebe albicans", "--interval", "clopper_pearson", "--json"}).json();
    const auto wilson = run({"compare", log(), "--species", "Hebe albicans", "--json"}).json();
    EXPECT_LT(exact["arms"][0]["as_counted"]["low"].get<double>(),
              wilson["arms"][0]["as_counted"]["low"].get<double>());
}

TEST_F(CompareDemo, RefusesOtherIntervalsAndMargins) {
    const support::Ran interval = run({"compare", log(), "--interval", "wald"});
    EXPECT_EQ(interval.status, 2);
    EXPECT_THAT(interval.err, HasSubstr("--interval is \"wald\""));
    EXPECT_THAT(interval.err, HasSubstr("agresti_coull or mid_p is allowed"));
    for (const char* margin : {"0", "100", "-3", "ten", ""}) {
        const support::Ran ran = run({"compare", log(), "--margin", margin});
        EXPECT_EQ(ran.status, 2) << margin;
        EXPECT_THAT(ran.err, HasSubstr(std::string("--margin is \"") + margin + "\""));
        EXPECT_THAT(ran.err, HasSubstr("from 1 to 99 is allowed, such as 10"));
    }
}

/// Six batches an arm, each at a station of its own; so many of 20 rooted in each.
std::string logWith(const support::TemporaryFolder& folder, const support::TemporaryFolder& place,
                    const std::vector<int>& trays, const std::vector<int>& tubs) {
    std::string batches = "batch,stuck_on,species,method,station,stuck\r\n",
                checks = "batch,checked_on,rooted,lost\r\n";
    const auto add = [&](const char* method, const std::vector<int>& rooted) {
        for (std::size_t i = 0; i < rooted.size(); ++i) {
            const std::string code = std::string(1, method[0]) + std::to_string(i);
            batches +=
                code + ",2026-03-02,Hebe albicans," + method + "," + method + " " + std::to_string(i) + ",20\r\n";
            checks += code + ",2026-03-30," + std::to_string(rooted[i]) + "," + std::to_string(20 - rooted[i]) + "\r\n";
        }
    };
    add("media tray", trays);
    add("aerated water", tubs);
    folder.write("batches.csv", batches);
    folder.write("checks.csv", checks);
    const std::string log = place / "bench.strikebook";
    EXPECT_EQ(run({"import", log, folder.path()}).status, 0);
    return log;
}

TEST(CompareMargin, IsNotSpokenOfWhereOneIsBetter) {
    const support::TemporaryFolder folder, place;
    const std::string log = logWith(folder, place, {17, 18, 19, 18, 17, 19}, {6, 5, 7, 6, 8, 5});
    const nlohmann::json pair = run({"compare", log, "--margin", "10", "--json"}).json()["pairs"][0];
    EXPECT_THAT(pair["verdict"].get<std::string>(), HasSubstr("better"));
    EXPECT_THAT(pair["in_words"].get<std::string>(), Not(HasSubstr("as good as")));
    EXPECT_NE(pair["in_words"].get<std::string>().back(), ' ');
    EXPECT_TRUE(pair["first_as_good"].is_object());  // the figures stay
    EXPECT_THAT(run({"compare", log, "--margin", "10"}).out, HasSubstr("as good as"));
}

TEST(CompareMargin, IsSpokenOfWhereTheyMayBeAlike) {
    const support::TemporaryFolder folder, place;
    const std::string log = logWith(folder, place, {12, 13, 12, 13, 12, 13}, {13, 12, 13, 12, 13, 12});
    const nlohmann::json pair = run({"compare", log, "--margin", "15", "--json"}).json()["pairs"][0];
    EXPECT_EQ(pair["verdict"], "no_clear_difference");
    EXPECT_THAT(pair["in_words"].get<std::string>(), HasSubstr("as good as"));
    EXPECT_TRUE(pair["first_as_good"]["shown"].get<bool>());
}

}  // namespace
