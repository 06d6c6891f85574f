// SPDX-License-Identifier: MIT
#include "app/desktop/look/system_theme.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDBusVariant>

namespace desktop {

namespace {

const QString portalService = QStringLiteral("org.freedesktop.portal.Desktop");
const QString portalPath = QStringLiteral("/org/freedesktop/portal/desktop");
const QString portalSettings = QStringLiteral("org.freedesktop.portal.Settings");
const QString appearanceGroup = QStringLiteral("org.freedesktop.appearance");

/// The portal wraps some answers twice.
QVariant unwrapped(QVariant value) {
    while (value.canConvert<QDBusVariant>()) value = value.value<QDBusVariant>().variant();
    return value;
}

}  // namespace

SystemTheme::SystemTheme(const QPalette& atStart, QObject* parent) : QObject(parent), isDarkAtStart_(isDark(atStart)) {}

void SystemTheme::listen() {
    QDBusConnection bus = QDBusConnection::sessionBus();
    if (!bus.isConnected()) return;
    bus.connect(portalService, portalPath, portalSettings, "SettingChanged", this,
                SLOT(settingChanged(QString, QString, QDBusVariant)));
    ask("color-scheme");
    ask("contrast");
}

Theme SystemTheme::theme() const {
    if (contrast_ == 1) return Theme::HighContrast;
    if (colourScheme_ == 1) return Theme::Dark;
    if (colourScheme_ == 2) return Theme::Light;
    return isDarkAtStart_ ? Theme::Dark : Theme::Light;
}

void SystemTheme::settingChanged(const QString& group, const QString& key, const QDBusVariant& value) {
    if (group == appearanceGroup) hear(key, value.variant());
}

void SystemTheme::ask(const QString& key) {
    QDBusMessage question = QDBusMessage::createMethodCall(portalService, portalPath, portalSettings, "Read");
    question << appearanceGroup << key;
    auto* watcher = new QDBusPendingCallWatcher(QDBusConnection::sessionBus().asyncCall(question), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, key, watcher] {
        const QDBusPendingReply<QVariant> reply = *watcher;
        if (reply.isValid()) hear(key, reply.value());
        watcher->deleteLater();
    });
}

void SystemTheme::hear(const QString& key, const QVariant& value) {
    const Theme before = theme();
    if (key == "color-scheme") colourScheme_ = unwrapped(value).toUInt();
    if (key == "contrast") contrast_ = unwrapped(value).toUInt();
    if (theme() != before) emit themeChanged();
}

}  // namespace desktop
