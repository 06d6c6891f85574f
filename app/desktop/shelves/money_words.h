// SPDX-License-Identifier: MIT
// What prices are called: their kinds, whose they are, how long a thing lasts or how many a pack does for.
#pragma once

#include <QString>
#include <vector>

#include "core/records.h"

namespace desktop {

[[nodiscard]] QString priceKindText(core::PriceKind kind);  // "lasts", "used up", "minutes of work"
/// "12.50 EUR", "0.3142 EUR per kWh"; empty for a kind without an amount.
[[nodiscard]] QString priceAmountText(const core::Price& price, const std::string& currency);
/// "5 years", "for 200 cuttings", "5 W, 24 h a day", "20 min for each session"; empty for a kind without any of it.
[[nodiscard]] QString priceLifeText(const core::Price& price);

/// One that a price may belong to; nothing set: the whole bench.
struct PriceOwner {
    core::MethodId method{};
    core::StationId station{};
    core::MediumId medium{};
    core::TreatmentId treatment{};
    QString text;  // "Tub north (station)"

    void give(core::Price& price) const;
    [[nodiscard]] bool isOwnerOf(const core::Price& price) const;
};

[[nodiscard]] QString priceOwnerName(const core::Price& price, const core::Shelves& shelves);  // "Tub north"
[[nodiscard]] QString priceOwnerText(const core::Price& price, const core::Shelves& shelves);
/// The whole bench, then methods, stations, media and treatments in use, and the one that has `price` now.
[[nodiscard]] std::vector<PriceOwner> priceOwners(const core::Shelves& shelves, const core::Price& price = {});

/// Kinds of which a bench has one at a time, whatever it is called: it need not be named.
[[nodiscard]] bool isNamedByItsKind(core::PriceKind kind);
/// "tariff"
[[nodiscard]] QString usualNameOf(core::PriceKind kind);

}  // namespace desktop
