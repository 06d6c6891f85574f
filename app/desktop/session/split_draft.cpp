// SPDX-License-Identifier: MIT
#include "app/desktop/session/split_draft.h"

#include <QCoreApplication>

#include "core/units/number_entry.h"

namespace desktop {

namespace {

constexpr int latestHorizon = 3650;

QString sayInSplit(const char* text) {
    return QCoreApplication::translate("SplitDraft", text);
}

}  // namespace

QString SplitDraft::faultInArms() const {
    if (arms.size() < 2)
        return factor == SessionColumn::Station
                   ? sayInSplit("Tick two stations or more to share the cuttings between.")
                   : sayInSplit("Tick two treatments or more to share the cuttings between.");
    if (arms.size() > question.cuttings)
        return sayInSplit("%1 cuttings can't be shared between %2 arms: tick no more than %1.")
            .arg(question.cuttings)
            .arg(arms.size());
    return {};
}

QString SplitDraft::faultInHorizon() const {
    const auto day = core::countFrom(horizonDay.toStdString());
    if (day && *day >= 1 && *day <= latestHorizon) return {};
    return sayInSplit("Horizon day is \u201c%1\u201d: it has to be a whole number from 1 to %2.")
        .arg(horizonDay.trimmed())
        .arg(latestHorizon);
}

core::Allocation SplitDraft::allocation() const {
    return core::allocateByChance(question.cuttings, static_cast<int>(arms.size()), question.seed);
}

SplitByChance SplitDraft::result() const {
    SplitByChance split;
    split.trial.id = {db::newId()};
    split.trial.name = trialName.simplified().toStdString();
    split.trial.horizonDay = core::countFrom(horizonDay.toStdString());
    split.trial.allocationSeed = question.seed;
    split.factor = factor;
    split.arms = {arms.begin(), arms.end()};
    split.allocation = allocation();
    return split;
}

}  // namespace desktop
