// SPDX-License-Identifier: MIT
// Acid and base, from alkalinity and by titration.
#include <QCoreApplication>

#include "app/plot/number_text.h"
#include "app/report/mix_sums.h"
#include "app/report/mix_words.h"

namespace report {

namespace {

struct MixPhWords {
    Q_DECLARE_TR_FUNCTIONS(MixWords)
};

QString phText(double ph) {
    return plot::decimalText(ph, 1);
}

/// "first dose, 1.34 meq/L"
MixAmount amountOf(const QString& dose, const core::PhDose& amount) {
    return {MixPhWords::tr("%1, %2 meq/L", "which dose, how much").arg(dose, plot::amountText(amount.milliequivalents)),
            takeText(amount.amount), workedOutText(amount.amount)};
}

}  // namespace

MixAnswer answerOf(const core::PhShift& shift, const core::DisplayUnits& units) {
    return {.kind = core::MixKind::Ph,
            .title = MixPhWords::tr("%1 for %2 from pH %3 to %4", "phosphoric acid 75 %, 20 L, 7.5, 6")
                         .arg(QString::fromStdString(core::nameOf(shift.question.reagent)),
                              mixVolumeText(shift.question.litres, units), phText(shift.question.fromPh),
                              phText(shift.question.toPh)),
            .amounts = {{MixPhWords::tr("start with"), takeText(shift.start), workedOutText(shift.start)},
                        amountOf(MixPhWords::tr("first dose"), shift.first),
                        amountOf(MixPhWords::tr("ceiling"), shift.ceiling),
                        amountOf(MixPhWords::tr("closed vessel"), shift.closed),
                        amountOf(MixPhWords::tr("bubbled tub"), shift.bubbled)},
            .results = {MixPhWords::tr(
                            "The first dose as measured ends at pH %1, and bubbled at pH %2. Untreated, bubbled water "
                            "comes to pH %3.")
                            .arg(phText(shift.phOfFirst), phText(shift.phOfFirstBubbled), phText(shift.phUntreated))},
            .notes = shift.notes,
            .sumsIn = sumsInText(units)};
}

MixAnswer answerOf(const core::TitratedDose& dose, const core::DisplayUnits& units) {
    return {.kind = core::MixKind::Titration,
            .title = MixPhWords::tr("pH %1 for %2, by titration", "6.5, 20 L")
                         .arg(phText(dose.question.toPh), mixVolumeText(dose.question.litres, units)),
            .amounts = {{MixPhWords::tr("start with"), takeText(dose.start), workedOutText(dose.start)},
                        {MixPhWords::tr("in all"), takeText(dose.amount), workedOutText(dose.amount)}},
            .results = {MixPhWords::tr("In the jug it took %1 mL.").arg(plot::amountText(dose.sampleMillilitres))},
            .notes = dose.notes,
            .sumsIn = sumsInText(units)};
}

}  // namespace report
