// SPDX-License-Identifier: MIT
#include "stats/time_to_event/nonnegative_quadratic.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <numeric>

namespace stats {
namespace {

// In four strands, since one waits for each addition in turn. The order is fixed, so the rounding is the same
// everywhere.
double dot(const double* a, const double* b, std::size_t n) {
    double sum0 = 0, sum1 = 0, sum2 = 0, sum3 = 0;
    std::size_t k = 0;
    for (; k + 4 <= n; k += 4) {
        sum0 += a[k] * b[k];
        sum1 += a[k + 1] * b[k + 1];
        sum2 += a[k + 2] * b[k + 2];
        sum3 += a[k + 3] * b[k + 3];
    }
    for (; k < n; ++k) sum0 += a[k] * b[k];
    return (sum0 + sum1) + (sum2 + sum3);
}

// Columns that the rows cannot tell apart make H singular; this much more on the diagonal picks one of the equally good
// answers.
constexpr double kRidge = 1e-13;

// Whether decomposing the matrix in its own order costs much less than in any other.
bool isNarrow(const RowReach& reach) {
    const std::size_t n = reach.first.size();
    std::size_t squares = 0;
    for (std::size_t i = 0; i < n; ++i) squares += (i - reach.first[i]) * (i - reach.first[i]);
    return 12 * squares < n * n * n;
}

class ActiveSet {
  public:
    ActiveSet(const SquareMatrix& h, const RowReach& reach, const std::vector<double>& b, std::vector<double>& x)
        : h_(h), reach_(reach), isNarrow_(isNarrow(reach)), b_(b), x_(x) {
        free_.resize(h.size);
        std::iota(free_.begin(), free_.end(), std::size_t{0});
        if (!isNarrow_) {
            std::stable_sort(free_.begin(), free_.end(), [&x](std::size_t i, std::size_t j) { return x[i] > x[j]; });
        }
        isFree_.assign(h.size, 1);
        start_.resize(h.size);
        factor_ = std::make_unique_for_overwrite<double[]>(h.size * h.size);
        inverse_.resize(h.size);
        target_.resize(h.size);
    }

    // To the maximum over the free coordinates, or as far towards it as x stays nonnegative; those in the way are then
    // held at 0. True when nothing was in the way.
    bool climb() {
        solveFree();
        double step = 1;
        for (std::size_t k = 0; k < free_.size(); ++k) {
            const double here = x_[free_[k]];
            if (target_[k] <= 0 && here > 0) step = std::min(step, here / (here - target_[k]));
        }
        std::size_t kept = 0;
        for (std::size_t k = 0; k < free_.size(); ++k) {
            double& here = x_[free_[k]];
            const double next = here + step * (target_[k] - here);
            const bool isBlocked = target_[k] <= 0 && (next <= 1e-14 || here == 0);
            here = isBlocked ? 0 : std::max(next, 0.0);
            if (isBlocked) {
                isFree_[free_[k]] = 0;
                factored_ = std::min(factored_, kept);
            } else {
                free_[kept++] = free_[k];
            }
        }
        const bool isClear = kept == free_.size();
        free_.resize(kept);
        return isClear;
    }

    // Lets go of the coordinate at 0 that would raise the value most; false when none would.
    bool release() {
        std::size_t best = h_.size;
        double steepest = 1e-12;
        for (std::size_t i = 0; i < h_.size; ++i) {
            if (isFree_[i] != 0) continue;
            const std::size_t first = reach_.first[i], count = reach_.last[i] + 1 - first;
            const double slope = b_[i] - dot(h_.values.data() + i * h_.size + first, x_.data() + first, count);
            if (slope > steepest) {
                steepest = slope;
                best = i;
            }
        }
        if (best == h_.size) return false;
        isFree_[best] = 1;
        const auto place = isNarrow_ ? std::lower_bound(free_.begin(), free_.end(), best) : free_.end();
        factored_ = std::min(factored_, static_cast<std::size_t>(place - free_.begin()));
        free_.insert(place, best);
        return true;
    }

  private:
    // Cholesky's decomposition of the free part, row by row, then both triangles. Rows above the first change still
    // hold. What lies left of a row's first element other than 0 stays 0.
    void solveFree() {
        const std::size_t n = free_.size(), stride = h_.size;
        for (std::size_t i = factored_; i < n; ++i) {
            double* row = factor_.get() + i * stride;
            const double* of = h_.values.data() + free_[i] * stride;
            start_[i] = startOf(i);
            for (std::size_t j = start_[i]; j < i; ++j) {
                const std::size_t from = std::max(start_[i], start_[j]);
                row[j] = (of[free_[j]] - dot(row + from, factor_.get() + j * stride + from, j - from)) * inverse_[j];
            }
            const double diagonal = of[free_[i]];
            const double square = dot(row + start_[i], row + start_[i], i - start_[i]);
            row[i] = std::sqrt(std::max(diagonal - square, kRidge * diagonal + 1e-300));
            inverse_[i] = 1 / row[i];
        }
        factored_ = n;
        for (std::size_t i = 0; i < n; ++i) {
            const double* row = factor_.get() + i * stride + start_[i];
            target_[i] = (b_[free_[i]] - dot(row, target_.data() + start_[i], i - start_[i])) * inverse_[i];
        }
        for (std::size_t i = n; i-- > 0;) {
            target_[i] *= inverse_[i];
            const double* row = factor_.get() + i * stride;
            for (std::size_t k = start_[i]; k < i; ++k) target_[k] -= row[k] * target_[i];
        }
    }

    // Where the free row begins to differ from 0; only known in the matrix's own order.
    [[nodiscard]] std::size_t startOf(std::size_t row) const {
        if (!isNarrow_) return 0;
        const auto end = free_.begin() + static_cast<std::ptrdiff_t>(row);
        return static_cast<std::size_t>(std::lower_bound(free_.begin(), end, reach_.first[free_[row]]) - free_.begin());
    }

    const SquareMatrix& h_;
    const RowReach& reach_;
    bool isNarrow_;
    const std::vector<double>& b_;
    std::vector<double>& x_;
    std::vector<char> isFree_;
    // Where the matrix is narrow, in its own order, which keeps the decomposition as narrow. Otherwise the largest
    // first: what is driven out is mostly small, so it stands at the end of the decomposition and little of it has to
    // be done again.
    std::vector<std::size_t> free_, start_;
    std::size_t factored_{};
    std::unique_ptr<double[]> factor_;  // only what solveFree() wrote is read
    std::vector<double> inverse_, target_;
};

}  // namespace

void maximiseNonnegativeQuadratic(const SquareMatrix& h, const RowReach& reach, const std::vector<double>& b,
                                  std::vector<double>& x) {
    if (h.size == 0) return;
    ActiveSet active(h, reach, b, x);
    // Each round ends at a maximum over its free coordinates; rounding could make two rounds chase each other for ever.
    for (std::size_t round = 0; round <= 2 * h.size; ++round) {
        while (!active.climb()) {
        }
        if (!active.release()) return;
    }
}

void maximiseNonnegativeQuadratic(const SquareMatrix& h, const std::vector<double>& b, std::vector<double>& x) {
    const RowReach everywhere{.first = std::vector<std::size_t>(h.size),
                              .last = std::vector<std::size_t>(h.size, h.size - 1)};
    maximiseNonnegativeQuadratic(h, everywhere, b, x);
}

}  // namespace stats
