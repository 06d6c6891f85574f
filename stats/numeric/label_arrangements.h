// SPDX-License-Identifier: MIT
// The ways of dealing two labels to things, so many of each within every stratum: the sample space of a permutation
// test.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "stats/numeric/seeded_random.h"

namespace stats {

/// Starts at the arrangement that comes first in the enumeration, not at the observed one.
class LabelArrangements {
  public:
    /// `isFirst[i]` says which label thing i has, `stratum[i]` where it belongs. Equal lengths, else std::domain_error.
    LabelArrangements(std::span<const char> isFirst, std::span<const int> stratum);

    /// How many there are: the product over strata of the binomial coefficients. Infinite where a double cannot hold
    /// it.
    [[nodiscard]] double count() const;
    /// 1 where the thing has the first label.
    [[nodiscard]] const std::vector<char>& labels() const { return labels_; }
    /// The next one of the enumeration; false, and back at the start, after the last.
    bool advance();
    /// One at random, each equally likely.
    void draw(SeededRandom& random);

  private:
    struct Stratum {
        std::vector<std::size_t> members;
        std::vector<char> labels;
    };
    void show(const Stratum& stratum);

    std::vector<Stratum> strata_;
    std::vector<char> labels_;
};

}  // namespace stats
