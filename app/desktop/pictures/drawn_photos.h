// SPDX-License-Identifier: MIT
// Photos for a batch of a demo logbook. They are drawings: nobody's plants.
#pragma once

#include "core/id.h"

namespace desktop {

class Workspace;

/// Two, of its first days and of today; nothing where the batch has photos already.
void addDrawnPhotos(Workspace& workspace, core::BatchId batch);

}  // namespace desktop
