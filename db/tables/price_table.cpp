// SPDX-License-Identifier: MIT
#include "db/tables/price_table.h"

#include <algorithm>
#include <tuple>

namespace db {

namespace {

constexpr const char* insertPrice = R"(
    INSERT INTO prices (id, kind, what, method_id, station_id, medium_id, treatment_id, from_day, until_day,
                        amount_ten_thousandths, lasts_years, lasts_for, basis, watts, hours_a_day, duty, minutes, note)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18))";
constexpr const char* updatePrice = R"(
    UPDATE prices SET kind = ?2, what = ?3, method_id = ?4, station_id = ?5, medium_id = ?6, treatment_id = ?7,
                      from_day = ?8, until_day = ?9, amount_ten_thousandths = ?10, lasts_years = ?11, lasts_for = ?12,
                      basis = ?13, watts = ?14, hours_a_day = ?15, duty = ?16, minutes = ?17, note = ?18
    WHERE id = ?1)";
constexpr const char* deletePrice = "DELETE FROM prices WHERE id = ?1";
constexpr const char* selectPrices = R"(
    SELECT id, kind, what, method_id, station_id, medium_id, treatment_id, from_day, until_day, amount_ten_thousandths,
           lasts_years, lasts_for, basis, watts, hours_a_day, duty, minutes, note
    FROM prices)";

std::optional<double> lifeIn(const Query& row, int column) {
    if (row.isNull(column)) return {};
    return row.real(column);
}

core::Price priceFrom(const Query& row) {
    // The table's CHECKs let no other words in.
    return {.id = row.id<core::PriceId>(0),
            .kind = core::priceKindFrom(row.text(1)).value_or(core::PriceKind::Lasting),
            .what = row.text(2),
            .method = row.id<core::MethodId>(3),
            .station = row.id<core::StationId>(4),
            .medium = row.id<core::MediumId>(5),
            .treatment = row.id<core::TreatmentId>(6),
            .from = row.date(7),
            .until = row.optionalDate(8),
            .tenThousandths = row.bigNumber(9),
            .lastsYears = lifeIn(row, 10),
            .lastsFor = lifeIn(row, 11),
            .basis = core::priceBasisFrom(row.text(12)).value_or(core::PriceBasis::Batch),
            .watts = row.real(13),
            .hoursADay = row.real(14),
            .duty = row.real(15),
            .minutes = row.real(16),
            .note = row.text(17)};
}

int runPrice(Connection& connection, const char* sql, const core::Price& price) {
    return connection.run(sql, price.id, core::wordFor(price.kind), price.what, price.method, price.station,
                          price.medium, price.treatment, price.from, price.until, price.tenThousandths,
                          price.lastsYears, price.lastsFor, core::wordFor(price.basis), price.watts, price.hoursADay,
                          price.duty, price.minutes, price.note);
}

}  // namespace

void insertRow(Connection& connection, const core::Price& price) {
    runPrice(connection, insertPrice, price);
}

bool updateRow(Connection& connection, const core::Price& price) {
    return runPrice(connection, updatePrice, price) == 1;
}

bool deleteRow(Connection& connection, core::PriceId id) {
    return connection.run(deletePrice, id) == 1;
}

std::vector<core::Price> allPrices(Connection& connection) {
    std::vector<core::Price> all;
    for (Query row = connection.query(selectPrices); row.step();) all.push_back(priceFrom(row));
    std::ranges::sort(all, [](const core::Price& a, const core::Price& b) {
        return std::tie(a.kind, a.what, a.from, a.id) < std::tie(b.kind, b.what, b.from, b.id);
    });
    return all;
}

}  // namespace db
