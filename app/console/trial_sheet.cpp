// SPDX-License-Identifier: MIT
#include "app/console/trial_sheet.h"

#include <algorithm>
#include <ostream>

#include "app/console/painting_application.h"
#include "app/console/words.h"
#include "app/report/trial_report.h"
#include "core/trial/trial_progress.h"

namespace console {

std::optional<report::Sheet> trialSheet(const std::string& name, const db::Logbook& logbook, const std::string& file,
                                        const Surroundings& surroundings, std::ostream& err) {
    const core::Shelves shelves = logbook.shelves();
    const auto trial = std::ranges::find(shelves.trials, name, &core::Trial::name);
    if (trial == shelves.trials.end()) {
        err << filled(tr("There is no trial %1 in %2."), {shown(name), file}) << '\n';
        return {};
    }
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

}  // namespace console
