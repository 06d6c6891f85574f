// SPDX-License-Identifier: MIT
#include "db/tables/trial_table.h"

#include <string_view>

#include "db/tables/trial_batch_table.h"

namespace db {

namespace {

constexpr const char* insertTrial = R"(
    INSERT INTO trials (id, name, horizon_day, allocation_seed, note, question, factor, blocked_by, measure, margin,
                        per_arm, is_blinded, is_crossed_over, set_on)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14))";
constexpr const char* updateTrial = R"(
    UPDATE trials SET name = ?2, horizon_day = ?3, allocation_seed = ?4, note = ?5, question = ?6, factor = ?7,
                      blocked_by = ?8, measure = ?9, margin = ?10, per_arm = ?11, is_blinded = ?12,
                      is_crossed_over = ?13, set_on = ?14
    WHERE id = ?1)";
constexpr const char* deleteTrial = "DELETE FROM trials WHERE id = ?1";
constexpr const char* selectTrials = R"(
    SELECT id, name, horizon_day, allocation_seed, note, question, factor, blocked_by, measure, margin, per_arm,
           is_blinded, is_crossed_over, set_on
    FROM trials ORDER BY name COLLATE NOCASE, id)";
constexpr const char* insertArm = R"(
    INSERT INTO trial_arms (trial_id, position, method_id, treatment_id, medium_id, cutting_kind_id)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6))";
constexpr const char* deleteArms = "DELETE FROM trial_arms WHERE trial_id = ?1";
constexpr const char* selectArms = R"(
    SELECT method_id, treatment_id, medium_id, cutting_kind_id
    FROM trial_arms WHERE trial_id = ?1 ORDER BY position)";
constexpr const char* findArmOfMethod = "SELECT position FROM trial_arms WHERE method_id = ?1 LIMIT 1";
constexpr const char* findArmOfTreatment = "SELECT position FROM trial_arms WHERE treatment_id = ?1 LIMIT 1";
constexpr const char* findArmOfMedium = "SELECT position FROM trial_arms WHERE medium_id = ?1 LIMIT 1";
constexpr const char* findArmOfCuttingKind = "SELECT position FROM trial_arms WHERE cutting_kind_id = ?1 LIMIT 1";
constexpr const char* insertChange = R"(
    INSERT INTO trial_changes (trial_id, position, changed_on, what, was, became, reason)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7))";
constexpr const char* deleteChanges = "DELETE FROM trial_changes WHERE trial_id = ?1";
constexpr const char* selectChanges = R"(
    SELECT changed_on, what, was, became, reason
    FROM trial_changes WHERE trial_id = ?1 ORDER BY position)";

core::Trial trialFrom(const Query& row) {
    return {
        .id = row.id<core::TrialId>(0),
        .name = row.text(1),
        .horizonDay = row.optionalNumber(2),
        .allocationSeed = row.isNull(3) ? std::optional<std::uint32_t>() : static_cast<std::uint32_t>(row.bigNumber(3)),
        .note = row.text(4),
        .question = row.text(5),
        .factor = row.isNull(6) ? std::optional<core::Factor>() : core::factorFrom(row.text(6)),
        .blockedBy = core::blockedByFrom(row.text(7)).value_or(core::BlockedBy::Nothing),
        .measure = core::trialMeasureFrom(row.text(8)).value_or(core::TrialMeasure::MoreRooted),
        .margin = row.isNull(9) ? std::optional<double>() : row.real(9),
        .perArm = row.optionalNumber(10),
        .isBlinded = row.truth(11),
        .isCrossedOver = row.truth(12),
        .setOn = row.optionalDate(13)};
}

int runTrial(Connection& connection, const char* sql, const core::Trial& trial) {
    const auto factor = trial.factor ? std::optional(core::wordFor(*trial.factor)) : std::optional<std::string_view>();
    return connection.run(sql, trial.id, trial.name, trial.horizonDay, trial.allocationSeed, trial.note, trial.question,
                          factor, core::wordFor(trial.blockedBy), core::wordFor(trial.measure), trial.margin,
                          trial.perArm, trial.isBlinded, trial.isCrossedOver, trial.setOn);
}

void insertParts(Connection& connection, const core::Trial& trial) {
    int position = 0;
    for (const core::TrialArm& arm : trial.arms)
        connection.run(insertArm, trial.id, position++, arm.method, arm.treatment, arm.medium, arm.cuttingKind);
    position = 0;
    for (const core::TrialChange& change : trial.changes)
        connection.run(insertChange, trial.id, position++, change.changedOn, change.what, change.was, change.became,
                       change.reason);
    replaceDealt(connection, trial);
}

void deleteParts(Connection& connection, core::TrialId id) {
    connection.run(deleteArms, id);
    connection.run(deleteChanges, id);
    deleteDealt(connection, id);
}

void readParts(Connection& connection, core::Trial& trial) {
    for (Query row = connection.query(selectArms, trial.id); row.step();)
        trial.arms.push_back({.method = row.id<core::MethodId>(0),
                              .treatment = row.id<core::TreatmentId>(1),
                              .medium = row.id<core::MediumId>(2),
                              .cuttingKind = row.id<core::CuttingKindId>(3)});
    for (Query row = connection.query(selectChanges, trial.id); row.step();)
        trial.changes.push_back({.changedOn = row.date(0),
                                 .what = row.text(1),
                                 .was = row.text(2),
                                 .became = row.text(3),
                                 .reason = row.text(4)});
    trial.batches = dealtOf(connection, trial.id);
}

}  // namespace

void insertRow(Connection& connection, const core::Trial& trial) {
    runTrial(connection, insertTrial, trial);
    insertParts(connection, trial);
}

bool updateRow(Connection& connection, const core::Trial& trial) {
    if (runTrial(connection, updateTrial, trial) != 1) return false;
    deleteParts(connection, trial.id);
    insertParts(connection, trial);
    return true;
}

bool deleteRow(Connection& connection, core::TrialId id) {
    deleteParts(connection, id);
    return connection.run(deleteTrial, id) == 1;
}

std::vector<core::Trial> allTrials(Connection& connection) {
    std::vector<core::Trial> all;
    for (Query row = connection.query(selectTrials); row.step();) all.push_back(trialFrom(row));
    for (core::Trial& trial : all) readParts(connection, trial);
    return all;
}

bool hasArms(Connection& connection, core::MethodId id) {
    return connection.query(findArmOfMethod, id).step();
}

bool hasArms(Connection& connection, core::TreatmentId id) {
    return connection.query(findArmOfTreatment, id).step();
}

bool hasArms(Connection& connection, core::MediumId id) {
    return connection.query(findArmOfMedium, id).step();
}

bool hasArms(Connection& connection, core::CuttingKindId id) {
    return connection.query(findArmOfCuttingKind, id).step();
}

}  // namespace db
