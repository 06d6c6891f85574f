// SPDX-License-Identifier: MIT
// What the desktop wants: light, dark or high contrast. Asks the settings portal (org.freedesktop.appearance) without
// waiting for it; until it answers, and where there is none, the palette that the platform started with decides.
#pragma once

#include <QObject>
#include <QPalette>
#include <QVariant>

#include "app/desktop/look/look.h"

class QDBusVariant;

namespace desktop {

class SystemTheme : public QObject {
    Q_OBJECT

  public:
    /// `atStart` is the application's palette before anyone changed it.
    explicit SystemTheme(const QPalette& atStart, QObject* parent = nullptr);

    /// Begins to listen; not called in tests and for pictures, which must not depend on the desktop they run on.
    void listen();
    [[nodiscard]] Theme theme() const;

  signals:
    void themeChanged();

  private slots:
    void settingChanged(const QString& group, const QString& key, const QDBusVariant& value);

  private:
    void ask(const QString& key);
    void hear(const QString& key, const QVariant& value);

    bool isDarkAtStart_;
    uint colourScheme_{};  // 0 no wish, 1 dark, 2 light
    uint contrast_{};      // 1 high
};

}  // namespace desktop
