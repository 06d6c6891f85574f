// SPDX-License-Identifier: MIT
// When to stick: from the day on which plants are needed back through hardening, growing on and rooting.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/planning/past_records.h"
#include "core/result.h"
#include "core/units/days.h"

namespace core {

/// Where the days to root come from.
enum class DaysRestOn { OwnCurve, PlantsOwnLimit, ReferenceRange, LogbooksHorizon };
/// "own curve", "plant's limit", "reference range", "logbook's horizon".
[[nodiscard]] std::string_view wordFor(DaysRestOn rest);

/// From so many rooted cuttings on the plant's own curve is what plans go by.
inline constexpr int enoughForOwnCurve = 10;

struct RootingDays {
    DaysRestOn restsOn{DaysRestOn::LogbooksHorizon};
    int middle{};             // half of those that root have by then
    int upper{};              // to be reckoned with: nine in ten have, or all that are counted on
    double rootedInTime{1};   // of those that root by the horizon, the share that have by `upper`
    int batches{}, rooted{};  // behind an own curve
    std::string inWords;
};

/// The plant's own curve by the method from ten rooted cuttings on; else the limit set at the plant, the reference table's range, the
/// logbook's horizon, whichever is there first. `upper` is never beyond the horizon up to which the records are counted.
[[nodiscard]] RootingDays rootingDaysOf(const PastRecords& records, const Shelves& shelves,
                                        std::span<const BatchRecord> batches);
/// Without a logbook: the reference range of a plant. Absent where it has none.
[[nodiscard]] std::optional<RootingDays> rootingDaysOf(const PlantReference& reference);

struct WhenQuestion {
    Date needBy{};
    int hardeningDays{};  // the last ones before it
    int pottingDays{};    // of growing on, from potting on when rooted to the hardening
};

enum class PlanDayKind { Stick, FirstCheck, PotOn, Harden, Ready };
/// "stick", "check", "pot", "harden", "ready": for calendars and machines.
[[nodiscard]] std::string_view wordFor(PlanDayKind kind);

struct PlanDay {
    Date on{};
    PlanDayKind kind{};
    std::string what;  // "Stick 34 cuttings of Salvia rosmarinus"
};

struct When {
    Date stickBy{};    // the latest day
    int marginDays{};  // that half of the cuttings have in hand: RootingDays::upper less middle
    RootingDays rooting;
    std::vector<PlanDay> days;  // in order; those of no length are left out
    std::string answerInWords;
    std::string warning;  // where stickBy has gone by; else empty
};

/// What the days of a plan speak of.
struct PlanSubject {
    std::string plantName;          // empty: not said
    std::optional<int> cuttings{};  // absent: not known
    int firstCheckAfterDays{};      // 0: none
};
[[nodiscard]] PlanSubject planSubjectOf(const PastRecords& records, std::optional<int> cuttings,
                                        const Shelves& shelves);

/// Refuses days outside 0 to 3650.
[[nodiscard]] Refusals faultsIn(const WhenQuestion& question);
[[nodiscard]] Result<When> whenToStick(const WhenQuestion& question, const RootingDays& rooting,
                                       const PlanSubject& subject, Date today);
[[nodiscard]] Result<When> whenToStick(const WhenQuestion& question, const RootingDays& rooting,
                                       const PastRecords& records, std::optional<int> cuttings, const Shelves& shelves,
                                       Date today);

}  // namespace core
