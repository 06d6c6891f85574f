// SPDX-License-Identifier: MIT
// How tables of records look and behave everywhere: single-line rows of one height that grow with the text size, whole rows selected, no grid,
// headings at the left, Tab leaves.
#pragma once

class QTableView;

namespace desktop {

void giveTableManners(QTableView& table);
/// Makes this row the current one, by the first column that is shown. QTableView::selectRow() finds none where one reads from right to left.
void chooseRow(QTableView& table, int row);

}  // namespace desktop
