// SPDX-License-Identifier: MIT
#include "app/desktop/history/history_page.h"

#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/history/history_model.h"
#include "app/desktop/look/look.h"
#include "app/desktop/widgets/headline.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/workspace.h"

namespace desktop {

HistoryPage::HistoryPage(const PageContext& context, QWidget* parent)
    : Page(parent), context_(context), model_(new HistoryModel(this)) {
    setObjectName("historyPage");
    auto* words = new QLabel(
        tr("Everything that was done to this logbook, newest first. Whatever stands at the top can be taken back, "
           "also tomorrow."),
        this);
    words->setWordWrap(true);
    undo_ = new QPushButton(icon("undo"), QString(), this);
    undo_->setObjectName("historyUndo");
    redo_ = new QPushButton(icon("redo"), QString(), this);
    redo_->setObjectName("historyRedo");
    table_ = new QTableView(this);
    table_->setObjectName("historyTable");
    table_->setAccessibleName(tr("History"));
    table_->setModel(model_);
    giveTableManners(*table_);
    connect(undo_, &QPushButton::clicked, this, [this] { context_.workspace.undo(); });
    connect(redo_, &QPushButton::clicked, this, [this] { context_.workspace.redo(); });
    connect(&context_.workspace, &Workspace::logbookReplaced, this, &HistoryPage::readAgain);
    connect(&context_.workspace, &Workspace::logbookChanged, this, &HistoryPage::readAgain);

    auto* buttons = new QHBoxLayout;
    buttons->addWidget(undo_);
    buttons->addWidget(redo_);
    buttons->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(new Headline(tr("History"), this));
    layout->addWidget(words);
    layout->addLayout(buttons);
    layout->addWidget(table_, 1);
}

void HistoryPage::activated() {
    readAgain();
    table_->setFocus();
    if (!table_->currentIndex().isValid()) chooseRow(*table_, 0);
}

void HistoryPage::readAgain() {
    // Out of sight it costs nothing; activated() reads when it comes to the front.
    if (!isVisible() || !context_.workspace.hasLogbook()) return;
    context_.workspace.attempt([this](db::Logbook& logbook) { model_->show(logbook.history()); });
    for (const int column : {HistoryModel::When, HistoryModel::Who, HistoryModel::What}) {
        table_->resizeColumnToContents(column);
        table_->setColumnWidth(column, table_->columnWidth(column) + fontMetrics().averageCharWidth() * 2);
    }
    nameButtons();
}

void HistoryPage::nameButtons() {
    const Workspace& workspace = context_.workspace;
    const QString undoWords = workspace.wordsToUndo();
    const QString redoWords = workspace.wordsToRedo();
    undo_->setText(undoWords.isEmpty() ? tr("&Take back") : tr("&Take back %1").arg(undoWords));
    redo_->setText(redoWords.isEmpty() ? tr("Do &again") : tr("Do &again: %1").arg(redoWords));
    undo_->setEnabled(!undoWords.isEmpty() && !workspace.isReadOnly());
    redo_->setEnabled(!redoWords.isEmpty() && !workspace.isReadOnly());
}

}  // namespace desktop
