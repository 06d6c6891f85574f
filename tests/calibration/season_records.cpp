// SPDX-License-Identifier: MIT
#include "tests/calibration/season_records.h"

namespace calibration {
namespace {

constexpr core::MethodId methods[] = {{1}, {2}};
constexpr core::PlantId plant{1};

core::Check checkOf(const core::Look& look, core::Date stuckOn) {
    core::Check check{.checkedOn = core::addDays(stuckOn, look.day), .rooted = look.rooted, .losses = {}, .note = {}};
    if (look.lost > 0) check.losses.push_back({.cause = {}, .count = look.lost});
    return check;
}

}  // namespace

core::Shelves shelvesOfSeason() {
    core::Shelves shelves;
    shelves.methods = {{.id = methods[0], .name = firstMethod}, {.id = methods[1], .name = secondMethod}};
    shelves.plants = {{.id = plant,
                       .botanicalName = "Hebe",
                       .cultivar = {},
                       .commonName = {},
                       .usualRootingDaysHigh = {},
                       .note = {}}};
    return shelves;
}

std::vector<core::BatchRecord> recordsOf(const Season& season, Stations stations) {
    using namespace std::chrono;
    constexpr core::Date stuckOn{year{2026}, March, day{2}};
    std::vector<core::BatchRecord> records;
    std::int64_t id = 0;
    for (std::size_t arm = 0; arm < 2; ++arm) {
        for (const SimulatedTray& tray : season.arms[arm]) {
            core::BatchRecord record;
            record.batch.id = {++id};
            record.batch.stuckOn = stuckOn;
            record.batch.plant = plant;
            record.batch.method = methods[arm];
            record.batch.station = {stations == Stations::OneEach ? id : methods[arm].value};
            record.batch.stuck = tray.stuck;
            for (const core::Look& look : tray.looks) record.checks.push_back(checkOf(look, stuckOn));
            records.push_back(std::move(record));
        }
    }
    return records;
}

}  // namespace calibration
