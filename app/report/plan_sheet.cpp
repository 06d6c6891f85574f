// SPDX-License-Identifier: MIT
#include "app/report/plan_sheet.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/plot/number_text.h"
#include "app/report/plan_words.h"
#include "app/report/sheet_words.h"

namespace report {

namespace {

constexpr double curveHeight = 52;  // mm

struct PlanSheetWords {
    Q_DECLARE_TR_FUNCTIONS(PlanSheet)
};

Table overview(std::span<const core::PlanAnswer> answers, const core::WhatFits& fits) {
    Table table;
    table.headings = {PlanSheetWords::tr("Plant"),     PlanSheetWords::tr("Method"), PlanSheetWords::tr("Wanted"),
                      PlanSheetWords::tr("Needed by"), PlanSheetWords::tr("Stick"),  PlanSheetWords::tr("Stick by"),
                      PlanSheetWords::tr("Room")};
    table.aligned = {Align::Left, Align::Left, Align::Right, Align::Left, Align::Right, Align::Left, Align::Left};
    table.plantColumn = 0;
    table.breaksPlantNames = true;
    table.restColumn = 6;
    for (std::size_t i = 0; i < answers.size(); ++i) {
        const core::PlanAnswer& answer = answers[i];
        const auto fit = std::ranges::find(fits.inOrder, i, &core::PlanFit::plan);
        const bool hasNumber = answer.howMany && answer.howMany->stick;
        const bool hasDay = answer.when && answer.when->has_value();
        table.rows.push_back({QString::fromStdString(answer.records.plantName),
                              answer.records.methodName.empty() ? PlanSheetWords::tr("not decided")
                                                                : QString::fromStdString(answer.records.methodName),
                              plot::countText(answer.plan.wanted),
                              answer.plan.needBy ? plot::dateText(*answer.plan.needBy) : PlanSheetWords::tr("any day"),
                              hasNumber ? plot::countText(*answer.howMany->stick) : PlanSheetWords::tr("too many"),
                              hasDay ? plot::dateText((*answer.when)->stickBy) : PlanSheetWords::tr("any day"),
                              fit == fits.inOrder.end() ? QString()
                              : fit->fits               ? PlanSheetWords::tr("fits")
                                                        : PlanSheetWords::tr("does not fit")});
    }
    return table;
}

void addPlan(Sheet& sheet, const core::PlanAnswer& answer, const core::PlanFit* fit) {
    const PlanWords words = planWords(answer, fit);
    sheet.blocks.emplace_back(Heading{QString::fromStdString(answer.records.plantName)});
    sheet.blocks.emplace_back(Paragraph{words.answer, Tone::Answer});
    if (!words.when.isEmpty()) sheet.blocks.emplace_back(Paragraph{words.when, Tone::Plain});
    for (const std::string& caution : words.cautions)
        sheet.blocks.emplace_back(Paragraph{QString::fromStdString(caution), Tone::Caution});
    for (const QString& day : words.days) sheet.blocks.emplace_back(Paragraph{day, Tone::Plain});
    sheet.blocks.emplace_back(Picture{.figure = planCurve(answer), .heightInMillimetres = curveHeight});
    if (!words.restsOn.isEmpty()) sheet.blocks.emplace_back(Paragraph{words.restsOn.join(u' '), Tone::Quiet});
    if (!answer.plan.note.empty())
        sheet.blocks.emplace_back(Paragraph{QString::fromStdString(answer.plan.note), Tone::Plain});
}

}  // namespace

Sheet planSheet(std::span<const core::PlanAnswer> answers, const core::WhatFits& fits, core::Date today,
                const core::Shelves& shelves, const QDateTime& printedAt) {
    Sheet sheet = sheetFor(shelves.facts, printedAt);
    sheet.title = PlanSheetWords::tr("Plan, %1", "date").arg(plot::dateText(today));
    sheet.subtitle = PlanSheetWords::tr("What to stick first stands first");
    if (answers.empty()) {
        sheet.blocks.emplace_back(Paragraph{PlanSheetWords::tr("Nothing is planned."), Tone::Answer});
        return sheet;
    }
    if (!fits.inWords.empty()) sheet.blocks.emplace_back(Paragraph{QString::fromStdString(fits.inWords), Tone::Answer});
    sheet.blocks.emplace_back(overview(answers, fits));
    for (std::size_t i = 0; i < answers.size(); ++i) {
        const auto fit = std::ranges::find(fits.inOrder, i, &core::PlanFit::plan);
        addPlan(sheet, answers[i], fit == fits.inOrder.end() ? nullptr : &*fit);
    }
    return sheet;
}

}  // namespace report
