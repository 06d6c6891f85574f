// SPDX-License-Identifier: MIT
// The lines of the newest session, as rows to start the next one from: the same plants, places and counts. Positions and notes are its own.
#pragma once

#include <vector>

#include "app/desktop/session/session_sheet.h"

namespace desktop {

class Workspace;

/// Each only offered; none when the logbook has no session yet.
[[nodiscard]] std::vector<SessionRow> rowsOfLastSession(const Workspace& workspace);

}  // namespace desktop
