// SPDX-License-Identifier: MIT
// The trade's cautions on paper: those that belong to what a sheet is about at its foot, and all of them on a sheet to hang up. Sheets, except
// for mixing cards, which name the source behind each.
#pragma once

#include <QDateTime>
#include <QString>
#include <span>
#include <vector>

#include "app/report/sheet.h"
#include "core/mixing/trade_cautions.h"
#include "core/records.h"

namespace report {

/// "Acids: acid goes into water ..."
[[nodiscard]] QString cautionText(core::CautionTopic topic);
/// A heading and a paragraph for each; nothing where there is nothing to mind.
[[nodiscard]] std::vector<Block> cautionBlocks(const std::vector<core::CautionTopic>& topics);
void addCautions(Sheet& sheet, const std::vector<core::CautionTopic>& topics);

/// "B260047K: licence ..." for each batch that has one or lacks the one that it should have.
void addLicences(Sheet& sheet, std::span<const core::Batch* const> batches, const core::Shelves& shelves);

/// All cautions with their sources, to hang by the bench.
[[nodiscard]] Sheet cautionSheet(const core::LogbookFacts& facts, const QDateTime& printedAt);

}  // namespace report
