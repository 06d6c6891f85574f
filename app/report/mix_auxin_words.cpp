// SPDX-License-Identifier: MIT
// Hormone for the day.
#include <QCoreApplication>

#include "app/plot/number_text.h"
#include "app/report/mix_words.h"

namespace report {

namespace {

struct MixAuxinWords {
    Q_DECLARE_TR_FUNCTIONS(MixWords)
};

QString strengthText(core::AuxinKind kind, const core::AuxinStrength& strength) {
    return MixAuxinWords::tr("%1 mg/L %2", "3000 mg/L K-IBA")
        .arg(plot::amountText(strength.milligramsPerLitre), QString::fromStdString(core::nameOf(kind, strength.form)));
}

QString millilitresText(double millilitres) {
    return MixAuxinWords::tr("%1 mL").arg(plot::amountText(millilitres));
}

QString percentOf(double percent) {
    return MixAuxinWords::tr("%1 %", "a percentage without a count").arg(plot::amountText(percent));
}

QString becomes(const QString& strength) {
    return MixAuxinWords::tr("As measured it comes to %1.").arg(strength);
}

}  // namespace

Table auxinRangeTable() {
    Table table{.title = MixAuxinWords::tr("Usual strengths. Ways can't be swapped at the same figure: talc does less "
                                           "than a dip. The label comes first."),
                .headings = {MixAuxinWords::tr("wood"), MixAuxinWords::tr("way"),
                             MixAuxinWords::tr("mg/L, in talc mg/kg"), MixAuxinWords::tr("source")},
                .aligned = {Align::Left, Align::Left, Align::Left, Align::Left},
                .rows = {},
                .mayBeShortened = true,
                .restColumn = 3};
    for (const core::AuxinRange& range : core::auxinRanges())
        table.rows.push_back(
            {QString::fromUtf8(range.wood), QString::fromUtf8(range.way),
             MixAuxinWords::tr("%1 to %2").arg(plot::amountText(range.low), plot::amountText(range.high)),
             QString::fromUtf8(range.source)});
    return table;
}

MixAnswer answerOf(const core::WorkingSolution& solution, const core::DisplayUnits&) {
    const core::StockDilution& question = solution.question;
    return {.kind = core::MixKind::Auxin,
            .title = MixAuxinWords::tr("%1 of %2 from a stock of %3", "100 mL, 2000 mg/L IBA, 10000 mg/L IBA")
                         .arg(millilitresText(question.millilitres), strengthText(question.kind, question.wanted),
                              strengthText(question.kind, question.stock)),
            .amounts = {{MixAuxinWords::tr("stock"), takeText(solution.stock), workedOutText(solution.stock)},
                        {question.inAlcohol ? MixAuxinWords::tr("alcohol of the same strength, to thin it with")
                                            : MixAuxinWords::tr("to thin it with"),
                         takeText(solution.diluent), workedOutText(solution.diluent)}},
            .results = {becomes(strengthText(question.kind, solution.asMeasured))},
            .tables = {auxinRangeTable()},
            .notes = solution.notes,
            .sumsIn = {}};
}

MixAnswer answerOf(const core::WeighedPowder& weighed, const core::DisplayUnits&) {
    const core::PowderToWeigh& question = weighed.question;
    return {.kind = core::MixKind::Auxin,
            .title = MixAuxinWords::tr("%1 of %2 from powder", "100 mL, 3000 mg/L IBA")
                         .arg(millilitresText(question.millilitres), strengthText(question.kind, question.wanted)),
            .amounts = {{MixAuxinWords::tr("powder of %1", "K-IBA")
                             .arg(QString::fromStdString(core::nameOf(question.kind, question.powder))),
                         takeText(weighed.powder), workedOutText(weighed.powder)}},
            .results = {becomes(strengthText(question.kind, weighed.asMeasured))},
            .tables = {auxinRangeTable()},
            .notes = weighed.notes,
            .sumsIn = {}};
}

MixAnswer answerOf(const core::ThinnedTalc& thinned, const core::DisplayUnits&) {
    return {.kind = core::MixKind::Auxin,
            .title = MixAuxinWords::tr("%1 g of talc at %2 from %3", "40 g, 0.3 %, 0.8 %")
                         .arg(plot::amountText(thinned.question.grams), percentOf(thinned.question.wantedPercent),
                              percentOf(thinned.question.powderPercent)),
            .amounts = {{MixAuxinWords::tr("powder that is there"), takeText(thinned.powder),
                         workedOutText(thinned.powder)},
                        {MixAuxinWords::tr("plain talc"), takeText(thinned.talc), workedOutText(thinned.talc)}},
            .results = {becomes(percentOf(thinned.percentAsMeasured))},
            .tables = {auxinRangeTable()},
            .notes = thinned.notes,
            .sumsIn = {}};
}

MixAnswer answerOf(const core::DipNeeded& needed, const core::DisplayUnits&) {
    return {.kind = core::MixKind::Auxin,
            .title = MixAuxinWords::tr("Dip for %1", "40 cuttings").arg(plot::cuttingsText(needed.question.cuttings)),
            .amounts = {{MixAuxinWords::tr("to pour out"), takeText(needed.amount), workedOutText(needed.amount)}},
            .results = {MixAuxinWords::tr("As measured there is %1 for each cutting.")
                            .arg(millilitresText(needed.amount.measured / needed.question.cuttings))},
            .tables = {},
            .notes = needed.notes,
            .sumsIn = {}};
}

MixAnswer answerOf(const core::CountedAuxin& counted, const core::DisplayUnits&) {
    const core::AuxinKind kind = counted.question.kind;
    return {.kind = core::MixKind::Auxin,
            .title = MixAuxinWords::tr("%1 counted the other way", "10000 mg/L K-IBA")
                         .arg(strengthText(kind, counted.question.given)),
            .amounts = {},
            .results = {MixAuxinWords::tr("%1 (%2) is %3: the acid is %4 of the potassium salt.")
                            .arg(strengthText(kind, counted.question.given), percentOf(counted.percent),
                                 strengthText(kind, counted.same),
                                 QString::fromStdString(core::briefText(core::acidEquivalent(kind))))},
            .tables = {auxinRangeTable()},
            .notes = counted.notes,
            .sumsIn = {}};
}

}  // namespace report
