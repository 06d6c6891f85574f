// SPDX-License-Identifier: MIT
#include "stats/time_to_event/nonnegative_quadratic.h"

#include <algorithm>
#include <cmath>

namespace stats {
namespace {

class ActiveSet {
  public:
    ActiveSet(const SquareMatrix& h, const std::vector<double>& b, std::vector<double>& x) : h_(h), b_(b), x_(x) {
        double largest = 0;
        for (std::size_t i = 0; i < h.size; ++i) largest = std::max(largest, h.at(i, i));
        // Columns that the rows cannot tell apart make H singular; this much on the diagonal picks one of the equally
        // good answers.
        ridge_ = 1e-13 * largest;
        isFree_.assign(h.size, 1);
        collectFree();
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
        bool isClear = true;
        for (std::size_t k = 0; k < free_.size(); ++k) {
            double& here = x_[free_[k]];
            const double next = here + step * (target_[k] - here);
            const bool isBlocked = target_[k] <= 0 && (next <= 1e-14 || here == 0);
            here = isBlocked ? 0 : std::max(next, 0.0);
            if (isBlocked) {
                isFree_[free_[k]] = 0;
                isClear = false;
            }
        }
        if (!isClear) collectFree();
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
        collectFree();
        return true;
    }

  private:
    void collectFree() {
        free_.clear();
        for (std::size_t i = 0; i < isFree_.size(); ++i) {
            if (isFree_[i] != 0) free_.push_back(i);
        }
    }

    // Cholesky's decomposition of the free part, row by row, then both triangles.
    void solveFree() {
        const std::size_t n = free_.size();
        factor_.resize(n * n);
        target_.resize(n);
        for (std::size_t i = 0; i < n; ++i) {
            double* row = factor_.data() + i * n;
            for (std::size_t j = 0; j <= i; ++j) {
                const double* other = factor_.data() + j * n;
                double sum = h_.at(free_[i], free_[j]);
                for (std::size_t k = 0; k < j; ++k) sum -= row[k] * other[k];
                row[j] = i == j ? std::sqrt(std::max(sum, 0.0) + ridge_) : sum / other[j];
            }
            double sum = b_[free_[i]];
            for (std::size_t k = 0; k < i; ++k) sum -= row[k] * target_[k];
            target_[i] = sum / row[i];
        }
        for (std::size_t i = n; i-- > 0;) {
            target_[i] /= factor_[i * n + i];
            for (std::size_t k = 0; k < i; ++k) target_[k] -= factor_[i * n + k] * target_[i];
        }
    }

    const SquareMatrix& h_;
    const std::vector<double>& b_;
    std::vector<double>& x_;
    double ridge_{};
    std::vector<char> isFree_;
    std::vector<std::size_t> free_;
    std::vector<double> factor_, target_;
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
