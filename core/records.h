// SPDX-License-Identifier: MIT
// Plain values that a logbook holds. `Shelves` are the short lists that batches refer to; `BatchRecord` is a batch with all its checks.
// Everything that computes, prints or exports takes these and knows no file.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/batch/batch.h"
#include "core/batch/check.h"
#include "core/batch/cutting_kind.h"
#include "core/batch/loss_cause.h"
#include "core/batch/photo.h"
#include "core/batch/potting.h"
#include "core/batch/session.h"
#include "core/batch/tally.h"
#include "core/care/care.h"
#include "core/climate/logger_day.h"
#include "core/climate/logger_format.h"
#include "core/climate/own_band.h"
#include "core/climate/reading.h"
#include "core/due/check_schedule.h"
#include "core/medium/medium.h"
#include "core/mixing/kept_mix.h"
#include "core/money/expense.h"
#include "core/money/price.h"
#include "core/planning/plan.h"
#include "core/plants/plant.h"
#include "core/plants/stock_plant.h"
#include "core/station/method.h"
#include "core/station/station.h"
#include "core/treatment/lot.h"
#include "core/treatment/treatment.h"
#include "core/trial/trial.h"
#include "core/units/display_units.h"

namespace core {

/// What the logbook as a whole says of itself; one of each.
struct LogbookFacts {
    std::string name;
    std::string grower;
    int rootLengthMillimetres{10};  // what counts as rooted
    int checkEveryDays{7};          // a batch is due when it hasn't been looked at for so long
    int firstCheckAfterDays{7};
    int horizonDay{28};              // of comparisons where neither a trial nor the plant sets one
    double level{0.95};              // of every interval
    std::string paper{"A4"};         // or "Letter"
    bool isInvented{};               // a demo: every print says so
    std::string interval{"wilson"};  // of a strike rate, the one shown: see rate_interval.h
    DisplayUnits units{};            // that the grower reads and types
    std::string currency{"EUR"};     // three letters of ISO 4217
    std::string citation;            // where published records come from; printed with them
    double altitudeMetres{};         // of the bench: what water can hold of oxygen depends on it
    double degreeDayBase{10};        // C; warmth below it doesn't count in degree-days
    double falseAlarmRate{0.01};     // how often the bench may flag a batch by mere chance

    bool operator==(const LogbookFacts&) const = default;
};

struct Shelves {
    LogbookFacts facts;
    std::vector<Plant> plants;
    std::vector<StockPlant> stockPlants;
    std::vector<Method> methods;
    std::vector<Station> stations;
    std::vector<Medium> media;
    std::vector<Treatment> treatments;
    std::vector<CuttingKind> cuttingKinds;
    std::vector<LossCause> lossCauses;
    std::vector<Trial> trials;
    std::vector<CheckSchedule> checkSchedules{};
    std::vector<Plan> plans{};
    std::vector<OwnBand> ownBands{};
    std::vector<Price> prices{};  // by kind, name and first day
    std::vector<Lot> lots{};      // by first day

    bool operator==(const Shelves&) const = default;
};

struct BatchRecord {
    Batch batch;
    std::vector<Check> checks;  // in order of date

    bool operator==(const BatchRecord&) const = default;
};

/// A batch with its counts but without its checks: what lists and the bench need.
struct BatchLine {
    Batch batch;
    Tally tally;

    bool operator==(const BatchLine&) const = default;
};

/// A whole logbook as a value: what an import reads and an export writes.
struct Records {
    Shelves shelves;
    std::vector<Session> sessions;
    std::vector<BatchRecord> batches;
    std::vector<Reading> readings{};
    std::vector<Care> care{};
    std::vector<Expense> expenses{};
    std::vector<PhotoRecord> photos{};
    std::vector<KeptMix> mixes{};
    std::vector<LoggerDay> loggerDays{};  // by station, quantity and day
    std::vector<LoggerFormat> loggerFormats{};
    std::vector<Potting> pottings{};
};

/// The thing with this id, or nullptr. Works on every list above whose members have an id.
template <class Thing, class ThingId>
[[nodiscard]] const Thing* find(const std::vector<Thing>& things, ThingId id) {
    for (const Thing& thing : things)
        if (thing.id == id) return &thing;
    return nullptr;
}

/// The methods, cutting kinds and loss causes that a new logbook starts with (ids not set).
[[nodiscard]] Shelves startingShelves();

}  // namespace core
