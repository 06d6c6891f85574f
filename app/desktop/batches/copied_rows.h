// SPDX-License-Identifier: MIT
// Rows of a table for the clipboard: tab-separated with a line of headings, as a spreadsheet takes them.
#pragma once

#include <QString>
#include <functional>

class QTableView;

namespace desktop {

/// Puts the rows that have a selected cell (all rows when none has) on the clipboard; hidden columns are left out. Returns how many it
/// copied.
int copyRows(const QTableView& table);
/// Ctrl+C in the table copies its rows, and `say` is told so.
void copyOnRequest(QTableView& table, std::function<void(const QString& sentence)> say);

}  // namespace desktop
