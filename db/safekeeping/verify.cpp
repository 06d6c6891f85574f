// SPDX-License-Identifier: MIT
#include "db/safekeeping/verify.h"

#include <algorithm>
#include <map>
#include <span>

#include "core/batch/batch_rules.h"
#include "core/batch/check_rules.h"
#include "core/batch/position_rules.h"
#include "core/batch/potting_rules.h"
#include "core/climate/own_band_rules.h"
#include "core/event_rules.h"
#include "core/money/price_rules.h"
#include "core/planning/plan_rules.h"
#include "core/shelf_rules.h"
#include "core/treatment/lot_rules.h"
#include "db/history/changeset.h"
#include "db/history/history.h"
#include "db/inside.h"
#include "db/safekeeping/audit.h"
#include "db/tables/batch_table.h"
#include "db/tables/care_table.h"
#include "db/tables/expense_table.h"
#include "db/tables/logger_day_table.h"
#include "db/tables/logger_format_table.h"
#include "db/tables/mix_table.h"
#include "db/tables/photo_table.h"
#include "db/tables/potting_table.h"
#include "db/tables/reading_table.h"
#include "db/transaction.h"

namespace db {

namespace {

constexpr std::size_t mostFaults = 1000;  // of a thoroughly damaged file, more say nothing new
constexpr const char* integrityCheck = "PRAGMA integrity_check(100)";
constexpr const char* foreignKeyCheck = "PRAGMA foreign_key_check";

class Verifying {
  public:
    Verifying(const Logbook& logbook, core::Date today) : logbook_(logbook), today_(today) {}

    Verification verify() {
        Logbook::Inside& inside = logbook_.inside();
        inside.with([&](Connection& connection) {
            const ReadTransaction reading(connection);
            verifyFile(connection);
            verifyShelves();
            verifyBatches();
            verifyEvents(connection);
            verifyConditions(connection);
            verifyMoney(connection);
            verifyHistory(connection, inside.schemaVersion);
        });
        return std::move(verification_);
    }

  private:
    void fault(std::string sentence) {
        if (verification_.faults.size() < mostFaults) verification_.faults.push_back(std::move(sentence));
    }

    void faults(const std::string& about, const core::Refusals& refusals) {
        for (const core::Refusal& refusal : refusals) fault(about + ": " + refusal.sentence);
    }

    void verifyFile(Connection& connection) {
        for (Query row = connection.query(integrityCheck); row.step();)
            if (row.text(0) != "ok") fault("The file is damaged inside: " + row.text(0) + ". Restore a backup.");
        for (Query row = connection.query(foreignKeyCheck); row.step();)
            fault("A row of " + row.text(0) + " belongs to one of " + row.text(2) + " that is not there.");
    }

    void verifyShelves() {
        shelves_ = logbook_.shelves();
        faults("The logbook's settings", core::faultsIn(shelves_.facts));
        const auto each = [&](const auto& things, const std::string& kind) {
            for (const auto& thing : things) faults(kind, core::faultsIn(thing, shelves_));
        };
        each(shelves_.plants, "A plant");
        each(shelves_.stockPlants, "A stock plant");
        each(shelves_.methods, "A method");
        each(shelves_.stations, "A station");
        each(shelves_.media, "A medium");
        each(shelves_.treatments, "A treatment");
        each(shelves_.cuttingKinds, "A kind of cutting");
        each(shelves_.lossCauses, "A cause of loss");
        each(shelves_.trials, "A trial");
        each(shelves_.checkSchedules, "A check schedule");
        each(shelves_.plans, "A plan");
        each(shelves_.ownBands, "A band");
        for (const core::Session& session : logbook_.sessions())
            faults("The session of " + core::isoText(session.date), core::faultsIn(session, today_));
    }

    void verifyBatches() {
        const std::vector<core::BatchRecord> records = logbook_.batchRecords();
        verifyPositions(records);
        for (const core::BatchRecord& record : records) {
            ++verification_.batches;
            verification_.checks += static_cast<int>(record.checks.size());
            faults(record.batch.code, core::faultsIn(record.batch, record.checks, shelves_, today_));
            for (std::size_t i = 0; i < record.checks.size(); ++i) {
                std::vector<core::Check> others = record.checks;
                others.erase(others.begin() + static_cast<std::ptrdiff_t>(i));
                faults("Check of " + record.batch.code + " on " + core::isoText(record.checks[i].checkedOn),
                       core::faultsIn(record.checks[i], record.batch, others, shelves_, today_));
            }
        }
    }

    void verifyPositions(const std::vector<core::BatchRecord>& records) {
        std::map<core::StationId, std::vector<core::HeldPosition>> held;
        for (const core::BatchRecord& record : records) {
            if (record.batch.positions.empty()) continue;
            // Each is judged with those before it, so that two in one place are one fault.
            std::vector<core::HeldPosition>& there = held[record.batch.station];
            faults(record.batch.code, core::faultsInPositions(record.batch, record.checks, shelves_, there));
            const auto own = core::heldPositions(record);
            there.insert(there.end(), own.begin(), own.end());
        }
    }

    /// The moment of an event is judged against the end of today, since verifying has no clock.
    void verifyEvents(Connection& connection) {
        const core::Moment now = std::chrono::sys_days(today_) + std::chrono::days(1);
        for (const core::Reading& reading : allReadings(connection))
            faults("A reading of " + core::isoText(reading.readAt), core::faultsIn(reading, shelves_, now));
        for (const core::Care& care : allCare(connection))
            faults("Care of " + core::isoText(care.doneAt), core::faultsIn(care, shelves_, now));
        for (const core::Photo& photo : allPhotos(connection))
            if (const auto batch = batchIn(connection, photo.batch))
                faults("A photo of " + batch->code,
                       core::faultsIn(photo, imageOf(connection, photo.id), *batch, today_));
    }

    void verifyConditions(Connection& connection) {
        const core::Moment now = std::chrono::sys_days(today_) + std::chrono::days(1);
        for (const core::KeptMix& mix : allMixes(connection))
            faults("A mix of " + core::isoText(mix.madeAt), core::faultsIn(mix, now));
        const std::vector<core::LoggerFormat> formats = allLoggerFormats(connection);
        for (const core::LoggerFormat& format : formats) faults("A logger format", core::faultsIn(format, formats));
        for (std::string& sentence : faultsInLoggerDays(connection)) fault(std::move(sentence));
        for (const core::LoggerSpan& span : allLoggerSpans(connection))
            if (std::chrono::sys_days(span.lastDay) > now)
                fault("What a logger recorded reaches to " + core::isoText(span.lastDay) + ", which is still to come.");
    }

    void verifyMoney(Connection& connection) {
        for (const core::Price& price : shelves_.prices)
            faults("The price of " + price.what + " from " + core::isoText(price.from),
                   core::faultsIn(price, shelves_, today_));
        for (const core::Lot& lot : shelves_.lots) faults("The lot " + lot.name, core::faultsIn(lot, shelves_, today_));
        for (const core::Expense& expense : allExpenses(connection)) {
            const auto batch = batchIn(connection, expense.batch);
            faults(batch ? "An expense for " + batch->code
                         : "An expense of a session, of " + core::isoText(expense.spentOn),
                   core::faultsIn(expense, today_));
        }
        std::map<core::BatchId, std::vector<core::Potting>> pottings;
        for (core::Potting& potting : allPottings(connection)) pottings[potting.batch].push_back(std::move(potting));
        for (auto& [batch, counts] : pottings)
            if (const auto record = logbook_.batch(batch)) verifyPottings(*record, std::move(counts));
    }

    /// Each is judged with those before it, so that a count too many is one fault; of a day, those that leave most alive come first.
    void verifyPottings(const core::BatchRecord& record, std::vector<core::Potting> counts) {
        std::ranges::sort(counts, {}, [](const core::Potting& count) {
            return std::pair(count.countedOn, count.lost - count.potted);
        });
        for (std::size_t number = 0; number < counts.size(); ++number)
            faults("The count after potting of " + record.batch.code + " on " + core::isoText(counts[number].countedOn),
                   core::faultsIn(counts[number], record, std::span(counts).first(number), today_));
    }

    /// Changesets of the present schema are walked whole; those that a migration has sealed are never applied again.
    void verifyHistory(Connection& connection, int schemaVersion) {
        const std::vector<TableShape> tables = tablesOf(connection);
        bool isSound = true;
        forEachHistoryRow(connection, [&](const HistoryRow& row) {
            ++verification_.historyEntries;
            if (row.kind != HistoryEntry::Kind::Action || row.schemaVersion != schemaVersion) return true;
            const auto bad = walkChangeset(changesetOf(connection, row.number), tables);
            if (!bad) return true;
            isSound = false;
            fault("Step " + std::to_string(row.number) + " of the history (" + row.words + ") is damaged: " + *bad +
                  ".");
            return true;
        });
        if (!isSound) return;
        for (std::string& sentence : auditFaults(connection, schemaVersion)) fault(std::move(sentence));
    }

    const Logbook& logbook_;
    core::Date today_;
    core::Shelves shelves_;
    Verification verification_;
};

}  // namespace

Verification verify(const Logbook& logbook, core::Date today) {
    return Verifying(logbook, today).verify();
}

}  // namespace db
