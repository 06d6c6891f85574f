// SPDX-License-Identifier: MIT
// Prices and lots by the thing that they belong to, a method, station, medium or treatment: for the verbs that remove things or make two
// of them one.
#pragma once

#include <string>

#include "db/writer.h"

namespace db {

/// "price of air pump"
[[nodiscard]] std::string calledPrice(const core::Price& price);
/// "lot 12 of IBA 3000 ppm"
[[nodiscard]] std::string calledLot(const core::Lot& lot, const core::Shelves& shelves);

// The first price or lot that belongs to it, as it is called above; blank: none does. What can't have any has none.
[[nodiscard]] std::string namedByPrice(const core::Shelves& shelves, core::MethodId id);
[[nodiscard]] std::string namedByPrice(const core::Shelves& shelves, core::StationId id);
[[nodiscard]] std::string namedByPrice(const core::Shelves& shelves, core::MediumId id);
[[nodiscard]] std::string namedByPrice(const core::Shelves& shelves, core::TreatmentId id);
template <class ThingId>
[[nodiscard]] std::string namedByPrice(const core::Shelves&, ThingId) {
    return {};
}

// Of a price of the same name and day, or a lot of the same name or day, that both have, the one of the thing that stays is kept.
void movePrices(Writer& writer, const core::Shelves& shelves, core::StationId goes, core::StationId stays);
void movePrices(Writer& writer, const core::Shelves& shelves, core::MediumId goes, core::MediumId stays);
void movePrices(Writer& writer, const core::Shelves& shelves, core::TreatmentId goes, core::TreatmentId stays);
template <class ThingId>
void movePrices(Writer&, const core::Shelves&, ThingId, ThingId) {}

}  // namespace db
