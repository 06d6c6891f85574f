// SPDX-License-Identifier: MIT
#include "app/desktop/review/season_review_dialog.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>

#include "app/desktop/printing/print_preview.h"
#include "app/desktop/widgets/fault_label.h"
#include "core/demo/demo_season.h"
#include "db/actions/records_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using namespace std::chrono_literals;
using desktop::PrintPreview;
using pages::comesTrue;
using pages::named;
using support::aBatch;

class SeasonReviewDialog : public pages::Desk {
  protected:
    void open() {
        dialog_ = std::make_unique<desktop::SeasonReviewDialog>(context());
        pages::show(*dialog_);
    }
    template <class Widget>
    Widget& find(const char* name) {
        return named<Widget>(*dialog_, name);
    }
    void choose(const QString& span) { find<QComboBox>("reviewSpan").setCurrentText(span); }
    void ask() { find<QPushButton>("showReview").click(); }
    PrintPreview* preview() { return pages::opened<PrintPreview>(*dialog_); }
    QStringList faults() {
        QStringList said;
        for (const auto* label : dialog_->findChildren<desktop::FaultLabel*>())
            if (!label->fault().isEmpty()) said << label->fault();
        return said;
    }

    std::unique_ptr<desktop::SeasonReviewDialog> dialog_;
};

TEST_F(SeasonReviewDialog, BeginsWithTheYearAndShowsItsReviewAsPages) {
    fill(support::recordsOf({aBatch().looked(35, {.rooted = 12, .lost = 12})}));
    open();
    EXPECT_EQ(find<QComboBox>("reviewSpan").currentText(), QStringLiteral("2026"));
    EXPECT_FALSE(find<QLineEdit>("reviewFrom").isEnabled());
    pages::press(Qt::Key_Return);
    ASSERT_TRUE(comesTrue([this] { return preview() != nullptr; }));
    EXPECT_TRUE(preview()->windowTitle().contains(QStringLiteral("Season review: 2026")))
        << preview()->windowTitle().toStdString();
    const QTemporaryDir folder;
    prompts_.willPickFileToSave(folder.filePath(QStringLiteral("review.pdf")));
    const QSignalSpy said(dialog_.get(), &desktop::SeasonReviewDialog::said);
    named<QPushButton>(*preview(), "savePdf").click();
    EXPECT_TRUE(QFile::exists(folder.filePath(QStringLiteral("review.pdf"))));
    EXPECT_EQ(said.count(), 1) << "said at the foot of the window";
    EXPECT_TRUE(dialog_->isVisible()) << "another season can be asked for";
}

TEST_F(SeasonReviewDialog, OffersEveryYearInWhichSomethingWasStuckTheLatestFirst) {
    fill(support::recordsOf({aBatch().stuckOn(2023y / 5 / 1), aBatch().stuckOn(2025y / 5 / 1)}));
    open();
    const auto& spans = find<QComboBox>("reviewSpan");
    QStringList offered;
    for (int i = 0; i < spans.count(); ++i) offered << spans.itemText(i);
    EXPECT_EQ(offered, (QStringList{"2026", "The last 12 months", "From one day to another", "2025", "2023"}));
}

TEST_F(SeasonReviewDialog, ShowsWhichDaysTheLastTwelveMonthsAre) {
    fill(support::recordsOf({aBatch()}));
    open();
    choose(QStringLiteral("The last 12 months"));
    EXPECT_TRUE(find<QLineEdit>("reviewFrom").text().contains(QStringLiteral("2025")));
    EXPECT_FALSE(find<QLineEdit>("reviewFrom").isEnabled());
    EXPECT_FALSE(find<QLineEdit>("reviewUntil").text().isEmpty());
}

TEST_F(SeasonReviewDialog, MarksABadSpanWhereItStandsAndThrowsNothingAway) {
    fill(support::recordsOf({aBatch()}));
    open();
    dialog_->resize(dialog_->minimumSize());
    choose(QStringLiteral("From one day to another"));
    find<QLineEdit>("reviewFrom").setText(QStringLiteral("2026-05-01"));
    find<QLineEdit>("reviewUntil").setText(QStringLiteral("2026-04-01"));
    ask();
    ASSERT_TRUE(comesTrue([this] { return !faults().isEmpty(); }));
    EXPECT_TRUE(faults().first().contains(QStringLiteral("2026-04-01"))) << faults().first().toStdString();
    EXPECT_EQ(preview(), nullptr);
    QCoreApplication::processEvents();
    for (const QLabel* label : dialog_->findChildren<QLabel*>())
        if (label->isVisible() && label->wordWrap()) {
            EXPECT_GE(label->height(), label->heightForWidth(label->width())) << label->text().toStdString();
        }
    find<QLineEdit>("reviewUntil").setText(QStringLiteral("when they root"));
    ask();
    ASSERT_EQ(faults().size(), 1);
    EXPECT_EQ(find<QLineEdit>("reviewUntil").text(), QStringLiteral("when they root"));
    EXPECT_TRUE(find<QLineEdit>("reviewUntil").hasFocus());
}

TEST_F(SeasonReviewDialog, SaysThatNothingWasStuckInsteadOfShowingAnEmptyPage) {
    fill(support::recordsOf({aBatch().stuckOn(2025y / 5 / 1)}));
    open();
    ask();
    ASSERT_TRUE(comesTrue([this] { return find<QLabel>("reviewState").text().contains("Nothing was stuck"); }));
    EXPECT_EQ(preview(), nullptr);
}

TEST_F(SeasonReviewDialog, ClosesByEscape) {
    fill(support::recordsOf({aBatch()}));
    open();
    pages::press(Qt::Key_Escape);
    EXPECT_FALSE(dialog_->isVisible());
}

/// On a file, so that the work goes on beside the window.
class SeasonReviewBeside : public SeasonReviewDialog {
  protected:
    SeasonReviewBeside() {
        core::Records records = core::demoSeason({.batches = 400, .seed = 1, .today = 2026y / 6 / 30});
        const std::filesystem::path file = (folder_.filePath(QStringLiteral("season.strikebook"))).toStdString();
        {
            const db::OpenOptions options{.clock = [] { return std::chrono::sys_days(2026y / 6 / 30) + 10h; },
                                          .author = {}};
            db::Logbook logbook = db::Logbook::create(file, records.shelves.facts, options);
            EXPECT_TRUE(db::addRecords(logbook, std::move(records), "invented", true).has_value());
        }
        EXPECT_TRUE(workspace_.open(file));
        open();
    }

    QTemporaryDir folder_;
};

TEST_F(SeasonReviewBeside, IsCalledOffByCancelAndCanBeAskedForAgain) {
    ask();
    EXPECT_TRUE(dialog_->isWorking());
    EXPECT_TRUE(find<QProgressBar>("reviewBar").isVisible());
    EXPECT_FALSE(find<QPushButton>("showReview").isEnabled());
    EXPECT_TRUE(find<QPushButton>("reviewCancel").hasFocus());
    find<QPushButton>("reviewCancel").click();
    EXPECT_FALSE(dialog_->isWorking());
    EXPECT_TRUE(dialog_->isVisible()) << "Cancel ends the work, not the dialog";
    EXPECT_EQ(find<QLabel>("reviewState").text(), QStringLiteral("Called off."));
    ask();
    EXPECT_TRUE(comesTrue([this] { return preview() != nullptr; }));
    EXPECT_EQ(dialog_->findChildren<PrintPreview*>().size(), 1) << "what was called off shows nothing";
}

}  // namespace
