// SPDX-License-Identifier: MIT
#include "stats/time_to_event/nonnegative_quadratic.h"

#include <algorithm>
#include <cmath>
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

class ActiveSet {
  public:
    ActiveSet(const SquareMatrix& h, const std::vector<double>& b, std::vector<double>& x) : h_(h), b_(b), x_(x) {
        free_.resize(h.size);
        std::iota(free_.begin(), free_.end(), std::size_t{0});
        std::stable_sort(free_.begin(), free_.end(), [&x](std::size_t i, std::size_t j) { return x[i] > x[j]; });
        isFree_.assign(h.size, 1);
        factor_.resize(h.size * h.size);
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
            double slope = b_[i];
            for (const std::size_t j : free_) slope -= h_.at(i, j) * x_[j];
            if (slope > steepest) {
                steepest = slope;
                best = i;
            }
        }
        if (best == h_.size) return false;
        isFree_[best] = 1;
        free_.push_back(best);
        return true;
    }

  private:
    // Cholesky's decomposition of the free part, row by row, then both triangles. Rows above the first change still
    // hold.
    void solveFree() {
        const std::size_t n = free_.size(), stride = h_.size;
        for (std::size_t i = factored_; i < n; ++i) {
            double* row = factor_.data() + i * stride;
            const double* of = h_.values.data() + free_[i] * stride;
            for (std::size_t j = 0; j < i; ++j) {
                row[j] = (of[free_[j]] - dot(row, factor_.data() + j * stride, j)) * inverse_[j];
            }
            const double diagonal = of[free_[i]];
            row[i] = std::sqrt(std::max(diagonal - dot(row, row, i), kRidge * diagonal + 1e-300));
            inverse_[i] = 1 / row[i];
        }
        factored_ = n;
        for (std::size_t i = 0; i < n; ++i) {
            target_[i] = (b_[free_[i]] - dot(factor_.data() + i * stride, target_.data(), i)) * inverse_[i];
        }
        for (std::size_t i = n; i-- > 0;) {
            target_[i] *= inverse_[i];
            const double* row = factor_.data() + i * stride;
            for (std::size_t k = 0; k < i; ++k) target_[k] -= row[k] * target_[i];
        }
    }

    const SquareMatrix& h_;
    const std::vector<double>& b_;
    std::vector<double>& x_;
    std::vector<char> isFree_;
    // The largest first: what is driven out is mostly small, so it stands at the end of the decomposition and little
    // of it has to be done again.
    std::vector<std::size_t> free_;
    std::size_t factored_{};
    std::vector<double> factor_, inverse_, target_;
};

}  // namespace

void maximiseNonnegativeQuadratic(const SquareMatrix& h, const std::vector<double>& b, std::vector<double>& x) {
    if (h.size == 0) return;
    ActiveSet active(h, b, x);
    // Each round ends at a maximum over its free coordinates; rounding could make two rounds chase each other for ever.
    for (std::size_t round = 0; round <= 2 * h.size; ++round) {
        while (!active.climb()) {
        }
        if (!active.release()) return;
    }
}

}  // namespace stats
