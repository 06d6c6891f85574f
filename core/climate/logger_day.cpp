// SPDX-License-Identifier: MIT
#include "core/climate/logger_day.h"

#include "core/field_faults.h"
#include "core/records.h"

namespace core {

namespace {

std::string wordsOf(const LoggerDay& day) {
    return std::string(factsOf(day.quantity).name) + " of " + isoText(day.day);
}

Moment lastMomentOf(const LoggerDay& day) {
    return day.samples.empty() ? std::chrono::sys_days(day.day) : momentOf(day, day.samples.back());
}

}  // namespace

Moment momentOf(const LoggerDay& day, const Sample& sample) {
    return std::chrono::sys_days(day.day) + std::chrono::seconds(sample.second);
}

std::string faultInSamples(const LoggerDay& day) {
    const QuantityFacts& facts = factsOf(day.quantity);
    if (day.samples.empty()) return "The logger's " + wordsOf(day) + " has no values; at least one is needed.";
    int before = -1;
    for (const Sample& sample : day.samples) {
        if (sample.second <= before || sample.second >= secondsInADay)
            return "The logger's " + wordsOf(day) + " has values out of order, or two of one second.";
        if (!(sample.value >= facts.low && sample.value <= facts.high)) {
            const std::string unit = facts.unit.empty() ? "" : ' ' + std::string(facts.unit);
            return "The logger's " + std::string(facts.name) + " at " + isoText(momentOf(day, sample)) + " is " +
                   figureText(sample.value) + unit + "; " + figureText(facts.low) + " to " + figureText(facts.high) +
                   unit + " is allowed.";
        }
        before = sample.second;
    }
    return {};
}

Refusals faultsIn(const LoggerDay& day, const Shelves& shelves, Moment now) {
    constexpr Date earliest = std::chrono::year{1800} / 1 / 1;
    constexpr std::chrono::minutes leeway{5};
    Refusals faults;
    if (find(shelves.stations, day.station) == nullptr) faults.push_back(missingRefusal("Station", day.station.value));
    if (!day.day.ok() || day.day < earliest) {
        faults.push_back({"Day", "no day of a calendar, or one before 1800", "1800-01-01 to today",
                          "Day is no day of a calendar, or one before 1800; 1800-01-01 to today is allowed."});
        return faults;
    }
    if (std::string fault = faultInSamples(day); !fault.empty()) {
        faults.push_back({"Value", wordsOf(day), "values in order that a meter can show", std::move(fault)});
    } else if (lastMomentOf(day) > now + leeway) {
        faults.push_back(outOfRange("Moment", isoText(lastMomentOf(day)), "1800-01-01 to now"));
    }
    return faults;
}

MergedSamples mergedSamples(const std::vector<Sample>& stored, const std::vector<Sample>& more) {
    MergedSamples merged;
    merged.samples.reserve(stored.size() + more.size());
    auto kept = stored.begin();
    for (const Sample& sample : more) {
        while (kept != stored.end() && kept->second < sample.second) merged.samples.push_back(*kept++);
        if (kept == stored.end() || kept->second > sample.second) {
            merged.samples.push_back(sample);
            ++merged.added;
        } else {
            ++(kept->value == sample.value ? merged.known : merged.differing);
        }
    }
    merged.samples.insert(merged.samples.end(), kept, stored.end());
    return merged;
}

}  // namespace core
