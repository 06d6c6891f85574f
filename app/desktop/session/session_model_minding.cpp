// SPDX-License-Identifier: MIT
// The part of SessionModel that minds: cautions of what stands on the sheet, and the licences of protected plants.
#include <algorithm>

#include "app/desktop/session/session_model.h"
#include "app/desktop/workspace.h"
#include "core/batch/licence.h"
#include "core/mixing/cautions_in_place.h"

namespace desktop {

void SessionModel::setLicence(core::PlantId plant, const QString& licence) {
    sheet_.licences[plant] = licence;
    judge();
}

std::vector<core::Batch> SessionModel::batchesOfRow(int row) {
    const SessionReading reading = read();
    std::vector<core::Batch> batches;
    for (std::size_t i = 0; i < reading.rows.size(); ++i)
        if (reading.rows[i] == row) batches.push_back(reading.draft.batches[i]);
    return batches;
}

/// Each batch gets what is typed for its plant; at first that is what the newest batch of the plant has.
std::vector<AskedLicence> SessionModel::takeLicences(SessionReading& reading) {
    std::vector<AskedLicence> asked;
    for (core::Batch& batch : reading.draft.batches) {
        const core::Plant* plant = core::find(workspace_.shelves().plants, batch.plant);
        if (plant == nullptr || !plant->isProtected) continue;
        const auto [known, isNew] = sheet_.licences.try_emplace(plant->id);
        if (isNew) known->second = QString::fromStdString(core::newestLicenceOf(plant->id, workspace_.batchLines()));
        batch.licence = known->second.simplified().toStdString();
        if (std::ranges::find(asked, plant->id, &AskedLicence::plant) == asked.end())
            asked.push_back({plant->id, QString::fromStdString(core::fullName(*plant)), known->second});
    }
    return asked;
}

void SessionModel::mind(const SessionReading& reading, const core::Shelves& all) {
    view_.cautions = core::cautionsOnSticking(reading.draft.batches, all);
    for (const AskedLicence& licence : view_.licences)
        if (licence.text.trimmed().isEmpty())
            view_.notes.append(tr("%1 is protected: no licence written down.").arg(licence.name));
}

}  // namespace desktop
