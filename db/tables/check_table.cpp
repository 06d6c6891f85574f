// SPDX-License-Identifier: MIT
#include "db/tables/check_table.h"

#include <algorithm>
#include <utility>

namespace db {

namespace {

constexpr const char* insertCheck = R"(
    INSERT INTO checks (id, batch_id, checked_on, rooted, withdrawn, note)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6))";
constexpr const char* updateCheck = R"(
    UPDATE checks SET batch_id = ?2, checked_on = ?3, rooted = ?4, withdrawn = ?5, note = ?6
    WHERE id = ?1)";
constexpr const char* deleteCheckRow = "DELETE FROM checks WHERE id = ?1";
constexpr const char* deleteChecksOfBatch = "DELETE FROM checks WHERE batch_id = ?1";
constexpr const char* insertLoss = R"(
    INSERT INTO check_losses (check_id, position, cause_id, lost)
    VALUES (?1, ?2, ?3, ?4))";
constexpr const char* deleteLosses = "DELETE FROM check_losses WHERE check_id = ?1";
constexpr const char* deleteLossesOfBatch = R"(
    DELETE FROM check_losses WHERE check_id IN (SELECT id FROM checks WHERE batch_id = ?1))";
constexpr const char* insertFinding = R"(
    INSERT INTO check_findings (check_id, position_row, position_column, outcome, cause_id)
    VALUES (?1, ?2, ?3, ?4, ?5))";
constexpr const char* deleteFindings = "DELETE FROM check_findings WHERE check_id = ?1";
constexpr const char* deleteFindingsOfBatch = R"(
    DELETE FROM check_findings WHERE check_id IN (SELECT id FROM checks WHERE batch_id = ?1))";
constexpr const char* selectFindingsOfBatch = R"(
    SELECT c.id, f.position_row, f.position_column, f.outcome, f.cause_id
    FROM checks c JOIN check_findings f ON f.check_id = c.id
    WHERE c.batch_id = ?1 ORDER BY c.checked_on, c.id, f.position_row, f.position_column)";
constexpr const char* findFindingWithCause = "SELECT check_id FROM check_findings WHERE cause_id = ?1 LIMIT 1";
constexpr const char* selectChecksOfBatch = R"(
    SELECT c.id, c.checked_on, c.rooted, c.withdrawn, c.note, l.cause_id, l.lost
    FROM checks c LEFT JOIN check_losses l ON l.check_id = c.id
    WHERE c.batch_id = ?1 ORDER BY c.checked_on, c.id, l.position)";
// Each in the order in which its rows lie in the file.
constexpr const char* selectChecks = "SELECT id, batch_id, checked_on, rooted, withdrawn, note FROM checks ORDER BY id";
constexpr const char* selectLosses = "SELECT check_id, cause_id, lost FROM check_losses ORDER BY check_id, position";
constexpr const char* selectFindings = R"(
    SELECT check_id, position_row, position_column, outcome, cause_id
    FROM check_findings ORDER BY check_id, position_row, position_column)";
constexpr const char* selectBatchOfCheck = "SELECT batch_id FROM checks WHERE id = ?1";
constexpr const char* findLossWithCause = "SELECT check_id FROM check_losses WHERE cause_id = ?1 LIMIT 1";
constexpr const char* findCheckInTrial = R"(
    SELECT c.id FROM batches b JOIN checks c ON c.batch_id = b.id WHERE b.trial_id = ?1 LIMIT 1)";
constexpr const char* selectBatchesWithLosses = R"(
    SELECT DISTINCT c.batch_id
    FROM checks c LEFT JOIN check_losses l ON l.check_id = c.id LEFT JOIN check_findings f ON f.check_id = c.id
    WHERE l.cause_id = ?1 OR f.cause_id = ?1 ORDER BY c.batch_id)";
constexpr const char* selectUsesOfCauses = R"(
    SELECT l.cause_id, COUNT(DISTINCT c.batch_id), MAX(c.checked_on)
    FROM check_losses l JOIN checks c ON c.id = l.check_id
    GROUP BY l.cause_id ORDER BY l.cause_id)";

int runCheck(Connection& connection, const char* sql, const core::Check& check) {
    return connection.run(sql, check.id, check.batch, check.checkedOn, check.rooted, check.withdrawn, check.note);
}

void insertLosses(Connection& connection, const core::Check& check) {
    int position = 0;
    for (const core::Loss& loss : check.losses)
        connection.run(insertLoss, check.id, position++, loss.cause, loss.count);
}

void insertFindings(Connection& connection, const core::Check& check) {
    for (const core::Finding& finding : check.findings)
        connection.run(insertFinding, check.id, finding.position.row, finding.position.column,
                       core::wordFor(finding.outcome), finding.cause);
}

core::Outcome outcomeFrom(const std::string& word) {
    for (const core::Outcome outcome : {core::Outcome::Rooted, core::Outcome::Lost})
        if (word == core::wordFor(outcome)) return outcome;
    return core::Outcome::Withdrawn;
}

/// Rows that hang on checks, gone through beside these; both in the order of the checks' ids, which is their first column.
class RowsOfChecks {
  public:
    RowsOfChecks(Connection& connection, const char* sql) : row_(connection.query(sql)), isThere_(row_.step()) {}

    template <class Take>
    void take(core::CheckId check, Take&& take) {
        for (; isThere_ && row_.bigNumber(0) <= check.value; isThere_ = row_.step())
            if (row_.bigNumber(0) == check.value) take(row_);
    }

  private:
    Query row_;
    bool isThere_;
};

/// `checks` are the batch's, in the order that both queries have.
void readFindings(Connection& connection, core::BatchId batch, std::vector<core::Check>& checks) {
    auto check = checks.begin();
    for (Query row = connection.query(selectFindingsOfBatch, batch); row.step();) {
        const auto id = row.id<core::CheckId>(0);
        while (check != checks.end() && check->id != id) ++check;
        if (check == checks.end()) return;
        check->findings.push_back({.position = {row.number(1), row.number(2)},
                                   .outcome = outcomeFrom(row.text(3)),
                                   .cause = row.id<core::LossCauseId>(4)});
    }
}

}  // namespace

void insertRow(Connection& connection, const core::Check& check) {
    runCheck(connection, insertCheck, check);
    insertLosses(connection, check);
    insertFindings(connection, check);
}

bool updateRow(Connection& connection, const core::Check& check) {
    if (runCheck(connection, updateCheck, check) != 1) return false;
    connection.run(deleteLosses, check.id);
    insertLosses(connection, check);
    connection.run(deleteFindings, check.id);
    insertFindings(connection, check);
    return true;
}

bool deleteRow(Connection& connection, core::CheckId id) {
    connection.run(deleteLosses, id);
    connection.run(deleteFindings, id);
    return connection.run(deleteCheckRow, id) == 1;
}

void deleteChecksOf(Connection& connection, core::BatchId batch) {
    connection.run(deleteLossesOfBatch, batch);
    connection.run(deleteFindingsOfBatch, batch);
    connection.run(deleteChecksOfBatch, batch);
}

std::vector<core::Check> checksOf(Connection& connection, core::BatchId batch) {
    std::vector<core::Check> all;
    for (Query row = connection.query(selectChecksOfBatch, batch); row.step();) {
        const auto id = row.id<core::CheckId>(0);
        if (all.empty() || all.back().id != id)  // else one more loss of the check before
            all.push_back({.id = id,
                           .batch = batch,
                           .checkedOn = row.date(1),
                           .rooted = row.number(2),
                           .withdrawn = row.number(3),
                           .losses = {},
                           .findings = {},
                           .note = row.text(4)});
        if (!row.isNull(6))
            all.back().losses.push_back({.cause = row.id<core::LossCauseId>(5), .count = row.number(6)});
    }
    readFindings(connection, batch, all);
    return all;
}

std::unordered_map<core::BatchId, std::vector<core::Check>> checksByBatch(Connection& connection) {
    std::unordered_map<core::BatchId, std::vector<core::Check>> all;
    RowsOfChecks losses(connection, selectLosses), findings(connection, selectFindings);
    for (Query row = connection.query(selectChecks); row.step();) {
        core::Check check{.id = row.id<core::CheckId>(0),
                          .batch = row.id<core::BatchId>(1),
                          .checkedOn = row.date(2),
                          .rooted = row.number(3),
                          .withdrawn = row.number(4),
                          .losses = {},
                          .findings = {},
                          .note = row.text(5)};
        losses.take(check.id, [&check](const Query& loss) {
            check.losses.push_back({.cause = loss.id<core::LossCauseId>(1), .count = loss.number(2)});
        });
        findings.take(check.id, [&check](const Query& finding) {
            check.findings.push_back({.position = {finding.number(1), finding.number(2)},
                                      .outcome = outcomeFrom(finding.text(3)),
                                      .cause = finding.id<core::LossCauseId>(4)});
        });
        all[check.batch].push_back(std::move(check));
    }
    for (auto& [batch, checks] : all) std::ranges::stable_sort(checks, {}, &core::Check::checkedOn);
    return all;
}

core::BatchId batchOfCheck(Connection& connection, core::CheckId check) {
    Query row = connection.query(selectBatchOfCheck, check);
    return row.step() ? row.id<core::BatchId>(0) : core::BatchId{};
}

std::vector<core::BatchId> batchesWithLosses(Connection& connection, core::LossCauseId cause) {
    std::vector<core::BatchId> all;
    for (Query row = connection.query(selectBatchesWithLosses, cause); row.step();)
        all.push_back(row.id<core::BatchId>(0));
    return all;
}

std::vector<core::LossCauseUse> usesOfLossCauses(Connection& connection) {
    std::vector<core::LossCauseUse> uses;
    for (Query row = connection.query(selectUsesOfCauses); row.step();)
        uses.push_back({.cause = row.id<core::LossCauseId>(0), .batches = row.number(1), .lastDay = row.date(2)});
    return uses;
}

bool hasChecks(Connection& connection, core::TrialId trial) {
    return connection.query(findCheckInTrial, trial).step();
}

bool hasLosses(Connection& connection, core::LossCauseId cause) {
    return connection.query(findLossWithCause, cause).step() || connection.query(findFindingWithCause, cause).step();
}

}  // namespace db
