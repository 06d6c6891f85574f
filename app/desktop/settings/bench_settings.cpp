// SPDX-License-Identifier: MIT
// The part of LogbookSettings about the bench itself: how high it lies, from which warmth on degree-days count, how often it may cry wolf.
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <cmath>

#include "app/desktop/settings/logbook_settings.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "app/plot/quantity_text.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

// As core/shelf_rules.cpp has them.
constexpr double lowestBench = -430, highestBench = 6000;  // m
constexpr double lowestBase = -10, highestBase = 40;       // C
constexpr double fewestBatches = 2, mostBatches = 10'000;  // 1 in so many

QString altitudeField() {
    return QStringLiteral("Altitude in m");
}
QString baseField() {
    return QStringLiteral("Base of degree-days in C");
}
QString alarmField() {
    return QStringLiteral("Rate of false alarms");
}

double shownTemperature(double celsius, const core::LogbookFacts& facts) {
    return core::shownValue(celsius, core::Quantity::AirTemperature, facts.units);
}

}  // namespace

void LogbookSettings::addBench(QFormLayout& form) {
    const auto lineFor = [&](const char* name) {
        auto* edit = new QLineEdit;
        edit->setObjectName(QString::fromLatin1(name));
        edit->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
        edit->setMaxLength(20);
        edit->setMaximumWidth(fontMetrics().horizontalAdvance(QStringLiteral("0000000000")) +
                              2 * fontMetrics().height());
        return edit;
    };
    altitude_ = lineFor("settingsAltitude");
    degreeDayBase_ = lineFor("settingsDegreeDayBase");
    falseAlarms_ = lineFor("settingsFalseAlarms");
    addRow(form, tr("Hei&ght of the bench"), altitudeField(), altitude_,
           tr("m above the sea: water holds less oxygen higher up"));
    addRow(form, tr("&Degree-days count above"), baseField(), degreeDayBase_, tr("\u00b0C"));
    addRow(form, tr("The &bench may flag by chance"), alarmField(), falseAlarms_,
           tr("one batch in so many: fewer false alarms also mean that it flags later"));
    takeFrom(*altitude_, [this] {
        takeFigure(altitudeField(), tr("The height of the bench"), *altitude_, lowestBench, highestBench,
                   [](core::LogbookFacts& facts, double metres) { facts.altitudeMetres = metres; });
    });
    takeFrom(*degreeDayBase_, [this] {
        const core::LogbookFacts& now = context_.workspace.shelves().facts;
        takeFigure(baseField(), tr("The base of degree-days"), *degreeDayBase_, shownTemperature(lowestBase, now),
                   shownTemperature(highestBase, now), [](core::LogbookFacts& facts, double shown) {
                       facts.degreeDayBase = core::storedValue(shown, core::Quantity::AirTemperature, facts.units);
                   });
    });
    takeFrom(*falseAlarms_, [this] {
        takeFigure(alarmField(), tr("One batch in so many"), *falseAlarms_, fewestBatches, mostBatches,
                   [](core::LogbookFacts& facts, double batches) { facts.falseAlarmRate = 1 / batches; });
    });
}

void LogbookSettings::takeFigure(const QString& field, const QString& name, const QLineEdit& edit, double low,
                                 double high, const std::function<void(core::LogbookFacts&, double)>& set) {
    const auto typed = core::numberFrom(edit.text().toStdString());
    if (!typed || *typed < low || *typed > high)
        return refuse(field,
                      tr("%1 is \u201c%2\u201d; a number from %3 to %4 is allowed.")
                          .arg(name, edit.text().trimmed(), plot::decimalText(low, 0), plot::decimalText(high, 0)));
    change(field, [&](core::LogbookFacts& facts) { set(facts, *typed); });
}

void LogbookSettings::showBench(const core::LogbookFacts& facts) {
    constexpr double finest = 10;
    const auto rounded = [](double value) { return plot::amountText(std::round(value * finest) / finest); };
    show(*altitude_, altitudeField(), plot::decimalText(facts.altitudeMetres, 0));
    show(*degreeDayBase_, baseField(), rounded(shownTemperature(facts.degreeDayBase, facts)));
    show(*falseAlarms_, alarmField(), plot::decimalText(1 / facts.falseAlarmRate, 0));
    findChild<QLabel*>(QStringLiteral("settingsDegreeDayBaseAfter"))
        ->setText(plot::quantityUnit(core::Quantity::AirTemperature, facts.units));
}

}  // namespace desktop
