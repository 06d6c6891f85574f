// SPDX-License-Identifier: MIT
// Every key that does something, by the place where it does it, in one list that can be searched.
#pragma once

#include <QDialog>
#include <vector>

#include "app/desktop/help/key_list.h"

class QLabel;
class QLineEdit;
class QMenuBar;
class QTreeWidget;

namespace desktop {

class KeyboardDialog : public QDialog {
    Q_OBJECT

  public:
    explicit KeyboardDialog(std::vector<KeyLine> lines, QWidget* parent = nullptr);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build();
    void fill();
    void showMatches();
    void goToList();

    std::vector<KeyLine> lines_;
    QLineEdit* search_;
    QTreeWidget* list_;
    QLabel* count_;
};

/// Opens it without blocking; it deletes itself when it closes.
void showKeyboardList(const QMenuBar& menus, QWidget* window);

}  // namespace desktop
