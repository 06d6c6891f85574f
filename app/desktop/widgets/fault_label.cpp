// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/fault_label.h"

#include <QAccessible>
#include <QDialog>
#include <QEvent>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QScreen>
#include <QStyle>
#include <algorithm>

#include "app/desktop/look/look.h"

namespace desktop {

FaultLabel::FaultLabel(QWidget* parent) : QWidget(parent), sign_(new QLabel(this)), text_(new QLabel(this)) {
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(sign_, 0, Qt::AlignTop);
    layout->addWidget(text_, 1);
    text_->setWordWrap(true);
    text_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    hide();
}

void FaultLabel::setFault(const QString& sentence) {
    colour();
    text_->setText(sentence);
    setAccessibleName(sentence);
    setVisible(!sentence.isEmpty());
    if (sentence.isEmpty()) return;
    makeRoom();
    QAccessibleEvent spoken(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&spoken);
}

/// A window keeps to its layout's least size, in which lines that wrap count as one.
void FaultLabel::makeRoom() {
    auto* dialog = qobject_cast<QDialog*>(window());
    if (dialog == nullptr || !dialog->isVisible() || dialog->layout() == nullptr) return;
    const int wanted = dialog->layout()->totalMinimumHeightForWidth(dialog->width());
    const int most = dialog->screen()->availableSize().height();
    if (wanted > dialog->height()) dialog->resize(dialog->width(), std::min(wanted, most));
}

void FaultLabel::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange) colour();
    QWidget::changeEvent(event);
}

void FaultLabel::colour() {
    // Colour is never the only sign: the mark in front says it too.
    QPalette coloured = palette();
    coloured.setColor(QPalette::WindowText, faultColour(coloured));
    text_->setPalette(coloured);
    sign_->setPixmap(icon("fault").pixmap(fontMetrics().height()));
}

QString FaultLabel::fault() const {
    return text_->text();
}

void FaultMarks::add(const QString& field, QWidget* editor, FaultLabel* label) {
    marks_.push_back({field, editor, label});
}

void FaultMarks::clear() {
    for (const Mark& mark : marks_) {
        mark.label->setFault({});
        mark.editor->setAccessibleDescription({});
    }
    if (rest_) rest_->setFault({});
}

const FaultMarks::Mark* FaultMarks::markAll(const core::Refusals& refusals) {
    clear();
    const Mark* first = nullptr;
    for (const core::Refusal& refusal : refusals) {
        const QString field = QString::fromStdString(refusal.field);
        const QString sentence = QString::fromStdString(refusal.sentence);
        const Mark* found = nullptr;
        for (const Mark& mark : marks_)
            if (mark.field == field) found = &mark;
        FaultLabel* label = found ? found->label : rest_;
        if (!label) continue;
        label->setFault(label->fault().isEmpty() ? sentence : label->fault() + '\n' + sentence);
        if (!found) continue;
        found->editor->setAccessibleDescription(sentence);
        if (!first || found < first) first = found;
    }
    return first;
}

bool FaultMarks::show(const core::Refusals& refusals) {
    if (const Mark* first = markAll(refusals)) first->editor->setFocus(Qt::OtherFocusReason);
    return refusals.empty();
}

void FaultMarks::mark(const core::Refusals& refusals) {
    markAll(refusals);
}

}  // namespace desktop
