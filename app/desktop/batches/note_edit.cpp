// SPDX-License-Identifier: MIT
#include "app/desktop/batches/note_edit.h"

#include <QKeyEvent>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/fault_label.h"

namespace desktop {

NoteEdit::NoteEdit(FaultLabel* fault, Keep keep, QWidget* parent)
    : QPlainTextEdit(parent), fault_(fault), keep_(std::move(keep)) {
    setTabChangesFocus(true);
    setToolTip(tr("Kept on leaving, or with Ctrl+Enter; Esc gives back what was there."));
    constexpr int lines = 4;
    setFixedHeight(lines * fontMetrics().lineSpacing() + 2 * static_cast<int>(document()->documentMargin()) +
                   2 * frameWidth());
}

void NoteEdit::setNote(const QString& note, std::int64_t owner) {
    const bool isBeingTyped = owner == owner_ && toPlainText() != kept_;
    owner_ = owner;
    kept_ = note;
    if (!isBeingTyped && toPlainText() != note) setPlainText(note);
    if (!isBeingTyped) fault_->setFault({});
}

bool NoteEdit::event(QEvent* event) {
    // Esc belongs to the innermost thing: here to what is typed, before it leaves the page.
    if (event->type() == QEvent::ShortcutOverride && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Escape &&
        toPlainText() != kept_) {
        event->accept();
        return true;
    }
    return QPlainTextEdit::event(event);
}

void NoteEdit::keyPressEvent(QKeyEvent* event) {
    const bool isEnter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (isEnter && event->modifiers().testFlag(Qt::ControlModifier)) return keep();
    if (event->key() == Qt::Key_Escape && toPlainText() != kept_) {
        setPlainText(kept_);
        return fault_->setFault({});
    }
    QPlainTextEdit::keyPressEvent(event);
}

void NoteEdit::focusOutEvent(QFocusEvent* event) {
    QPlainTextEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason) keep();
}

void NoteEdit::keep() {
    if (isReadOnly() || owner_ == 0 || toPlainText().trimmed() == kept_.trimmed()) return;
    const Outcome outcome = keep_(toPlainText());
    if (!outcome.isDone) return fault_->setFault(sentencesOf(outcome.refusals));
    fault_->setFault({});
}

}  // namespace desktop
