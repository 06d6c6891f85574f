// SPDX-License-Identifier: MIT
#include "app/desktop/find/trail.h"

namespace desktop {

void Trail::visit(const Place& place) {
    if (!places_.empty() && places_[here_] == place) return;
    if (!places_.empty()) places_.resize(here_ + 1);
    places_.push_back(place);
    constexpr std::size_t mostKept = 100;
    if (places_.size() > mostKept) forget(0);
    here_ = places_.size() - 1;
}

bool Trail::back(const Going& going) {
    while (hasBack()) {
        if (isReached(here_ - 1, going)) {
            --here_;
            return true;
        }
        forget(--here_);
    }
    return false;
}

bool Trail::forward(const Going& going) {
    while (hasForward()) {
        if (isReached(here_ + 1, going)) {
            ++here_;
            return true;
        }
        forget(here_ + 1);
    }
    return false;
}

bool Trail::isReached(std::size_t other, const Going& going) const {
    // Neighbours become equal when what stood between them was forgotten.
    return places_[other] != places_[here_] && going(places_[other]);
}

void Trail::forget(std::size_t place) {
    places_.erase(places_.begin() + static_cast<std::ptrdiff_t>(place));
}

void Trail::clear() {
    places_.clear();
    here_ = 0;
}

}  // namespace desktop
