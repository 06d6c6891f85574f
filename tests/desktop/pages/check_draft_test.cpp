// SPDX-License-Identifier: MIT
#include "app/desktop/batches/check_draft.h"

#include "tests/desktop/pages/desk.h"

namespace {

using desktop::CheckDraft;
using desktop::CheckField;
using desktop::CountsAre;

CheckField& rooted(CheckDraft& draft) {
    return draft.fields.front();
}

CheckDraft aDraft() {
    static const core::BatchRecord batch = support::aBatch().looked(14, {.rooted = 9, .lost = 2});
    return CheckDraft::of(batch, support::someShelves(), nullptr, core::addDays(support::stickingDay(), 21));
}

}  // namespace

TEST(CheckDraft, ShowsTheTotalBesideWhatIsNewAndTheOtherWayRound) {
    CheckDraft draft = aDraft();
    rooted(draft).typed = QStringLiteral("3");
    EXPECT_EQ(draft.otherWay(rooted(draft)), QStringLiteral("12 in all"));
    draft.say(CountsAre::InAll);
    EXPECT_EQ(rooted(draft).typed, QStringLiteral("12"));
    EXPECT_EQ(draft.otherWay(rooted(draft)), QStringLiteral("+3 new"));
    EXPECT_EQ(draft.result().rooted, 3);
    EXPECT_EQ(draft.result().lost(), 0);
}

TEST(CheckDraft, SaysHowManyThereWereWhenATotalIsTooSmall) {
    CheckDraft draft = aDraft();
    draft.say(CountsAre::InAll);
    rooted(draft).typed = QStringLiteral("8");
    EXPECT_FALSE(draft.newCount(rooted(draft)).has_value());
    EXPECT_EQ(draft.fault(rooted(draft)),
              QStringLiteral("Rooted in all is 8, but there were 9 before this look; 9 or more is allowed."));
}

TEST(CheckDraft, KeepsWhatItCannotRead) {
    CheckDraft draft = aDraft();
    rooted(draft).typed = QStringLiteral("3o");
    draft.say(CountsAre::InAll);
    EXPECT_EQ(rooted(draft).typed, QStringLiteral("3o"));
    EXPECT_TRUE(draft.fault(rooted(draft)).contains(QStringLiteral("3o")));
}

TEST(CheckDraft, SaysWhereEveryCuttingIsAfterTheLook) {
    CheckDraft draft = aDraft();
    rooted(draft).typed = QStringLiteral("4");
    EXPECT_EQ(draft.inWords(), QStringLiteral("After this look: 13 rooted, 2 lost, 0 withdrawn, 9 undecided of 24."));
}

TEST(CheckDraft, GivesAnEditedCheckBackAsItWas) {
    const core::BatchRecord batch = support::aBatch().looked(14, {.rooted = 9, .lost = 2, .withdrawn = 1});
    const CheckDraft draft =
        CheckDraft::of(batch, support::someShelves(), &batch.checks.front(), batch.checks.front().checkedOn);
    EXPECT_EQ(draft.result(), batch.checks.front());
}
