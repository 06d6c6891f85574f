// SPDX-License-Identifier: MIT
#include "app/desktop/methods/method_dialog.h"

#include <QApplication>
#include <QClipboard>
#include <QListWidget>
#include <QPushButton>
#include <QTextBlock>
#include <QTextBrowser>

#include "app/desktop/look/appearance.h"
#include "app/desktop/look/look.h"
#include "app/plot/palette.h"
#include "app/report/methods/notes.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;

class MethodPages : public pages::Desk {
  protected:
    MethodPages() {
        fill(support::recordsOf(
            {support::aBatch().looked(14, {.rooted = 6, .lost = 4}).looked(28, {.rooted = 5, .lost = 3}),
             support::aBatch().looked(14, {.rooted = 8}).looked(28, {.rooted = 7, .lost = 2}),
             support::aBatch().at(support::benchWest).looked(14, {.rooted = 12}).looked(28, {.rooted = 8})}));
        comparison_ = core::compare({}, workspace_.shelves(), logbook().batchRecords()).value();
    }

    core::Comparison comparison_;
};

TEST_F(MethodPages, ShowThePageWithTheNumbersOfThisFigure) {
    desktop::MethodDialog dialog(report::notesOnRates(comparison_));
    pages::show(dialog);
    auto& titles = named<QListWidget>(dialog, "methodTitles");
    const core::Arm& arm = comparison_.arms.front();
    bool namesTheCounts = false;
    for (int row = 0; row < titles.count(); ++row) {
        titles.setCurrentRow(row);
        EXPECT_FALSE(dialog.shownText().contains(pages::aBrace())) << dialog.shownText().toStdString();
        if (dialog.shownText().contains(QStringLiteral("%1 of %2").arg(arm.rooted).arg(arm.assessed)))
            namesTheCounts = true;
    }
    EXPECT_TRUE(namesTheCounts);
}

TEST_F(MethodPages, BeginWithTheOneThatWasAskedFor) {
    desktop::MethodDialog dialog(report::notesOnRates(comparison_), QStringLiteral("wilson_interval"));
    EXPECT_TRUE(dialog.shownText().startsWith(report::methodTitle(QStringLiteral("wilson_interval"))))
        << dialog.shownText().left(80).toStdString();
    desktop::MethodDialog other(report::notesOnRates(comparison_), QStringLiteral("no such page"));
    EXPECT_FALSE(other.shownText().isEmpty());
}

TEST_F(MethodPages, SayHowExactTheFunctionsBehindThemAre) {
    const report::MethodNote& note = report::notesOnRates(comparison_).front();
    bool isAnyKnown = false;
    for (const report::MethodNote& each : report::notesOnRates(comparison_))
        for (const QString& function : report::functionsBehind(each.page)) {
            if (report::accuracyOf(function).isEmpty()) continue;
            isAnyKnown = true;
            const desktop::MethodDialog dialog({each});
            EXPECT_TRUE(dialog.shownText().contains(QStringLiteral("How exact is it?"))) << each.page.toStdString();
            EXPECT_TRUE(dialog.shownText().contains(function)) << function.toStdString();
        }
    EXPECT_TRUE(isAnyKnown) << "no function of " << note.page.toStdString() << " is in the accuracy page";
}

TEST_F(MethodPages, AreTurnedByKeysAndCopiedAsTheyStand) {
    const std::vector<report::MethodNote> notes = report::notesOnDifference(comparison_, 0);
    ASSERT_GE(notes.size(), 2U);
    desktop::MethodDialog dialog(notes);
    pages::show(dialog);
    EXPECT_TRUE(named<QListWidget>(dialog, "methodTitles").hasFocus());
    const QString before = dialog.shownText();
    pages::press(Qt::Key_Down);
    EXPECT_NE(dialog.shownText(), before);
    named<QPushButton>(dialog, "methodCopy").click();
    EXPECT_EQ(QApplication::clipboard()->text(), report::workedOut(notes[1]));
    pages::press(Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
}

/// Every colour of the text against what lies behind it.
TEST_F(MethodPages, AreLegibleInLightAndDark) {
    for (const bool isDark : {false, true}) {
        QPalette palette;
        palette.setColor(QPalette::Base, isDark ? QColor("#17191B") : QColor("#FFFFFF"));
        palette.setColor(QPalette::Text, isDark ? QColor("#ECEEF0") : QColor("#1B1E21"));
        for (const report::MethodNote& note : report::notesOnDifference(comparison_, 0)) {
            desktop::MethodDialog dialog({note});
            dialog.setPalette(palette);
            pages::show(dialog);
            const auto& text = named<QTextBrowser>(dialog, "methodText");
            for (QTextBlock block = text.document()->begin(); block.isValid(); block = block.next())
                for (auto part = block.begin(); !part.atEnd(); ++part) {
                    const QTextCharFormat format = part.fragment().charFormat();
                    const QColor ink = format.foreground().style() == Qt::NoBrush ? text.palette().color(QPalette::Text)
                                                                                  : format.foreground().color();
                    QColor ground = text.palette().color(QPalette::Base);
                    for (const QBrush& brush : {block.blockFormat().background(), format.background()})
                        if (brush.style() != Qt::NoBrush) ground = brush.color();
                    EXPECT_GE(plot::contrast(ink, ground), 4.5) << part.fragment().text().toStdString();
                }
        }
    }
}

}  // namespace
