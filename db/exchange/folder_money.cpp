// SPDX-License-Identifier: MIT
#include "db/exchange/folder_money.h"

#include <algorithm>
#include <cmath>

#include "core/batch/potting_rules.h"
#include "core/event_rules.h"
#include "core/money/price_rules.h"
#include "core/treatment/lot_rules.h"
#include "core/units/entered_text.h"
#include "db/actions/session_actions.h"
#include "db/exchange/folder_events.h"
#include "db/exchange/table_reader.h"

namespace db {

namespace {

struct ReadPotting {
    core::Potting potting;
    const core::BatchRecord* record{};
    int row{};
};

class MoneyReading {
  public:
    MoneyReading(FolderShelves& shelves, const FolderBatches& batches, core::Date today, core::Records& records)
        : shelves_(shelves), batches_(batches), today_(today), records_(records) {}

    void takePrice(TableRow& row);
    void takeLot(TableRow& row);
    void takePotting(TableRow& row);
    void takeExpense(TableRow& row);
    void judgePottings(FaultList& faults);

  private:
    void takeOwner(TableRow& row, core::Price& price) const;

    FolderShelves& shelves_;
    const FolderBatches& batches_;
    core::Date today_;
    core::Records& records_;
    std::vector<ReadPotting> pottings_;
};

/// The thing that the cell names; unset where it is empty.
template <class Thing>
auto namedIn(TableRow& row, std::string_view column, const NamedList<Thing>& list, const std::string& file) {
    const std::string name = row.text(column);
    if (const Thing* known = name.empty() ? nullptr : list.find(name)) return known->id;
    if (!name.empty()) row.fault(column, core::quotable(name) + " is not in " + file + " or batches.csv.");
    return decltype(Thing::id){};
}

/// An amount of money in the finest parts that are kept: 100 or 10 000 to the whole.
std::optional<std::int64_t> amountIn(TableRow& row, double parts, const std::string& tooFine) {
    const std::optional<double> amount = row.figure("amount");
    if (!amount) return {};
    const double whole = std::round(*amount * parts);
    if (std::abs(whole - *amount * parts) > 1e-6 * std::max(1.0, whole))
        row.fault("amount", core::quotable(row.text("amount")) + " is finer than " + tooFine);
    return static_cast<std::int64_t>(whole);
}

/// A figure that the price's kind needs.
double neededIn(TableRow& row, std::string_view column, bool isNeeded) {
    const std::optional<double> figure = row.figure(column);
    if (!figure && isNeeded) row.fault(column, "The number is missing; this kind of price needs it.");
    return figure.value_or(0);
}

core::PriceKind priceKindIn(TableRow& row) {
    const std::string word = row.text("kind");
    const auto kind = core::priceKindFrom(word);
    if (!kind)
        row.fault("kind", core::quotable(word) +
                              " is no kind of price; lasting, used up, electricity, tariff, work time, hour of work "
                              "or day sooner is allowed.");
    return kind.value_or(core::PriceKind::Lasting);
}

core::PriceBasis basisIn(TableRow& row, core::PriceKind kind) {
    const std::string word = row.text("basis");
    const bool isNeeded = kind == core::PriceKind::UsedUp || kind == core::PriceKind::WorkTime;
    if (word.empty() && !isNeeded) return core::Price().basis;
    const auto basis = core::priceBasisFrom(word);
    if (!basis)
        row.fault("basis", core::quotable(word) +
                               " is nothing that a price can be for each of; cutting, batch, "
                               "session, check or care is allowed.");
    return basis.value_or(core::PriceBasis::Batch);
}

/// A figure in a cell that its kind doesn't ask for is no price of that kind: nothing of it is passed over in silence.
void refuseStrangers(TableRow& row, const core::Price& price) {
    const core::Price tidy = core::tidied(price);
    const auto refuse = [&](std::string_view column, bool isStranger) {
        if (isStranger)
            row.fault(column, "A price of the kind " + std::string(core::wordFor(price.kind)) +
                                  " has nothing here; leave the cell empty.");
    };
    refuse("amount", price.tenThousandths != tidy.tenThousandths);
    refuse("lasts_years", price.lastsYears != tidy.lastsYears);
    refuse("lasts_for", price.lastsFor != tidy.lastsFor);
    refuse("basis", price.basis != tidy.basis);
    refuse("watts", price.watts != tidy.watts);
    refuse("hours_a_day", price.hoursADay != tidy.hoursADay);
    refuse("duty", price.duty != tidy.duty);
    refuse("minutes", price.minutes != tidy.minutes);
}

void MoneyReading::takeOwner(TableRow& row, core::Price& price) const {
    price.method = namedIn(row, "method", shelves_.methods, "methods.csv");
    price.station = namedIn(row, "station", shelves_.stations, "stations.csv");
    price.medium = namedIn(row, "medium", shelves_.media, "media.csv");
    price.treatment = namedIn(row, "treatment", shelves_.treatments, "treatments.csv");
}

void MoneyReading::takePrice(TableRow& row) {
    core::Price price;
    price.id.value = newId();
    price.kind = priceKindIn(row);
    price.what = row.text("what");
    takeOwner(row, price);
    price.from = row.date("from").value_or(core::Date{});
    price.until = row.date("until");
    const auto amount = amountIn(row, 10'000, "a ten-thousandth; four digits after the point are allowed.");
    if (!amount && core::hasAmount(price.kind))
        row.fault("amount", "The number is missing; this kind of price needs it.");
    price.tenThousandths = amount.value_or(0);
    price.lastsYears = row.figure("lasts_years");
    price.lastsFor = row.figure("lasts_for");
    price.basis = basisIn(row, price.kind);
    const bool drawsPower = price.kind == core::PriceKind::Electricity;
    price.watts = neededIn(row, "watts", drawsPower);
    price.hoursADay = neededIn(row, "hours_a_day", drawsPower);
    price.duty = row.figure("duty").value_or(core::Price().duty);
    price.minutes = neededIn(row, "minutes", price.kind == core::PriceKind::WorkTime);
    price.note = row.text("note");
    if (row.isSound()) refuseStrangers(row, price);
    if (row.isSound()) row.refuse(core::faultsIn(price, shelves_.shelves, today_));
    if (row.isSound()) shelves_.shelves.prices.push_back(std::move(price));
}

void MoneyReading::takeLot(TableRow& row) {
    core::Lot lot;
    lot.id.value = newId();
    lot.name = row.text("lot");
    lot.treatment = namedIn(row, "treatment", shelves_.treatments, "treatments.csv");
    lot.medium = namedIn(row, "medium", shelves_.media, "media.csv");
    lot.usedFrom = row.date("used_from").value_or(core::Date{});
    lot.madeOn = row.date("made_on");
    lot.note = row.text("note");
    if (row.isSound()) row.refuse(core::faultsIn(lot, shelves_.shelves, today_));
    if (row.isSound()) shelves_.shelves.lots.push_back(std::move(lot));
}

void MoneyReading::takePotting(TableRow& row) {
    core::Potting potting;
    potting.id.value = newId();
    const core::BatchRecord* owner = recordIn(row, batches_);
    potting.countedOn = row.date("counted_on").value_or(core::Date{});
    potting.potted = row.countOr("potted", 0);
    potting.lost = row.countOr("lost", 0);
    potting.note = row.text("note");
    if (!row.isSound() || owner == nullptr) return;
    potting.batch = owner->batch.id;
    pottings_.push_back({std::move(potting), owner, row.number()});
}

/// Once all are read, in order of day whatever the order of the rows: each with those before it. Of a day, those that leave most alive
/// come first, since only the whole day is judged.
void MoneyReading::judgePottings(FaultList& faults) {
    std::ranges::stable_sort(pottings_, {}, [](const ReadPotting& read) {
        return std::pair(read.potting.countedOn, read.potting.lost - read.potting.potted);
    });
    std::unordered_map<core::BatchId, std::vector<core::Potting>> before;
    for (ReadPotting& read : pottings_) {
        std::vector<core::Potting>& others = before[read.potting.batch];
        const core::Refusals found = core::faultsIn(read.potting, *read.record, others, today_);
        for (const core::Refusal& refusal : found)
            faults.add({.file = "pottings.csv",
                        .row = read.row,
                        .column = columnOf(exchangeTable("pottings"), refusal.field),
                        .reason = refusal.sentence});
        if (!found.empty()) continue;
        others.push_back(read.potting);
        records_.pottings.push_back(std::move(read.potting));
    }
}

void MoneyReading::takeExpense(TableRow& row) {
    core::Expense expense;
    expense.id.value = newId();
    const bool namesBatch = !row.text("batch").empty();
    const core::BatchRecord* owner = namesBatch ? recordIn(row, batches_) : nullptr;
    expense.session = sessionIn(row, batches_);
    expense.spentOn = row.date("spent_on").value_or(core::Date{});
    expense.what = row.text("what");
    expense.hundredths = amountIn(row, 100, "a hundredth; two digits after the point are allowed.").value_or(0);
    expense.minutes = row.figure("minutes");
    if (!row.isSound() || (namesBatch && owner == nullptr)) return;
    if (owner != nullptr) expense.batch = owner->batch.id;
    row.refuse(core::faultsIn(expense, today_));
    if (row.isSound()) records_.expenses.push_back(std::move(expense));
}

}  // namespace

void readMoney(const std::filesystem::path& folder, FolderShelves& shelves, const FolderBatches& batches,
               core::Date today, core::Records& records, FaultList& faults, const std::stop_token& stop) {
    MoneyReading reading(shelves, batches, today, records);
    const auto table = [&](std::string_view name, void (MoneyReading::*take)(TableRow&)) {
        readTable(folder, name, faults, stop, [&](TableRow& row) {
            if (row.isWhole()) (reading.*take)(row);
        });
    };
    table("prices", &MoneyReading::takePrice);
    table("lots", &MoneyReading::takeLot);
    table("pottings", &MoneyReading::takePotting);
    reading.judgePottings(faults);
    table("expenses", &MoneyReading::takeExpense);
}

}  // namespace db
