// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/headline.h"

#include <QApplication>
#include <QEvent>

namespace desktop {

Headline::Headline(QWidget* parent) : Headline(QString(), parent) {}

Headline::Headline(const QString& text, QWidget* parent) : QLabel(text, parent) {
    // A label with a size of its own isn't told that the text size has changed; what it stands on is.
    if (parent) parent->installEventFilter(this);
    grow();
}

bool Headline::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FontChange) grow();
    return QLabel::eventFilter(watched, event);
}

void Headline::grow() {
    QFont large = QApplication::font();
    large.setPointSizeF(large.pointSizeF() * 1.4);
    large.setBold(true);
    if (large != font()) setFont(large);
}

}  // namespace desktop
