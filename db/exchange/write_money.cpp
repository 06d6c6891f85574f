// SPDX-License-Identifier: MIT
#include "db/exchange/write_money.h"

#include <tuple>

#include "db/exchange/in_order.h"

namespace db {

namespace {

class MoneyWriter {
  public:
    MoneyWriter(const core::Records& records, const SessionLabels& sessions, const TableFiles& files)
        : records_(records), sessions_(sessions), files_(files) {
        for (const core::BatchRecord& record : records.batches)
            codes_.emplace(record.batch.id.value, record.batch.code);
    }

    void writePrices() const;
    void writeLots() const;
    void writePottings() const;
    void writeExpenses() const;

  private:
    /// What a row belongs to, by name: what tells two of one name apart.
    template <class Owned>
    std::string ownerOf(const Owned& owned) const {
        return medium_(owned.medium).name + '\n' + treatment_(owned.treatment).name;
    }
    static std::string nameIn(const SessionLabels& names, std::int64_t id) {
        const auto found = names.find(id);
        return found == names.end() ? std::string() : found->second;
    }

    const core::Records& records_;
    const SessionLabels& sessions_;
    const TableFiles& files_;
    std::unordered_map<std::int64_t, std::string> codes_;
    ById<core::Method> method_{records_.shelves.methods};
    ById<core::Station> station_{records_.shelves.stations};
    ById<core::Medium> medium_{records_.shelves.media};
    ById<core::Treatment> treatment_{records_.shelves.treatments};
};

std::string dayOrNothing(const std::optional<core::Date>& day) {
    return day ? core::isoText(*day) : std::string();
}

/// Only where the kind of price asks for it.
std::optional<double> figureIf(bool isAskedFor, double figure) {
    if (!isAskedFor) return {};
    return figure;
}

void writePriceFigures(CsvWriter& csv, const core::Price& price) {
    const bool drawsPower = price.kind == core::PriceKind::Electricity;
    const bool isWorkTime = price.kind == core::PriceKind::WorkTime;
    const bool hasBasis = isWorkTime || price.kind == core::PriceKind::UsedUp;
    csv.figure(figureIf(core::hasAmount(price.kind), static_cast<double>(price.tenThousandths) / 10'000));
    csv.figure(price.lastsYears).figure(price.lastsFor);
    csv.text(hasBasis ? core::wordFor(price.basis) : std::string_view());
    csv.figure(figureIf(drawsPower, price.watts)).figure(figureIf(drawsPower, price.hoursADay));
    csv.figure(figureIf(drawsPower, price.duty)).figure(figureIf(isWorkTime, price.minutes));
}

void MoneyWriter::writePrices() const {
    const auto prices = inOrderOf(records_.shelves.prices, [&](const core::Price& price) {
        return std::tuple(price.kind, std::string_view(price.what), price.from, price.basis,
                          std::string_view(method_(price.method).name), std::string_view(station_(price.station).name),
                          ownerOf(price));
    });
    files_.table("prices", [&](CsvWriter& csv) {
        for (const core::Price* price : prices) {
            csv.text(price->what).text(core::wordFor(price->kind)).text(method_(price->method).name);
            csv.text(station_(price->station).name).text(medium_(price->medium).name);
            csv.text(treatment_(price->treatment).name).text(core::isoText(price->from));
            csv.text(dayOrNothing(price->until));
            writePriceFigures(csv, *price);
            csv.text(price->note).endRow();
        }
    });
}

void MoneyWriter::writeLots() const {
    const auto lots = inOrderOf(records_.shelves.lots, [&](const core::Lot& lot) {
        return std::tuple(lot.usedFrom, std::string_view(lot.name), ownerOf(lot));
    });
    files_.table("lots", [&](CsvWriter& csv) {
        for (const core::Lot* lot : lots) {
            csv.text(lot->name).text(treatment_(lot->treatment).name).text(medium_(lot->medium).name);
            csv.text(core::isoText(lot->usedFrom)).text(dayOrNothing(lot->madeOn)).text(lot->note).endRow();
        }
    });
}

void MoneyWriter::writePottings() const {
    const auto pottings = inOrderOf(records_.pottings, [&](const core::Potting& potting) {
        return std::tuple(potting.countedOn, nameIn(codes_, potting.batch.value), potting.potted, potting.lost,
                          std::string_view(potting.note));
    });
    files_.table("pottings", [&](CsvWriter& csv) {
        for (const core::Potting* potting : pottings) {
            csv.text(nameIn(codes_, potting->batch.value)).text(core::isoText(potting->countedOn));
            csv.number(potting->potted).number(potting->lost).text(potting->note).endRow();
        }
    });
}

void MoneyWriter::writeExpenses() const {
    const auto expenses = inOrderOf(records_.expenses, [&](const core::Expense& expense) {
        return std::tuple(expense.spentOn, nameIn(codes_, expense.batch.value),
                          nameIn(sessions_, expense.session.value), std::string_view(expense.what), expense.hundredths,
                          expense.minutes);
    });
    files_.table("expenses", [&](CsvWriter& csv) {
        for (const core::Expense* expense : expenses) {
            csv.text(nameIn(codes_, expense->batch.value)).text(core::isoText(expense->spentOn)).text(expense->what);
            csv.figure(static_cast<double>(expense->hundredths) / 100);
            csv.text(nameIn(sessions_, expense->session.value)).figure(expense->minutes).endRow();
        }
    });
}

}  // namespace

void writeMoney(const core::Records& records, const SessionLabels& sessions, const TableFiles& files) {
    const MoneyWriter writer(records, sessions, files);
    writer.writePrices();
    writer.writeLots();
    writer.writePottings();
    writer.writeExpenses();
}

}  // namespace db
