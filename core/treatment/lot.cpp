// SPDX-License-Identifier: MIT
#include "core/treatment/lot.h"

namespace core {

namespace {

template <class Owner>
const Lot* newestOf(std::span<const Lot> lots, Owner Lot::*ownerOfLot, Owner owner, Date day) {
    const Lot* newest = nullptr;
    if (!owner.isSet()) return newest;
    for (const Lot& lot : lots)
        if (lot.*ownerOfLot == owner && lot.usedFrom <= day && (newest == nullptr || lot.usedFrom > newest->usedFrom))
            newest = &lot;
    return newest;
}

}  // namespace

const Lot* lotInUse(std::span<const Lot> lots, TreatmentId treatment, Date day) {
    return newestOf(lots, &Lot::treatment, treatment, day);
}

const Lot* lotInUse(std::span<const Lot> lots, MediumId medium, Date day) {
    return newestOf(lots, &Lot::medium, medium, day);
}

}  // namespace core
