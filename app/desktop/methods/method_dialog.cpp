// SPDX-License-Identifier: MIT
#include "app/desktop/methods/method_dialog.h"

#include <QClipboard>
#include <QDialogButtonBox>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>
#include <algorithm>

namespace desktop {

MethodDialog::MethodDialog(std::vector<report::MethodNote> notes, const QString& page, QWidget* parent)
    : QDialog(parent), notes_(std::move(notes)) {
    setObjectName(QStringLiteral("methodDialog"));
    setWindowTitle(tr("How is this worked out?"));
    build();
    const auto wanted = std::find_if(notes_.begin(), notes_.end(),
                                     [&page](const report::MethodNote& note) { return note.page == page; });
    titles_->setCurrentRow(wanted == notes_.end() ? 0 : static_cast<int>(wanted - notes_.begin()));
    titles_->setFocus(Qt::OtherFocusReason);
}

QString MethodDialog::shownText() const {
    return text_->toPlainText();
}

void MethodDialog::build() {
    titles_ = new QListWidget;
    titles_->setObjectName(QStringLiteral("methodTitles"));
    titles_->setAccessibleName(tr("Methods behind this figure"));
    titles_->setWordWrap(true);
    titles_->setSpacing(fontMetrics().height() / 6);  // so that broken titles stay apart
    titles_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    for (const report::MethodNote& note : notes_) titles_->addItem(report::methodTitle(note.page));
    titles_->setFixedWidth(fontMetrics().averageCharWidth() * 32);
    text_ = new QTextBrowser;
    text_->setObjectName(QStringLiteral("methodText"));
    text_->setAccessibleName(tr("The method, with your own numbers"));
    text_->setOpenLinks(false);
    text_->document()->setDocumentMargin(fontMetrics().height() / 2.0);
    connect(titles_, &QListWidget::currentRowChanged, this, &MethodDialog::showNote);

    auto* columns = new QHBoxLayout;
    columns->addWidget(titles_);
    columns->addWidget(text_, 1);
    // Before the buttons are made: else Tab leaves out the first of them.
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(columns, 1);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* copy = buttons->addButton(tr("&Copy the page"), QDialogButtonBox::ActionRole);
    copy->setObjectName(QStringLiteral("methodCopy"));
    connect(copy, &QPushButton::clicked, this, &MethodDialog::copy);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    layout->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 130, fontMetrics().height() * 34);
}

void MethodDialog::showNote(int row) {
    if (row < 0) return;
    text_->setMarkdown(report::workedOut(notes_[static_cast<std::size_t>(row)]));
}

void MethodDialog::copy() {
    const int row = titles_->currentRow();
    if (row >= 0) QGuiApplication::clipboard()->setText(report::workedOut(notes_[static_cast<std::size_t>(row)]));
}

void showMethods(std::vector<report::MethodNote> notes, const QString& page, QWidget* parent) {
    if (notes.empty()) return;
    auto* dialog = new MethodDialog(std::move(notes), page, parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

}  // namespace desktop
