// SPDX-License-Identifier: MIT
// Sentences that every print-out may carry. Inside report only.
#pragma once

#include <QString>
#include <QStringList>
#include <string>
#include <vector>

#include "app/report/sheet.h"
#include "core/records.h"

namespace report {

[[nodiscard]] QString inventedText();
/// "Source of the records: ...", or nothing.
[[nodiscard]] QString citationText(const Sheet& sheet);
[[nodiscard]] QString printedText(const Sheet& sheet);
/// "24 of 40 lines are left out here ..."
[[nodiscard]] QString leftOutText(int leftOut, int all);
/// The cautions without those that the sheet says in its own place: invented data, citation.
[[nodiscard]] QStringList cautionsToPrint(const std::vector<std::string>& cautions, const core::LogbookFacts& facts);
/// Grower, logbook, citation and the mark of invented data, from the logbook's facts.
[[nodiscard]] Sheet sheetFor(const core::LogbookFacts& facts, const QDateTime& printedAt);

}  // namespace report
