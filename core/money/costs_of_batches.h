// SPDX-License-Identifier: MIT
// What each batch has cost so far, out of the prices of its own days: its share of lasting things, what it used up, electricity, work and what was
// written down for it. What it cost for each rooted plant, and whether that was worth it, is asked of core/money/worth_it.h.
//
//     const CostsOfBatches costs = costsOfBatches(spending);
//     costs.of(batch.id)->parts.total();
//
// docs/costs.md works the rules out with figures.
#pragma once

#include <array>
#include <cstddef>
#include <optional>
#include <span>
#include <stop_token>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "core/climate/station_climate.h"
#include "core/records.h"

namespace core {

/// In the order in which they are shown, everywhere.
enum class CostPart { Lasting, UsedUp, Electricity, Work, WrittenDown };

inline constexpr std::array allCostParts{CostPart::Lasting, CostPart::UsedUp, CostPart::Electricity, CostPart::Work,
                                         CostPart::WrittenDown};

/// In files and for people: "lasting things", "used up", "electricity", "work", "written down".
[[nodiscard]] std::string_view wordFor(CostPart part);

/// In whole units of the logbook's currency, not rounded.
struct CostParts {
    std::array<double, allCostParts.size()> amounts{};  // as allCostParts

    [[nodiscard]] double of(CostPart part) const { return amounts[static_cast<std::size_t>(part)]; }
    [[nodiscard]] double total() const;
    void add(CostPart part, double amount) { amounts[static_cast<std::size_t>(part)] += amount; }
    CostParts& operator+=(const CostParts& other);
    /// Each part as often as that.
    [[nodiscard]] CostParts times(double factor) const;
    bool operator==(const CostParts&) const = default;
};

/// A price or an expense, and what of it falls on the batch. Amounts of the same part and name are one line.
struct CostLine {
    CostPart part{};
    std::string what{};
    double amount{};

    bool operator==(const CostLine&) const = default;
};

struct CostOfBatch {
    BatchId batch{};
    CostParts parts{};
    std::vector<CostLine> lines{};       // by part, then by name; nothing that costs nothing
    double ofOwnThings{};                // of the lasting: of things of its method or station that last for years
    std::vector<std::size_t> missing{};  // of CostsOfBatches::missing, those that concern it

    bool operator==(const CostOfBatch&) const = default;
};

/// What a lasting thing cost on days on which no cutting stood where it belongs, or care of an empty station. No batch bears it.
struct StoodEmpty {
    // Whose it is; at most one is set, none: the whole bench's.
    MethodId method{};
    StationId station{};
    MediumId medium{};
    TreatmentId treatment{};
    CostPart part{CostPart::Lasting};
    std::string what{};
    int days{};  // of care: how often
    double amount{};

    bool operator==(const StoodEmpty&) const = default;
};

struct CostsOfBatches {
    std::vector<CostOfBatch> batches{};    // as Spending::batches
    std::vector<StoodEmpty> stoodEmpty{};  // by part and name
    // What the sums don't hold though it was there: "No tariff holds on 2026-03-02, so the electricity of air pump isn't in it."
    std::vector<std::string> missing{};
    bool isAnythingPriced{};                            // there is a price of something, or an expense
    bool wasStopped{};                                  // then nothing else in here counts
    std::unordered_map<BatchId, std::size_t> places{};  // in `batches`

    /// Nothing where there is no such batch.
    [[nodiscard]] const CostOfBatch* of(BatchId batch) const;
};

/// What costs rest on.
struct Spending {
    const Shelves& shelves;
    std::span<const BatchRecord> batches;  // of the whole logbook: they share
    std::span<const Session> sessions;
    std::span<const Care> care;
    std::span<const Expense> expenses;
    Date today{};
    DayStart dayStart{};  // care has a moment, prices have days
};

/// Each with the prices that hold on the day itself, up to and including `today`:
///  - a cutting stands from the day of sticking to the day of the look that decided it, or on which its batch was closed by hand, both included;
///  - a lasting thing that lasts for years costs amount / (years x 365) a day as long as its price holds: when its years are over, another at the
///    same price takes its place (one that serves on unpaid has its last day set). The cuttings that stand where it belongs share each day. Days
///    on which none stands are stood empty, counted from the first day on which anything was stuck. One that lasts for N batches costs each
///    batch where it belongs amount / N;
///  - electricity: watts x hours x share of the time / 1000 kWh a day at the tariff of the day, shared likewise; where nothing stands, nothing
///    is taken to run;
///  - used up: amount / how many a pack does for, for each cutting, batch or session, on the day of sticking; a session's cuttings where it
///    belongs share;
///  - work: minutes / 60 x what an hour is worth that day, for each cutting, batch and session (shared by its cuttings) on the day of sticking,
///    each check, and each care (shared by the cuttings that stand at its station that day). Minutes written down for a session stand in
///    place of its usual ones;
///  - written down: a batch's own, and its share by cuttings of its session's; their minutes are work.
///
/// Where it belongs: a method's are the batches stuck by it, a station's those at it, a medium's and a treatment's those with it; with none, all.
/// A stop request ends it early.
[[nodiscard]] CostsOfBatches costsOfBatches(const Spending& spending, const std::stop_token& stop = {});

}  // namespace core
