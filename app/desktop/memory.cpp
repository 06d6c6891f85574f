// SPDX-License-Identifier: MIT
#include "app/desktop/memory.h"

#include <QDir>
#include <QStandardPaths>
#include <algorithm>

namespace desktop {

namespace {

constexpr int recentCount = 10;

QString stateHome() {
    // QStandardPaths learns of the state folder only in Qt 6.7.
    const QString named = qEnvironmentVariable("XDG_STATE_HOME");
    return QDir::isAbsolutePath(named) ? named : QDir::homePath() + "/.local/state";
}

}  // namespace

MemoryFiles memoryFiles() {
    return {.settings =
                QStandardPaths::writableLocation(QStandardPaths::GenericConfigLocation) + "/strikebook/settings.ini",
            .state = stateHome() + "/strikebook/window.ini"};
}

Memory::Memory(const MemoryFiles& files)
    : settings_(files.settings, QSettings::IniFormat), state_(files.state, QSettings::IniFormat) {}

Theme Memory::theme() const {
    return themeFrom(settings_.value("look/theme").toString()).value_or(Theme::System);
}

void Memory::setTheme(Theme theme) {
    settings_.setValue("look/theme", wordFor(theme));
}

int Memory::textPercent() const {
    return std::clamp(settings_.value("look/text_percent", 100).toInt(), 80, 200);
}

void Memory::setTextPercent(int percent) {
    settings_.setValue("look/text_percent", percent);
}

QString Memory::numberFormat() const {
    return settings_.value("look/number_format").toString();
}

void Memory::setNumberFormat(const QString& localeName) {
    settings_.setValue("look/number_format", localeName);
}

QString Memory::grower() const {
    return settings_.value("new_logbook/grower").toString();
}

void Memory::setGrower(const QString& grower) {
    settings_.setValue("new_logbook/grower", grower);
}

QString Memory::choice(const QString& name) const {
    return settings_.value("choices/" + name).toString();
}

void Memory::setChoice(const QString& name, const QString& choice) {
    settings_.setValue("choices/" + name, choice);
}

QStringList Memory::recentLogbooks() const {
    return state_.value("logbooks/recent").toStringList();
}

void Memory::addRecentLogbook(const QString& file) {
    QStringList recent = recentLogbooks();
    recent.removeAll(file);
    recent.prepend(file);
    state_.setValue("logbooks/recent", QStringList(recent.mid(0, recentCount)));
}

QString Memory::lastLogbook() const {
    return state_.value("logbooks/last").toString();
}

void Memory::setLastLogbook(const QString& file) {
    state_.setValue("logbooks/last", file);
}

QByteArray Memory::shape(const QString& name) const {
    return state_.value("shapes/" + name).toByteArray();
}

void Memory::setShape(const QString& name, const QByteArray& shape) {
    state_.setValue("shapes/" + name, shape);
}

}  // namespace desktop
