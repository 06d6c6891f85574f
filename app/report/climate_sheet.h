// SPDX-License-Identifier: MIT
// The climate of a station on paper: what is known of each quantity in words, its chart, and where the bands come from.
#pragma once

#include <QDateTime>
#include <memory>
#include <vector>

#include "app/report/sheet.h"
#include "core/climate/lived_through.h"
#include "core/records.h"

namespace report {

struct ClimatePaper {
    struct Part {
        QString words;
        std::shared_ptr<const plot::Figure> figure;
    };
    QString station;
    QString span;
    QString bands;  // whose are drawn
    std::vector<Part> parts;
};

[[nodiscard]] Sheet climateSheet(const ClimatePaper& paper, const core::Shelves& shelves, const QDateTime& printedAt);

/// What a batch lived through, one row a quantity; also what its page shows. No rows where nothing is known.
[[nodiscard]] Table livedTable(const std::vector<core::LivedQuantity>& lived, const core::DisplayUnits& units);
/// What the table's figures mean, and how little or much of the time they tell of.
[[nodiscard]] QString livedMethod();

}  // namespace report
