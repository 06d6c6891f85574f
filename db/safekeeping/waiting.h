// SPDX-License-Identifier: MIT
// Somebody who waits for long work on whole files: hears how far it is, and may call it off. What was called off leaves nothing behind.
#pragma once

#include <functional>
#include <stop_token>

namespace db {

struct Waiting {
    std::stop_token stop{};
    /// The share that is done, from 0 to 1, told on the thread that works; may be empty. It falls back when the logbook was changed by
    /// somebody else meanwhile, for then the copy begins anew.
    std::function<void(double)> tell{};

    [[nodiscard]] bool isCalledOff() const { return stop.stop_requested(); }
    void tellShare(double share) const {
        if (tell) tell(share);
    }
    /// Of a piece of the work that takes it from one share to the other.
    [[nodiscard]] Waiting forPiece(double from, double to) const {
        if (!tell) return *this;
        return {.stop = stop, .tell = [whole = tell, from, to](double share) { whole(from + share * (to - from)); }};
    }
};

}  // namespace db
