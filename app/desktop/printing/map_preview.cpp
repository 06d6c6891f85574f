// SPDX-License-Identifier: MIT
#include "app/desktop/printing/map_preview.h"

#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/printing/print_preview.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/workspace.h"
#include "app/report/map_sheet.h"

namespace desktop {

PrintPreview* showMapPreview(core::StationId id, core::BatchId focus, const PageContext& context, QWidget* parent) {
    const core::Shelves& shelves = context.workspace.shelves();
    const core::Station* station = core::find(shelves.stations, id);
    if (station == nullptr || !station->hasLayout()) return nullptr;
    auto sheet = std::make_shared<const report::Sheet>(report::mapSheet(
        *station, openBatchesAt(context.workspace, id, focus), focus, shelves, printedAt(context.workspace)));
    const QString title = sheet->title;
    return showPrintPreview(std::move(sheet), title, context, parent);
}

}  // namespace desktop
