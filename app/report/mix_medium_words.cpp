// SPDX-License-Identifier: MIT
// Medium by parts, and the holes of a lid.
#include <QCoreApplication>

#include "app/plot/number_text.h"
#include "app/report/drilling_template.h"
#include "app/report/mix_sums.h"
#include "app/report/mix_words.h"

namespace report {

namespace {

struct MixMediumWords {
    Q_DECLARE_TR_FUNCTIONS(MixWords)
};

Table mediumTable() {
    Table table{.title = MixMediumWords::tr("What media hold, in per cent of their volume"),
                .headings = {MixMediumWords::tr("what"), MixMediumWords::tr("per cent"), MixMediumWords::tr("where"),
                             MixMediumWords::tr("source")},
                .aligned = {Align::Left, Align::Left, Align::Left, Align::Left},
                .rows = {},
                .mayBeShortened = true,
                .restColumn = 3};
    for (const core::MediumBand& band : core::mediumBands()) {
        const QString low = plot::amountText(band.low), high = plot::amountText(band.high);
        table.rows.push_back({QString::fromUtf8(band.quantity),
                              low == high ? low : MixMediumWords::tr("%1 to %2").arg(low, high),
                              QString::fromUtf8(band.where), QString::fromUtf8(band.source)});
    }
    return table;
}

}  // namespace

MixAnswer answerOf(const core::MixedMedium& mixed, const core::DisplayUnits& units) {
    MixAnswer answer{
        .kind = core::MixKind::Medium,
        .title = MixMediumWords::tr("Medium, %1 once mixed", "20 L").arg(mixVolumeText(mixed.question.litres, units)),
        .results = {MixMediumWords::tr("As measured it makes %1.").arg(mixVolumeText(mixed.litresAsMeasured, units))},
        .tables = {mediumTable()},
        .notes = mixed.notes,
        .sumsIn = sumsInText(units)};
    for (const core::ComponentAmount& component : mixed.components)
        answer.amounts.push_back({QString::fromStdString(component.component.name), takeText(component.amount, units),
                                  workedOutText(component.amount, units)});
    return answer;
}

MixAnswer answerOf(const core::LidHoles& holes, const core::DisplayUnits& units) {
    const core::LidLayout& better = holes.better();
    MixAnswer answer{
        .kind = {},
        .title =
            MixMediumWords::tr("Collar holes in a lid, %1", "600 × 400 mm").arg(lidSizeText(holes.lid, units.length)),
        .results = {MixMediumWords::tr("%1: the better of the two.", "51 holes of 44 mm in staggered rows")
                        .arg(holesText(holes.lid, better, units.length)),
                    MixMediumWords::tr("In square rows it holds %1, in staggered rows %2.")
                        .arg(plot::countText(holes.square.count()), plot::countText(holes.staggered.count()))},
        .notes = holes.notes};
    if (holes.square.count() == holes.staggered.count())
        answer.results.front() =
            MixMediumWords::tr("%1; staggered rows hold as many.", "50 holes of 44 mm in square rows")
                .arg(holesText(holes.lid, better, units.length));
    if (better.isTurned) answer.results << MixMediumWords::tr("The rows run along the width.");
    return answer;
}

}  // namespace report
