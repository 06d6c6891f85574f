// SPDX-License-Identifier: MIT
#include "app/console/trial_sheet.h"

#include <algorithm>
#include <ostream>

#include "app/console/painting_application.h"
#include "app/console/words.h"
#include "app/report/trial_map.h"
#include "app/report/trial_report.h"
#include "core/trial/trial_progress.h"

namespace console {

namespace {

const core::Trial* trialCalled(const std::string& name, const core::Shelves& shelves, const std::string& file,
                               std::ostream& err) {
    const auto trial = std::ranges::find(shelves.trials, name, &core::Trial::name);
    if (trial != shelves.trials.end()) return &*trial;
    err << filled(tr("There is no trial %1 in %2."), {shown(name), file}) << '\n';
    return nullptr;
}

}  // namespace

std::optional<report::Sheet> trialSheet(const std::string& name, const db::Logbook& logbook, const std::string& file,
                                        const Surroundings& surroundings, std::ostream& err) {
    const core::Shelves shelves = logbook.shelves();
    const core::Trial* trial = trialCalled(name, shelves, file, err);
    if (trial == nullptr) return {};
    const core::TrialProgress progress = core::progressOf(*trial, shelves, logbook.batchLines(), surroundings.today);
    const QDateTime now = momentFrom(surroundings.clock);
    if (progress.stage != core::TrialStage::Decided)
        return report::trialReport(*trial, progress, nullptr, shelves, now);
    const auto result = core::trialResult(*trial, shelves, logbook.batchRecords());
    if (!result) {
        err << linesOf(result.error());
        return {};
    }
    return report::trialReport(*trial, progress, &*result, shelves, now);
}

std::optional<report::Sheet> trialMapSheet(const std::string& name, const db::Logbook& logbook, const std::string& file,
                                           const Surroundings& surroundings, std::ostream& err) {
    const core::Shelves shelves = logbook.shelves();
    const core::Trial* trial = trialCalled(name, shelves, file, err);
    if (trial == nullptr) return {};
    if (trial->batches.empty()) {
        err << filled(tr("Nothing of trial %1 is dealt in %2, so there is nothing to map."), {shown(name), file})
            << '\n';
        return {};
    }
    const core::TrialProgress progress = core::progressOf(*trial, shelves, logbook.batchLines(), surroundings.today);
    return report::trialMapSheet(*trial, progress, shelves, momentFrom(surroundings.clock));
}

}  // namespace console
