// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <iostream>

#include "stats/numeric/seeded_random.h"
#include "stats/planning/predictive_count.h"
#include "tests/console/console_runner.h"
#include "tests/db/exchange/exchange_folder.h"

namespace {

using support::run;
using testing::HasSubstr;

TEST(StickCommand, IsTheBetaBinomialPredictiveOfPastCounts) {
    stats::SeededRandom random(20260501);
    std::cout << "[ seed 20260501 ]\n";
    for (int each = 0; each < 25; ++each) {
        const int trials = 5 + static_cast<int>(random.below(40));
        const int rooted = 2 + random.binomial(trials - 2, 0.4 + 0.5 * random.uniform());
        const int need = 1 + static_cast<int>(random.below(20));
        const std::string assurance = std::to_string(0.5 + 0.45 * random.uniform());
        const support::Ran ran = run({"stick", "--need", std::to_string(need), "--assurance", assurance, "--past",
                                      std::to_string(rooted) + "/" + std::to_string(trials), "--json"});
        ASSERT_EQ(ran.status, 0) << ran.err;
        const auto want = stats::countForPastRecords(need, rooted, trials, std::stod(assurance));
        EXPECT_EQ(ran.json()["stick"], *want.count) << rooted << "/" << trials << " " << need << " " << assurance;
        EXPECT_NEAR(ran.json()["achieved"].get<double>(), *want.achieved, 1e-9);
    }
}

TEST(StickCommand, IsThatOfEnumerationForAKnownRate) {
    const support::Ran ran = run({"stick", "--need", "20", "--assurance", "0.9", "--rate", "0.8", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_EQ(ran.json()["basis"], "rate");
    EXPECT_EQ(ran.json()["stick"], 28);  // not 25, which is enough about half the time
    const support::Ran lossy =
        run({"stick", "--need", "20", "--assurance", "0.9", "--rate", "0.8", "--potted-live", "90", "--json"});
    EXPECT_EQ(lossy.json()["stick"], *stats::countForKnownRate(20, 0.8, 0.9, 0.9).count);
}

TEST(StickCommand, ReckonsWithTraysWhenAsked) {
    const support::Ran plain = run({"stick", "--need", "24", "--past", "12/20", "15/20", "9/20", "--json"});
    ASSERT_EQ(plain.status, 0) << plain.err;
    EXPECT_EQ(plain.json()["stick"], *stats::countForPastRecords(24, 36, 60, 0.9).count);
    EXPECT_TRUE(plain.json()["tray"].is_null());
    EXPECT_EQ(plain.json()["records"]["batches"], 3);
    const support::Ran trays =
        run({"stick", "--need", "24", "--past", "12/20", "15/20", "9/20", "--tray", "20", "--json"});
    EXPECT_EQ(trays.json()["stick"], plain.json()["in_trays"]["stick"]);
    EXPECT_GT(trays.json()["stick"], plain.json()["stick"]);
    EXPECT_EQ(trays.json()["with_a_tray_more"]["stick"], trays.json()["stick"].get<int>() + 20);
    EXPECT_GT(trays.json()["with_a_tray_more"]["achieved"], trays.json()["achieved"]);
    EXPECT_THAT(run({"stick", "--need", "24", "--past", "36/60"}).out,
                HasSubstr("In trays of 20 that differ as usual"));
}

TEST(StickCommand, GoesByTheReferenceTableWithoutALogbook) {
    const support::Ran ran = run({"stick", "--need", "24", "--species", "lavandula angustifolia", "--by", "2026-10-01",
                                  "--growing-on", "21", "--hardening", "7", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto json = ran.json();
    EXPECT_EQ(json["basis"], "reference");
    EXPECT_EQ(json["records"]["band"]["low"], 0.8);
    EXPECT_EQ(json["records"]["band_source"], "KREM");
    EXPECT_EQ(json["records"]["own_weight"], 0);
    EXPECT_EQ(json["when"]["stick_by"], "2026-07-23");  // 42 + 21 + 7 days before
    EXPECT_EQ(json["when"]["rests_on"], "reference range");
    EXPECT_EQ(json["when"]["days"].size(), 5U);
    EXPECT_EQ(run({"stick", "--need", "24", "--species", "Nobody knows"}).status, 1);
    EXPECT_THAT(run({"stick", "--need", "24", "--species", "Nobody knows"}).err,
                HasSubstr("The reference table has no plant \"Nobody knows\"."));
}

class StickFromLogbook : public testing::Test {
  protected:
    StickFromLogbook() {
        EXPECT_EQ(run({"create", log_}).status, 0);
        std::filesystem::create_directories(folder_ / "tables");
        folder_.write("tables/batches.csv",
                      "batch,stuck_on,species,method,station,stuck\r\n"
                      "B1,2026-03-01,Hebe albicans,media tray,Bench west,20\r\n"
                      "B2,2026-03-01,Hebe albicans,media tray,Bench west,20\r\n"
                      "B3,2026-04-01,Hebe albicans,media tray,Bench west,20\r\n"
                      "B4,2026-04-01,Hebe albicans,aerated water,Tub north,20\r\n"
                      "B5,2026-06-25,Hebe albicans,media tray,Bench west,18\r\n");
        folder_.write("tables/checks.csv",
                      "batch,checked_on,rooted\r\n"
                      "B1,2026-03-15,8\r\nB1,2026-03-29,5\r\n"
                      "B2,2026-03-15,6\r\nB2,2026-03-29,8\r\n"
                      "B3,2026-04-15,5\r\nB3,2026-04-29,5\r\n"
                      "B4,2026-04-15,2\r\nB4,2026-04-29,1\r\n");
        const support::Ran imported = run({"import", log_, folder_ / "tables"});
        EXPECT_EQ(imported.status, 0) << imported.err << imported.out;
    }

    support::TemporaryFolder folder_;
    std::string log_ = folder_ / "bench.strikebook";
    std::string ics_ = folder_ / "days.ics";
};

TEST_F(StickFromLogbook, CountsThePlantsOwnBatchesByTheMethod) {
    const support::Ran ran = run({"stick", "--need", "24", "--assurance", "0.9", "--log", log_, "--species",
                                  "Hebe albicans", "--method", "media tray", "--json"});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const auto records = ran.json()["records"];
    EXPECT_EQ(records["rooted"], 37);
    EXPECT_EQ(records["assessed"], 60);
    EXPECT_EQ(records["batches"], 3);
    EXPECT_EQ(records["left_out"], 18);
    EXPECT_EQ(ran.json()["tray"], 20);
    EXPECT_GE(ran.json()["achieved"], 0.9);
    const support::Ran all = run({"stick", "--need", "24", "--log", log_, "--species", "Hebe albicans", "--json"});
    EXPECT_EQ(all.json()["records"]["assessed"], 80);
    EXPECT_GT(all.json()["stick"], ran.json()["stick"]);
}

TEST_F(StickFromLogbook, SaysWhatMayComeOfItAtTheLogbooksLevel) {
    const std::vector<std::string> words{"stick", "--need", "24", "--log", log_, "--species", "Hebe albicans"};
    EXPECT_THAT(run(words).out, HasSubstr(" may come of it (95 % prediction interval)."));
    std::vector<std::string> forMachines = words;
    forMachines.emplace_back("--json");
    const auto json = run(forMachines).json();
    EXPECT_EQ(json["expected_range"]["level"], 0.95);
    EXPECT_LT(json["expected_range"]["low"], json["expected_plants"]);
    EXPECT_GT(json["expected_range"]["high"], json["expected_plants"]);
    EXPECT_LE(json["expected_range"]["high"], json["stick"]);
}

TEST(StickCommand, SaysWhatMayComeOfItWhateverItRestsOn) {
    // Binomial: P(7 or fewer of 20 at one half) = 0.1316, so 20 give 8 or more 868 times in 1000; P(5 or fewer) = 0.0207.
    const auto known = run({"stick", "--need", "8", "--rate", "0.5", "--assurance", "0.86", "--json"}).json();
    EXPECT_EQ(known["stick"], 20);
    EXPECT_EQ(known["expected_range"]["low"], 6);
    EXPECT_EQ(known["expected_range"]["high"], 14);
    EXPECT_THAT(run({"stick", "--need", "24", "--past", "12/20", "15/20"}).out,
                HasSubstr(" may come of it (95 % prediction interval)."));
    const auto far = run({"stick", "--need", "200", "--past", "2/200", "--json"}).json();
    ASSERT_GT(far["stick"], 20'000);
    EXPECT_LT(far["expected_range"]["low"], far["expected_plants"]);
    EXPECT_GT(far["expected_range"]["high"], far["expected_plants"]);
    EXPECT_TRUE(run({"stick", "--need", "9", "--rate", "0", "--json"}).json()["expected_range"].is_null());
}

TEST_F(StickFromLogbook, SaysWhenAndWritesTheDaysForACalendar) {
    const std::vector<std::string> words{"stick",      "--need",        "24",       "--log",      log_,
                                         "--species",  "Hebe albicans", "--method", "media tray", "--by",
                                         "2026-12-01", "--growing-on",  "14",       "--ics",      ics_};
    const support::Ran ran = run(words);
    ASSERT_EQ(ran.status, 0) << ran.err;
    EXPECT_THAT(ran.out, HasSubstr("Stick by 2026-10-20 at the latest: 28 days to root, 14 of growing on"));
    EXPECT_THAT(ran.out, HasSubstr("half by day 14: 37 rooted in 3 batches of your own."));
    EXPECT_THAT(ran.out, HasSubstr("Wrote these days to " + ics_));
    const std::string first = folder_.read("days.ics");
    EXPECT_THAT(first, HasSubstr("UID:plan-2026-12-01-hebe-albicans-media-tray-stick@strikebook"));
    EXPECT_THAT(first, HasSubstr("DTSTART;VALUE=DATE:20261020"));
    EXPECT_THAT(first, HasSubstr("BEGIN:VALARM"));
    EXPECT_EQ(run(words).status, 0);
    EXPECT_EQ(folder_.read("days.ics"), first);  // nothing but the moment of writing may change, and that is ours here
}

TEST_F(StickFromLogbook, WritesTheNextLooksForACalendar) {
    const support::Ran ran = run({"due", log_, "--ics", ics_});
    ASSERT_EQ(ran.status, 0) << ran.err;
    const std::string days = folder_.read("days.ics");
    EXPECT_THAT(days, HasSubstr("UID:look-B5@strikebook"));
    EXPECT_THAT(days, HasSubstr("DTSTART;VALUE=DATE:20260702"));  // a week after sticking
    EXPECT_THAT(days, HasSubstr("Look at B5\\, Bench west"));
    EXPECT_THAT(days, HasSubstr("UID:look-B1@strikebook"));
    EXPECT_THAT(days, HasSubstr("DTSTART;VALUE=DATE:20260630"));  // overdue: today
}

TEST_F(StickFromLogbook, SaysWhatIsNotThere) {
    EXPECT_EQ(run({"stick", "--need", "9", "--log", log_, "--species", "Fig"}).status, 1);
    EXPECT_THAT(run({"stick", "--need", "9", "--log", log_, "--species", "Fig"}).err, HasSubstr("no plant \"Fig\""));
    EXPECT_THAT(run({"stick", "--need", "9", "--log", log_, "--species", "Hebe albicans", "--method", "sand"}).err,
                HasSubstr("There is no method \"sand\""));
    EXPECT_EQ(run({"stick", "--need", "9", "--log", folder_ / "none.strikebook", "--species", "Fig"}).status, 1);
    const std::string empty = folder_ / "empty.strikebook";
    EXPECT_EQ(run({"create", empty}).status, 0);
    const support::Ran due = run({"due", empty, "--ics", ics_});
    EXPECT_EQ(due.status, 1);
    EXPECT_THAT(due.err, HasSubstr("No batch in " + empty + " is open"));
    EXPECT_FALSE(std::filesystem::exists(ics_));
    EXPECT_EQ(run({"due", log_, "--ics", folder_ / "no" / "days.ics"}).status, 1);
}

TEST(StickCommand, SaysWhatIsWrong) {
    const auto fault = [](std::vector<std::string> words) {
        words.insert(words.begin(), "stick");
        const support::Ran ran = run(words);
        EXPECT_EQ(ran.status, 2) << ran.out;
        EXPECT_THAT(ran.err, HasSubstr("Use: strikebook-cli stick"));
        return ran.err;
    };
    EXPECT_THAT(fault({"--past", "1/2"}), HasSubstr("--need K is missing."));
    EXPECT_THAT(fault({"--need", "0", "--past", "1/2"}), HasSubstr("--need is \"0\"; a whole number from 1 to 10000"));
    EXPECT_THAT(fault({"--need", "5", "--past", "3/2"}), HasSubstr("--past is \"3/2\""));
    EXPECT_THAT(fault({"--need", "5", "--past", "3"}), HasSubstr("such as 18/24"));
    EXPECT_THAT(fault({"--need", "5", "--past", "-1/2"}), HasSubstr("--past is \"-1/2\""));
    EXPECT_THAT(fault({"--need", "5", "--past"}), HasSubstr("--past needs a value behind it"));
    EXPECT_THAT(fault({"--need", "5", "--past", "--tray", "5"}), HasSubstr("--past needs a value behind it"));
    EXPECT_THAT(fault({"--need", "5"}), HasSubstr("Of --past X/N, --rate R and --species NAME"));
    EXPECT_THAT(fault({"--need", "5", "--rate", "0.5", "--past", "1/2"}), HasSubstr("no more than one"));
    EXPECT_THAT(fault({"--need", "5", "--rate", "1.5"}), HasSubstr("--rate is \"1.5\"; a number from 0 to 1"));
    EXPECT_THAT(fault({"--need", "5", "--rate", "0.5", "--assurance", "1"}), HasSubstr("--assurance is \"1\""));
    EXPECT_THAT(fault({"--need", "5", "--rate", "0.5", "--potted-live", "0"}), HasSubstr("--potted-live is \"0\""));
    EXPECT_THAT(fault({"--need", "5", "--past", "1/2", "--tray", "0"}), HasSubstr("--tray is \"0\""));
    EXPECT_THAT(fault({"--need", "5", "--log", "a.strikebook"}), HasSubstr("--log needs --species NAME"));
    EXPECT_THAT(fault({"--need", "5", "--species", "Fig", "--method", "M"}), HasSubstr("--method needs --log LOG"));
    EXPECT_THAT(fault({"--need", "5", "--past", "1/2", "--by", "2026-12-01"}), HasSubstr("--by needs --species NAME"));
    EXPECT_THAT(fault({"--need", "5", "--past", "1/2", "--ics", "a.ics"}), HasSubstr("need --by DATE"));
    EXPECT_THAT(fault({"--need", "5", "--species", "Ficus carica", "--by", "soon"}), HasSubstr("--by is \"soon\""));
    EXPECT_THAT(fault({"--need", "5", "--species", "Ficus carica", "--by", "2026-12-01", "--ics", "a.txt"}),
                HasSubstr("ends in .ics"));
    EXPECT_THAT(fault({"--need", "5", "--past", "1/2", "extra"}), HasSubstr("--past is \"extra\""));
}

TEST(StickCommand, SaysWhenNoNumberWillDo) {
    const support::Ran ran = run({"stick", "--need", "500", "--assurance", "0.9", "--rate", "0", "--json"});
    EXPECT_EQ(ran.status, 1);
    EXPECT_TRUE(ran.json()["stick"].is_null());
    EXPECT_THAT(run({"stick", "--need", "500", "--rate", "0"}).out, HasSubstr("would not give 500 plants"));
}

}  // namespace
