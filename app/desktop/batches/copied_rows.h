// SPDX-License-Identifier: MIT
// Rows of a table for the clipboard: tab-separated with a line of headings, as a spreadsheet takes them.
#pragma once

#include <QString>

class QAbstractItemView;

namespace desktop {

/// Puts the rows that have a selected cell (all rows when none has) on the clipboard; hidden columns
/// are left out. Returns how many it copied.
int copyRows(const QAbstractItemView& view);

}  // namespace desktop
