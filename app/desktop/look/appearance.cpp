// SPDX-License-Identifier: MIT
#include "app/desktop/look/appearance.h"

#include <QApplication>
#include <algorithm>

#include "app/desktop/memory.h"

namespace desktop {

Appearance::Appearance(QApplication& application, Memory& memory, SystemTheme& system, QObject* parent)
    : QObject(parent),
      application_(application),
      memory_(memory),
      system_(system),
      fontAtStart_(QApplication::font()),
      theme_(memory.theme()),
      textPercent_(memory.textPercent()) {
    connect(&system, &SystemTheme::themeChanged, this, &Appearance::put);
    put();
}

void Appearance::setTheme(Theme theme) {
    memory_.setTheme(theme);
    wear(theme);
}

void Appearance::wear(Theme theme) {
    theme_ = theme;
    put();
}

void Appearance::setTextPercent(int percent) {
    textPercent_ = std::clamp(percent, 80, 200);
    memory_.setTextPercent(textPercent_);
    put();
}

void Appearance::put() {
    applyTheme(application_, theme_ == Theme::System ? system_.theme() : theme_);
    QFont font = fontAtStart_;
    font.setPointSizeF(fontAtStart_.pointSizeF() * textPercent_ / 100.0);
    // Setting an equal font again would still lay out every widget anew.
    if (font != QApplication::font()) QApplication::setFont(font);
    emit changed();
}

}  // namespace desktop
