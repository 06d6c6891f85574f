// SPDX-License-Identifier: MIT
// Makes batches of what was typed, or says of each cell what is wrong with it. Plants, stock plants, kinds of cutting and media that
// the logbook doesn't know are made on the spot; stations and treatments need more than a name, so they have to be described first.
#pragma once

#include <QString>
#include <QStringList>
#include <vector>

#include "app/desktop/session/session_sheet.h"
#include "db/actions/session_actions.h"

namespace desktop {

struct CellFault {
    int row{};
    SessionColumn column{};
    QString sentence;
    bool isBlank{};  // nothing typed yet where something is needed

    bool operator==(const CellFault&) const = default;
};

struct SessionReading {
    db::SessionDraft draft;
    std::vector<int> rows;  // of the sheet, one for each batch
    std::vector<CellFault> faults;
    QString dayFault;
    QString headerFault;  // of worker or note
    QStringList news;     // what will be made on the spot, in words

    [[nodiscard]] bool isClean() const { return faults.empty() && dayFault.isEmpty() && headerFault.isEmpty(); }
};

[[nodiscard]] SessionReading readSession(const SessionSheet& sheet, const core::Shelves& shelves, core::Date today);

/// The column's heading, as faults and the grid call it.
[[nodiscard]] QString headingOf(SessionColumn column);

}  // namespace desktop
