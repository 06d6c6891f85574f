// SPDX-License-Identifier: MIT
// Of x that rooted, how many live on, each for itself with one chance: a law of rooted cuttings becomes one of living
// plants. Only for tray_sums.cpp.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace stats {

/// Binomial laws of 0, 1, 2, ... trials with one chance, as far as they can give fewer than `wanted`.
class Thinning {
  public:
    /// 0 < livesOn <= 1, wanted >= 1, most >= 0: of the largest law to come.
    Thinning(double livesOn, int wanted, int most);

    /// [y]: exactly y live on, for y up to wanted - 1 or the law's end. The law of at most `most` itself where all live on.
    [[nodiscard]] std::vector<double> of(std::vector<double> law) const;

  private:
    struct Row {
        std::size_t first{};  // [first + i] has chances[i]; those left out are rarer than 1e-20
        std::vector<double> chances;
    };
    bool isNeeded_;
    std::size_t wanted_;
    std::vector<Row> rows_;  // by how many rooted; beyond the last row, `wanted` or more live on
};

}  // namespace stats
