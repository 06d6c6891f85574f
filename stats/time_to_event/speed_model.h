// SPDX-License-Identifier: MIT
// The maximisation behind interval_censored_fit.h, cure_mixture.h and speed_comparison.h: one or two arms, each with
// its own share that roots and its own mu, and one sigma. Only for those.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "stats/interval.h"
#include "stats/numeric/square_matrix.h"
#include "stats/time_to_event/interval_censored_fit.h"
#include "stats/time_to_event/observation.h"
#include "stats/time_to_event/speed_shape.h"

namespace stats {

/// One arm's rows, each distinct one once; and how many of each are in each batch of positive weight.
struct SpeedRows {
    struct Counted {
        std::size_t row{};
        double weight{};
    };
    std::vector<Observation> rows;
    std::vector<std::vector<Counted>> batches;
};

/// Checks the domain for `function`, which it names where it is broken.
[[nodiscard]] SpeedRows gatherSpeedRows(std::string_view function, std::span<const std::vector<Observation>> batches);
/// What can be seen from the rows alone; absent where a fit may be tried.
[[nodiscard]] std::optional<NoSpeedFit> whyNoSpeedFit(const SpeedRows& rows, bool everyoneRoots);

/// Parameters in the order logit share and mu of arm 1, (those of arm 2,) log sigma.
struct SpeedModel {
    std::span<const SpeedRows> arms;  // one or two
    SpeedShape shape{};
    std::vector<char> everyoneRoots{0};  // one an arm: the share is held at 1
    bool isSpeedEqual{};                 // arm 2's mu is arm 1's

    [[nodiscard]] std::size_t parameters() const { return 2 * arms.size() + 1; }
    [[nodiscard]] bool isHeld(std::size_t parameter) const;
};

/// At the maximum. Parameters that are held stay at 0; in the information they have a 1 on the diagonal and nothing
/// else.
struct SpeedModelFit {
    std::vector<double> x;
    double logLikelihood{};
    SquareMatrix covariance;  // inverse of the observed information
    std::vector<char> everyoneRoots;
    int iterations{};
};

/// With the shares held as `model` says.
[[nodiscard]] std::optional<SpeedModelFit> fitSpeedModel(const SpeedModel& model);
/// The highest over all ways of holding shares at 1; `model.everyoneRoots` is not looked at. Absent where no maximum
/// was found, or something higher than it that is none.
[[nodiscard]] std::optional<SpeedModelFit> fitSpeedModelAndBoundary(SpeedModel model);

/// Whole-batch covariance; absent without one batch more than free parameters, or where batches do not differ.
struct BatchCovariance {
    SquareMatrix covariance;
    int degreesOfFreedom{};
};
[[nodiscard]] std::optional<BatchCovariance> batchCovariance(const SpeedModel& model, const SpeedModelFit& fit);

/// How sure the speed of one arm is, from a covariance and the reach of an interval in standard errors.
[[nodiscard]] SpeedUncertainty speedUncertainty(const SpeedModel& model, const SpeedModelFit& fit, std::size_t arm,
                                                const SquareMatrix& covariance, double reach);
/// exp(middle -+ reach), cut off so that it stays positive and finite.
[[nodiscard]] Interval limitsOfExp(double middle, double reach);
[[nodiscard]] Interval limitsOfLogit(double middle, double reach);

}  // namespace stats
