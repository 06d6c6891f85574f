// SPDX-License-Identifier: MIT
// The map of a station's positions before it is printed, as the logbook has it.
#pragma once

#include "app/desktop/page.h"

namespace desktop {

class PrintPreview;

/// With `focus` the other batches are dimmed. Opens it without blocking; nothing when the station has no layout.
PrintPreview* showMapPreview(core::StationId station, core::BatchId focus, const PageContext& context, QWidget* parent);

}  // namespace desktop
