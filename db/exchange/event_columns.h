// SPDX-License-Identifier: MIT
// The columns of what is found and what happens beside checks, and of the conditions: for exchange_tables.cpp only.
#pragma once

#include "db/exchange/exchange_tables.h"

namespace db {

inline constexpr ExchangeColumn findingColumns[] = {
    {"batch", CellKind::Text, true, "the batch's code"},
    {"checked_on", CellKind::Date, true, "the day of a check in checks.csv, whose counts this is one of"},
    {"position", CellKind::Text, true, "one of the batch's, such as A1"},
    {"outcome", CellKind::Text, true, "rooted, lost or withdrawn"},
    {"cause", CellKind::Text, false, "of the loss; empty: not known"}};

inline constexpr ExchangeColumn readingTableColumns[] = {
    {"station", CellKind::Text, true, "where it was read"},
    {"quantity", CellKind::Text, true, "what was read; its name sets the unit of the value"},
    {"read_at", CellKind::Moment, true, "in UTC, such as 2026-03-14T10:42:05Z"},
    {"value", CellKind::Figure, true,
     "solution_ec in mS/cm, solution_ph, solution_temperature in C, dissolved_oxygen in mg/L, medium_temperature in C, "
     "air_temperature in C, relative_humidity in %, light in umol/m2/s, leaf_temperature in C"},
    {"note", CellKind::Text, false, ""}};

inline constexpr ExchangeColumn careTableColumns[] = {
    {"station", CellKind::Text, true, "to which it was done"},
    {"done_at", CellKind::Moment, true, "in UTC, such as 2026-03-14T10:42:05Z"},
    {"kind", CellKind::Text, true, "topped up, solution changed, vented, misted, sprayed, pump on, pump off or other"},
    {"note", CellKind::Text, false, "needed where the kind is other"},
    {"litres", CellKind::Figure, false, "of what went in"},
    {"care", CellKind::Text, false, "a label that mixes.csv refers to; empty where it has none"}};

inline constexpr ExchangeColumn photoTableColumns[] = {
    {"batch", CellKind::Text, true, "the batch's code"},
    {"taken_on", CellKind::Date, true, "the day"},
    {"caption", CellKind::Text, false, ""},
    {"file", CellKind::Text, true, "a JPEG or PNG of up to 4 MB, such as photos/0001.jpg"}};

inline constexpr ExchangeColumn mixColumns[] = {
    {"session", CellKind::Text, false, "its label in sessions.csv; either this or care"},
    {"care", CellKind::Text, false, "its label in care.csv"},
    {"made_at", CellKind::Moment, true, "in UTC, such as 2026-03-14T10:42:05Z"},
    {"kind", CellKind::Text, true, "nutrient, label, tub, ph, titration, auxin or medium"},
    {"title", CellKind::Text, true, ""},
    {"amounts", CellKind::Text, true, "one a line"},
    {"workings", CellKind::Text, false, "how they were worked out, one a line"},
    {"cautions", CellKind::Text, false, "names, one a line"}};

inline constexpr ExchangeColumn ownBandColumns[] = {
    {"stage", CellKind::Text, true, "before roots, first roots, filling roots or hardening"},
    {"quantity", CellKind::Text, true, "as in readings.csv, or vapour_deficit in kPa, or daily_light in mol/m2"},
    {"species", CellKind::Text, false, "of the plant; empty: of every plant that has none of its own"},
    {"cultivar", CellKind::Text, false, "of the plant"},
    {"low", CellKind::Figure, false, "in the unit of the quantity; one of the two may be empty"},
    {"high", CellKind::Figure, false, ""},
    {"note", CellKind::Text, false, ""}};

inline constexpr ExchangeColumn loggerColumns[] = {
    {"station", CellKind::Text, true, "where it was recorded"},
    {"quantity", CellKind::Text, true, "as in readings.csv; its name sets the unit of the value"},
    {"at", CellKind::Moment, true, "in UTC, such as 2026-03-14T10:42:05Z; each once for a station and quantity"},
    {"value", CellKind::Figure, true, ""}};

inline constexpr ExchangeColumn loggerFormatColumns[] = {
    {"name", CellKind::Text, true, "of the kind of file"},
    {"header", CellKind::Text, false, "the line that names its columns"},
    {"mapping", CellKind::Text, true, "which column is what: JSON that Strikebook writes and reads"}};

}  // namespace db
