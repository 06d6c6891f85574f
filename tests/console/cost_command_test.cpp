// SPDX-License-Identifier: MIT
// Batches and prices are invented; docs/costs.md works the figures out.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/actions/price_actions.h"
#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;

/// Three tubs rooted 16, 14 and 15 of 20, three trays 10, 8 and 12, at two stations each; one batch of ivy in a tub.
class CostCommand : public testing::Test {
  protected:
    void SetUp() override {
        std::string batches = "batch,stuck_on,species,method,station,stuck\r\n",
                    checks = "batch,checked_on,rooted,lost\r\n";
        const auto add = [&](const std::string& code, const std::string& species, const std::string& method,
                             const std::string& station, int rooted) {
            batches += code + ",2026-03-02," + species + "," + method + "," + station + ",20\r\n";
            checks += code + ",2026-03-30," + std::to_string(rooted) + "," + std::to_string(20 - rooted) + "\r\n";
        };
        add("T1", "Hebe albicans", "aerated water", "Tub north", 16);
        add("T2", "Hebe albicans", "aerated water", "Tub south", 14);
        add("T3", "Hebe albicans", "aerated water", "Tub north", 15);
        add("M1", "Hebe albicans", "media tray", "Bench west", 10);
        add("M2", "Hebe albicans", "media tray", "Bench east", 8);
        add("M3", "Hebe albicans", "media tray", "Bench west", 12);
        add("T4", "Hedera helix", "aerated water", "Tub north", 0);
        folder.write("batches.csv", batches);
        folder.write("checks.csv", checks);
        ASSERT_EQ(run({"import", log, folder.path()}).status, 0);
    }

    /// So much for each cutting by a method, from the beginning of the year on.
    void price(const std::string& method, std::int64_t tenThousandths) {
        db::OpenOptions options;
        options.clock = [] { return std::chrono::sys_days{support::lateDay} + std::chrono::hours{12}; };
        db::Logbook logbook = db::Logbook::open(log, options);
        core::Price price;
        price.kind = core::PriceKind::UsedUp;
        price.what = "all of it";
        price.from = *core::dateFromIso("2026-01-01");
        price.tenThousandths = tenThousandths;
        price.lastsFor = 1;
        price.basis = core::PriceBasis::Cutting;
        for (const core::Method& known : logbook.shelves().methods)
            if (known.name == method) price.method = known.id;
        ASSERT_TRUE(db::keep(logbook, price, support::lateDay));
    }

    [[nodiscard]] support::Ran cost(std::vector<std::string> more = {}) const {
        std::vector<std::string> words{"cost", log, "--between", "aerated water", "media tray"};
        words.insert(words.end(), more.begin(), more.end());
        return run(words);
    }

    support::TemporaryFolder folder, place;
    std::string log = place / "bench.strikebook";
};

TEST_F(CostCommand, SaysWhatARootedPlantCostsByEach) {
    price("aerated water", 3000);
    price("media tray", 2000);
    const support::Ran ran = cost({"--species", "Hebe albicans", "--at-day", "28"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("What a rooted plant costs by aerated water and by media tray, counted at day 28"));
    EXPECT_THAT(ran.out, HasSubstr("A rooted plant costs 0.40 EUR by aerated water"));
    EXPECT_THAT(ran.out, HasSubstr("A rooted plant costs 0.40 EUR by media tray"));
    EXPECT_THAT(ran.out, HasSubstr("used up"));
    EXPECT_THAT(ran.out, HasSubstr("which is not enough to tell"));
}

TEST_F(CostCommand, GivesTheSameFiguresToMachines) {
    price("aerated water", 3000);
    price("media tray", 2000);
    const support::Ran ran = cost({"--at-day", "28", "--level", "0.9", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const nlohmann::json json = ran.json();
    EXPECT_EQ(json["at_day"], 28);
    EXPECT_EQ(json["level"], 0.9);
    const nlohmann::json& pair = json["pair"];
    EXPECT_EQ(pair["dear"]["name"], "aerated water");
    EXPECT_NEAR(pair["dear"]["per_cutting"]["used_up"].get<double>(), 0.30, 1e-9);
    EXPECT_NEAR(pair["dear"]["per_rooted"]["value"].get<double>(), 0.40, 1e-9);
    EXPECT_NEAR(pair["cheap"]["per_rooted"]["value"].get<double>(), 0.40, 1e-9);
    EXPECT_LT(pair["dear"]["per_rooted"]["low"].get<double>(), 0.40);
    EXPECT_NEAR(pair["ties_at"]["dear_strike"].get<double>(), 0.75, 1e-9);
    EXPECT_EQ(pair["species"], nlohmann::json::array({"Hebe albicans"}));
    EXPECT_EQ(pair["left_out"], nlohmann::json::array({"Hedera helix"}));
    EXPECT_EQ(pair["verdict"], "cannot tell yet");
    ASSERT_EQ(json["by_species"].size(), 3U);
    const nlohmann::json& ivy = json["by_species"][2];
    EXPECT_EQ(ivy["species"], "Hedera helix");
    EXPECT_TRUE(ivy["per_rooted"]["value"].is_null());
    EXPECT_EQ(ivy["per_rooted"]["high"], "Infinity");
}

TEST_F(CostCommand, SaysThatNothingIsPriced) {
    const support::Ran none = cost();
    EXPECT_EQ(none.status, 1);
    EXPECT_EQ(none.out, "");
    EXPECT_THAT(none.err, HasSubstr("Nothing is priced for "));
    price("aerated water", 3000);
    const support::Ran half = cost();
    EXPECT_EQ(half.status, 1);
    EXPECT_THAT(half.err, HasSubstr("Nothing is priced for media tray"));
}

TEST_F(CostCommand, SaysWhichMethodOrPlantThereIsNot) {
    const support::Ran method = run({"cost", log, "--between", "fog", "media tray"});
    EXPECT_EQ(method.status, 1);
    EXPECT_THAT(method.err, HasSubstr("There is no method"));
    price("aerated water", 3000);
    price("media tray", 2000);
    const support::Ran plant = cost({"--species", "Hedera helix"});
    EXPECT_EQ(plant.status, 1);
    EXPECT_THAT(plant.err, HasSubstr("No batch of these plants was stuck by"));
    EXPECT_EQ(cost({"--species", "Quercus robur"}).status, 1);
}

TEST_F(CostCommand, RefusesWhatIsNoQuestion) {
    EXPECT_EQ(run({"cost", log}).status, 2);
    const support::Ran one = run({"cost", log, "--between", "media tray"});
    EXPECT_EQ(one.status, 2);
    EXPECT_THAT(one.err, HasSubstr("two are needed"));
    const support::Ran same = run({"cost", log, "--between", "media tray", "media tray"});
    EXPECT_EQ(same.status, 2);
    EXPECT_THAT(same.err, HasSubstr("two different methods are needed"));
    EXPECT_EQ(cost({"--level", "1.5"}).status, 2);
    EXPECT_EQ(cost({"--at-day", "0"}).status, 2);
}

}  // namespace
