// SPDX-License-Identifier: MIT
// Labels before they are printed: on which sheet or roll, from which label on where a sheet is half used, moved by how much where the
// printer feeds it a little off, and the page to find that out by.
#pragma once

#include <vector>

#include "app/desktop/page.h"
#include "core/batch/batch.h"

namespace desktop {

class PrintPreview;

/// Opens it without blocking; it deletes itself when it closes.
PrintPreview* showLabelPreview(const std::vector<core::Batch>& batches, const PageContext& context, QWidget* parent);

}  // namespace desktop
