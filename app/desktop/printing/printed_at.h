// SPDX-License-Identifier: MIT
// The moment that stands on a print-out, in local time, by the workspace's own clock.
#pragma once

#include <QDateTime>

namespace desktop {

class Workspace;

[[nodiscard]] QDateTime printedAt(const Workspace& workspace);

}  // namespace desktop
