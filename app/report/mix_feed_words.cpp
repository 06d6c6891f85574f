// SPDX-License-Identifier: MIT
// Nutrient, what a reading tells, elements, and the solution in the tub.
#include <QCoreApplication>
#include <cmath>

#include "app/plot/number_text.h"
#include "app/plot/quantity_text.h"
#include "app/report/mix_sums.h"
#include "app/report/mix_words.h"
#include "core/mixing/feeding_bands.h"

namespace report {

namespace {

struct MixFeedWords {
    Q_DECLARE_TR_FUNCTIONS(MixWords)
};

std::vector<MixAmount> amountsOf(const std::vector<core::PartDose>& parts) {
    std::vector<MixAmount> amounts;
    for (const core::PartDose& part : parts)
        amounts.push_back({QString::fromStdString(part.part.name), takeText(part.amount), workedOutText(part.amount)});
    return amounts;
}

QString asMeasuredText(double low, double high, const core::DisplayUnits& units) {
    const QString lowText = mixEcText(low, units), highText = mixEcText(high, units);
    if (lowText == highText) return MixFeedWords::tr("As measured it comes to EC %1.").arg(highText);
    return MixFeedWords::tr("As measured it comes to EC %1 to %2.").arg(lowText, highText);
}

QString stagesText(const std::vector<core::FeedingBand>& bands) {
    if (bands.empty()) return MixFeedWords::tr("No stage of the table below is fed at that strength.");
    QStringList stages;
    for (const core::FeedingBand& band : bands) stages << QString::fromUtf8(band.stage);
    return MixFeedWords::tr("So strong are fed: %1.").arg(stages.join(MixFeedWords::tr(", ", "between stages")));
}

/// "1.71 g/L", or as much in a gallon.
QString doseText(double perLitre, core::AmountUnit unit, const core::DisplayUnits& units) {
    if (std::isinf(perLitre)) return plot::decimalText(perLitre, 0);
    return MixFeedWords::tr("%1 %2/%3", "1.71 g/L")
        .arg(plot::amountText(perLitre * core::storedVolume(1, units.volume)), QString::fromUtf8(core::unitOf(unit)),
             QString::fromUtf8(core::wordFor(units.volume)));
}

QString learntPartText(const core::LearntPart& part, const core::DisplayUnits& units) {
    return MixFeedWords::tr("%1: full dose %2; the meter's step leaves %3 to %4 open.")
        .arg(QString::fromStdString(part.name), doseText(*part.fullPerLitre, part.unit, units),
             doseText(part.fullLow, part.unit, units), doseText(part.fullHigh, part.unit, units));
}

QString amountIn(const core::KnownSolution& known, const std::string& symbol) {
    for (const core::ElementAmount& element : known.elements)
        if (element.symbol == symbol) return plot::amountText(element.milligramsPerLitre);
    return {};
}

Table elementTable(const core::SolutionElements& solution) {
    Table table{.title = MixFeedWords::tr("Beside solutions of the literature, which are for plants with roots"),
                .headings = {MixFeedWords::tr("element"), MixFeedWords::tr("mg/L")},
                .aligned = {Align::Left, Align::Right},
                .rows = {}};
    for (const core::KnownSolution& known : core::knownSolutions()) {
        table.headings << QString::fromUtf8(known.name);
        table.aligned.push_back(Align::Right);
    }
    for (const core::ElementAmount& element : solution.elements) {
        QStringList row{QString::fromStdString(element.symbol), plot::amountText(element.milligramsPerLitre)};
        for (const core::KnownSolution& known : core::knownSolutions()) row << amountIn(known, element.symbol);
        table.rows.push_back(row);
    }
    return table;
}

Table knownSolutionTable() {
    Table table{.title = {},
                .headings = {MixFeedWords::tr("solution"), MixFeedWords::tr("source")},
                .aligned = {Align::Left, Align::Left},
                .rows = {},
                .mayBeShortened = true,
                .restColumn = 1};
    for (const core::KnownSolution& known : core::knownSolutions())
        table.rows.push_back({QString::fromUtf8(known.name), QString::fromUtf8(known.source)});
    return table;
}

}  // namespace

QString sumsInText(const core::DisplayUnits& units) {
    QStringList same;
    if (units.volume != core::VolumeUnit::Litres)
        same << MixFeedWords::tr("1 %1 is %2 L", "1 gal is 3.785 L")
                    .arg(QString::fromUtf8(core::wordFor(units.volume)),
                         plot::decimalText(core::storedVolume(1, units.volume), 3));
    if (units.ec != core::EcUnit::MilliSiemens)
        same << MixFeedWords::tr("1 mS/cm is %1", "1 mS/cm is 500 ppm (500 scale)").arg(mixEcText(1, units));
    if (same.isEmpty()) return {};
    return MixFeedWords::tr("The sums and what is said of them are in L and mS/cm: %1.")
        .arg(same.join(MixFeedWords::tr(", ", "between equal amounts")));
}

Table stageTable(const core::DisplayUnits& units) {
    Table table{.title = MixFeedWords::tr("How strong each stage is fed"),
                .headings = {MixFeedWords::tr("stage"), MixFeedWords::tr("EC"), MixFeedWords::tr("source")},
                .aligned = {Align::Left, Align::Left, Align::Left},
                .rows = {},
                .mayBeShortened = true,
                .restColumn = 2};
    for (const core::FeedingBand& band : core::feedingBands())
        table.rows.push_back({QString::fromUtf8(band.stage),
                              plot::quantityRangeText(core::Quantity::SolutionEc, band.low, band.high, units),
                              QString::fromUtf8(band.source)});
    return table;
}

MixAnswer answerOf(const core::NutrientDose& dose, const core::DisplayUnits& units) {
    return {.kind = core::MixKind::Nutrient,
            .title = MixFeedWords::tr("Nutrient for %1 at EC %2", "20 L, 1 mS/cm")
                         .arg(mixVolumeText(dose.question.litres, units), mixEcText(dose.question.targetEc, units)),
            .amounts = amountsOf(dose.parts),
            .results = {asMeasuredText(dose.ecLow, dose.ecHigh, units), stagesText(dose.bands)},
            .tables = {stageTable(units)},
            .notes = dose.notes,
            .sumsIn = sumsInText(units),
            .litres = dose.question.litres};
}

MixAnswer answerOf(const core::LearntNutrient& learnt, const core::DisplayUnits& units) {
    const core::LearntPart& first = learnt.parts.front();
    MixAnswer answer{
        .kind = core::MixKind::Nutrient,
        .title = MixFeedWords::tr("What a reading of EC %1 in %2 tells", "1 mS/cm, 20 L")
                     .arg(mixEcText(learnt.question.readEc, units), mixVolumeText(learnt.question.litres, units)),
        .notes = learnt.notes,
        .sumsIn = sumsInText(units)};
    for (const core::LearntPart& part : learnt.parts)
        if (part.fullPerLitre) answer.results << learntPartText(part, units);
    const QString one = doseText(1 / core::storedVolume(1, units.volume), first.unit, units);
    answer.results << MixFeedWords::tr("%1 of %2, and of the others in proportion, adds %3.", "1 g/L, part, 1.4 mS/cm")
                          .arg(one, QString::fromStdString(first.name),
                               mixEcText(learnt.ecPerUnit / core::storedVolume(1, units.volume), units));
    return answer;
}

MixAnswer answerOf(const core::SolutionElements& solution, const core::DisplayUnits& units) {
    MixAnswer answer{.kind = core::MixKind::Label,
                     .title = MixFeedWords::tr("What is in the solution"),
                     .tables = {elementTable(solution), knownSolutionTable(), stageTable(units)},
                     .notes = solution.notes,
                     .sumsIn = sumsInText(units)};
    QStringList amounts;
    for (const core::ElementAmount& element : solution.elements)
        amounts << MixFeedWords::tr("%1 %2", "N 25")
                       .arg(QString::fromStdString(element.symbol), plot::amountText(element.milligramsPerLitre));
    answer.results << MixFeedWords::tr("In mg/L: %1.").arg(amounts.join(MixFeedWords::tr(", ", "between elements")));
    return answer;
}

MixAnswer answerOf(const core::DilutedTub& tub, const core::DisplayUnits& units) {
    return {.kind = core::MixKind::Tub,
            .title = MixFeedWords::tr("Make %1 weaker, from EC %2 to %3", "20 L, 1.4 mS/cm, 1 mS/cm")
                         .arg(mixVolumeText(tub.question.litres, units), mixEcText(tub.question.ec, units),
                              mixEcText(tub.question.targetEc, units)),
            .amounts = {{MixFeedWords::tr("water to add"), takeText(tub.add, units), workedOutText(tub.add, units)},
                        {MixFeedWords::tr("or to take out, then fill up with water"), takeText(tub.replace, units),
                         workedOutText(tub.replace, units)}},
            .results = {MixFeedWords::tr("Added to, it comes to EC %1; taken out and filled up, to EC %2.")
                            .arg(mixEcText(tub.ecAfterAdding, units), mixEcText(tub.ecAfterReplacing, units))},
            .notes = tub.notes,
            .sumsIn = sumsInText(units),
            .litres = tub.add.measured};
}

MixAnswer answerOf(const core::ToppedUpTub& tub, const core::DisplayUnits& units) {
    MixAnswer answer{
        .kind = core::MixKind::Tub,
        .title = MixFeedWords::tr("Top up from %1 to %2 at EC %3", "10 L, 20 L, 1 mS/cm")
                     .arg(mixVolumeText(tub.question.litres, units), mixVolumeText(tub.question.fullLitres, units),
                          mixEcText(tub.question.feed.targetEc, units)),
        .amounts = amountsOf(tub.parts),
        .results =
            {MixFeedWords::tr("Filled up with water alone it reads EC %1.").arg(mixEcText(tub.ecWithWaterAlone, units)),
             asMeasuredText(tub.ecLow, tub.ecHigh, units)},
        .tables = {stageTable(units)},
        .notes = tub.notes,
        .sumsIn = sumsInText(units),
        .litres = tub.water.measured};
    answer.amounts.insert(answer.amounts.begin(),
                          {MixFeedWords::tr("water"), takeText(tub.water, units), workedOutText(tub.water, units)});
    return answer;
}

}  // namespace report
