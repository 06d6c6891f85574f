// SPDX-License-Identifier: MIT
#include "app/desktop/printing/session_papers.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>
#include <map>

#include "app/desktop/printing/label_preview.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "app/report/session_sheet.h"

namespace desktop {

SessionPapers::SessionPapers(const PageContext& context, QWidget* parent) : QDialog(parent), context_(context) {
    setObjectName(QStringLiteral("sessionPapers"));
    setWindowTitle(tr("Labels and session sheet"));
    session_ = new QComboBox;
    session_->setObjectName(QStringLiteral("paperSession"));
    session_->setMaxVisibleItems(20);
    auto* label = new QLabel(tr("&Session"));
    label->setBuddy(session_);
    auto* row = new QHBoxLayout;
    row->addWidget(label);
    row->addWidget(session_, 1);

    const auto makeButton = [this](const QString& text, const QString& name) {
        auto* button = new QPushButton(text);
        button->setObjectName(name);
        return button;
    };
    labels_ = makeButton(tr("Print &labels\u2026"), QStringLiteral("paperLabels"));
    sheet_ = makeButton(tr("&Print session sheet\u2026"), QStringLiteral("paperSheet"));
    auto* close = makeButton(tr("Close"), QStringLiteral("paperClose"));
    labels_->setDefault(true);
    connect(labels_, &QPushButton::clicked, this, &SessionPapers::printLabels);
    connect(sheet_, &QPushButton::clicked, this, &SessionPapers::printSheet);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(labels_);
    buttons->addWidget(sheet_);
    buttons->addStretch();
    buttons->addWidget(close);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(row);
    layout->addLayout(buttons);
    fill();
    resize(fontMetrics().height() * 32, sizeHint().height());
}

void SessionPapers::fill() {
    std::map<core::SessionId, int> batches;
    std::vector<core::Session> sessions;
    context_.workspace.attempt([&](db::Logbook& logbook) {
        for (const core::BatchLine& line : context_.workspace.batchLines()) ++batches[line.batch.session];
        sessions = logbook.sessions();
    });
    for (auto session = sessions.rbegin(); session != sessions.rend(); ++session) {
        const QString day = plot::dateText(session->date), count = plot::batchesText(batches[session->id]);
        session_->addItem(
            session->worker.empty()
                ? tr("%1: %2", "date, batches").arg(day, count)
                : tr("%1, %2: %3", "date, who, batches").arg(day, QString::fromStdString(session->worker), count),
            QVariant::fromValue<qlonglong>(session->id.value));
    }
    if (session_->count() == 0) session_->addItem(tr("There is no session yet."));
    const bool hasSessions = !sessions.empty();
    for (QWidget* part :
         {static_cast<QWidget*>(session_), static_cast<QWidget*>(labels_), static_cast<QWidget*>(sheet_)})
        part->setEnabled(hasSessions);
}

core::SessionId SessionPapers::chosen() const {
    return {session_->currentData().toLongLong()};
}

void SessionPapers::printLabels() {
    connect(showLabelPreview(batchesOf(chosen(), context_.workspace), context_, this), &PrintPreview::said, this,
            &SessionPapers::said);
}

void SessionPapers::printSheet() {
    if (const PrintPreview* preview = showSessionSheet(chosen(), context_, this))
        connect(preview, &PrintPreview::said, this, &SessionPapers::said);
}

std::vector<core::Batch> batchesOf(core::SessionId session, const Workspace& workspace) {
    std::vector<core::Batch> batches;
    for (const core::BatchLine& line : workspace.batchLines())
        if (line.batch.session == session) batches.push_back(line.batch);
    return batches;
}

PrintPreview* showSessionSheet(core::SessionId id, const PageContext& context, QWidget* parent) {
    std::shared_ptr<const report::Sheet> sheet;
    context.workspace.attempt([&](db::Logbook& logbook) {
        const std::vector<core::Session> sessions = logbook.sessions();
        const core::Session* session = core::find(sessions, id);
        if (session == nullptr) return;
        sheet = std::make_shared<report::Sheet>(report::sessionSheet(*session, batchesOf(id, context.workspace),
                                                                     context.workspace.shelves(),
                                                                     printedAt(context.workspace), logbook.mixes(id)));
    });
    if (!sheet) return nullptr;
    const QString title = sheet->title;
    return showPrintPreview(std::move(sheet), title, context, parent);
}

}  // namespace desktop
