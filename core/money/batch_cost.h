// SPDX-License-Identifier: MIT
// What a batch costs: its share of lasting things, what it uses up, electricity and work; and what that is for each cutting, rooted cutting and
// usable plant. Money is in whole units of the logbook's currency, with its fractions; rounding is for those who show it.
#pragma once

#include <optional>
#include <span>

#include "core/result.h"

namespace core {

/// A pump, a lamp, a mat.
struct ElectricLoad {
    double watts{};
    double hoursADay{};
    double days{};
    double duty{1};  // of these hours, the share that it draws them: a thermostat switches off
};
/// Of each: 0 to 100 000 W, 0 to 24 h a day, 0 to 3650 days, a duty of 0 to 1. kWh, sum of W x h x days x duty / 1000, by definition.
[[nodiscard]] Result<double> kilowattHours(std::span<const ElectricLoad> loads);

struct BatchCostQuestion {
    double capital{};  // of all lasting things
    double lifeYears{1};
    double batchesAYear{1};
    double consumablesPerCutting{};
    int stuck{};
    double kilowattHours{};
    double pricePerKilowattHour{};
    double minutesOfWork{};
    double worthOfAnHour{};  // to the grower: it may be nothing
    double overhead{};       // rent, water, insurance: a share of the rest
};

struct BatchCost {
    double capital{};
    double consumables{};
    double electricity{};
    double labour{};
    double overhead{};

    [[nodiscard]] double total() const { return capital + consumables + electricity + labour + overhead; }
};

/// Money 0 to 1e9, life above 0 to 100 years, above 0 to 10 000 batches a year, 1 to 100 000 stuck, 0 to 1e6 kWh, 0 to 1e6 minutes, overhead 0 to 10.
[[nodiscard]] Refusals faultsIn(const BatchCostQuestion& question);
/// Domain    faultsIn() finds nothing.
/// Returns   capital / (life x batches a year), straight-line; the others by definition; overhead on the sum of the others.
[[nodiscard]] Result<BatchCost> batchCost(const BatchCostQuestion& question);

struct UnitCost {
    double perStuck{};
    std::optional<double> perRooted{};  // absent: none rooted, so there is no cost per plant
    std::optional<double> perUsable{};  // absent: none usable
};
/// Total 0 to 1e9; stuck 1 to 100 000; 0 <= usable <= rooted <= stuck.
[[nodiscard]] Result<UnitCost> unitCost(double total, int stuck, int rooted, int usable);

/// The strike rate at which a way that costs `dear` a cutting costs the same for each rooted one as a way that costs `cheap` and strikes at
/// `cheapStrike`; above 1 it can never pay. Cheap above 0 to 1e9, dear 0 to 1e9, strike rate above 0 to 1. By definition.
[[nodiscard]] Result<double> strikeToBreakEven(double cheap, double cheapStrike, double dear);

}  // namespace core
