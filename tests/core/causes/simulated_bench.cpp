// SPDX-License-Identifier: MIT
#include "tests/core/causes/simulated_bench.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "core/comparison/spread.h"
#include "stats/numeric/seeded_random.h"

namespace examples {

namespace {

constexpr core::Date firstDay{std::chrono::year{2026}, std::chrono::March, std::chrono::day{2}};
constexpr int seasonDays = 100;
constexpr int plants = 4, methods = 2, stations = 6, lots = 3;
constexpr int horizon = 28;
constexpr double planted30Points = 0.3;
constexpr int fewestAffectedCuttings = 60;
constexpr core::LossCauseId rotted{1}, driedOut{2}, pests{3}, other{4};

core::Moment noonOf(core::Date day) {
    return core::Moment{std::chrono::sys_days{day}} + std::chrono::hours{12};
}

/// What is wrong, if anything.
struct Wrong {
    Planted planted{};
    core::StationId tub{};
    int from{}, days{};  // of the season
    int lot{};

    [[nodiscard]] bool isIn(int day) const { return from <= day && day < from + days; }
};

core::Shelves benchShelves() {
    core::Shelves shelves;
    shelves.facts.horizonDay = horizon;
    for (int i = 1; i <= plants; ++i) {
        core::Plant& plant = shelves.plants.emplace_back();
        plant.id = {i};
        plant.botanicalName = "Planta invented" + std::to_string(i);
        for (int s = 0; s < 2; ++s)
            shelves.stockPlants.push_back(
                {.id = {2 * i + s}, .plant = {i}, .label = std::to_string(2 * i + s), .note = {}});
    }
    shelves.methods = {{.id = {1}, .name = "aerated water"}, {.id = {2}, .name = "media tray"}};
    for (int i = 1; i <= stations; ++i)
        shelves.stations.push_back({.id = {i},
                                    .name = (i <= 3 ? "Tub " : "Tray ") + std::to_string(i),
                                    .method = {i <= 3 ? 1 : 2},
                                    .blocked = {},
                                    .note = {}});
    shelves.treatments = {{.id = {1}, .name = "IBA gel", .auxins = {{"IBA", core::AuxinForm::Acid, 1000}}, .note = {}},
                          {.id = {2}, .name = "Nothing", .auxins = {}, .note = {}}};
    shelves.lossCauses = {{.id = rotted, .name = "rotted"},
                          {.id = driedOut, .name = "dried out"},
                          {.id = pests, .name = "pests"},
                          {.id = other, .name = "other"}};
    return shelves;
}

class SeasonByChance {
  public:
    SeasonByChance(Planted planted, std::uint64_t seed) : random_(seed) {
        wrong_.planted = planted;
        wrong_.tub = {below(3) + 1};
        wrong_.from = 15 + below(50);
        wrong_.days = planted == Planted::ColdTub ? 28 + below(8) : 30;
        wrong_.lot = below(lots);
        correlation_ = 0.05 + 0.05 * random_.uniform();
        for (double& rate : rates_) rate = 0.55 + 0.3 * random_.uniform();
        bench_.records.shelves = benchShelves();
        for (int lot = 0; lot < lots; ++lot) {
            lotFrom_[lot] = lot == 0 ? -40 : lot * seasonDays / lots - 8 + below(16);
            bench_.records.shelves.lots.push_back({.id = {lot + 1},
                                                   .name = std::string(1, static_cast<char>('A' + lot)),
                                                   .treatment = {1},
                                                   .usedFrom = core::addDays(firstDay, lotFrom_[lot])});
        }
    }

    SimulatedBench bench() {
        const int wanted = 40 + below(21);
        double day = 0;
        const double step = 2.0 * seasonDays / wanted;
        for (int session = 1; static_cast<int>(bench_.records.batches.size()) < wanted; ++session) {
            addSession(session, static_cast<int>(day), wanted);
            day += step * (0.5 + random_.uniform());
        }
        addReadings(static_cast<int>(day) + 20);
        return std::move(bench_);
    }

  private:
    int below(int bound) { return static_cast<int>(random_.below(static_cast<std::uint64_t>(bound))); }

    void addSession(int number, int day, int wanted) {
        bench_.records.sessions.push_back({.id = {number},
                                           .date = core::addDays(firstDay, day),
                                           .worker = random_.uniform() < 0.5 ? "A." : "B.",
                                           .note = {}});
        const int batches = 1 + below(3);
        for (int i = 0; i < batches && static_cast<int>(bench_.records.batches.size()) < wanted; ++i)
            addBatch(number, day);
    }

    void addBatch(int session, int day) {
        core::BatchRecord record;
        core::Batch& batch = record.batch;
        const int number = static_cast<int>(bench_.records.batches.size()) + 1;
        batch.id = {number};
        batch.code = "S" + std::to_string(number);
        batch.session = {session};
        batch.stuckOn = core::addDays(firstDay, day);
        batch.plant = {below(plants) + 1};
        batch.stockPlant = {2 * batch.plant.value + below(2)};
        batch.station = {below(stations) + 1};
        batch.method = {batch.station.value <= 3 ? 1 : 2};
        batch.treatment = {random_.uniform() < 0.75 ? 1 : 2};
        batch.stuck = 12 + below(13);
        const bool isAffected = isHit(batch, day);
        if (isAffected) {
            bench_.affected.insert(batch.id);
            bench_.affectedCuttings += batch.stuck;
        }
        grow(record, isAffected);
        bench_.records.batches.push_back(std::move(record));
    }

    [[nodiscard]] bool isHit(const core::Batch& batch, int day) const {
        switch (wrong_.planted) {
            case Planted::Nothing:
                return false;
            case Planted::ColdTub:  // for a week of its first two at least
                return batch.station == wrong_.tub && day + 7 >= wrong_.from && day + 7 <= wrong_.from + wrong_.days;
            case Planted::BadLot: {
                const int next = wrong_.lot + 1 < lots ? lotFrom_[wrong_.lot + 1] : seasonDays * 10;
                return batch.treatment.value == 1 && day >= lotFrom_[wrong_.lot] && day < next;
            }
            case Planted::PestMonth:
                return wrong_.isIn(day);
        }
        return false;
    }

    /// Most of what doesn't root is lost on the way, some is still unrooted on the last day.
    void grow(core::BatchRecord& record, bool isAffected) {
        const core::Batch& batch = record.batch;
        const double mean = rates_[2 * (batch.plant.value - 1) + batch.method.value - 1];
        const double both = 1 / correlation_ - 1;
        double rate = random_.beta(mean * both, (1 - mean) * both);
        const double lower = isAffected ? std::max(0.02, rate - planted30Points) : rate;
        const int asUsual = random_.binomial(batch.stuck, rate);
        const int rooted = asUsual - random_.binomial(asUsual, rate > 0 ? 1 - lower / rate : 0);
        const bool isByPests = isAffected && wrong_.planted == Planted::PestMonth;
        const int lostUsually = random_.binomial(batch.stuck - asUsual, 0.7);
        const int lostMore = isByPests ? asUsual - rooted : random_.binomial(asUsual - rooted, 0.7);
        addChecks(record, rooted, lostUsually + (isByPests ? 0 : lostMore), isByPests ? lostMore : 0);
    }

    core::LossCauseId usualCause() {
        const double draw = random_.uniform();
        return draw < 0.45 ? rotted : draw < 0.75 ? driedOut : draw < 0.87 ? pests : other;
    }

    void addChecks(core::BatchRecord& record, int rooted, int lostUsually, int lostToPests) {
        std::map<int, core::Check> checks;
        for (const int day : {7, 14, 21, horizon}) {
            core::Check& check = checks[day];
            check.id = {++checkId_};
            check.batch = record.batch.id;
            check.checkedOn = core::addDays(record.batch.stuckOn, day);
        }
        for (int i = 0; i < rooted; ++i)
            ++checks[random_.uniform() < 0.3 ? 14 : random_.uniform() < 0.6 ? 21 : 28].rooted;
        std::map<int, std::map<core::LossCauseId, int>> lost;
        for (int i = 0; i < lostUsually; ++i) ++lost[7 * (below(4) + 1)][usualCause()];
        for (int i = 0; i < lostToPests; ++i) ++lost[7 * (below(2) + 1)][pests];
        for (auto& [day, check] : checks) {
            for (const auto& [cause, count] : lost[day]) check.losses.push_back({.cause = cause, .count = count});
            record.checks.push_back(check);
        }
    }

    void addReadings(int days) {
        bench_.conditions.dayStart = [](core::Date day) { return core::Moment{std::chrono::sys_days{day}}; };
        for (int i = 1; i <= stations; ++i) {
            core::MeasuredValues measured;
            for (int day = 0; day < days; day += 2) addReadingsOf(i, day, measured);
            bench_.conditions.climates.emplace(core::StationId{i},
                                               core::climateFrom(std::move(measured), bench_.records.shelves.facts));
        }
    }

    /// Each station has a climate of its own, not always inside its bands, and that does no harm.
    void addReadingsOf(int station, int day, core::MeasuredValues& measured) {
        const core::Moment at = noonOf(core::addDays(firstDay, day));
        const auto add = [&](core::Quantity quantity, double mean, double ownDeviation, double deviation) {
            const auto [own, isNew] = ownMeans_.try_emplace({station, quantity});
            if (isNew) own->second = random_.normal(mean, ownDeviation);
            measured[quantity].push_back({.at = at, .value = random_.normal(own->second, deviation)});
        };
        const bool isCold = wrong_.planted == Planted::ColdTub && wrong_.tub.value == station && wrong_.isIn(day);
        add(core::Quantity::AirTemperature, 22.5, 1, 1);
        add(core::Quantity::RelativeHumidity, 90, 2, 1.5);
        if (station > 3) return add(core::Quantity::MediumTemperature, 22.8, 0.8, 0.8);
        add(core::Quantity::SolutionEc, 0.42, 0.06, 0.05);
        add(core::Quantity::SolutionPh, 5.9, 0.2, 0.15);
        if (!isCold) return add(core::Quantity::SolutionTemperature, 20.5, 1, 0.8);
        measured[core::Quantity::SolutionTemperature].push_back({.at = at, .value = random_.normal(15, 0.8)});
    }

    stats::SeededRandom random_;
    Wrong wrong_;
    double correlation_{};
    double rates_[plants * methods]{};
    int lotFrom_[lots]{};
    std::map<std::pair<int, core::Quantity>, double> ownMeans_;
    int checkId_{};
    SimulatedBench bench_;
};

/// How far below the others of its plant and method; 0 where there are none.
double deviationOf(const core::Course& course, std::span<const core::Course> all, double correlation) {
    const core::Batch& own = course.record->batch;
    double rooted = 0.5, assessed = 1;
    for (const core::Course& each : all) {
        const core::Batch& batch = each.record->batch;
        if (&each == &course || batch.plant != own.plant || batch.method != own.method) continue;
        rooted += each.fate.rooted, assessed += each.fate.assessed;
    }
    const double rate = rooted / assessed, of = course.fate.assessed;
    return (course.fate.rooted - of * rate) / std::sqrt(of * rate * (1 - rate) * (1 + (of - 1) * correlation));
}

}  // namespace

SimulatedBench simulatedBench(Planted planted, std::uint64_t seed) {
    constexpr std::uint64_t tries = 1000;
    for (std::uint64_t attempt = 0;; ++attempt) {
        SimulatedBench bench = SeasonByChance(planted, seed * tries + attempt).bench();
        if (planted == Planted::Nothing || bench.affectedCuttings >= fewestAffectedCuttings) return bench;
    }
}

core::Suspects suspectsOfWorst(const SimulatedBench& bench) {
    std::vector<core::Course> courses;
    for (const core::BatchRecord& record : bench.records.batches) courses.push_back(core::courseOf(record, horizon));
    const stats::PooledSpread spread = core::pooledSpreadOf(bench.records.batches, horizon, 0.95);
    const core::Course* worst = nullptr;
    double farthest = HUGE_VAL;
    for (const core::Course& course : courses) {
        if (!bench.affected.empty() && !bench.affected.contains(course.record->batch.id)) continue;
        const double deviation = deviationOf(course, courses, spread.correlation);
        if (deviation < farthest) farthest = deviation, worst = &course;
    }
    return core::suspectsFor(*worst, {.batches = courses,
                                      .shelves = bench.records.shelves,
                                      .sessions = bench.records.sessions,
                                      .care = {},
                                      .conditions = bench.conditions,
                                      .spread = spread});
}

}  // namespace examples
