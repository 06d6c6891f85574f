// SPDX-License-Identifier: MIT
// The settings that belong to this computer and hold for every logbook: theme, text size, how dates and numbers are written, what a plain
// number in a round means. Each takes effect at once and is remembered.
#pragma once

#include <QWidget>

#include "app/desktop/page.h"

class QComboBox;
class QFormLayout;
class QLabel;
class QSlider;

namespace desktop {

class Appearance;

class MachineSettings : public QWidget {
    Q_OBJECT

  public:
    MachineSettings(const PageContext& context, Appearance& appearance, QWidget* parent = nullptr);

  private:
    void addLook(QFormLayout& form);
    void addNumbers(QFormLayout& form);
    void addRound(QFormLayout& form);
    void showLook();
    void showExample();

    PageContext context_;
    Appearance& appearance_;
    QComboBox *theme_{}, *numbers_{}, *round_{};
    QSlider* text_{};
    QLabel *textPercent_{}, *example_{};
};

}  // namespace desktop
