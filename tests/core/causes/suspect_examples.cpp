// SPDX-License-Identifier: MIT
#include "tests/core/causes/suspect_examples.h"

#include <algorithm>
#include <set>

#include "core/comparison/spread.h"

namespace examples {

namespace {

core::Moment midnightOf(core::Date day) {
    return core::Moment{std::chrono::sys_days{day}};
}

}  // namespace

support::BatchBuilder hebeRooted(int rooted, int stuckAfterDays, core::StationId station) {
    return support::aBatch()
        .at(station)
        .stuckOn(core::addDays(support::stickingDay(), stuckAfterDays))
        .looked(35, {.rooted = rooted});
}

void SuspectBench::read(core::StationId station, core::Quantity quantity, double value, int fromDay, int toDay) {
    std::vector<core::TimedValue>& values = measured[station][quantity];
    for (int hour = 24 * fromDay; hour < 24 * toDay; hour += 2)
        values.push_back({.at = midnightOf(support::stickingDay()) + std::chrono::hours{hour}, .value = value});
}

core::Suspects SuspectBench::suspects() const {
    std::vector<core::Course> courses;
    for (const core::BatchRecord& record : batches) courses.push_back(core::courseOf(record, 35));
    std::set<core::SessionId> ids;
    for (const core::BatchRecord& record : batches) ids.insert(record.batch.session);
    std::vector<core::Session> sessions;
    for (const core::SessionId id : ids) sessions.push_back({.id = id, .date = {}, .worker = worker, .note = {}});
    core::ConditionsOnRecord conditions{.climates = {}, .dayStart = midnightOf};
    for (const auto& [station, values] : measured)
        conditions.climates.emplace(station, core::climateFrom(values, shelves.facts));
    stats::PooledSpread spread = core::pooledSpreadOf(batches, 35, 0.95);
    if (correlation) {
        spread.correlation = *correlation;
        spread.law = stats::knownCorrelation(*correlation);
    }
    return core::suspectsFor(courses.front(), {.batches = courses,
                                               .shelves = shelves,
                                               .sessions = sessions,
                                               .care = care,
                                               .conditions = conditions,
                                               .spread = spread});
}

SuspectBench poorInNorthTub(int others) {
    SuspectBench bench;
    for (int i = 0; i <= others; ++i)
        bench.batches.push_back(hebeRooted(fewRooted + i % 2, i == 0 ? 10 : 4 * i, support::tubNorth));
    for (int i = 0; i < 10; ++i)
        bench.batches.push_back(hebeRooted(usuallyRooted + i % 3 - 1, 2 * i, support::tubSouth));
    for (int i = 0; i < 6; ++i)
        bench.batches.push_back(hebeRooted(usuallyRooted + i % 3 - 1, -60 - 3 * i, support::tubNorth));
    return bench;
}

SuspectBench coldNorthTub() {
    SuspectBench bench = poorInNorthTub();
    bench.read(support::tubNorth, core::Quantity::SolutionTemperature, 15, 0, 40);
    bench.read(support::tubNorth, core::Quantity::SolutionTemperature, 21, -100, -1);
    bench.read(support::tubSouth, core::Quantity::SolutionTemperature, 21, -100, 60);
    std::ranges::sort(bench.measured[support::tubNorth][core::Quantity::SolutionTemperature], {},
                      &core::TimedValue::at);
    return bench;
}

const core::Suspect* suspectNamed(const core::Suspects& found, const std::string& part) {
    const auto at = std::ranges::find_if(
        found.suspects, [&part](const core::Suspect& suspect) { return suspect.name.find(part) != std::string::npos; });
    return at == found.suspects.end() ? nullptr : &*at;
}

}  // namespace examples
