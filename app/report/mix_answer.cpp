// SPDX-License-Identifier: MIT
#include "app/report/mix_answer.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"
#include "app/plot/quantity_text.h"

namespace report {

namespace {

struct MixAnswerWords {
    Q_DECLARE_TR_FUNCTIONS(MixAnswer)
};

/// The same in the grower's unit: nothing but litres has another.
core::MeasuredAmount shownAmount(core::MeasuredAmount amount, const core::DisplayUnits& units) {
    if (amount.unit != core::AmountUnit::Litres) return amount;
    for (double* figure : {&amount.exact, &amount.measured, &amount.step})
        *figure = core::shownVolume(*figure, units.volume);
    return amount;
}

QString shownUnit(core::AmountUnit unit, const core::DisplayUnits& units) {
    return unit == core::AmountUnit::Litres ? QString::fromUtf8(core::wordFor(units.volume))
                                            : QString::fromUtf8(core::unitOf(unit));
}

QString figureWithUnit(const QString& figure, const QString& unit) {
    return MixAnswerWords::tr("%1 %2", "7.0 g").arg(figure, unit);
}

}  // namespace

QString takeText(const core::MeasuredAmount& amount, const core::DisplayUnits& units) {
    const core::MeasuredAmount shown = shownAmount(amount, units);
    return figureWithUnit(plot::decimalText(shown.measured, core::decimalsOf(shown)), shownUnit(amount.unit, units));
}

QString workedOutText(const core::MeasuredAmount& amount, const core::DisplayUnits& units) {
    return figureWithUnit(plot::amountText(shownAmount(amount, units).exact), shownUnit(amount.unit, units));
}

QString mixEcText(double ec, const core::DisplayUnits& units) {
    constexpr auto quantity = core::Quantity::SolutionEc;
    return figureWithUnit(plot::amountText(core::shownValue(ec, quantity, units)), plot::quantityUnit(quantity, units));
}

QString mixVolumeText(double litres, const core::DisplayUnits& units) {
    return figureWithUnit(plot::amountText(core::shownVolume(litres, units.volume)),
                          QString::fromUtf8(core::wordFor(units.volume)));
}

QStringList remarksOf(const MixAnswer& answer) {
    QStringList remarks;
    for (const std::string& remark : answer.notes.remarks) remarks << QString::fromStdString(remark);
    return remarks;
}

QStringList cautionsOf(const MixAnswer& answer) {
    QStringList cautions;
    for (const core::CautionTopic topic : answer.notes.cautions) {
        const core::TradeCaution& caution = core::tradeCaution(topic);
        cautions << MixAnswerWords::tr("%1: %2 (%3)", "a caution's name, its words, its source")
                        .arg(QString::fromUtf8(caution.name), QString::fromUtf8(caution.text),
                             QString::fromUtf8(caution.source));
    }
    return cautions;
}

QStringList workingsOf(const MixAnswer& answer) {
    QStringList workings;
    for (const core::Working& working : answer.notes.workings)
        workings << QString::fromStdString(working.formula) + u'\n' + QString::fromStdString(working.withNumbers) +
                        u'\n' + MixAnswerWords::tr("Source: %1").arg(QString::fromStdString(working.source));
    return workings;
}

core::KeptMix keptMix(const MixAnswer& answer) {
    core::KeptMix mix{.kind = *answer.kind, .title = answer.title.toStdString()};
    const auto addLine = [](std::string& lines, const std::string& line) {
        lines += (lines.empty() ? "" : "\n") + line;
    };
    for (const MixAmount& amount : answer.amounts)
        addLine(mix.amounts, MixAnswerWords::tr("%1: %2 (%3 worked out)", "what, as measured, as worked out")
                                 .arg(amount.what, amount.take, amount.workedOut)
                                 .toStdString());
    for (const QString& result : answer.results) addLine(mix.amounts, result.toStdString());
    for (const core::Working& working : answer.notes.workings)
        addLine(mix.workings, working.formula + ": " + working.withNumbers + " (" + working.source + ')');
    for (const core::CautionTopic topic : answer.notes.cautions)
        addLine(mix.cautions, std::string(core::tradeCaution(topic).name));
    return mix;
}

}  // namespace report
