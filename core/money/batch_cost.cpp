// SPDX-License-Identifier: MIT
#include "core/money/batch_cost.h"

#include <utility>

#include "core/field_faults.h"

namespace core {
namespace {

constexpr double mostCost = 1e9;

std::optional<Refusal> faultInMoney(const std::string& field, double value) {
    return faultInFigure(field, value, 0, mostCost, "0 to 1000000000");
}

std::optional<Refusal> faultAboveZero(const std::string& field, double value, double most) {
    if (value > 0 && value <= most) return {};
    return outOfRange(field, figureText(value), "more than 0 and up to " + figureText(most));
}

Refusals faultsIn(const ElectricLoad& load) {
    Refusals faults;
    collect(faults, faultInFigure("Power", load.watts, 0, 100'000, "0 to 100000 W"));
    collect(faults, faultInFigure("Hours a day", load.hoursADay, 0, 24, "0 to 24"));
    collect(faults, faultInFigure("Days", load.days, 0, 3650, "0 to 3650"));
    collect(faults, faultInFigure("Duty", load.duty, 0, 1, "0 to 1"));
    return faults;
}

}  // namespace

Result<double> kilowattHours(std::span<const ElectricLoad> loads) {
    double sum = 0;
    for (const ElectricLoad& load : loads) {
        if (Refusals faults = faultsIn(load); !faults.empty()) return refused(std::move(faults));
        sum += load.watts * load.hoursADay * load.days * load.duty / 1000;
    }
    return sum;
}

Refusals faultsIn(const BatchCostQuestion& question) {
    Refusals faults;
    collect(faults, faultInMoney("Price of lasting things", question.capital));
    collect(faults, faultAboveZero("Years that they last", question.lifeYears, 100));
    collect(faults, faultAboveZero("Batches a year", question.batchesAYear, 10'000));
    collect(faults, faultInMoney("Used up by each cutting", question.consumablesPerCutting));
    collect(faults, faultInWhole("Cuttings stuck", question.stuck, 1, 100'000));
    collect(faults, faultInFigure("Electricity", question.kilowattHours, 0, 1e6, "0 to 1000000 kWh"));
    collect(faults, faultInMoney("Price of a kWh", question.pricePerKilowattHour));
    collect(faults, faultInFigure("Minutes of work", question.minutesOfWork, 0, 1e6, "0 to 1000000"));
    collect(faults, faultInMoney("Worth of an hour", question.worthOfAnHour));
    collect(faults, faultInFigure("Overhead", question.overhead, 0, 10, "0 to 10"));
    return faults;
}

Result<BatchCost> batchCost(const BatchCostQuestion& question) {
    if (Refusals faults = faultsIn(question); !faults.empty()) return refused(std::move(faults));
    BatchCost cost{.capital = question.capital / (question.lifeYears * question.batchesAYear),
                   .consumables = question.consumablesPerCutting * question.stuck,
                   .electricity = question.kilowattHours * question.pricePerKilowattHour,
                   .labour = question.minutesOfWork / 60 * question.worthOfAnHour,
                   .overhead = 0};
    cost.overhead = cost.total() * question.overhead;
    return cost;
}

Result<UnitCost> unitCost(double total, int stuck, int rooted, int usable) {
    Refusals faults;
    collect(faults, faultInMoney("Cost of the batch", total));
    collect(faults, faultInWhole("Cuttings stuck", stuck, 1, 100'000));
    collect(faults, faultInWhole("Rooted", rooted, 0, stuck));
    collect(faults, faultInWhole("Usable", usable, 0, rooted));
    if (!faults.empty()) return refused(std::move(faults));
    UnitCost cost{.perStuck = total / stuck, .perRooted = {}, .perUsable = {}};
    if (rooted > 0) cost.perRooted = total / rooted;
    if (usable > 0) cost.perUsable = total / usable;
    return cost;
}

Result<double> strikeToBreakEven(double cheap, double cheapStrike, double dear) {
    Refusals faults;
    collect(faults, faultAboveZero("Cost of a cutting, the cheaper way", cheap, mostCost));
    collect(faults, faultAboveZero("Strike rate of the cheaper way", cheapStrike, 1));
    collect(faults, faultInMoney("Cost of a cutting, the dearer way", dear));
    if (!faults.empty()) return refused(std::move(faults));
    return cheapStrike * dear / cheap;
}

}  // namespace core
