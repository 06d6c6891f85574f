// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/money_shelves.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/desktop/shelves/described_shelf.h"
#include "app/desktop/shelves/money_words.h"
#include "app/desktop/shelves/shelf_forms.h"
#include "app/desktop/shelves/shelf_uses.h"
#include "app/desktop/shelves/usual_prices_dialog.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

namespace {

struct MoneyWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::MoneyShelf)
};

ShelfCell dayCell(std::optional<core::Date> day) {
    if (!day) return {};
    return {.text = plot::shortDateText(*day),
            .figure = static_cast<double>(std::chrono::sys_days{*day}.time_since_epoch().count()) + 1e6};
}

bool isPast(std::optional<core::Date> last, core::Date today) {
    return last && *last < today;
}

std::vector<ColumnOf<core::Price>> priceColumns() {
    using core::Price;
    using core::Shelves;
    const auto words = [](const QString& title, auto text) {
        return ColumnOf<Price>{title, ShelfLook::Words, [text](const Price& price, const Shelves& shelves) {
                                   return ShelfCell{.text = text(price, shelves)};
                               }};
    };
    return {words(MoneyWords::tr("What"),
                  [](const Price& price, const Shelves&) { return QString::fromStdString(price.what); }),
            words(MoneyWords::tr("Kind"), [](const Price& price, const Shelves&) { return priceKindText(price.kind); }),
            words(MoneyWords::tr("Whose"), priceOwnerName),
            {MoneyWords::tr("Amount"), ShelfLook::Figure,
             [](const Price& price, const Shelves& shelves) {
                 const QString text = priceAmountText(price, shelves.facts.currency);
                 if (text.isEmpty()) return ShelfCell{};
                 return ShelfCell{.text = text, .figure = static_cast<double>(price.tenThousandths)};
             }},
            words(MoneyWords::tr("Lasts, or each"),
                  [](const Price& price, const Shelves&) { return priceLifeText(price); }),
            {MoneyWords::tr("From"), ShelfLook::Figure,
             [](const Price& price, const Shelves&) { return dayCell(price.from); }},
            {MoneyWords::tr("Until"), ShelfLook::Figure, [](const Price& price, const Shelves& shelves) {
                 return dayCell(core::lastDayOf(price, shelves.prices));
             }}};
}

/// The day before the next lot of its treatment or medium.
std::optional<core::Date> lastDayOfLot(const core::Lot& lot, const std::vector<core::Lot>& lots) {
    std::optional<core::Date> last;
    for (const core::Lot& other : lots)
        if (other.treatment == lot.treatment && other.medium == lot.medium && other.usedFrom > lot.usedFrom)
            last = std::min(last.value_or(core::addDays(other.usedFrom, -1)), core::addDays(other.usedFrom, -1));
    return last;
}

QString ownerOfLot(const core::Lot& lot, const core::Shelves& shelves) {
    core::Price asked;  // of whom a price would be is called the same
    asked.treatment = lot.treatment;
    asked.medium = lot.medium;
    return priceOwnerText(asked, shelves);
}

ShelfUses usesOfLots(const Workspace& workspace) {
    const std::vector<core::Lot>& lots = workspace.shelves().lots;
    ShelfUses uses;
    if (lots.empty()) return uses;
    for (const core::BatchLine& line : workspace.batchLines())
        for (const core::Lot* lot : {core::lotInUse(lots, line.batch.treatment, line.batch.stuckOn),
                                     core::lotInUse(lots, line.batch.medium, line.batch.stuckOn)})
            if (lot != nullptr) countUse(uses, lot->id.value, line);
    return uses;
}

}  // namespace

Shelf pricesShelf() {
    Shelf shelf = describedShelf<core::Price>(ShelfKind::Prices, QStringLiteral("prices"), &core::Shelves::prices,
                                              priceColumns());
    shelf.items = [items = shelf.items](const core::Shelves& shelves, core::Date today) {
        std::vector<ShelfItem> all = items(shelves, today);
        for (std::size_t number = 0; number < all.size(); ++number) {
            const core::Price& price = shelves.prices[number];
            // Past ones are grey, and say that they are past.
            all[number].isRetired = isPast(core::lastDayOf(price, shelves.prices), today);
            all[number].state = all[number].isRetired ? MoneyWords::tr("past")
                                : price.from > today  ? MoneyWords::tr("to come")
                                                      : QString();
        }
        // Within a kind by name, the newest first: sorting by a column keeps this order.
        std::ranges::stable_sort(all, [](const ShelfItem& one, const ShelfItem& other) {
            constexpr std::size_t from = 5;
            const int byName = QString::localeAwareCompare(one.name, other.name);
            return byName != 0 ? byName < 0 : one.cells[from].figure > other.cells[from].figure;
        });
        return all;
    };
    shelf.title = MoneyWords::tr("Prices");
    shelf.newText = MoneyWords::tr("New &price");
    shelf.purpose = MoneyWords::tr(
        "What things cost and how long they last, what is used up, what draws power, how long the work takes and what "
        "an hour is worth to you. Each holds from a day on, so that old batches keep the prices of their own days.");
    shelf.sortedBy = 1;
    shelf.stretched = 0;
    shelf.form = priceForm;
    shelf.another = {.text = MoneyWords::tr("New price fro&m\u2026"),
                     .tip = MoneyWords::tr("Shift+Insert: all of it as it is, from today on; older batches keep the "
                                           "price of their days"),
                     .dialog = laterPriceForm};
    shelf.start = {.text = MoneyWords::tr("Start with the &usual things\u2026"),
                   .tip = MoneyWords::tr("One table to fill in; what you leave blank is not kept"),
                   .dialog = usualPricesDialog};
    return shelf;
}

Shelf lotsShelf() {
    using core::Lot;
    using core::Shelves;
    Shelf shelf = describedShelf<Lot>(
        ShelfKind::Lots, QStringLiteral("lots"), &Shelves::lots,
        {{MoneyWords::tr("Lot"), ShelfLook::Words,
          [](const Lot& lot, const Shelves&) { return ShelfCell{.text = QString::fromStdString(lot.name)}; }},
         {MoneyWords::tr("Of"), ShelfLook::Words,
          [](const Lot& lot, const Shelves& shelves) { return ShelfCell{.text = ownerOfLot(lot, shelves)}; }},
         {MoneyWords::tr("Used from"), ShelfLook::Figure,
          [](const Lot& lot, const Shelves&) { return dayCell(lot.usedFrom); }},
         {MoneyWords::tr("Made on"), ShelfLook::Figure,
          [](const Lot& lot, const Shelves&) { return dayCell(lot.madeOn); }},
         {MoneyWords::tr("Note"), ShelfLook::Words,
          [](const Lot& lot, const Shelves&) { return ShelfCell{.text = QString::fromStdString(lot.note)}; }}});
    shelf.items = [items = shelf.items](const Shelves& shelves, core::Date today) {
        std::vector<ShelfItem> all = items(shelves, today);
        for (std::size_t number = 0; number < all.size(); ++number) {
            all[number].isRetired = isPast(lastDayOfLot(shelves.lots[number], shelves.lots), today);
            all[number].state =
                all[number].isRetired ? MoneyWords::tr("used up", "a lot") : MoneyWords::tr("in use", "a lot");
        }
        return all;
    };
    shelf.title = MoneyWords::tr("Lots");
    shelf.newText = MoneyWords::tr("New lo&t");
    shelf.purpose = MoneyWords::tr(
        "Bottles of hormone and bags of medium, each from the day of its first use until the next one\u2019s. Batches "
        "have "
        "the one that was in use on their day, with nothing more to type: a spent bottle shows itself.");
    shelf.uses = usesOfLots;
    shelf.form = lotForm;
    return shelf;
}

}  // namespace desktop
