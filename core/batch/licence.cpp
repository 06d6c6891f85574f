// SPDX-License-Identifier: MIT
#include "core/batch/licence.h"

namespace core {

std::string newestLicenceOf(PlantId plant, std::span<const BatchLine> batches) {
    const Batch* newest = nullptr;
    for (const BatchLine& line : batches) {
        if (line.batch.plant != plant || line.batch.licence.empty()) continue;
        if (newest == nullptr || newest->stuckOn <= line.batch.stuckOn) newest = &line.batch;
    }
    return newest == nullptr ? std::string() : newest->licence;
}

std::string licenceInWords(const Batch& batch, const Shelves& shelves) {
    if (!batch.licence.empty()) return "licence: " + batch.licence;
    const Plant* plant = find(shelves.plants, batch.plant);
    return plant != nullptr && plant->isProtected ? "protected: no licence written down" : "";
}

}  // namespace core
