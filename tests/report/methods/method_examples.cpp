// SPDX-License-Identifier: MIT
#include "tests/report/methods/method_examples.h"

#include <gtest/gtest.h>

#include <set>
#include <string>

#include "app/report/methods/notes.h"
#include "core/comparison/spread.h"
#include "tests/support/builders.h"

namespace examples {
namespace {

using support::aBatch;

constexpr core::MethodId mist{303};
constexpr core::StationId mistOne{405}, mistTwo{406};
constexpr std::int64_t firstGel = 610;

core::BatchRecord onMist(core::StationId station, core::BatchRecord record) {
    record.batch.method = mist;
    record.batch.station = station;
    return record;
}

core::Date sticking(int week) {
    return core::addDays(support::stickingDay(), 7 * week);
}

core::Comparison answered(core::ComparisonQuestion question, const std::vector<core::BatchRecord>& batches) {
    question.horizonDay = 28;
    question.margin = 0.15;
    auto result = core::compare(question, methodShelves(), batches);
    EXPECT_TRUE(result.has_value());
    return result.value_or(core::Comparison{});
}

void append(std::vector<report::MethodNote>& all, std::vector<report::MethodNote> notes) {
    for (report::MethodNote& note : notes) all.push_back(std::move(note));
}

}  // namespace

core::Shelves methodShelves() {
    core::Shelves shelves = support::someShelves();
    shelves.facts.isInvented = true;
    shelves.methods.push_back({.id = mist, .name = "mist bench", .isRetired = false});
    for (const core::StationId id : {mistOne, mistTwo}) {
        core::Station station;
        station.id = id;
        station.name = id == mistOne ? "Mist one" : "Mist two";
        station.method = mist;
        shelves.stations.push_back(station);
    }
    std::int64_t next = firstGel;
    for (const double dose : {500.0, 1000.0, 2000.0, 4000.0}) {
        core::Treatment gel;
        gel.id.value = next++;
        gel.name = "IBA gel " + std::to_string(static_cast<int>(dose));
        gel.auxins = {{"IBA", core::AuxinForm::Acid, dose}};
        gel.carrier = core::Carrier::Gel;
        shelves.treatments.push_back(gel);
    }
    return shelves;
}

std::vector<core::BatchRecord> methodSeason() {
    using namespace support;
    const auto tub = [](int week, core::StationId station, core::PlantId plant, int stuck) {
        return aBatch().stuckOn(sticking(week)).of(plant).at(station).stuck(stuck);
    };
    return {
        tub(0, tubNorth, hebe, 24).code("T-1").looked(7).looked(14, {6, 1}).looked(21, {8, 2}).looked(28, {2, 1}),
        tub(1, tubSouth, hebe, 20).code("T-2").looked(7, {1}).looked(14, {5}).looked(21, {3, 4}).looked(28, {1, 2}),
        tub(2, tubNorth, deutzia, 24).code("T-3").looked(10, {3, 1}).looked(20, {7, 3}).looked(30, {1, 1}),
        tub(3, tubSouth, deutzia, 18).code("T-4").looked(7).looked(14, {4}).looked(21, {4, 1, 1}).looked(28, {1}),
        tub(4, tubNorth, hebe, 22)
            .code("T-5")
            .looked(7, {0, 1})
            .looked(14, {3, 2})
            .looked(21, {4, 3})
            .looked(28, {1, 2}),
        tub(0, benchWest, hebe, 24).code("B-1").looked(7, {1}).looked(14, {9}).looked(21, {9, 1}).looked(28, {2}),
        tub(1, benchEast, hebe, 20).code("B-2").looked(7).looked(14, {6, 1}).looked(21, {5, 2}).looked(28, {1}),
        tub(2, benchWest, deutzia, 24).code("B-3").looked(10, {5}).looked(20, {9, 1}).looked(30, {3}),
        tub(3, benchEast, deutzia, 20)
            .code("B-4")
            .looked(7, {1})
            .looked(14, {5, 1})
            .looked(21, {4, 1})
            .looked(28, {2, 2}),
        tub(4, benchWest, hebe, 22).code("B-5").looked(7).looked(14, {8}).looked(21, {7}).looked(28, {5}),
        onMist(mistOne, tub(0, tubNorth, hebe, 16).code("M-1").looked(7).looked(14, {6}).looked(28, {5, 1})),
        onMist(mistTwo, tub(2, tubNorth, hebe, 16).code("M-2").looked(7).looked(14, {4, 1}).looked(28, {5})),
        onMist(mistOne, tub(3, tubNorth, deutzia, 16).code("M-3").looked(14, {7}).looked(28, {4, 2})),
    };
}

std::vector<core::BatchRecord> doseSeason() {
    const auto tray = [](int gel, int week, int rooted, int stuck) {
        const core::TreatmentId treatment = gel < 0 ? support::nothing : core::TreatmentId{firstGel + gel};
        return aBatch()
            .stuckOn(sticking(week))
            .at(week % 2 == 0 ? support::benchWest : support::benchEast)
            .treated(treatment)
            .stuck(stuck)
            .looked(14, {rooted / 2})
            .looked(28, {rooted - rooted / 2, 1});
    };
    return {tray(-1, 0, 7, 20), tray(-1, 1, 9, 20), tray(-1, 2, 6, 18), tray(0, 0, 11, 20),
            tray(0, 1, 10, 20), tray(1, 0, 15, 20), tray(1, 1, 13, 20), tray(1, 2, 14, 18),
            tray(2, 0, 14, 20), tray(2, 1, 16, 20), tray(3, 0, 10, 20), tray(3, 1, 8, 20)};
}

core::Comparison methodsCompared(core::RateInterval interval) {
    return answered({.factor = core::Factor::Method, .interval = interval}, methodSeason());
}

core::Comparison dosesCompared() {
    return answered({.factor = core::Factor::Treatment}, doseSeason());
}

core::BatchSummary lastTub() {
    const auto season = methodSeason();
    return core::summaryOf(season[4], methodShelves(), season, support::today());
}

core::TurningPoint turnOfTheTubs() {
    std::vector<core::BatchRecord> batches;
    for (const int rooted : {16, 17, 14, 18, 15, 16, 17, 9, 7, 10, 6, 8})
        batches.push_back(aBatch()
                              .code("T-" + std::to_string(batches.size() + 11))
                              .stuckOn(sticking(static_cast<int>(batches.size())))
                              .stuck(20)
                              .looked(28, {.rooted = rooted}));
    std::vector<core::Course> courses;
    for (const core::BatchRecord& record : batches) courses.push_back(core::courseOf(record, 28));
    return core::turningPointOf(courses, core::pooledSpreadOf(methodSeason(), 28, 0.95), 0.95).value();
}

std::vector<report::MethodNote> everyNoteOn(const core::Comparison& comparison) {
    std::vector<report::MethodNote> all;
    for (int arm = 0; arm < std::ssize(comparison.arms); ++arm) append(all, report::notesOnRates(comparison, arm));
    for (int pair = 0; pair < std::ssize(comparison.pairs); ++pair) {
        append(all, report::notesOnDifference(comparison, pair));
        append(all, report::notesOnPlants(comparison, pair));
        append(all, report::notesOnDays(comparison, pair));
    }
    if (comparison.pairs.empty()) append(all, report::notesOnDays(comparison));
    for (const core::DoseSeries& series : comparison.doses) append(all, report::notesOnDoses(series, comparison.level));
    append(all, report::notesOnGoesWith(comparison.goesWith, comparison.level));
    return all;
}

std::vector<report::MethodNote> notesOfFigures() {
    const core::Comparison methods = methodsCompared();
    std::vector<report::MethodNote> all = everyNoteOn(methods);
    for (const core::RateInterval interval : core::everyRateInterval) {
        core::Comparison chosen = methods;
        chosen.interval = interval;
        for (core::Arm& arm : chosen.arms)
            arm.asCounted = core::rateLimits(interval, arm.rooted, arm.assessed, chosen.level);
        append(all, report::notesOnRates(chosen));
    }
    append(all, everyNoteOn(dosesCompared()));
    const core::BatchSummary batch = lastTub();
    append(all, report::notesOnBatch(batch));
    append(all, report::notesOnChart(batch.chart, turnOfTheTubs()));
    append(all, report::notesOnSplit(core::allocateByChance(50, 3, 7), 7));
    std::vector<report::MethodNote> once;
    std::set<QString> seen;
    for (report::MethodNote& note : all)
        if (seen.insert(note.page).second) once.push_back(std::move(note));
    return once;
}

}  // namespace examples
