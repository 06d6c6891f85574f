// SPDX-License-Identifier: MIT
// Every way to paper, from the menu or key that a grower takes to the words that stand in the PDF.
#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QProcess>
#include <QPushButton>
#include <QTableView>
#include <QTest>
#include <QTreeView>
#include <algorithm>

#include "app/desktop/page.h"
#include "app/desktop/positions/position_look_dialog.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/registry.h"
#include "core/due/due_today.h"
#include "tests/desktop/whole/whole_window.h"

namespace {

void expectSays(const QString& text, const std::string& words) {
    EXPECT_TRUE(text.contains(QString::fromStdString(words))) << words << " is not in: " << text.toStdString();
}

class Printing : public whole::Window {
  protected:
    void go(const char* page) { window_->findChild<QAction*>(QStringLiteral("page_") + page)->trigger(); }
    void press(Qt::Key key, Qt::KeyboardModifiers with = Qt::ControlModifier) {
        QTest::keyClick(window_.get(), key, with);
        whole::settle();
    }
    QAction* print() { return window_->findChild<QAction*>("filePrint"); }
    [[nodiscard]] bool canPrint() {
        constexpr int longest = 30'000;  // a comparison's sums on a busy machine
        return QTest::qWaitFor([this] { return window_->currentPage()->sheet() != nullptr; }, longest);
    }
    template <class Dialog = QDialog>
    Dialog* opened(const char* name = "") {
        for (Dialog* dialog : window_->findChildren<Dialog*>())
            if (dialog->isVisible() && (*name == 0 || dialog->objectName() == QLatin1String(name))) return dialog;
        return nullptr;
    }
    static void click(const QWidget& within, const char* name) {
        auto* button = within.findChild<QPushButton*>(name);
        ASSERT_TRUE(button && button->isEnabled()) << name;
        button->click();
        whole::settle();
    }
    /// Saves what the preview shows, closes it and reads the text back, on one line.
    QString saved() {
        auto* preview = opened<desktop::PrintPreview>();
        if (preview == nullptr) return QStringLiteral("no preview");
        const QString file = folder_.filePath(QStringLiteral("printed.pdf"));
        prompts_.willPickFileToSave(file);
        click(*preview, "savePdf");
        QProcess reader;
        reader.start("pdftotext", {file, "-"});
        // As people read it: fonts may set "ff" as one sign.
        const auto asRead = [](const QByteArray& text) {
            return QString::fromUtf8(text).normalized(QString::NormalizationForm_KC).simplified();
        };
        return reader.waitForFinished() ? asRead(reader.readAllStandardOutput()) : QString();
    }
    core::BatchLine someBatch() {
        const auto& lines = workspace_.batchLines();
        return *std::ranges::find_if(lines, [](const core::BatchLine& line) { return line.tally.rooted > 0; });
    }
};

TEST_F(Printing, WhatIsDueFromTheBench) {
    const auto due = core::dueOn(workspace_.today(), workspace_.batchLines(), workspace_.shelves());
    ASSERT_FALSE(due.empty());
    ASSERT_TRUE(print()->isEnabled());
    press(Qt::Key_P);
    const QString text = saved();
    for (const core::DueBatch& batch : due) expectSays(text, batch.line.batch.code);
    const core::Station* station = core::find(workspace_.shelves().stations, due.front().line.batch.station);
    ASSERT_NE(station, nullptr);
    expectSays(text, station->name);
}

TEST_F(Printing, ARoundForThePencil) {
    press(Qt::Key_R);
    auto* round = opened("roundDialog");
    ASSERT_NE(round, nullptr);
    click(*round, "roundPrint");
    const QString text = saved();
    for (const core::DueBatch& batch : core::dueOn(workspace_.today(), workspace_.batchLines(), workspace_.shelves()))
        expectSays(text, batch.line.batch.code);
}

TEST_F(Printing, ABatchFromItsPage) {
    const core::BatchLine line = someBatch();
    window_->showBatch(line.batch.id);
    ASSERT_TRUE(canPrint());
    print()->trigger();
    const QString text = saved();
    expectSays(text, line.batch.code);
    expectSays(text, core::find(workspace_.shelves().plants, line.batch.plant)->botanicalName);
    expectSays(text, std::to_string(line.tally.rooted));
    expectSays(text, "How this was worked out");
}

TEST_F(Printing, AComparisonFromHeadToHead) {
    go("head_to_head");
    ASSERT_TRUE(canPrint());
    press(Qt::Key_P);
    const QString words = window_->findChild<QLabel*>("comparisonInWords")->text().simplified();
    const QString text = saved();
    expectSays(text, words.left(50).toStdString());
    expectSays(text, "How this was worked out");
}

TEST_F(Printing, ASessionsSheetAndItsLabels) {
    press(Qt::Key_L);
    auto* papers = opened("sessionPapers");
    ASSERT_NE(papers, nullptr);
    const core::SessionId session{papers->findChild<QComboBox*>("paperSession")->currentData().toLongLong()};
    for (const char* paper : {"paperSheet", "paperLabels"}) {
        click(*papers, paper);
        const QString text = saved();
        for (const core::BatchLine& line : workspace_.batchLines())
            if (line.batch.session == session) expectSays(text, line.batch.code);
    }
}

TEST_F(Printing, TheMapOfALid) {
    const auto& stations = workspace_.shelves().stations;
    const auto station = std::ranges::find_if(stations, [](const core::Station& each) { return each.positions() > 0; });
    ASSERT_NE(station, stations.end());
    desktop::lookHoleByHole(window_->parts().context, station->id, window_.get());
    auto* look = opened<desktop::PositionLookDialog>();
    ASSERT_NE(look, nullptr);
    click(*look, "lookPrintMap");
    expectSays(saved(), station->name);
}

TEST_F(Printing, PagesThatHaveNoPaperDontOfferIt) {
    for (const char* page : {"batches", "shelves", "history"}) {
        go(page);
        whole::settle();
        EXPECT_FALSE(print()->isEnabled()) << page;
    }
}

}  // namespace
