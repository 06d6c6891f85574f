// SPDX-License-Identifier: MIT
#include "db/tables/treatment_table.h"

namespace db {

namespace {

constexpr const char* insertTreatment = R"(
    INSERT INTO treatments (id, name, carrier, dip_seconds, is_wounded, note, is_retired)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7))";
constexpr const char* updateTreatment = R"(
    UPDATE treatments SET name = ?2, carrier = ?3, dip_seconds = ?4, is_wounded = ?5, note = ?6, is_retired = ?7
    WHERE id = ?1)";
constexpr const char* deleteTreatment = "DELETE FROM treatments WHERE id = ?1";
constexpr const char* selectTreatments = R"(
    SELECT id, name, carrier, dip_seconds, is_wounded, note, is_retired
    FROM treatments ORDER BY name COLLATE NOCASE, id)";
constexpr const char* insertAuxin = R"(
    INSERT INTO treatment_auxins (treatment_id, position, name, form, dose_mg_per_l)
    VALUES (?1, ?2, ?3, ?4, ?5))";
constexpr const char* deleteAuxins = "DELETE FROM treatment_auxins WHERE treatment_id = ?1";
constexpr const char* selectAuxins = R"(
    SELECT name, form, dose_mg_per_l
    FROM treatment_auxins WHERE treatment_id = ?1 ORDER BY position)";

// The words are core's; the schema lets no others in.
core::Carrier carrierFrom(const std::string& word) {
    for (const auto carrier : {core::Carrier::Gel, core::Carrier::Powder, core::Carrier::LiquidDip})
        if (core::wordFor(carrier) == word) return carrier;
    return core::Carrier::None;
}

core::AuxinForm auxinFormFrom(const std::string& word) {
    return word == core::wordFor(core::AuxinForm::Salt) ? core::AuxinForm::Salt : core::AuxinForm::Acid;
}

int runTreatment(Connection& connection, const char* sql, const core::Treatment& treatment) {
    return connection.run(sql, treatment.id, treatment.name, core::wordFor(treatment.carrier), treatment.seconds,
                          treatment.isWounded, treatment.note, treatment.isRetired);
}

void insertAuxins(Connection& connection, const core::Treatment& treatment) {
    int position = 0;
    for (const core::Auxin& auxin : treatment.auxins)
        connection.run(insertAuxin, treatment.id, position++, auxin.name, core::wordFor(auxin.form),
                       auxin.milligramsPerLitre);
}

core::Treatment treatmentFrom(const Query& row) {
    return {.id = row.id<core::TreatmentId>(0),
            .name = row.text(1),
            .auxins = {},
            .carrier = carrierFrom(row.text(2)),
            .seconds = row.number(3),
            .isWounded = row.truth(4),
            .note = row.text(5),
            .isRetired = row.truth(6)};
}

}  // namespace

void insertRow(Connection& connection, const core::Treatment& treatment) {
    runTreatment(connection, insertTreatment, treatment);
    insertAuxins(connection, treatment);
}

bool updateRow(Connection& connection, const core::Treatment& treatment) {
    if (runTreatment(connection, updateTreatment, treatment) != 1) return false;
    connection.run(deleteAuxins, treatment.id);
    insertAuxins(connection, treatment);
    return true;
}

bool deleteRow(Connection& connection, core::TreatmentId id) {
    connection.run(deleteAuxins, id);
    return connection.run(deleteTreatment, id) == 1;
}

std::vector<core::Treatment> allTreatments(Connection& connection) {
    std::vector<core::Treatment> all;
    for (Query row = connection.query(selectTreatments); row.step();) {
        all.push_back(treatmentFrom(row));
        for (Query auxin = connection.query(selectAuxins, all.back().id); auxin.step();)
            all.back().auxins.push_back(
                {.name = auxin.text(0), .form = auxinFormFrom(auxin.text(1)), .milligramsPerLitre = auxin.real(2)});
    }
    return all;
}

}  // namespace db
