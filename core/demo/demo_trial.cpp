// SPDX-License-Identifier: MIT
#include "core/demo/demo_trial.h"

#include <algorithm>
#include <cassert>

#include "core/demo/demo_batch.h"
#include "core/demo/demo_shelves.h"
#include "core/trial/allocate_trial.h"
#include "core/trial/trial_rules.h"

namespace core {

namespace {

constexpr const char* plantOfTrial = "Teucrium chamaedrys";
constexpr int stuckDay = DemoCalendar::lastDay - 17;  // well before the horizon
constexpr int cuttingsPerArm = 24;
constexpr int sessionsOfTrial = 2;

std::size_t placeOf(const char* plant) {
    const auto nature = std::ranges::find(demoPlants(), std::string_view(plant), &DemoPlant::botanicalName);
    assert(nature != demoPlants().end());
    return static_cast<std::size_t>(nature - demoPlants().begin());
}

TreatmentId treatmentNamed(const Shelves& shelves, const char* name) {
    const auto treatment = std::ranges::find(shelves.treatments, name, &Treatment::name);
    assert(treatment != shelves.treatments.end());
    return treatment->id;
}

/// What is free at a bench; where a nursery has filled it, nobody counts the cells.
StationRoom roomOnBench(const Records& records, const Station& bench) {
    std::vector<BatchRecord> there;
    for (const BatchRecord& record : records.batches)
        if (record.batch.station == bench.id && !record.batch.positions.empty()) there.push_back(record);
    StationRoom room = roomAt(bench, there);
    if (room.places >= 2 * cuttingsPerArm) return room;
    return {.station = bench.id, .name = bench.name, .method = bench.method, .free = {}, .places = cuttingsPerArm * 2};
}

class TrialWriter {
  public:
    TrialWriter(Records& records, const DemoCalendar& calendar, IdSource& ids, stats::SeededRandom& random)
        : records_(records), calendar_(calendar), ids_(ids), random_(random), plant_(placeOf(plantOfTrial)) {}

    void write(const std::vector<std::string>& codes, const std::vector<std::vector<int>>& rounds) {
        Trial trial = dealtDoses();
        Session session{.id = ids_.next<SessionId>(),
                        .date = calendar_.dateOf(stuckDay),
                        .worker = "R.O.",
                        .note = "First half of the trial of gel on germander."};
        auto code = codes.begin();
        for (PlannedBatch& planned : batchesToStick(trial, 1, records_.shelves)) {
            planned.batch.id = ids_.next<BatchId>();
            planned.batch.code = *code++;
            planned.batch.session = session.id;
            planned.batch.stuckOn = session.date;
            planned.batch.cuttingKind = kindOfCutting();
            planned.batch.medium = coirMix();
            trial.batches[static_cast<std::size_t>(planned.number - 1)].batch = planned.batch.id;
            records_.batches.push_back(watched(std::move(planned.batch), rounds));
        }
        records_.sessions.push_back(std::move(session));
        records_.shelves.trials.push_back(std::move(trial));
    }

  private:
    Trial dealtDoses() {
        const Shelves& shelves = records_.shelves;
        constexpr std::uint64_t seeds = 1'000'000;
        Trial trial{.id = ids_.next<TrialId>(),
                    .name = "Gel on germander",
                    .horizonDay = demoPlants()[plant_].usualDaysHigh,
                    .allocationSeed = static_cast<std::uint32_t>(random_.below(seeds)),
                    .note = "",
                    .question = "Does a weak gel make wall germander root more often than nothing at all?",
                    .factor = Factor::Treatment,
                    .blockedBy = BlockedBy::Session,
                    .margin = 0.2,
                    .perArm = cuttingsPerArm,
                    .setOn = calendar_.dateOf(stuckDay - 1)};
        trial.arms = {{.treatment = treatmentNamed(shelves, "Untreated")},
                      {.treatment = treatmentNamed(shelves, "IBA gel 1000")}};
        TrialLayout layout;
        for (std::size_t bench = stationsPerMethod; bench < shelves.stations.size(); ++bench)
            layout.stations.push_back(roomOnBench(records_, shelves.stations[bench]));
        layout.blocks = {{.plant = shelves.plants[plant_].id, .stockPlant = shelves.stockPlants[2 * plant_].id}};
        layout.sessions = sessionsOfTrial;
        auto dealt = allocateTrial(trial, layout, *trial.allocationSeed);
        assert(dealt);
        trial.batches = std::move(*dealt);
        return trial;
    }

    [[nodiscard]] CuttingKindId kindOfCutting() const {
        const auto& kinds = records_.shelves.cuttingKinds;
        return std::ranges::find(kinds, demoPlants()[plant_].kindOfCutting, &CuttingKind::name)->id;
    }

    [[nodiscard]] MediumId coirMix() const {
        const auto& media = records_.shelves.media;
        return std::ranges::find(media, "Coir mix", &Medium::name)->id;
    }

    BatchRecord watched(Batch batch, const std::vector<std::vector<int>>& rounds) {
        const DemoPlant& nature = demoPlants()[plant_];
        const bool hasGel = batch.treatment != treatmentNamed(records_.shelves, nature.treatment);
        const double odds = nature.strike[mediaTray] / (1 - nature.strike[mediaTray]);
        const double oddsHere = hasGel ? odds * nature.oddsWithOther : odds;
        DemoBatchTruth truth;
        truth.stuckDay = stuckDay;
        truth.stuck = batch.stuck;
        truth.strike = oddsHere / (1 + oddsHere);
        truth.medianDays = nature.medianDays[mediaTray];
        truth.giveUpAfter = nature.usualDaysHigh * 5 / 4;
        const auto station = std::ranges::find(records_.shelves.stations, batch.station, &Station::id);
        const auto place = static_cast<std::size_t>(station - records_.shelves.stations.begin());
        BatchRecord record{.batch = std::move(batch), .checks = {}};
        for (const DemoLook& look : historyOf(truth, rounds[place], records_.shelves.lossCauses, random_).looks)
            record.checks.push_back({.id = ids_.next<CheckId>(),
                                     .batch = record.batch.id,
                                     .checkedOn = calendar_.dateOf(look.day),
                                     .rooted = look.rooted,
                                     .withdrawn = look.withdrawn,
                                     .losses = look.losses,
                                     .note = ""});
        return record;
    }

    Records& records_;
    const DemoCalendar& calendar_;
    IdSource& ids_;
    stats::SeededRandom& random_;
    std::size_t plant_;
};

}  // namespace

void addDemoTrial(Records& records, const DemoCalendar& calendar, const std::vector<std::string>& codes,
                  const std::vector<std::vector<int>>& rounds, IdSource& ids, stats::SeededRandom& random) {
    TrialWriter(records, calendar, ids, random).write(codes, rounds);
}

void addDemoPlans(Records& records, const DemoCalendar& calendar, IdSource& ids) {
    const Shelves& shelves = records.shelves;
    constexpr int weeks = 7;
    records.shelves.plans = {{.id = ids.next<PlanId>(),
                              .plant = shelves.plants[placeOf("Hebe albicans")].id,
                              .method = shelves.methods[mediaTray].id,
                              .wanted = 40,
                              .assurance = 0.9,
                              .needBy = addDays(calendar.today, 14 * weeks),
                              .pottedLivePercent = 95,
                              .hardeningDays = 10,
                              .pottingDays = 28,
                              .note = "For the low hedge by the gate."},
                             {.id = ids.next<PlanId>(),
                              .plant = shelves.plants[placeOf("Salvia microphylla")].id,
                              .wanted = 25,
                              .assurance = 0.8,
                              .note = "To give away."}};
}

}  // namespace core
