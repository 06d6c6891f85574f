// SPDX-License-Identifier: MIT
#include "app/desktop/printing/printed_at.h"

#include "app/desktop/workspace.h"

namespace desktop {

QDateTime printedAt(const Workspace& workspace) {
    return QDateTime::fromSecsSinceEpoch(workspace.clock()().time_since_epoch().count());
}

}  // namespace desktop
