// SPDX-License-Identifier: MIT
// The places that were in front, one after the other, and which of them is now: the way back and forward.
#pragma once

#include <functional>
#include <vector>

#include "app/desktop/place.h"

namespace desktop {

class Trail {
  public:
    /// Goes to a place; false when there is none any more, such as a batch that was deleted.
    using Going = std::function<bool(const Place&)>;

    /// What lay ahead is gone. The place where we stand already is not noted twice.
    void visit(const Place& place);
    /// To the nearest place that can be gone to; those on the way that can't are forgotten. False when there was none.
    bool back(const Going& going);
    bool forward(const Going& going);
    void clear();

    [[nodiscard]] bool hasBack() const { return here_ > 0; }
    [[nodiscard]] bool hasForward() const { return here_ + 1 < places_.size(); }

  private:
    [[nodiscard]] bool isReached(std::size_t other, const Going& going) const;
    void forget(std::size_t place);

    std::vector<Place> places_;
    std::size_t here_{};
};

}  // namespace desktop
