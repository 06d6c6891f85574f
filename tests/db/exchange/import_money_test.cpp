// SPDX-License-Identifier: MIT
// Prices, lots, counts after potting and expenses as a folder brings them: each fault is named with its file, its row and its column.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>

#include "db/exchange/import_folder.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using testing::ElementsAre;
using testing::IsEmpty;
using testing::StartsWith;

constexpr const char* priceHeading =
    "what,kind,method,station,medium,treatment,from,until,amount,lasts_years,lasts_for,basis,watts,hours_a_day,duty,"
    "minutes,note";
constexpr const char* lotHeading = "lot,treatment,medium,used_from,made_on,note";
constexpr const char* pottingHeading = "batch,counted_on,potted,lost,note";
constexpr const char* spentHeading = "batch,spent_on,what,amount,session,minutes";

/// One batch of one session of which five rooted.
class ImportMoney : public testing::Test {
  protected:
    ImportMoney() {
        folder.write("sessions.csv", support::rows({"session,held_on", "monday,2026-03-02"}));
        folder.write("batches.csv",
                     support::rows({"batch,stuck_on,species,method,station,medium,treatment,stuck,session",
                                    "P1,2026-03-02,Hebe albicans,water,Tub,perlite,gel,8,monday"}));
        folder.write("checks.csv", support::rows({"batch,checked_on,rooted", "P1,2026-03-16,3", "P1,2026-03-23,2"}));
    }

    std::vector<std::string> faults() const {
        std::vector<std::string> found;
        for (const db::ImportFault& fault : db::readFolder(folder.path(), support::lateDay).faults)
            found.push_back(fault.file + ' ' + std::to_string(fault.row) + ' ' + fault.column + ": " + fault.reason);
        return found;
    }

    core::Records records() const {
        EXPECT_THAT(faults(), IsEmpty());
        return db::readFolder(folder.path(), support::lateDay).records;
    }

    void expectFault(const std::string& table, const std::string& heading, const std::string& row,
                     const std::string& start) const {
        folder.write(table, support::rows({heading, row}));
        EXPECT_THAT(faults(), ElementsAre(StartsWith(table + " 2 " + start))) << row;
        std::filesystem::remove(folder / table);
    }

    support::TemporaryFolder folder;
};

TEST_F(ImportMoney, AFolderOfTheFourthVersionHasNoneAndComesInWithItsExpenses) {
    folder.write("expenses.csv", support::rows({"batch,spent_on,what,amount", "P1,2026-03-09,gel,8.5"}));
    const core::Records read = records();
    ASSERT_EQ(read.expenses.size(), 1U);
    EXPECT_EQ(read.expenses.front().batch, read.batches.front().batch.id);
    EXPECT_EQ(read.expenses.front().hundredths, 850);
    EXPECT_FALSE(read.expenses.front().session.isSet() || read.expenses.front().minutes);
    EXPECT_TRUE(read.shelves.prices.empty() && read.shelves.lots.empty() && read.pottings.empty());
}

TEST_F(ImportMoney, ReadsAPriceOfEveryKind) {
    folder.write("prices.csv", support::rows({priceHeading, "pump,lasting,water,,,,2026-01-01,,24,4,,,,,,,",
                                              "trays,lasting,,Tub,,,2026-01-01,2026-05-01,12,,30,,,,,,",
                                              "bag,used up,,,perlite,,2026-01-01,,9.5,,400,cutting,,,,,",
                                              "pump,electricity,,Tub,,,2026-01-01,,,,,,5,24,,,",
                                              "power,tariff,,,,,2026-01-01,,0.3125,,,,,,,,",
                                              "dipping,work time,,,,gel,2026-01-01,,,,,batch,,,,1.5,slow",
                                              "my hour,hour of work,,,,,2026-01-01,,0,,,,,,,,",
                                              "sooner,day sooner,,,,,2026-01-01,,0.02,,,,,,,,"}));
    const core::Records read = records();
    const std::vector<core::Price>& prices = read.shelves.prices;
    ASSERT_EQ(prices.size(), 8U);
    EXPECT_EQ(prices[0].method, read.batches.front().batch.method);
    EXPECT_EQ(prices[0].lastsYears, 4);
    EXPECT_EQ(prices[1].station, read.batches.front().batch.station);
    EXPECT_EQ(prices[1].lastsFor, 30);
    EXPECT_EQ(core::isoText(prices[1].until.value_or(core::Date{})), "2026-05-01");
    EXPECT_EQ(prices[2].medium, read.batches.front().batch.medium);
    EXPECT_EQ(prices[2].basis, core::PriceBasis::Cutting);
    EXPECT_EQ(prices[3].watts, 5);
    EXPECT_EQ(prices[3].duty, 1);
    EXPECT_EQ(prices[4].tenThousandths, 3125);
    EXPECT_EQ(prices[5].treatment, read.batches.front().batch.treatment);
    EXPECT_EQ(prices[5].minutes, 1.5);
    EXPECT_EQ(prices[5].note, "slow");
    EXPECT_EQ(prices[6].tenThousandths, 0);
}

TEST_F(ImportMoney, NamesWhatIsWrongWithPrices) {
    for (const auto& [row, start] : std::vector<std::pair<std::string, std::string>>{
             {"pump,rented,,,,,2026-01-01,,24,4,,,,,,,", "kind: \"rented\" is no kind of price"},
             {",tariff,,,,,2026-01-01,,0.3,,,,,,,,", "what: Name is blank"},
             {"pump,lasting,fog,,,,2026-01-01,,24,4,,,,,,,", "method: \"fog\" is not in methods.csv or batches.csv"},
             {"pump,lasting,,Pond,,,2026-01-01,,24,4,,,,,,,", "station: \"Pond\" is not in stations.csv"},
             {"pump,lasting,water,Tub,,,2026-01-01,,24,4,,,,,,,", "method: Belongs to has 2 things"},
             {"power,tariff,water,,,,2026-01-01,,0.3,,,,,,,,", "method: Belongs to has 1 things"},
             {"pump,lasting,,,,,,,24,4,,,,,,,", "from: The date is missing"},
             {"pump,lasting,,,,,2026-01-01,2025-01-01,24,4,,,,,,,", "until: Until is 2025-01-01"},
             {"pump,lasting,,,,,2026-01-01,,,4,,,,,,,", "amount: The number is missing"},
             {"power,tariff,,,,,2026-01-01,,0.31255,,,,,,,,", "amount: \"0.31255\" is finer than a ten-thousandth"},
             {"pump,lasting,,,,,2026-01-01,,24,,,,,,,,", "lasts_years: Lasts for years is not given"},
             {"pump,lasting,,,,,2026-01-01,,24,4,30,,,,,,", "lasts_years: Lasts has both years and batches"},
             {"bag,used up,,,,,2026-01-01,,9,,,cutting,,,,,", "lasts_for: A pack does for is not given"},
             {"bag,used up,,,,,2026-01-01,,9,,400,,,,,,", "basis: \"\" is nothing that a price can be for each of"},
             {"bag,used up,,,,,2026-01-01,,9,,400,check,,,,,", "basis: For each is check"},
             {"pump,electricity,,,,,2026-01-01,,,,,,,24,,,", "watts: The number is missing"},
             {"pump,electricity,,,,,2026-01-01,,,,,,5,25,,,", "hours_a_day: Hours a day is 25"},
             {"pump,electricity,,,,,2026-01-01,,,,,,5,24,1.5,,", "duty: Share of the time is 1.5"},
             {"pump,electricity,,,,,2026-01-01,,3,,,,5,24,,,", "amount: A price of the kind electricity has nothing"},
             {"pump,lasting,,,,,2026-01-01,,24,4,,,5,,,,", "watts: A price of the kind lasting has nothing here"},
             {"look,work time,,,,,2026-01-01,,,,,check,,,,,", "minutes: The number is missing"}})
        expectFault("prices.csv", priceHeading, row, start);
    folder.write("prices.csv", support::rows({priceHeading, "power,tariff,,,,,2026-01-01,,0.3,,,,,,,,",
                                              "Power,tariff,,,,,2026-01-01,,0.4,,,,,,,,"}));
    EXPECT_THAT(faults(), ElementsAre(StartsWith("prices.csv 3 from: From is 2026-01-01, the day from which another")));
}

TEST_F(ImportMoney, ReadsLotsAndNamesWhatIsWrongWithThem) {
    folder.write("lots.csv", support::rows({lotHeading, "A1,gel,,2026-01-01,2025-12-01,", "B1,,perlite,2026-01-01,,"}));
    const core::Records read = records();
    ASSERT_EQ(read.shelves.lots.size(), 2U);
    EXPECT_EQ(read.shelves.lots.front().treatment, read.batches.front().batch.treatment);
    EXPECT_EQ(read.shelves.lots.back().medium, read.batches.front().batch.medium);
    for (const auto& [row, start] : std::vector<std::pair<std::string, std::string>>{
             {",gel,,2026-01-01,,", "lot: Name is blank"},
             {"A1,moonlight,,2026-01-01,,", "treatment: \"moonlight\" is not in treatments.csv"},
             {"A1,,,2026-01-01,,", "treatment: Lot of is nothing"},
             {"A1,gel,perlite,2026-01-01,,", "treatment: Lot of is a treatment and a medium"},
             {"A1,gel,,soon,,", "used_from: \"soon\""},
             {"A1,gel,,2026-01-01,2026-02-01,", "made_on: Made on is 2026-02-01"}})
        expectFault("lots.csv", lotHeading, row, start);
}

TEST_F(ImportMoney, ReadsCountsAfterPottingInAnyOrderOfRows) {
    folder.write("pottings.csv", support::rows({pottingHeading, "P1,2026-04-20,0,1,", "P1,2026-03-23,0,1,",
                                                "P1,2026-03-23,2,,", "P1,2026-03-16,3,,first"}));
    const core::PottedTally tally = core::pottedTallyOf(records().pottings);
    EXPECT_EQ(tally.potted, 5);
    EXPECT_EQ(tally.usable(), 3);
}

TEST_F(ImportMoney, NamesWhatIsWrongWithCountsAfterPotting) {
    for (const auto& [row, start] : std::vector<std::pair<std::string, std::string>>{
             {"P9,2026-03-23,1,0,", "batch: No batch \"P9\""},
             {"P1,2026-03-01,1,0,", "counted_on: Counted on is 2026-03-01"},
             {"P1,2026-03-23,some,0,", "potted: \"some\""},
             {"P1,2026-03-23,0,0,", "potted: Potted is 0 and nothing was lost"},
             {"P1,2026-03-16,4,0,", "potted: Potted is 4 in all by 2026-03-16; 0 to 3 is allowed"},
             {"P1,2026-03-23,2,3,", "lost: Lost after potting is 3 in all by 2026-03-23; 0 to 2 is allowed"}})
        expectFault("pottings.csv", pottingHeading, row, start);
    folder.write("pottings.csv", support::rows({pottingHeading, "P1,2026-03-23,3,,", "P1,2026-03-16,3,,"}));
    EXPECT_THAT(faults(), ElementsAre(StartsWith("pottings.csv 2 potted: Potted is 6 in all by 2026-03-23")));
}

TEST_F(ImportMoney, ReadsAnExpenseOfASessionWithItsMinutes) {
    folder.write("expenses.csv", support::rows({spentHeading, ",2026-03-02,blades,3.2,monday,45"}));
    const core::Records read = records();
    ASSERT_EQ(read.expenses.size(), 1U);
    EXPECT_EQ(read.expenses.front().session, read.sessions.front().id);
    EXPECT_EQ(read.expenses.front().minutes, 45);
    for (const auto& [row, start] : std::vector<std::pair<std::string, std::string>>{
             {",2026-03-02,blades,3.2,tuesday,", "session: \"tuesday\" is not in sessions.csv"},
             {",2026-03-02,blades,3.2,,", "batch: An expense belongs to one batch or to one session."},
             {"P1,2026-03-02,blades,3.2,monday,", "batch: An expense belongs to one batch or to one session."},
             {"P1,2026-03-02,blades,3.2,,0", "minutes: Minutes is 0"}})
        expectFault("expenses.csv", spentHeading, row, start);
}

}  // namespace
