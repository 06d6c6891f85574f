// SPDX-License-Identifier: MIT
// What a simulation counts: for each thing that is judged, in each kind of season, how often it was asked and how often the answer
// was yes (the interval covered, the verdict was said), and how far off or how wide it was.
#pragma once

#include <compare>
#include <cstdint>
#include <functional>
#include <map>
#include <string>
#include <string_view>

namespace calibration {

/// What seasons of one kind have in common.
struct Cell {
    double correlation{};
    int trays{};  // per arm

    auto operator<=>(const Cell&) const = default;
};

struct Count {
    std::int64_t asked{};
    std::int64_t yes{};
    double sum{};      // of a measure that goes with each answer: the width of an interval, the error of an estimate
    double squares{};  // of the same

    void operator+=(const Count& other);
    [[nodiscard]] double share() const {
        return asked == 0 ? 0 : static_cast<double>(yes) / static_cast<double>(asked);
    }
    [[nodiscard]] double mean() const { return asked == 0 ? 0 : sum / static_cast<double>(asked); }
    [[nodiscard]] double rootMeanSquare() const;
    /// Half the width of the share's 95 % interval for the simulation's own chance.
    [[nodiscard]] double simulationError() const;
};

class Tally {
  public:
    void add(std::string_view thing, const Cell& cell, bool yes, double measure = 0);
    void merge(const Tally& other);
    /// The same, each thing with `after` put to its name.
    void mergeRenamed(const Tally& other, std::string_view after);

    [[nodiscard]] Count of(std::string_view thing, const Cell& cell) const;
    /// Over all cells with this correlation and from `fewest` to `most` trays.
    [[nodiscard]] Count over(std::string_view thing, double correlation, int fewest, int most) const;

    bool operator==(const Tally&) const;

  private:
    std::map<std::string, std::map<Cell, Count>, std::less<>> counts_;
};

}  // namespace calibration
