// SPDX-License-Identifier: MIT
#include "core/demo/demo_bench.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>

#include "core/demo/demo_shelves.h"

namespace core {

namespace {

constexpr double shareByPosition = 0.6;  // of the batches with positions, those looked at hole by hole
constexpr int daysBetweenReadings = 4;

/// The last day on which anything of it stood there; nothing: it still does.
std::optional<Date> endOf(const BatchRecord& record) {
    if (record.batch.closedOn) return record.batch.closedOn;
    const Tally tally = tallyOf(record.batch, record.checks);
    return tally.undecided() == 0 ? tally.lastCheckedOn : std::nullopt;
}

/// Gives batches their positions, station by station in order of day, and their checks findings.
class PositionWriter {
  public:
    PositionWriter(Records& records, stats::SeededRandom& random) : records_(records), random_(random) {}

    void write() {
        for (const Station& station : records_.shelves.stations)
            for (const Position position : usablePositions(station)) freeFrom_[station.id][position] = Date{};
        for (BatchRecord& record : records_.batches) place(record);
    }

  private:
    void place(BatchRecord& record) {
        std::map<Position, Date>& station = freeFrom_[record.batch.station];
        std::vector<Position> free;
        for (const auto& [position, from] : station)
            if (from <= record.batch.stuckOn && static_cast<int>(free.size()) < record.batch.stuck)
                free.push_back(position);
        if (static_cast<int>(free.size()) < record.batch.stuck) return;  // a full station: nobody counted the holes
        record.batch.positions = textOf(free);
        const Date end = endOf(record).value_or(Date{std::chrono::year{9999} / 12 / 31});
        for (const Position position : free) station[position] = end;
        if (random_.uniform() < shareByPosition) find(record, std::move(free), station);
    }

    /// Every count of every check falls on positions by chance; where a cutting was lost or taken away there is room again.
    void find(BatchRecord& record, std::vector<Position> undecided, std::map<Position, Date>& station) {
        for (Check& check : record.checks) {
            const auto found = [&](int count, Outcome outcome, LossCauseId cause) {
                for (; count > 0; --count) {
                    const auto at = undecided.begin() + static_cast<std::ptrdiff_t>(random_.below(undecided.size()));
                    check.findings.push_back({.position = *at, .outcome = outcome, .cause = cause});
                    if (outcome != Outcome::Rooted) station[*at] = std::min(station[*at], check.checkedOn);
                    undecided.erase(at);
                }
            };
            found(check.rooted, Outcome::Rooted, {});
            for (const Loss& loss : check.losses) found(loss.count, Outcome::Lost, loss.cause);
            found(check.withdrawn, Outcome::Withdrawn, {});
            std::ranges::sort(check.findings, {}, &Finding::position);
        }
    }

    Records& records_;
    stats::SeededRandom& random_;
    std::map<StationId, std::map<Position, Date>> freeFrom_;
};

/// Around which figure a quantity varies, how much, and to what it is read.
struct MadeUp {
    Quantity quantity;
    double middle;
    double spread;
    double step;
    int every;  // so manieth time
};

// All made up; they are nobody's measurements.
constexpr std::array inTubs{
    MadeUp{Quantity::SolutionEc, 0.55, 0.22, 0.01, 1},      MadeUp{Quantity::SolutionPh, 5.9, 0.2, 0.1, 1},
    MadeUp{Quantity::SolutionTemperature, 21, 1.4, 0.1, 1}, MadeUp{Quantity::DissolvedOxygen, 7.2, 0.8, 0.1, 3},
    MadeUp{Quantity::AirTemperature, 22.5, 1.8, 0.1, 1},    MadeUp{Quantity::RelativeHumidity, 88, 5, 1, 1}};
constexpr std::array onBenches{MadeUp{Quantity::MediumTemperature, 23.4, 1.0, 0.1, 1},
                               MadeUp{Quantity::AirTemperature, 22.5, 1.8, 0.1, 1},
                               MadeUp{Quantity::RelativeHumidity, 88, 6, 1, 1}, MadeUp{Quantity::Light, 105, 28, 1, 3}};

bool fallsInTheCold(Quantity quantity) {
    return quantity == Quantity::SolutionTemperature || quantity == Quantity::MediumTemperature ||
           quantity == Quantity::AirTemperature;
}

/// Goes round the stations every few days while something stands there, with a meter.
class RoundWriter {
  public:
    RoundWriter(Records& records, const DemoCalendar& calendar, IdSource& ids, stats::SeededRandom& random)
        : records_(records), calendar_(calendar), ids_(ids), random_(random) {}

    void write() {
        for (std::size_t place = 0; place < records_.shelves.stations.size(); ++place) {
            const Station& station = records_.shelves.stations[place];
            const bool isTub = place < stationsPerMethod;
            const std::vector<bool> used = daysInUse(station.id);
            int turn = 0;
            for (int day = (DemoCalendar::lastDay - 1) % daysBetweenReadings; day < DemoCalendar::lastDay;
                 day += daysBetweenReadings)
                if (used[static_cast<std::size_t>(day)]) visit(station.id, isTub, day, turn++);
        }
    }

  private:
    [[nodiscard]] std::vector<bool> daysInUse(StationId station) const {
        std::vector<bool> used(DemoCalendar::lastDay + 1);
        const Date first = calendar_.dateOf(0);
        for (const BatchRecord& record : records_.batches) {
            if (record.batch.station != station) continue;
            const int last = daysBetween(first, endOf(record).value_or(calendar_.today));
            for (int day = daysBetween(first, record.batch.stuckOn); day <= last; ++day)
                used[static_cast<std::size_t>(day)] = true;
        }
        return used;
    }

    void visit(StationId station, bool isTub, int day, int turn) {
        const Moment at = std::chrono::sys_days(calendar_.dateOf(day)) + std::chrono::hours(7) +
                          std::chrono::minutes(static_cast<int>(random_.below(120)));
        if (isTub)
            for (const MadeUp& made : inTubs) read(station, made, day, turn, at);
        else
            for (const MadeUp& made : onBenches) read(station, made, day, turn, at);
        const Moment after = at + std::chrono::minutes(15);
        if (!isTub) return take(station, after, CareKind::Misted, "");
        if (turn % 4 == 3) return take(station, after, CareKind::SolutionChanged, "Fresh rainwater.");
        if (turn % 2 == 1) take(station, after, CareKind::ToppedUp, "About 4 L.");
    }

    void read(StationId station, const MadeUp& made, int day, int turn, Moment at) {
        if (turn % made.every != 0) return;
        const QuantityFacts& facts = factsOf(made.quantity);
        double value = random_.normal(made.middle, made.spread);
        if (coldSpell.holds(day) && fallsInTheCold(made.quantity)) value -= 8;
        value =
            std::clamp(std::round(value / made.step) / std::round(1 / made.step), std::max(0.0, facts.low), facts.high);
        records_.readings.push_back({.id = ids_.next<ReadingId>(),
                                     .station = station,
                                     .quantity = made.quantity,
                                     .readAt = at,
                                     .value = value,
                                     .note = ""});
    }

    void take(StationId station, Moment at, CareKind kind, const char* note) {
        records_.care.push_back(
            {.id = ids_.next<CareId>(), .station = station, .doneAt = at, .kind = kind, .note = note});
    }

    Records& records_;
    const DemoCalendar& calendar_;
    IdSource& ids_;
    stats::SeededRandom& random_;
};

void addExpenses(Records& records, IdSource& ids, stats::SeededRandom& random) {
    struct Bought {
        const char* what;
        std::int64_t hundredths;
    };
    constexpr std::array bought{Bought{"a jar of rooting gel", 850}, Bought{"labels and ties", 320},
                                Bought{"a bag of coir", 1290}};
    const std::size_t every = std::max<std::size_t>(8, records.batches.size() / 20);
    for (std::size_t place = every / 2; place < records.batches.size(); place += every) {
        const Batch& batch = records.batches[place].batch;
        const Bought& one = bought[random.below(bought.size())];
        records.expenses.push_back({.id = ids.next<ExpenseId>(),
                                    .batch = batch.id,
                                    .spentOn = batch.stuckOn,
                                    .what = one.what,
                                    .hundredths = one.hundredths});
    }
}

}  // namespace

void addBenchRecords(Records& records, const DemoCalendar& calendar, IdSource& ids, stats::SeededRandom& random) {
    // As often as the logbook's own, so that nothing falls due on another day for it.
    const LogbookFacts& facts = records.shelves.facts;
    records.shelves.checkSchedules.push_back({.id = ids.next<CheckScheduleId>(),
                                              .name = "Tubs, every week",
                                              .firstAfterDays = facts.firstCheckAfterDays,
                                              .everyDays = facts.checkEveryDays});
    records.shelves.methods[aeratedWater].checkSchedule = records.shelves.checkSchedules.back().id;
    PositionWriter(records, random).write();
    RoundWriter(records, calendar, ids, random).write();
    std::ranges::sort(records.readings, {},
                      [](const Reading& reading) { return std::pair(reading.readAt, reading.id); });
    std::ranges::sort(records.care, {}, [](const Care& care) { return std::pair(care.doneAt, care.id); });
    addExpenses(records, ids, random);
}

}  // namespace core
