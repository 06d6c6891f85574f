// SPDX-License-Identifier: MIT
// logger.csv, whose rows become days as they are read: a million of them take no more room than in the logbook.
#include <algorithm>
#include <map>
#include <tuple>

#include "core/event_rules.h"
#include "db/exchange/folder_conditions.h"
#include "db/exchange/folder_events.h"

namespace db {

namespace {

class LoggerReading {
  public:
    LoggerReading(const FolderShelves& shelves, core::Moment now) : shelves_(shelves), now_(now) {}

    void take(TableRow& row);
    std::vector<core::LoggerDay> days() {
        std::vector<core::LoggerDay> all;
        all.reserve(days_.size());
        for (auto& [key, day] : days_) all.push_back(std::move(day));
        return all;
    }

  private:
    using Key = std::tuple<core::StationId, core::Quantity, core::Date>;

    core::LoggerDay& dayOf(const Key& key) {
        if (last_ != nullptr && lastKey_ == key) return *last_;
        const auto [place, isNew] = days_.try_emplace(key);
        if (isNew)
            place->second = {.station = std::get<core::StationId>(key),
                             .quantity = std::get<core::Quantity>(key),
                             .day = std::get<core::Date>(key),
                             .samples = {}};
        lastKey_ = key;
        last_ = &place->second;
        return *last_;
    }

    const FolderShelves& shelves_;
    core::Moment now_;
    std::map<Key, core::LoggerDay> days_;
    Key lastKey_{};
    core::LoggerDay* last_{};
};

void LoggerReading::take(TableRow& row) {
    core::Reading reading;
    reading.station = stationIn(row, shelves_);
    reading.quantity = quantityIn(row);
    const auto at = row.moment("at");
    const auto value = row.signedFigure("value");
    if (!row.isSound() || !at || !value) return;
    reading.readAt = *at;
    reading.value = *value;
    for (const core::Refusal& refusal : core::faultsIn(reading, shelves_.shelves, now_))
        row.fault(refusal.field == "Read at" ? "at" : "value", refusal.sentence);
    if (!row.isSound()) return;
    const auto day = std::chrono::floor<std::chrono::days>(*at);
    const auto second = static_cast<int>((*at - day).count());
    std::vector<core::Sample>& samples = dayOf({reading.station, reading.quantity, core::Date(day)}).samples;
    const auto place = samples.empty() || samples.back().second < second
                           ? samples.end()
                           : std::ranges::lower_bound(samples, second, {}, &core::Sample::second);
    if (place != samples.end() && place->second == second)
        return row.fault("at", "There is a value of this station, quantity and moment already; one is allowed.");
    samples.insert(place, {.second = second, .value = *value});
}

}  // namespace

std::vector<core::LoggerDay> readLogger(const std::filesystem::path& folder, const FolderShelves& shelves,
                                        core::Moment now, FaultList& faults, const std::stop_token& stop) {
    LoggerReading reading(shelves, now);
    readTable(folder, "logger", faults, stop, [&](TableRow& row) {
        if (row.isWhole()) reading.take(row);
    });
    return reading.days();
}

}  // namespace db
