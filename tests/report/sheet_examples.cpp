// SPDX-License-Identifier: MIT
#include "tests/report/sheet_examples.h"

namespace examples {
namespace {

core::Date day(const char* iso) {
    return *core::dateFromIso(iso);
}

}  // namespace

core::Shelves smallShelves() {
    core::Shelves shelves;
    shelves.facts.name = "Lower Wharf";
    shelves.facts.grower = "E. Marsh";
    shelves.plants = {{.id = {1},
                       .botanicalName = "Lavandula angustifolia",
                       .cultivar = "Hafod Blue",
                       .commonName = "lavender",
                       .isProtected = true,
                       .usualRootingDaysHigh = 35,
                       .note = "",
                       .isRetired = false}};
    shelves.stockPlants = {{.id = {2}, .plant = {1}, .label = "south bed 3", .note = "", .isRetired = false}};
    shelves.methods = {{.id = {3}, .name = "media tray", .isRetired = false}};
    shelves.stations = {{.id = {4},
                         .name = "bench tray 2",
                         .method = {3},
                         .rows = 4,
                         .columns = 6,
                         .walkingOrder = 1,
                         .note = "",
                         .isRetired = false}};
    shelves.media = {{.id = {5},
                      .name = "cutting mix",
                      .components = {{"coir", 3}, {"perlite", 2}},
                      .note = "",
                      .isRetired = false}};
    shelves.treatments = {{.id = {6},
                           .name = "IBA gel",
                           .auxins = {{.name = "IBA", .form = core::AuxinForm::Acid, .milligramsPerLitre = 1000}},
                           .carrier = core::Carrier::Gel,
                           .seconds = 5,
                           .isWounded = false,
                           .note = "",
                           .isRetired = false}};
    shelves.cuttingKinds = {{.id = {7}, .name = "stem tip", .isRetired = false}};
    shelves.lossCauses = {{.id = {8}, .name = "rot", .key = 'r', .isRetired = false}};
    return shelves;
}

core::BatchRecord batchChecked(int checks) {
    core::BatchRecord record;
    record.batch.id = {100};
    record.batch.code = "B260047K";
    record.batch.session = {50};
    record.batch.stuckOn = day("2026-03-14");
    record.batch.plant = {1}, record.batch.stockPlant = {2}, record.batch.method = {3}, record.batch.station = {4};
    record.batch.medium = {5}, record.batch.treatment = {6}, record.batch.cuttingKind = {7};
    record.batch.stuck = 24;
    const int rooted[] = {0, 7, 8, 3}, lost[] = {0, 1, 1, 2};
    for (int i = 0; i < checks; ++i) {
        core::Check check;
        check.id = {200 + i};
        check.batch = record.batch.id;
        check.checkedOn = core::addDays(record.batch.stuckOn, i < 4 ? 7 * (i + 1) : 28 + (i - 3));
        check.rooted = i < 4 ? rooted[i] : 0;
        if (i < 4 && lost[i] > 0)
            check.losses = {{.cause = i == 1 ? core::LossCauseId{} : core::LossCauseId{8}, .count = lost[i]}};
        if (i == 2) check.note = "new leaves on most";
        record.checks.push_back(check);
    }
    return record;
}

core::Session session() {
    return {.id = {50}, .date = day("2026-03-14"), .worker = "EM", .note = ""};
}

QDateTime printedAt() {
    return {QDate(2026, 4, 12), QTime(10, 42)};
}

}  // namespace examples
