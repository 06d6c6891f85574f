// SPDX-License-Identifier: MIT
// The columns of prices, lots, expenses and counts after potting: for exchange_tables.cpp only.
#pragma once

#include "db/exchange/exchange_tables.h"

namespace db {

inline constexpr ExchangeColumn priceColumns[] = {
    {"what", CellKind::Text, true, "what costs it, such as air pump"},
    {"kind", CellKind::Text, true,
     "lasting, used up, electricity, tariff, work time, hour of work or day sooner; the columns that it doesn't ask "
     "for stay empty"},
    {"method", CellKind::Text, false, "whose it is: one of the four at most; none: the whole bench"},
    {"station", CellKind::Text, false, ""},
    {"medium", CellKind::Text, false, ""},
    {"treatment", CellKind::Text, false, ""},
    {"from", CellKind::Date, true, "the first day on which it holds"},
    {"until", CellKind::Date, false, "the last; empty: until the next of its name, or still"},
    {"amount", CellKind::Figure, false,
     "in the currency of logbook.csv, to the ten-thousandth: of the thing, the pack, the kWh, the hour or the day"},
    {"lasts_years", CellKind::Figure, false, "of what lasts: this or lasts_for"},
    {"lasts_for", CellKind::Figure, false, "of what lasts, batches; of a pack, so many of its basis"},
    {"basis", CellKind::Text, false, "of what is used up: cutting, batch or session; of work time also check or care"},
    {"watts", CellKind::Figure, false, "of what draws power"},
    {"hours_a_day", CellKind::Figure, false, ""},
    {"duty", CellKind::Figure, false, "the share of these hours that it really draws power, 0 to 1; empty: 1"},
    {"minutes", CellKind::Figure, false, "of work time, for each of its basis"},
    {"note", CellKind::Text, false, ""}};

inline constexpr ExchangeColumn lotColumns[] = {
    {"lot", CellKind::Text, true, "what stands on the bottle or bag, unique within its treatment or medium"},
    {"treatment", CellKind::Text, false, "whose hormone it is; either this or medium"},
    {"medium", CellKind::Text, false, ""},
    {"used_from", CellKind::Date, true, "the first day; it is used up to the day before the next one's"},
    {"made_on", CellKind::Date, false, "mixed or packed"},
    {"note", CellKind::Text, false, ""}};

inline constexpr ExchangeColumn pottingColumns[] = {
    {"batch", CellKind::Text, true, "the batch's code"},
    {"counted_on", CellKind::Date, true, "the day"},
    {"potted", CellKind::Count, true, "newly potted on, since the count before"},
    {"lost", CellKind::Count, false, "newly lost after potting"},
    {"note", CellKind::Text, false, ""}};

inline constexpr ExchangeColumn expenseTableColumns[] = {
    {"batch", CellKind::Text, false, "the batch's code; either this or session"},
    {"spent_on", CellKind::Date, true, "the day"},
    {"what", CellKind::Text, true, "what for"},
    {"amount", CellKind::Figure, true, "in the currency of logbook.csv, to the hundredth"},
    {"session", CellKind::Text, false, "its label in sessions.csv"},
    {"minutes", CellKind::Figure, false, "of work that went with it"}};

}  // namespace db
