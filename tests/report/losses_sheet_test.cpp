// SPDX-License-Identifier: MIT
#include "app/report/losses_sheet.h"

#include "app/report/losses_words.h"
#include "app/report/plain_text.h"
#include "app/report/suspects_sheet.h"
#include "gmock/gmock.h"
#include "gtest/gtest.h"
#include "tests/plot/loss_examples.h"
#include "tests/plot/more_examples.h"
#include "tests/report/sheet_examples.h"

namespace {

using testing::HasSubstr;
using testing::Not;

core::AgainstThePast against(int rooted, double chance) {
    core::AgainstThePast past;
    past.day = 28, past.rooted = rooted, past.of = 24, past.pastBatches = 9, past.expected = 15.24;
    past.chanceOfSoFew = chance;
    past.inWords = "By day 28 nine earlier batches would foretell 11 to 19 rooted.";
    return past;
}

report::LossesAnswer answer() {
    const core::Shelves shelves = examples::smallShelves();
    report::LossesAnswer answer;
    answer.losses = examples::losses(3, 6, 2);
    answer.unusual.push_back({.batch = core::BatchId{7},
                              .code = "B260047K",
                              .plant = shelves.plants.front().id,
                              .method = shelves.methods.front().id,
                              .stuckOn = *core::dateFromIso("2026-03-14"),
                              .isOpen = false,
                              .against = against(3, 0.0042)});
    answer.goesWith = examples::goesWith(3);
    return answer;
}

std::string sheetText(const report::LossesAnswer& of) {
    return report::plainText(report::lossesSheet(of, {.span = QStringLiteral("this season (2026)")},
                                                 examples::smallShelves(), examples::printedAt()))
        .toStdString();
}

core::Suspect suspect(const std::string& name) {
    core::Suspect suspect{.kind = core::SuspectKind::Condition, .name = name};
    suspect.batches = 5, suspect.cuttings = 120;
    suspect.others = {.batches = 4, .rooted = 20, .assessed = 96, .expected = 61.5, .usualLow = 50, .usualHigh = 72};
    suspect.speaksFor = {"Four other batches had it and did poorly."};
    suspect.oddsInWords = "about 8 to 1 for it, against luck alone";
    suspect.changeNextTime = "Warm the solution.";
    return suspect;
}

core::Suspects suspects(int count) {
    core::Suspects found{.batch = core::BatchId{7}, .code = "B260047K"};
    found.inWords = "First suspect: cold solution.";
    found.warning = "Records are not an experiment.";
    for (int i = 1; i <= count; ++i) found.suspects.push_back(suspect("suspect number " + std::to_string(i)));
    found.recordNextTime = {"The temperature of the solution."};
    return found;
}

std::string suspectsText(const core::Suspects& found) {
    return report::plainText(report::suspectsSheet(found, QStringLiteral("Hebe albicans"), examples::smallShelves(),
                                                   examples::printedAt()))
        .toStdString();
}

TEST(LossesSheet, SaysWhatIsOutOfTheOrdinaryAndWhatWasLostToWhat) {
    const std::string text = sheetText(answer());
    for (const char* words : {"this season (2026); all plants; all methods", "B260047K", "3 of 24 by day 28", "15.2",
                              "1 in 240", "LOST TO WHAT, WHEN AND WHERE", "cause number 1", "January 2026", "Bench 1",
                              "WHAT WENT WITH ROOTING", "HOW THIS WAS WORKED OUT"})
        EXPECT_THAT(text, HasSubstr(words));
    EXPECT_THAT(text, Not(HasSubstr("BATCH BY BATCH"))) << "no chart was chosen";
}

TEST(LossesSheet, SaysSoWhereNothingWasLostAndNothingIsOutOfTheOrdinary) {
    report::LossesAnswer quiet;
    quiet.losses = examples::nothingLost();
    const std::string text = sheetText(quiet);
    EXPECT_THAT(text, HasSubstr("Nothing was found lost."));
    EXPECT_THAT(text, HasSubstr("No batch of this time did so much worse"));
    EXPECT_THAT(report::unusualText(quiet, 0.0027).toStdString(),
                HasSubstr("Only a batch with earlier ones of the same plant by the same method can be judged."));
    EXPECT_THAT(text, Not(HasSubstr("LOST TO WHAT")));
}

TEST(LossesWords, CountWhatIsCovered) {
    EXPECT_EQ(report::coveredText(examples::losses(3, 6, 2)).toStdString(),
              "5\u202f% (30 of 560) of the cuttings that stood were found lost, in 11 of 24 batches; 1 January 2026 to "
              "30 June 2026.");
    EXPECT_EQ(report::spanText({}, {}).toStdString(), "all records");
}

TEST(LossesWords, SayWhatATimeCoversAndWhatWasNotLookedAt) {
    core::GoesWith answer = examples::goesWith(4);
    answer.leftOut = {"solution EC: on record of 6 of 48 batches"};
    const std::string words = report::goesWithText(answer).toStdString();
    EXPECT_THAT(words, HasSubstr("can't be told from the rest"));
    EXPECT_THAT(words, HasSubstr("solution EC: on record of 6 of 48 batches"));
}

TEST(SuspectsSheet, GivesEachSuspectInFullWithTheWarning) {
    const std::string text = suspectsText(suspects(2));
    for (const char* words :
         {"What may have gone wrong: B260047K", "Hebe albicans", "First suspect: cold solution.",
          "Records are not an experiment.", "1. SUSPECT NUMBER 1 (CONDITION)", "about 8 to 1",
          "Shared by 5 batches with 120 cuttings.", "For it: Four", "Change next time: Warm the solution.",
          "WRITE DOWN NEXT TIME", "The temperature of the solution."})
        EXPECT_THAT(text, HasSubstr(words));
    EXPECT_THAT(text, Not(HasSubstr("Against it:"))) << "nothing on record does";
}

TEST(SuspectsSheet, PutsTheUnlikelyOnesIntoOneLine) {
    const std::string text = suspectsText(suspects(14));
    EXPECT_THAT(text, HasSubstr("12. SUSPECT NUMBER 12"));
    EXPECT_THAT(text, Not(HasSubstr("13. SUSPECT NUMBER 13")));
    EXPECT_THAT(text, HasSubstr("Looked at as well, and less likely: suspect number 13; suspect number 14."));
}

}  // namespace
