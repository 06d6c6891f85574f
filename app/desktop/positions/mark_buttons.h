// SPDX-License-Identifier: MIT
// The marks as buttons, each with its picture, its letter and its name: the legend of the map, and its keys for a wet finger.
#pragma once

#include <QWidget>
#include <vector>

#include "app/desktop/positions/mark_keys.h"

class QPushButton;

namespace desktop {

class MarkButtons : public QWidget {
    Q_OBJECT

  public:
    explicit MarkButtons(std::vector<MarkKey> keys, QWidget* parent = nullptr);
    void setRound(bool isRound);

  signals:
    void pressed(const desktop::Mark& mark);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void draw();

    std::vector<MarkKey> keys_;
    std::vector<QPushButton*> buttons_;
    bool isRound_{true};
};

}  // namespace desktop
