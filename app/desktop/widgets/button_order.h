// SPDX-License-Identifier: MIT
// Tab through the buttons of a dialog as they stand. Qt 6.4's QDialogButtonBox loses one of them where a button or a field came later.
#pragma once

#include <QDialogButtonBox>
#include <QLayout>

namespace desktop {

inline void tabThrough(QWidget& last, const QDialogButtonBox& buttons) {
    QWidget* before = &last;
    for (int place = 0; place < buttons.layout()->count(); ++place)
        if (QWidget* button = buttons.layout()->itemAt(place)->widget()) {
            QWidget::setTabOrder(before, button);
            before = button;
        }
}

}  // namespace desktop
