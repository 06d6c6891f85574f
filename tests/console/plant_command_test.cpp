// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;

TEST(PlantCommand, SaysWhatIsPrintedWithSourcesAndHowSure) {
    const support::Ran ran = run({"plant", "--species", "Lavandula angustifolia"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("80 to 90 of 100 stuck"));
    EXPECT_THAT(ran.out, HasSubstr("read in KREM"));
    EXPECT_THAT(ran.out, HasSubstr("KREM: "));
    EXPECT_THAT(ran.out, HasSubstr("common practice, no source"));
    const auto json = run({"plant", "--species", "Lavandula angustifolia", "--json"}).json();
    EXPECT_EQ(json["printed"]["strike_of_100"]["low"], 80);
    EXPECT_EQ(json["printed"]["strike_of_100"]["source"], "KREM");
    EXPECT_EQ(json["own"]["batches"], 0);
    EXPECT_TRUE(json["own"]["interval"].is_null());
    EXPECT_EQ(json["planned_by"]["own_weight"], 0);
    EXPECT_EQ(json["planned_by"]["days_rest_on"], "reference range");
}

TEST(PlantCommand, LeavesWhatIsUnknownUnknown) {
    const auto json = run({"plant", "--species", "Laurus nobilis", "--json"}).json();
    EXPECT_TRUE(json["printed"]["strike_of_100"]["low"].is_null());
    EXPECT_EQ(json["printed"]["strike_of_100"]["source"], "unknown");
    EXPECT_EQ(json["printed"]["days_to_root"]["source"], "from memory of DIRR");
}

TEST(PlantCommand, SetsALogbooksOwnRecordsBeside) {
    const support::TemporaryFolder folder;
    const std::string log = folder / "bench.strikebook";
    ASSERT_EQ(run({"create", log}).status, 0);
    std::filesystem::create_directories(folder / "tables");
    folder.write("tables/batches.csv",
                 "batch,stuck_on,species,method,station,stuck\r\n"
                 "B1,2026-03-01,Lavandula angustifolia,media tray,Bench west,20\r\n"
                 "B2,2026-03-01,Lavandula angustifolia,media tray,Bench west,20\r\n");
    folder.write("tables/checks.csv",
                 "batch,checked_on,rooted\r\nB1,2026-03-20,8\r\nB1,2026-04-12,5\r\n"
                 "B2,2026-03-20,6\r\nB2,2026-04-12,8\r\n");
    ASSERT_EQ(run({"import", log, folder / "tables"}).status, 0);
    const support::Ran ran = run({"plant", log, "--species", "Lavandula angustifolia", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    EXPECT_EQ(json["own"]["batches"], 2);
    EXPECT_EQ(json["own"]["cuttings"], 40);
    EXPECT_EQ(json["own"]["rooted"], 27);
    EXPECT_EQ(json["own"]["assessed"], 40);
    EXPECT_LT(json["own"]["interval"]["low"], 27.0 / 40);
    EXPECT_FALSE(json["own"]["half_by_day"].is_null());
    EXPECT_EQ(json["planned_by"]["days_rest_on"], "own curve");
    const double own = json["planned_by"]["own_weight"];
    EXPECT_NEAR(
        json["planned_by"]["own_counts_like"].get<double>() / (json["planned_by"]["own_counts_like"].get<double>() +
                                                               json["planned_by"]["printed_counts_like"].get<double>()),
        own, 1e-6);
    EXPECT_THAT(run({"plant", log, "--species", "Lavandula angustifolia"}).out, HasSubstr("Your own records"));
}

TEST(PlantCommand, SaysWhatItDoesNotKnow) {
    EXPECT_EQ(run({"plant"}).status, 2);
    const support::Ran nobody = run({"plant", "--species", "Blue Lagoon"});
    EXPECT_EQ(nobody.status, 1);
    EXPECT_THAT(nobody.err, HasSubstr("The reference table has no plant \"Blue Lagoon\"."));
}

}  // namespace
