// SPDX-License-Identifier: MIT
#include "app/desktop/look/look.h"

#include <QApplication>
#include <QStyle>
#include <array>

#include "app/desktop/look/drawn_icon.h"
#include "app/desktop/look/edged_style.h"

namespace desktop {

namespace {

struct Shades {
    QColor window, base, alternate, text, button, quiet, highlight, highlightedText, link, tip, disabled;
    QColor light, mid, dark, shadow;
};

const Shades& lightShades() {
    static const Shades shades{.window = 0xF3F4F0u,
                               .base = 0xFFFFFFu,
                               .alternate = 0xF6F8F4u,
                               .text = 0x1B1F1Cu,
                               .button = 0xEAECE7u,
                               .quiet = 0x55605Au,
                               .highlight = 0x1F6FA8u,
                               .highlightedText = 0xFFFFFFu,
                               .link = 0x1A6196u,
                               .tip = 0xFDFBEFu,
                               .disabled = 0x767E79u,
                               .light = 0xFFFFFFu,
                               .mid = 0xC3C9C3u,
                               .dark = 0x8F9891u,
                               .shadow = 0x6B736Du};
    return shades;
}

const Shades& darkShades() {
    static const Shades shades{.window = 0x202422u,
                               .base = 0x17191Bu,
                               .alternate = 0x1D2022u,
                               .text = 0xE8EBE7u,
                               .button = 0x323734u,
                               .quiet = 0xAEB7B1u,
                               .highlight = 0x2678B4u,
                               .highlightedText = 0xFFFFFFu,
                               .link = 0x7CC0EAu,
                               .tip = 0x33382Fu,
                               .disabled = 0x858D88u,
                               .light = 0x4A504Cu,
                               .mid = 0x3A3F3Cu,
                               .dark = 0x121412u,
                               .shadow = 0x0A0B0Au};
    return shades;
}

const Shades& contrastShades() {
    static const Shades shades{.window = 0x000000u,
                               .base = 0x000000u,
                               .alternate = 0x101010u,
                               .text = 0xFFFFFFu,
                               .button = 0x202020u,
                               .quiet = 0xF0F0F0u,
                               .highlight = 0xFFE000u,
                               .highlightedText = 0x000000u,
                               .link = 0x9CDCFFu,
                               .tip = 0x202020u,
                               .disabled = 0xB0B0B0u,
                               .light = 0xFFFFFFu,
                               .mid = 0x404040u,
                               .dark = 0x808080u,
                               .shadow = 0xFFFFFFu};
    return shades;
}

QPalette paletteFrom(const Shades& shades) {
    QPalette palette;
    const std::array roles = {std::pair{QPalette::Window, shades.window},
                              std::pair{QPalette::WindowText, shades.text},
                              std::pair{QPalette::Base, shades.base},
                              std::pair{QPalette::AlternateBase, shades.alternate},
                              std::pair{QPalette::Text, shades.text},
                              std::pair{QPalette::BrightText, shades.text},
                              std::pair{QPalette::Button, shades.button},
                              std::pair{QPalette::ButtonText, shades.text},
                              std::pair{QPalette::PlaceholderText, shades.quiet},
                              std::pair{QPalette::Highlight, shades.highlight},
                              std::pair{QPalette::HighlightedText, shades.highlightedText},
                              std::pair{QPalette::Link, shades.link},
                              std::pair{QPalette::LinkVisited, shades.link},
                              std::pair{QPalette::ToolTipBase, shades.tip},
                              std::pair{QPalette::ToolTipText, shades.text},
                              std::pair{QPalette::Light, shades.light},
                              std::pair{QPalette::Midlight, shades.button},
                              std::pair{QPalette::Mid, shades.mid},
                              std::pair{QPalette::Dark, shades.dark},
                              std::pair{QPalette::Shadow, shades.shadow}};
    for (const auto& [role, colour] : roles) palette.setColor(QPalette::All, role, colour);
    for (const QPalette::ColorRole role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText})
        palette.setColor(QPalette::Disabled, role, shades.disabled);
    palette.setColor(QPalette::Disabled, QPalette::Highlight, shades.mid);
    palette.setColor(QPalette::Disabled, QPalette::HighlightedText, shades.text);
    return palette;
}

}  // namespace

std::optional<Theme> themeFrom(const QString& word) {
    for (const Theme theme : {Theme::System, Theme::Light, Theme::Dark, Theme::HighContrast})
        if (wordFor(theme) == word) return theme;
    return {};
}

QString wordFor(Theme theme) {
    switch (theme) {
        case Theme::System:
            return "system";
        case Theme::Light:
            return "light";
        case Theme::Dark:
            return "dark";
        case Theme::HighContrast:
            return "contrast";
    }
    return {};
}

QPalette paletteFor(Theme theme) {
    switch (theme) {
        case Theme::Dark:
            return paletteFrom(darkShades());
        case Theme::HighContrast:
            return paletteFrom(contrastShades());
        case Theme::Light:
        case Theme::System:
            break;
    }
    return paletteFrom(lightShades());
}

void applyTheme(QApplication& application, Theme theme) {
    // Making the style anew at each change would cost a second of flicker on a slow machine.
    if (!qobject_cast<EdgedStyle*>(application.style())) application.setStyle(new EdgedStyle);
    application.setPalette(paletteFor(theme));
}

bool isDark(const QPalette& palette) {
    return palette.color(QPalette::Window).lightness() < palette.color(QPalette::WindowText).lightness();
}

bool isHighContrast(const QPalette& palette) {
    return palette.color(QPalette::Window) == Qt::black && palette.color(QPalette::WindowText) == Qt::white;
}

QColor faultColour(const QPalette& palette) {
    return isDark(palette) ? QColor(0xFFA294u) : QColor(0xA8281Eu);
}

QColor quietColour(const QPalette& palette) {
    return palette.color(QPalette::PlaceholderText);
}

QColor accentColour(const QPalette& palette) {
    return isDark(palette) ? QColor(0xFFBE70u) : QColor(0x9A4400u);
}

QColor edgeColour(const QPalette& palette) {
    if (isHighContrast(palette)) return Qt::white;
    return isDark(palette) ? QColor(0x868F89u) : QColor(0x7B847Eu);
}

QColor focusColour(const QPalette& palette) {
    if (isHighContrast(palette)) return palette.color(QPalette::Highlight);
    return isDark(palette) ? QColor(0x7CC0EAu) : QColor(0x1F6FA8u);
}

QColor noteBackground(const QPalette& palette) {
    if (isHighContrast(palette)) return 0x202020u;
    return isDark(palette) ? QColor(0x263845u) : QColor(0xDFEAF2u);
}

QIcon icon(const QString& name) {
    return QIcon(new DrawnIcon(":/icons/" + name + ".svg"));
}

}  // namespace desktop
