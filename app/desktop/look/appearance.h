// SPDX-License-Identifier: MIT
// The look that is on: a theme (chosen, or the system's) and a text size, put on the whole application and remembered.
#pragma once

#include <QFont>
#include <QObject>

#include "app/desktop/look/system_theme.h"

class QApplication;

namespace desktop {

class Memory;

class Appearance : public QObject {
    Q_OBJECT

  public:
    Appearance(QApplication& application, Memory& memory, SystemTheme& system, QObject* parent = nullptr);

    [[nodiscard]] Theme theme() const { return theme_; }
    void setTheme(Theme theme);
    /// For this run only: the command line's --theme.
    void wear(Theme theme);

    [[nodiscard]] int textPercent() const { return textPercent_; }
    void setTextPercent(int percent);  // taken into 80 to 200
    void makeTextLarger() { setTextPercent(textPercent_ + 10); }
    void makeTextSmaller() { setTextPercent(textPercent_ - 10); }
    void resetText() { setTextPercent(100); }

  signals:
    void changed();

  private:
    void put();

    QApplication& application_;
    Memory& memory_;
    SystemTheme& system_;
    QFont fontAtStart_;
    Theme theme_;
    int textPercent_;
};

}  // namespace desktop
