// SPDX-License-Identifier: MIT
// A sheet as text, figures as the table behind them: for golden tests, terminals, and readers whom a PDF does not
// serve.
#pragma once

#include <QString>

namespace report {

struct Sheet;

[[nodiscard]] QString plainText(const Sheet& sheet);

}  // namespace report
