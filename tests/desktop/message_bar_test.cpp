// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/message_bar.h"

#include <QLabel>
#include <QPushButton>
#include <QToolButton>

#include "tests/desktop/desk.h"

namespace {

struct ABar {
    desktop::MessageBar bar;
    int taken{};
    QPushButton* button = bar.findChild<QPushButton*>("messageButton");

    ABar() {
        bar.show();
        bar.offer("Saved: a session.", "Undo", [this] { ++taken; });
    }
};

TEST(MessageBar, KeepsTheButtonThatItOfferedBesideWhatIsSaidAfterIt) {
    ABar desk;
    desk.bar.say("12 batches, B260001D to B260012X.");
    EXPECT_EQ(desk.bar.sentence(), "12 batches, B260001D to B260012X. Saved: a session.");
    EXPECT_TRUE(desk.button->isVisible());
    desk.button->click();
    EXPECT_EQ(desk.taken, 1);
    EXPECT_EQ(desk.bar.sentence(), "") << "what was taken back is no longer said";
}

TEST(MessageBar, PutsTheNextOfferInPlaceOfAll) {
    ABar desk;
    desk.bar.say("Copied 3 rows.");
    desk.bar.offer("Taken back: a session.", "Do again", [] {});
    EXPECT_EQ(desk.bar.sentence(), "Taken back: a session.");
    EXPECT_EQ(desk.button->text(), "Do again");
}

TEST(MessageBar, ClosesWithEverythingInIt) {
    ABar desk;
    desk.bar.say("Copied 3 rows.", desktop::MessageBar::Tone::Fault);
    desk.bar.findChild<QToolButton*>("messageClose")->click();
    EXPECT_TRUE(desk.bar.isHidden());
    EXPECT_EQ(desk.bar.sentence(), "");
    desk.bar.say("Copied 4 rows.");
    EXPECT_EQ(desk.bar.sentence(), "Copied 4 rows.");
    EXPECT_FALSE(desk.button->isVisible());
    desk.bar.hushSaid();
    EXPECT_TRUE(desk.bar.isHidden());
}

}  // namespace
