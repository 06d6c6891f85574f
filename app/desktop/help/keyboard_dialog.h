// SPDX-License-Identifier: MIT
// Every key that does something, in one list that can be searched: the menus' own shortcuts and those that live inside tables.
#pragma once

#include <QList>

class QAction;
class QWidget;

namespace desktop {

/// Opens without blocking; closes with Esc.
void showKeyboardList(const QList<QAction*>& actions, QWidget* window);

}  // namespace desktop
