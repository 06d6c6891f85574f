// SPDX-License-Identifier: MIT
#include "db/tables/plan_table.h"

namespace db {

namespace {

constexpr const char* insertPlan = R"(
    INSERT INTO plans (id, plant_id, method_id, wanted, assurance, need_by, potted_live_percent, hardening_days,
                       potting_days, note)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10))";
constexpr const char* updatePlan = R"(
    UPDATE plans SET plant_id = ?2, method_id = ?3, wanted = ?4, assurance = ?5, need_by = ?6, potted_live_percent = ?7,
                     hardening_days = ?8, potting_days = ?9, note = ?10
    WHERE id = ?1)";
constexpr const char* deletePlan = "DELETE FROM plans WHERE id = ?1";
constexpr const char* selectPlans = R"(
    SELECT id, plant_id, method_id, wanted, assurance, need_by, potted_live_percent, hardening_days, potting_days, note
    FROM plans ORDER BY need_by IS NULL, need_by, id)";
constexpr const char* findPlanOfPlant = "SELECT id FROM plans WHERE plant_id = ?1 LIMIT 1";
constexpr const char* findPlanWithMethod = "SELECT id FROM plans WHERE method_id = ?1 LIMIT 1";

int runPlan(Connection& connection, const char* sql, const core::Plan& plan) {
    return connection.run(sql, plan.id, plan.plant, plan.method, plan.wanted, plan.assurance, plan.needBy,
                          plan.pottedLivePercent, plan.hardeningDays, plan.pottingDays, plan.note);
}

}  // namespace

void insertRow(Connection& connection, const core::Plan& plan) {
    runPlan(connection, insertPlan, plan);
}

bool updateRow(Connection& connection, const core::Plan& plan) {
    return runPlan(connection, updatePlan, plan) == 1;
}

bool deleteRow(Connection& connection, core::PlanId id) {
    return connection.run(deletePlan, id) == 1;
}

std::vector<core::Plan> allPlans(Connection& connection) {
    std::vector<core::Plan> all;
    for (Query row = connection.query(selectPlans); row.step();)
        all.push_back({.id = row.id<core::PlanId>(0),
                       .plant = row.id<core::PlantId>(1),
                       .method = row.id<core::MethodId>(2),
                       .wanted = row.number(3),
                       .assurance = row.real(4),
                       .needBy = row.optionalDate(5),
                       .pottedLivePercent = row.real(6),
                       .hardeningDays = row.number(7),
                       .pottingDays = row.number(8),
                       .note = row.text(9)});
    return all;
}

bool hasPlans(Connection& connection, core::PlantId id) {
    return connection.query(findPlanOfPlant, id).step();
}

bool hasPlans(Connection& connection, core::MethodId id) {
    return connection.query(findPlanWithMethod, id).step();
}

}  // namespace db
