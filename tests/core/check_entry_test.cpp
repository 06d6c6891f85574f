// SPDX-License-Identifier: MIT
#include "core/batch/check_entry.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/units/entered_text.h"
#include "stats/numeric/seeded_random.h"
#include "tests/support/builders.h"

namespace {

using testing::ElementsAre;

/// 24 stuck, 9 rooted, 1 lost: 14 undecided.
const core::Tally tallyBefore{24, 9, 1, 0, {}};

core::Result<core::CheckEntry> entered(std::string_view typed) {
    static const std::vector<core::LossCause> causes = support::someShelves().lossCauses;
    return core::checkEntryFrom(typed, tallyBefore, causes);
}

std::string sentence(std::string_view typed) {
    const auto entry = entered(typed);
    if (entry) return "taken";
    EXPECT_EQ(entry.error().size(), 1U);
    return entry.error().front().sentence;
}

TEST(CheckEntry, TakesATotalAndKeepsWhatIsNew) {
    EXPECT_EQ(entered("12").value(), (core::CheckEntry{.rooted = 3}));
    EXPECT_EQ(entered("9").value(), core::CheckEntry{});
    EXPECT_EQ(entered("23").value(), (core::CheckEntry{.rooted = 14}));
}

TEST(CheckEntry, TakesWhatIsNew) {
    EXPECT_EQ(entered("+3").value(), (core::CheckEntry{.rooted = 3}));
    EXPECT_EQ(entered("w2").value(), (core::CheckEntry{.withdrawn = 2}));
    EXPECT_EQ(entered("W2").value(), (core::CheckEntry{.withdrawn = 2}));
}

TEST(CheckEntry, TakesLossesWithAndWithoutACause) {
    EXPECT_EQ(entered("-2").value(), (core::CheckEntry{.losses = {{{}, 2}}}));
    EXPECT_EQ(entered("-2r").value(), (core::CheckEntry{.losses = {{support::rotted, 2}}}));
    EXPECT_EQ(entered("-2R-1d-1").value(),
              (core::CheckEntry{.losses = {{support::rotted, 2}, {support::driedOut, 1}, {{}, 1}}}));
    EXPECT_EQ(entered("-0").value(), core::CheckEntry{});
}

TEST(CheckEntry, TakesAPlainNumberAsWhatIsNewWhereTheGrowerHasItSo) {
    const std::vector<core::LossCause> causes = support::someShelves().lossCauses;
    const auto asNew = [&](std::string_view typed) {
        return core::checkEntryFrom(typed, tallyBefore, causes, core::PlainNumber::New);
    };
    EXPECT_EQ(asNew("3").value(), (core::CheckEntry{.rooted = 3}));
    EXPECT_EQ(asNew("=12").value(), (core::CheckEntry{.rooted = 3}));
    EXPECT_EQ(asNew("+3").value(), (core::CheckEntry{.rooted = 3}));
    EXPECT_EQ(asNew("3-1r").value(), (core::CheckEntry{.rooted = 3, .losses = {{support::rotted, 1}}}));
    EXPECT_EQ(entered("=12").value(), (core::CheckEntry{.rooted = 3}));
    EXPECT_EQ(asNew("15").error().front().sentence,
              "Rooted is 15, but only 14 of the 24 cuttings are left undecided; 0 to 14 is allowed.");
    EXPECT_FALSE(asNew("3=12"));
}

TEST(CheckEntry, IsWrittenAsOneWouldTypeIt) {
    const std::vector<core::LossCause> causes = support::someShelves().lossCauses;
    for (const char* typed : {"+3", "-2", "-2r-1d", "+3-1rw2", "*", ".", "+1./ready", "/mould", "+3-1"}) {
        const core::CheckEntry entry = entered(typed).value();
        EXPECT_EQ(core::entryText(entry, causes), typed);
        for (const auto plain : {core::PlainNumber::InAll, core::PlainNumber::New})
            EXPECT_EQ(core::checkEntryFrom(core::entryText(entry, causes), tallyBefore, causes, plain).value(), entry);
    }
}

TEST(CheckEntry, CombinesPartsInAnyOrder) {
    const core::CheckEntry both{.rooted = 3, .withdrawn = 2, .losses = {{support::rotted, 1}}};
    for (const char* typed : {"+3-1rw2", "w2 -1r +3", "-1rw2 12", " 12 w2 -1r "})
        EXPECT_EQ(entered(typed).value(), both) << typed;
}

TEST(CheckEntry, StoresALookThatFoundNothingNew) {
    EXPECT_EQ(entered("*").value(), core::CheckEntry{});
    EXPECT_EQ(entered("*/dry").value(), (core::CheckEntry{.note = "dry"}));
    EXPECT_EQ(sentence("*+3"),
              "Entry is \"*+3\", but * says that nothing is new; * alone or counts without * is allowed.");
}

TEST(CheckEntry, ClosesTheBatchOnADot) {
    EXPECT_EQ(entered(".").value(), (core::CheckEntry{.closesBatch = true}));
    EXPECT_EQ(entered("+3.").value(), (core::CheckEntry{.rooted = 3, .closesBatch = true}));
}

TEST(CheckEntry, TakesANoteLast) {
    EXPECT_EQ(entered("+1/ mould on leaf 2 / +4 ").value(),
              (core::CheckEntry{.rooted = 1, .note = "mould on leaf 2 / +4"}));
    EXPECT_EQ(entered("/ ").value(), core::CheckEntry{});
    EXPECT_EQ(
        sentence("/\a"),
        "Note, \"?\", has a character that can't be seen (such as a tab or a bell); text without control characters is "
        "allowed.");
}

TEST(CheckEntry, RefusesATotalBelowWhatHadRooted) {
    EXPECT_EQ(sentence("8"), "Rooted in all is 8, but 9 had rooted before; 9 to 23 is allowed.");
}

TEST(CheckEntry, RefusesMoreThanAreUndecided) {
    EXPECT_EQ(sentence("24"),
              "Rooted in all is 24, but only 14 of the 24 cuttings are left undecided; 9 to 23 is allowed.");
    EXPECT_EQ(sentence("+15"), "Rooted is 15, but only 14 of the 24 cuttings are left undecided; 0 to 14 is allowed.");
    EXPECT_EQ(sentence("+10-5r"), "Lost is 5, but only 4 of the 24 cuttings are left undecided; 0 to 4 is allowed.");
    EXPECT_EQ(sentence("+10-4w1"),
              "Withdrawn is 1, but only 0 of the 24 cuttings are left undecided; only 0 is allowed.");
    EXPECT_EQ(sentence("+999999999-999999999w999999999"),
              "Rooted is 999999999, but only 14 of the 24 cuttings are left undecided; 0 to 14 is allowed.");
}

TEST(CheckEntry, RefusesTheSameThingTwice) {
    EXPECT_EQ(sentence("+1+2"), "Rooted is given twice in \"+1+2\"; once is allowed.");
    EXPECT_EQ(sentence("12+2"), "Rooted is given twice in \"12+2\"; once is allowed.");
    EXPECT_EQ(sentence("1.5"), "Rooted is given twice in \"1.5\"; once is allowed.");
    EXPECT_EQ(sentence("w1w1"), "Withdrawn is given twice in \"w1w1\"; once is allowed.");
    EXPECT_EQ(sentence("-1r-2r"), "Lost to one cause is given twice in \"-1r-2r\"; once is allowed.");
    EXPECT_EQ(sentence("-1-2"), "Lost without a cause is given twice in \"-1-2\"; once is allowed.");
}

TEST(CheckEntry, RefusesWhatItCannotRead) {
    EXPECT_EQ(sentence("rooted"),
              "Entry is \"rooted\", which can't be read; 12, +3, =12, -2, -2r, w2, * , . or /words is allowed.");
    EXPECT_EQ(sentence("+"), "Rooted has no number in \"+\"; 0 to 14 is allowed.");
    EXPECT_EQ(sentence("99999999999"), "Rooted is \"99999999999\", which is too large; 0 to 14 is allowed.");
    EXPECT_EQ(
        sentence("-2x"),
        "Cause is x, which stands for no cause of loss; r rotted, d dried out, p pests, b broken, o other is allowed.");
    for (const char* typed : {"1,5", "+ 3", "-r", "w", "\xFF", "+-3", "1e3", "\t3"})
        EXPECT_FALSE(entered(typed)) << typed;
}

TEST(CheckEntry, DoesNotPickARetiredCause) {
    std::vector<core::LossCause> causes = support::someShelves().lossCauses;
    causes.front().isRetired = true;
    EXPECT_FALSE(core::checkEntryFrom("-1r", tallyBefore, causes));
}

TEST(CheckEntry, NeverAccountsForMoreThanIsLeftWhateverIsTyped) {
    constexpr std::string_view characters = "0123456789+-+-w*./ rdRxq\xE2";
    stats::SeededRandom random(12);
    int taken = 0;
    for (int trial = 0; trial < 20'000; ++trial) {
        std::string typed;
        for (std::uint64_t left = 1 + random.below(9); left > 0; --left)
            typed += characters[random.below(characters.size())];
        if (core::isBlank(typed)) continue;
        const auto entry = entered(typed);
        if (!entry) {
            EXPECT_FALSE(entry.error().front().sentence.empty());
            EXPECT_TRUE(core::isValidUtf8(entry.error().front().sentence)) << typed;
            continue;
        }
        ++taken;
        EXPECT_GE(entry->rooted, 0) << typed;
        EXPECT_GE(entry->withdrawn, 0) << typed;
        EXPECT_LE(entry->rooted + entry->lost() + entry->withdrawn, tallyBefore.undecided()) << typed;
    }
    EXPECT_GT(taken, 1000);
}

}  // namespace
