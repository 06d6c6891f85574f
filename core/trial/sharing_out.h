// SPDX-License-Identifier: MIT
// Cuttings shared out evenly over sessions, and over places that have only so much room. In whole sets (one cutting for each arm), so that
// what can't be shared evenly between the arms is in few places. Nothing here is by chance.
#pragma once

#include <optional>
#include <vector>

namespace core {

/// Sets go to the parts turn by turn, and so on from one sharing to the next.
class Turns {
  public:
    explicit Turns(int parts) : parts_(parts) {}

    /// How many each part gets. Domain: cuttings >= 0, set >= 1.
    [[nodiscard]] std::vector<int> shared(int cuttings, int set);

  private:
    int turn();

    int parts_;
    int next_ = 0;
};

class PlacesLeft {
  public:
    /// How many each place can take.
    explicit PlacesLeft(std::vector<int> room) : room_(std::move(room)) {}

    /// Sets go turn by turn to those of `eligible` that have room for one, then smaller lots wherever there is any. How many each place gets;
    /// nothing when there isn't enough room. `next` says whose turn it is.
    [[nodiscard]] std::optional<std::vector<int>> shared(int cuttings, int set, const std::vector<int>& eligible,
                                                         std::size_t& next);

  private:
    [[nodiscard]] std::optional<int> nextWith(int wanted, const std::vector<int>& eligible, std::size_t& next) const;

    std::vector<int> room_;
};

}  // namespace core
