// SPDX-License-Identifier: MIT
#include "app/report/allocation_sheet.h"

#include <QCoreApplication>
#include <algorithm>
#include <cstddef>

#include "app/plot/number_text.h"
#include "app/report/caution_words.h"
#include "app/report/sheet_words.h"
#include "core/batch/licence.h"
#include "core/mixing/cautions_in_place.h"

namespace report {
namespace {

struct AllocationWords {
    Q_DECLARE_TR_FUNCTIONS(AllocationSheet)
};

constexpr std::size_t kAcross = 3;  // cuttings side by side, read downwards

QString armName(const AllocationPlan& plan, int arm) {
    return arm >= 0 && arm < plan.arms.size() ? plan.arms[arm]
                                              : AllocationWords::tr("arm %1").arg(plot::countText(arm + 1));
}

Table perArm(const AllocationPlan& plan) {
    Table table{.title = {},
                .headings = {AllocationWords::tr("Arm"), AllocationWords::tr("cuttings")},
                .aligned = {Align::Left, Align::Right},
                .rows = {},
                .mayBeShortened = false,
                .plantColumn = -1};
    for (std::size_t arm = 0; arm < plan.allocation.perArm.size(); ++arm)
        table.rows.push_back({armName(plan, static_cast<int>(arm)), plot::countText(plan.allocation.perArm[arm])});
    return table;
}

Table cuttingByCutting(const AllocationPlan& plan) {
    const std::vector<int>& arms = plan.allocation.armOfCutting;
    const std::size_t rows = (arms.size() + kAcross - 1) / kAcross;
    Table table;
    for (std::size_t column = 0; column < kAcross; ++column) {
        table.headings << AllocationWords::tr("cutting") << AllocationWords::tr("goes to")
                       << AllocationWords::tr("done");
        table.aligned.insert(table.aligned.end(), {Align::Right, Align::Left, Align::Left});
    }
    for (std::size_t row = 0; row < rows; ++row) {
        QStringList cells;
        for (std::size_t column = 0; column < kAcross; ++column) {
            const std::size_t cutting = column * rows + row;
            if (cutting < arms.size())
                cells << plot::countText(static_cast<int>(cutting) + 1) << armName(plan, arms[cutting])
                      << QStringLiteral("☐");
            else
                cells << QString() << QString() << QString();
        }
        table.rows.push_back(cells);
    }
    return table;
}

}  // namespace

Sheet allocationSheet(const AllocationPlan& plan, const core::Shelves& shelves, const QDateTime& printedAt) {
    Sheet sheet = sheetFor(shelves.facts, printedAt);
    const int cuttings = static_cast<int>(plan.allocation.armOfCutting.size());
    sheet.title = plan.trial.isEmpty() ? AllocationWords::tr("Which cutting goes where")
                                       : AllocationWords::tr("Which cutting goes where: %1").arg(plan.trial);
    sheet.subtitle = AllocationWords::tr("%1, stuck %2", "number of cuttings, date")
                         .arg(plot::cuttingsText(cuttings), plot::dateText(plan.stuckOn));
    if (!plan.plant.isEmpty()) sheet.blocks.emplace_back(Facts{{{AllocationWords::tr("Plant"), plan.plant, true}}});
    if (!plan.batches.empty())
        if (const std::string licence = core::licenceInWords(plan.batches.front(), shelves); !licence.empty())
            sheet.blocks.emplace_back(Paragraph{QString::fromStdString(licence), Tone::Plain});
    sheet.blocks.emplace_back(Paragraph{
        AllocationWords::tr(
            "Take the cuttings as they come from the knife; the first cut is number 1. Stick each where its line says, "
            "and tick it off. Do not choose: that chance decides is what makes the comparison fair."),
        Tone::Answer});
    sheet.blocks.emplace_back(perArm(plan));
    sheet.blocks.emplace_back(Heading{AllocationWords::tr("Cutting by cutting")});
    sheet.blocks.emplace_back(cuttingByCutting(plan));
    sheet.blocks.emplace_back(Heading{AllocationWords::tr("How this was worked out")});
    sheet.blocks.emplace_back(Paragraph{
        AllocationWords::tr(
            "Drawn by chance with the seed %1; the same seed gives the same list. Arms get equal numbers, and chance "
            "picks who gets what is left over.")
            .arg(QString::number(plan.seed)),
        Tone::Quiet});
    addCautions(sheet, core::cautionsOnSticking(plan.batches, shelves));
    sheet.blocks.emplace_back(SignatureLine{{AllocationWords::tr("Stuck by"), AllocationWords::tr("Date")}});
    return sheet;
}

}  // namespace report
