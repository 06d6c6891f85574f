// SPDX-License-Identifier: MIT
#include "app/desktop/losses/losses_choices.h"

#include <QCoreApplication>
#include <unordered_set>

namespace desktop {

namespace {

struct LossesChoiceWords {
    Q_DECLARE_TR_FUNCTIONS(LossesChoices)
};

}  // namespace

std::vector<LossesSpanChoice> lossesSpans(core::Date today) {
    return {{LossesSpan::ThisSeason,
             LossesChoiceWords::tr("this season (%1)", "a year").arg(static_cast<int>(today.year()))},
            {LossesSpan::LastYear, LossesChoiceWords::tr("last 12 months")},
            {LossesSpan::All, LossesChoiceWords::tr("all records")}};
}

std::optional<core::Date> firstDayOf(LossesSpan span, core::Date today) {
    switch (span) {
        case LossesSpan::ThisSeason:
            return core::Date{today.year(), std::chrono::January, std::chrono::day{1}};
        case LossesSpan::LastYear:
            return core::addDays(today, -365);
        case LossesSpan::All:
            return {};
    }
    return {};
}

std::vector<LossesPlantChoice> plantsWithBatches(const core::Shelves& shelves,
                                                 const std::vector<core::BatchLine>& lines) {
    std::unordered_set<core::PlantId> used;
    for (const core::BatchLine& line : lines) used.insert(line.batch.plant);
    std::vector<LossesPlantChoice> choices{{{}, LossesChoiceWords::tr("all plants")}};
    for (const core::Plant& plant : shelves.plants)
        if (used.contains(plant.id)) choices.push_back({plant.id, QString::fromStdString(core::fullName(plant))});
    return choices;
}

std::vector<LossesMethodChoice> methodsWithBatches(const core::Shelves& shelves,
                                                   const std::vector<core::BatchLine>& lines) {
    std::unordered_set<core::MethodId> used;
    for (const core::BatchLine& line : lines) used.insert(line.batch.method);
    std::vector<LossesMethodChoice> choices{{{}, LossesChoiceWords::tr("all methods")}};
    for (const core::Method& method : shelves.methods)
        if (used.contains(method.id)) choices.push_back({method.id, QString::fromStdString(method.name)});
    return choices;
}

}  // namespace desktop
