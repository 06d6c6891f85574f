// SPDX-License-Identifier: MIT
#include "core/event_rules.h"

#include <array>

#include "core/batch/day_rules.h"
#include "core/units/entered_text.h"
#include "core/units/figure_text.h"

namespace core {

namespace {

void put(Refusals& faults, std::optional<Refusal> fault) {
    if (fault) faults.push_back(std::move(*fault));
}

void judgeStation(StationId id, const Shelves& shelves, Refusals& faults) {
    if (find(shelves.stations, id) != nullptr) return;
    faults.push_back({"Station", id.isSet() ? "the id " + std::to_string(id.value) : "not given", "one of this logbook",
                      "Station is not one of this logbook; choose one of its stations."});
}

void judgeMoment(const std::string& field, Moment moment, Moment now, Refusals& faults) {
    const Moment earliest =
        std::chrono::sys_days(Date{std::chrono::year{1800}, std::chrono::January, std::chrono::day{1}});
    // A clock that runs a little fast is no fault of the grower's.
    constexpr std::chrono::minutes leeway{5};
    if (moment >= earliest && moment <= now + leeway) return;
    const std::string allowed = "1800-01-01 to now";
    faults.push_back(
        {field, isoText(moment), allowed, field + " is " + isoText(moment) + "; " + allowed + " is allowed."});
}

/// By its first bytes: the two kinds of picture that a logbook keeps.
bool isPicture(const ImageBytes& image) {
    constexpr std::array<std::uint8_t, 3> jpeg{0xFF, 0xD8, 0xFF};
    constexpr std::array<std::uint8_t, 4> png{0x89, 'P', 'N', 'G'};
    return (image.size() > jpeg.size() && std::equal(jpeg.begin(), jpeg.end(), image.begin())) ||
           (image.size() > png.size() && std::equal(png.begin(), png.end(), image.begin()));
}

void judgeDayOf(const std::string& field, Date day, const Batch& batch, Date today, Refusals& faults) {
    if (auto fault = faultInDay(field, day, today)) return faults.push_back(std::move(*fault));
    if (day >= batch.stuckOn) return;
    const std::string allowed = isoText(batch.stuckOn) + " to " + isoText(today);
    faults.push_back({field, isoText(day), allowed,
                      field + " is " + isoText(day) + ", but " + batch.code + " was stuck on " +
                          isoText(batch.stuckOn) + "; " + allowed + " is allowed."});
}

}  // namespace

Refusals faultsIn(const Reading& reading, const Shelves& shelves, Moment now) {
    Refusals faults;
    judgeStation(reading.station, shelves, faults);
    judgeMoment("Read at", reading.readAt, now, faults);
    const QuantityFacts& facts = factsOf(reading.quantity);
    if (!(reading.value >= facts.low && reading.value <= facts.high)) {
        const std::string unit = facts.unit.empty() ? "" : ' ' + std::string(facts.unit);
        const std::string allowed = figureText(facts.low) + " to " + figureText(facts.high) + unit;
        std::string field(facts.name);
        field[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(field[0])));
        faults.push_back({field, figureText(reading.value), allowed,
                          field + " is " + figureText(reading.value) + unit + "; " + allowed + " is allowed."});
    }
    put(faults, faultInNote("Note", reading.note));
    return faults;
}

Refusals faultsIn(const Care& care, const Shelves& shelves, Moment now) {
    Refusals faults;
    judgeStation(care.station, shelves, faults);
    judgeMoment("Done at", care.doneAt, now, faults);
    put(faults, faultInNote("Note", care.note));
    if (care.litres && !(*care.litres > 0 && *care.litres <= mostCareLitres))
        faults.push_back({"Litres", figureText(*care.litres), "more than 0 and up to 100000",
                          "Litres is " + figureText(*care.litres) + "; more than 0 and up to 100000 is allowed."});
    if (care.kind == CareKind::Other && isBlank(care.note))
        faults.push_back({"Note", "blank", "a few words",
                          "Note is blank, but the care is none of those with a name; a few words are needed."});
    return faults;
}

Refusals faultsIn(const Photo& photo, const ImageBytes& image, const Batch& batch, Date today) {
    Refusals faults;
    judgeDayOf("Taken on", photo.takenOn, batch, today, faults);
    put(faults, faultInLine("Caption", photo.caption));
    if (!isPicture(image) || image.size() > largestImage)
        faults.push_back({"Photo", std::to_string(image.size()) + " bytes", "a JPEG or PNG of up to 4 MB",
                          "Photo is " + std::to_string(image.size()) +
                              " bytes that are not a JPEG or PNG of up to 4 MB; such a picture is allowed."});
    return faults;
}

Refusals faultsIn(const Expense& expense, Date today) {
    constexpr std::int64_t most = 100'000'000'000;  // hundredths
    Refusals faults;
    put(faults, faultInDay("Spent on", expense.spentOn, today));
    put(faults, faultInName("What for", expense.what));
    if (expense.hundredths < 0 || expense.hundredths > most) {
        const std::string amount = figureText(static_cast<double>(expense.hundredths) / 100);
        faults.push_back(
            {"Amount", amount, "0 to 1000000000", "Amount is " + amount + "; 0 to 1000000000 is allowed."});
    }
    if (expense.minutes && !(*expense.minutes > 0 && *expense.minutes <= mostMinutes))
        faults.push_back(
            {"Minutes", figureText(*expense.minutes), "more than 0 and up to 100000",
             "Minutes is " + figureText(*expense.minutes) + "; more than 0 and up to 100000 is allowed, or none."});
    if (expense.batch.isSet() == expense.session.isSet())
        faults.push_back({"Belongs to", expense.batch.isSet() ? "a batch and a session" : "nothing",
                          "one batch or one session", "An expense belongs to one batch or to one session."});
    return faults;
}

}  // namespace core
