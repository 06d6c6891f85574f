// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/headline.h"

#include <QApplication>
#include <QEvent>

namespace desktop {

Headline::Headline(QWidget* parent) : Headline(QString(), parent) {}

Headline::Headline(const QString& text, QWidget* parent) : QLabel(text, parent) {
    grow();
}

void Headline::changeEvent(QEvent* event) {
    if (event->type() == QEvent::ApplicationFontChange) grow();
    QLabel::changeEvent(event);
}

void Headline::grow() {
    QFont large = QApplication::font();
    large.setPointSizeF(large.pointSizeF() * 1.4);
    large.setBold(true);
    if (large != font()) setFont(large);
}

}  // namespace desktop
