// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_sheet.h"

#include <algorithm>

namespace desktop {

bool SessionRow::isBlank() const {
    return std::all_of(cells.begin(), cells.end(), [](const QString& cell) { return cell.trimmed().isEmpty(); });
}

int SessionSheet::batches() const {
    return static_cast<int>(std::count_if(rows.begin(), rows.end(),
                                          [](const SessionRow& row) { return !row.isOffered && !row.isBlank(); }));
}

bool SessionSheet::isBlank() const {
    return batches() == 0 && worker.trimmed().isEmpty() && note.trimmed().isEmpty();
}

}  // namespace desktop
