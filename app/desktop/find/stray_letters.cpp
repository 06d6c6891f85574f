// SPDX-License-Identifier: MIT
#include "app/desktop/find/stray_letters.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>

namespace desktop {

StrayLetters::StrayLetters(QWidget& window, Taking take) : QObject(&window), window_(window), take_(std::move(take)) {
    qApp->installEventFilter(this);
}

bool StrayLetters::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress || !watched->isWidgetType()) return false;
    auto* widget = static_cast<QWidget*>(watched);
    if (widget->window() != &window_ || QApplication::activePopupWidget()) return false;
    const auto* typed = static_cast<QKeyEvent*>(event);
    const bool isPlain = (typed->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier)) == Qt::NoModifier;
    if (!isPlain || typed->text().size() != 1 || !typed->text().front().isLetterOrNumber()) return false;
    // A key that its widget let pass comes by once more on the way up.
    if (QWidget* focused = window_.focusWidget(); focused && focused != widget) return false;
    if (wantsLetters(*widget, *typed)) return false;
    take_(typed->text());
    return true;
}

bool StrayLetters::wantsLetters(QWidget& widget, const QKeyEvent& typed) {
    // A closed box of choices goes to the one that begins with the letter, and an editable table opens its editor.
    if (qobject_cast<const QComboBox*>(&widget)) return true;
    const auto* view = qobject_cast<const QAbstractItemView*>(&widget);
    if (view && view->editTriggers() != QAbstractItemView::NoEditTriggers) return true;
    QKeyEvent asked(QEvent::ShortcutOverride, typed.key(), typed.modifiers(), typed.text());
    asked.ignore();
    QApplication::sendEvent(&widget, &asked);
    return asked.isAccepted();
}

}  // namespace desktop
