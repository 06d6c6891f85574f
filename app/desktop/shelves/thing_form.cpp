// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/thing_form.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/prompts.h"
#include "app/desktop/widgets/caution_strip.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/desktop/widgets/date_edit.h"

namespace desktop {

ThingForm::ThingForm(Prompts* prompts, const QString& title, QWidget* parent)
    : QDialog(parent), prompts_(prompts), form_(new QFormLayout) {
    setWindowTitle(title);
    form_->setRowWrapPolicy(QFormLayout::WrapLongRows);
    auto* rows = new QWidget;
    rows->setLayout(form_);
    // In large type a form may want more room than the screen has.
    auto* frame = new QScrollArea;
    frame->setWidgetResizable(true);
    frame->setFrameShape(QFrame::NoFrame);
    frame->setFocusPolicy(Qt::NoFocus);
    frame->setWidget(rows);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(frame, 1);
    setMinimumWidth(fontMetrics().averageCharWidth() * 80);
}

void ThingForm::addEditor(const Row& row, QWidget* editor) {
    if (editor->objectName().isEmpty()) editor->setObjectName(row.objectName);
    auto* fault = new FaultLabel;
    auto* line = new QHBoxLayout;
    const bool isShort = qobject_cast<CountEdit*>(editor) || qobject_cast<QComboBox*>(editor) ||
                         qobject_cast<DateEdit*>(editor) || editor->maximumWidth() < QWIDGETSIZE_MAX;
    line->addWidget(editor, isShort ? 0 : 1);
    QLabel* after = nullptr;
    if (!row.after.isEmpty()) {
        after = new QLabel(row.after);
        after->setWordWrap(isShort);
        line->addWidget(after, isShort ? 1 : 0);
    } else if (isShort) {
        line->addStretch(1);
    }
    auto* cell = new QVBoxLayout;
    cell->addLayout(line);
    cell->addWidget(fault);
    auto* label = new QLabel(row.label);
    label->setBuddy(editor);
    form_->addRow(label, cell);
    marks_.add(QString::fromStdString(row.field), editor, fault);
    cells_.insert(editor, {.layout = cell, .after = after, .fault = fault});
}

void ThingForm::showRow(QWidget* editor, bool isShown) {
    const Cell cell = cells_.value(editor);
    form_->setRowVisible(cell.layout, isShown);
    if (isShown) cell.fault->setFault(cell.fault->fault());  // of all in the row it hides by itself
}

void ThingForm::sayAfter(QWidget* editor, const QString& words) {
    if (QLabel* after = cells_.value(editor).after) after->setText(words);
}

QLineEdit* ThingForm::addLine(const Row& row, const std::string& text) {
    auto* edit = new QLineEdit(QString::fromStdString(text));
    addEditor(row, edit);
    connect(edit, &QLineEdit::textEdited, this, [this, field = row.field] { touch(field); });
    return edit;
}

QLineEdit* ThingForm::addNumber(const Row& row, const QString& text) {
    auto* edit = new QLineEdit(text);
    edit->setAlignment(Qt::AlignRight);
    edit->setMaxLength(20);
    edit->setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000000000")) + 2 * fontMetrics().height());
    addEditor(row, edit);
    connect(edit, &QLineEdit::textEdited, this, [this, field = row.field] { touch(field); });
    return edit;
}

DateEdit* ThingForm::addDay(const Row& row, std::optional<core::Date> day, core::Date today) {
    auto* edit = new DateEdit(today);
    edit->line()->setObjectName(row.objectName);
    edit->setObjectName(row.objectName + QStringLiteral("Field"));
    edit->setDate(day);
    addEditor(row, edit);
    connect(edit->line(), &QLineEdit::textEdited, this, [this, field = row.field] { touch(field); });
    return edit;
}

CountEdit* ThingForm::addCount(const Row& row, std::optional<int> count, int least, int most) {
    auto* edit = new CountEdit(least, most);
    edit->setCount(count);
    addEditor(row, edit);
    connect(edit, &QLineEdit::textEdited, this, [this, field = row.field] { touch(field); });
    return edit;
}

QPlainTextEdit* ThingForm::addNote(const Row& row, const std::string& text) {
    auto* edit = new QPlainTextEdit(QString::fromStdString(text));
    edit->setTabChangesFocus(true);
    edit->setMinimumHeight(fontMetrics().height() * 4);
    addEditor(row, edit);
    connect(edit, &QPlainTextEdit::textChanged, this, [this, field = row.field] { touch(field); });
    return edit;
}

QComboBox* ThingForm::addChoice(const Row& row, bool isEditable) {
    auto* box = new QComboBox;
    box->setEditable(isEditable);
    addEditor(row, box);
    connect(box, &QComboBox::currentTextChanged, this, [this, field = row.field] { touch(field); });
    return box;
}

QCheckBox* ThingForm::addTick(const QString& text, const QString& objectName, bool isTicked) {
    auto* box = new QCheckBox(text);
    box->setObjectName(objectName);
    box->setChecked(isTicked);
    form_->addRow(QString(), box);
    connect(box, &QCheckBox::toggled, this, [this] { touch({}); });
    return box;
}

QLabel* ThingForm::addWords(const QString& objectName) {
    QLabel* words = quietLabel(objectName);
    form_->addRow(QString(), words);
    return words;
}

QPushButton* ThingForm::addButton(const QString& objectName) {
    auto* button = new QPushButton;
    button->setObjectName(objectName);
    button->setAutoDefault(false);
    button->hide();
    form_->addRow(QString(), button);
    return button;
}

CautionStrip* ThingForm::addCautions() {
    auto* strip = new CautionStrip;
    form_->addRow(strip);
    return strip;
}

void ThingForm::finish(const QString& saveText, const QString& saveName, Verbs verbs) {
    verbs_ = std::move(verbs);
    touched_.clear();
    rest_ = new FaultLabel;
    rest_->setObjectName(QStringLiteral("formFault"));
    marks_.setRest(rest_);
    auto* buttons =
        new QDialogButtonBox(QDialogButtonBox::Cancel, this);  // with a parent, or Cancel would be the default
    auto* save = buttons->addButton(saveText, QDialogButtonBox::AcceptRole);
    save->setObjectName(saveName);
    save->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &ThingForm::save);
    connect(buttons, &QDialogButtonBox::rejected, this, &ThingForm::reject);
    layout()->addWidget(rest_);
    layout()->addWidget(buttons);
    // As tall as its rows, as far as the screen goes.
    const int wanted = form_->sizeHint().height() + buttons->sizeHint().height() + fontMetrics().height() * 5;
    resize(sizeHint().width(), std::min(wanted, fontMetrics().height() * 45));
}

void ThingForm::touch(const std::string& field) {
    touched_ << QString::fromStdString(field);
    judge();
}

void ThingForm::judge() {
    if (!verbs_.judge) return;
    core::Refusals refusals = verbs_.judge();
    if (!showsAll_)
        std::erase_if(refusals, [this](const core::Refusal& refusal) {
            return !touched_.contains(QString::fromStdString(refusal.field));
        });
    marks_.mark(refusals);
}

void ThingForm::save() {
    showsAll_ = true;
    if (!marks_.show(verbs_.judge())) return;
    const Outcome outcome = verbs_.keep();
    if (marks_.show(outcome.refusals) && outcome.isDone) accept();
}

void ThingForm::reject() {
    if (!prompts_ && !touched_.isEmpty() && !hasWarned_) {
        hasWarned_ = true;
        return rest_->setFault(tr("What you typed here is not kept yet. Esc or Cancel again throws it away."));
    }
    const bool mayGo = touched_.isEmpty() || !prompts_ ||
                       prompts_->confirm(this, {.title = windowTitle(),
                                                .sentence = tr("What you typed here is not saved yet."),
                                                .verb = tr("Throw it away")});
    if (mayGo) QDialog::reject();
}

core::Refusals faultsInOptionalCount(const CountEdit& edit, const std::string& field) {
    if (edit.text().trimmed().isEmpty() || edit.count()) return {};
    return {{.field = field,
             .value = edit.text().toStdString(),
             .allowed = {},
             .sentence = edit.fault(QString::fromStdString(field)).toStdString()}};
}

}  // namespace desktop
