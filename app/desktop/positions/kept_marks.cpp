// SPDX-License-Identifier: MIT
#include "app/desktop/positions/kept_marks.h"

#include "app/desktop/workspace.h"

namespace desktop {

KeptMarks& KeptMarks::of(Workspace& workspace) {
    auto* kept = workspace.findChild<KeptMarks*>(QString(), Qt::FindDirectChildrenOnly);
    if (kept == nullptr) kept = new KeptMarks(&workspace);
    if (kept->file_ != workspace.logbook().file()) {
        kept->file_ = workspace.logbook().file();
        kept->marks_.clear();
    }
    return *kept;
}

LookMarks KeptMarks::at(core::StationId station) const {
    const auto found = marks_.find(station);
    return found == marks_.end() ? LookMarks() : found->second;
}

void KeptMarks::keep(core::StationId station, LookMarks marks) {
    marks_.insert_or_assign(station, std::move(marks));
}

}  // namespace desktop
