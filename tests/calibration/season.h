// SPDX-License-Identifier: MIT
// One invented season of two arms whose truth is known: trays with a share of their own, cuttings that root, are lost or do
// neither, and somebody who looks every few days. What the program says of it can then be called right or wrong.
#pragma once

#include <array>
#include <vector>

#include "core/comparison/course.h"
#include "stats/numeric/seeded_random.h"
#include "stats/overdispersion/tray.h"
#include "tests/calibration/share_distribution.h"

namespace calibration {

inline constexpr int horizonDay = 28;
inline constexpr double nominalLevel = 0.95;  // of every interval that is judged

/// On the horizon: as a planned trial ends, every batch is looked at on that very day, last. As it comes: everybody's looks fall
/// on days of their own, before and after the horizon, and go on until nothing is left to see.
enum class Looks { OnTheHorizon, AsItComes };

struct TraySize {
    int fewest{5};
    int most{30};
};

struct SeasonPlan {
    double correlation{};
    Spread spread{Spread::Beta};
    std::array<int, 2> trays{1, 1};  // of each arm
    std::array<TraySize, 2> size{};  // cuttings a tray, each size in between equally likely; so unequal within a season
    std::array<double, 2> rate{};    // true share that roots by the horizon, of each arm
    Looks looks{Looks::OnTheHorizon};
    std::array<int, 2> lookEvery{};  // days between looks, of each arm
    double openShare{};              // of batches, that were looked at last before the horizon
};

struct SimulatedTray {
    int stuck{};
    double share{};  // of its cuttings that root by the horizon, before chance deals with each of them
    std::vector<core::Look> looks;
    int rootedByHorizon{};  // whether somebody saw it or not
};

/// The days on which cuttings root, as the truth has it: log-normal days for those that root by the horizon and, beyond it, for
/// the latecomers among the others.
struct RootingDays {
    double medianDay{};

    /// Of all cuttings of an arm with this rate, how many have rooted by the end of `day`.
    [[nodiscard]] double shareRooted(double rate, double day) const;
    [[nodiscard]] double everRooted(double rate) const;
    /// Of cuttings that have not rooted by the horizon, how many will.
    [[nodiscard]] double latecomers(double rate) const;
    /// Of the log-normal distribution.
    [[nodiscard]] double distribution(double day) const;
    [[nodiscard]] double quantile(double share) const;
};

struct Season {
    SeasonPlan plan;
    RootingDays days;
    std::array<std::vector<SimulatedTray>, 2> arms;

    /// Rooted of assessed at the horizon, as the program counts them; a tray with nothing assessed is left out.
    [[nodiscard]] std::array<std::vector<stats::Tray>, 2> traysSeen() const;
};

[[nodiscard]] Season seasonOf(const SeasonPlan& plan, stats::SeededRandom& random);

/// Where simulations take a true rate from: 0.1, 0.2, ... 0.9, 0.95.
[[nodiscard]] double drawRate(stats::SeededRandom& random);
/// 2 to 7 days.
[[nodiscard]] int drawDaysBetweenLooks(stats::SeededRandom& random);

}  // namespace calibration
