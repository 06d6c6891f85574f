// SPDX-License-Identifier: MIT
// Every check of the horticultural reference data that concerns strike rates, numbers to stick, days and costs.
#include <gtest/gtest.h>

#include <cmath>
#include <functional>
#include <map>
#include <vector>

#include "core/comparison/rate_interval.h"
#include "core/due/first_look.h"
#include "core/money/batch_cost.h"
#include "core/planning/how_many.h"
#include "core/planning/when.h"
#include "core/units/days.h"
#include "stats/planning/normal_power.h"
#include "stats/planning/predictive_count.h"
#include "tests/support/horticulture_checks.h"

namespace {

using support::HorticultureCheck;
using RecordsAnswer = std::function<nlohmann::json(const HorticultureCheck&)>;

int wholeOf(const HorticultureCheck& check, const std::string& input) {
    return check.inputs.at(input).get<int>();
}

core::Date dayOf(const HorticultureCheck& check, const std::string& input) {
    return core::dateFromIso(check.word(input)).value();
}

nlohmann::json limitsOf(const HorticultureCheck& check, core::RateInterval interval) {
    const core::Limits limits = core::rateLimits(interval, wholeOf(check, "rooted"), wholeOf(check, "stuck"), 0.95);
    return {{"low", limits.low}, {"high", limits.high}};
}

nlohmann::json numberToStick(const HorticultureCheck& check) {
    const int wanted = wholeOf(check, "plants_wanted");
    const double strike = check.number("strike");
    return {{"n", stats::countForKnownRate(wanted, strike, check.number("confidence")).count.value()},
            {"simple_n", core::plainNumber(wanted, strike).value()}};
}

nlohmann::json perArm(const HorticultureCheck& check) {
    const auto number = stats::trialsForNormalPower(0.8, check.number("p1"), check.number("p2"), check.number("alpha"));
    return std::ceil(number.value());
}

nlohmann::json energyOf(const HorticultureCheck& check) {
    std::vector<core::ElectricLoad> loads;
    for (const nlohmann::json& load : check.inputs.at("loads"))
        loads.push_back({.watts = load.at("W"),
                         .hoursADay = load.at("h_per_day"),
                         .days = load.at("days"),
                         .duty = load.at("duty")});
    return core::kilowattHours(loads).value();
}

nlohmann::json costOf(const HorticultureCheck& check) {
    const core::BatchCost cost = core::batchCost({.capital = check.number("capital"),
                                                  .lifeYears = check.number("life_years"),
                                                  .batchesAYear = check.number("batches_per_year"),
                                                  .consumablesPerCutting = check.number("consumable_per_cutting"),
                                                  .stuck = wholeOf(check, "stuck"),
                                                  .kilowattHours = check.number("kWh"),
                                                  .pricePerKilowattHour = check.number("price_per_kWh"),
                                                  .minutesOfWork = check.number("minutes"),
                                                  .worthOfAnHour = check.number("wage_per_hour"),
                                                  .overhead = check.number("overhead_fraction")})
                                     .value();
    return {{"capital", cost.capital}, {"consumables", cost.consumables}, {"electricity", cost.electricity},
            {"labour", cost.labour},   {"overhead", cost.overhead},       {"total", cost.total()}};
}

nlohmann::json unitCostOf(const HorticultureCheck& check) {
    const core::UnitCost cost = core::unitCost(check.number("total"), wholeOf(check, "stuck"), wholeOf(check, "rooted"),
                                               wholeOf(check, "usable"))
                                    .value();
    return {{"per_stuck", cost.perStuck}, {"per_rooted", *cost.perRooted}, {"per_usable", *cost.perUsable}};
}

const std::map<std::string, RecordsAnswer>& recordsAnswers() {
    static const std::map<std::string, RecordsAnswer> answers{
        {"wilson_95", [](const auto& check) { return limitsOf(check, core::RateInterval::Wilson); }},
        {"clopper_pearson_95", [](const auto& check) { return limitsOf(check, core::RateInterval::ClopperPearson); }},
        {"cuttings_to_stick", numberToStick},
        {"cuttings_per_treatment_80pct_power", perArm},
        {"start_for_finish",
         [](const auto& check) {
             return core::plainNumber(wholeOf(check, "finish"), 1 - check.number("shrink_pct") / 100).value();
         }},
        {"energy_kWh", energyOf},
        {"batch_cost", costOf},
        {"unit_cost", unitCostOf},
        {"break_even_strike", [](const auto& check) {
             return core::strikeToBreakEven(check.number("cost_A"), check.number("strike_A"), check.number("cost_B"))
                 .value();
         }}};
    return answers;
}

std::set<std::string> recordsFunctions() {
    std::set<std::string> functions;
    for (const auto& [function, answer] : recordsAnswers()) functions.insert(function);
    return functions;
}

class RecordsReference : public testing::TestWithParam<HorticultureCheck> {};

TEST_P(RecordsReference, IsReproduced) {
    SCOPED_TRACE("source: " + GetParam().source);
    GetParam().expect(recordsAnswers().at(GetParam().function)(GetParam()));
}
INSTANTIATE_TEST_SUITE_P(Horticulture, RecordsReference,
                         testing::ValuesIn(support::horticultureChecks(recordsFunctions())), support::nameOfCheck);

class LatestDayReference : public testing::TestWithParam<HorticultureCheck> {};

TEST_P(LatestDayReference, IsReproduced) {
    core::RootingDays rooting;
    rooting.upper = wholeOf(GetParam(), "rooting_days");
    const auto when = core::whenToStick({.needBy = dayOf(GetParam(), "need_by"),
                                         .hardeningDays = 0,
                                         .pottingDays = wholeOf(GetParam(), "growing_on_days")},
                                        rooting, core::PlanSubject{}, core::dateFromIso("2026-01-01").value());
    EXPECT_EQ(core::isoText(when.value().stickBy), GetParam().expected.get<std::string>()) << GetParam().source;
}
INSTANTIATE_TEST_SUITE_P(Horticulture, LatestDayReference,
                         testing::ValuesIn(support::horticultureChecks({"latest_stick_date"})), support::nameOfCheck);

class FirstLookReference : public testing::TestWithParam<HorticultureCheck> {};

TEST_P(FirstLookReference, IsReproduced) {
    const int days = core::usualFirstLook(GetParam().number("days_low")).value();
    EXPECT_EQ(core::isoText(core::addDays(dayOf(GetParam(), "stuck"), days)), GetParam().expected.get<std::string>())
        << GetParam().source;
}
INSTANTIATE_TEST_SUITE_P(Horticulture, FirstLookReference,
                         testing::ValuesIn(support::horticultureChecks({"first_check_date"})), support::nameOfCheck);

class ShareOfCapitalReference : public testing::TestWithParam<HorticultureCheck> {};

TEST_P(ShareOfCapitalReference, IsRefusedRatherThanDivided) {
    ASSERT_TRUE(GetParam().expected.is_null());
    const auto cost = core::batchCost({.capital = GetParam().number("capital"),
                                       .lifeYears = GetParam().number("life_years"),
                                       .batchesAYear = GetParam().number("batches_per_year"),
                                       .stuck = 45});
    ASSERT_FALSE(cost);
    EXPECT_EQ(cost.error().front().field, "Batches a year");
}
INSTANTIATE_TEST_SUITE_P(Horticulture, ShareOfCapitalReference,
                         testing::ValuesIn(support::horticultureChecks({"capital_per_batch_zero_batches"})),
                         support::nameOfCheck);

}  // namespace
