// SPDX-License-Identifier: MIT
// Somewhere that the window can go: a page, and perhaps one thing on it. What Find answers with, what the way back remembers, and what a
// page asks for when it wants another one in front.
#pragma once

#include <QString>
#include <cstdint>

#include "core/id.h"

namespace desktop {

struct Place {
    enum class Kind { Page, Batch, Plant, StockPlant, Station, Shelf };  // a shelf's id is its place in the list

    QString page;  // its name in the registry; empty: whichever shows such things
    Kind kind{Kind::Page};
    std::int64_t id{};

    bool operator==(const Place&) const = default;
};

[[nodiscard]] inline Place placeOf(const QString& page) {
    return {.page = page, .kind = Place::Kind::Page, .id = 0};
}
[[nodiscard]] inline Place placeOf(core::BatchId batch) {
    return {.page = {}, .kind = Place::Kind::Batch, .id = batch.value};
}
[[nodiscard]] inline Place placeOf(core::PlantId plant) {
    return {.page = {}, .kind = Place::Kind::Plant, .id = plant.value};
}
[[nodiscard]] inline Place placeOf(core::StockPlantId stockPlant) {
    return {.page = {}, .kind = Place::Kind::StockPlant, .id = stockPlant.value};
}
[[nodiscard]] inline Place placeOf(core::StationId station) {
    return {.page = {}, .kind = Place::Kind::Station, .id = station.value};
}

}  // namespace desktop
