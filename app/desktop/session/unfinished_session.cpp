// SPDX-License-Identifier: MIT
#include "app/desktop/session/unfinished_session.h"

#include "app/desktop/workspace.h"

namespace desktop {

UnfinishedSession& UnfinishedSession::of(Workspace& workspace) {
    auto* kept = workspace.findChild<UnfinishedSession*>(QString(), Qt::FindDirectChildrenOnly);
    if (kept == nullptr) kept = new UnfinishedSession(&workspace);
    if (kept->file_ != workspace.logbook().file()) {
        kept->file_ = workspace.logbook().file();
        kept->sheet = {};
    }
    return *kept;
}

}  // namespace desktop
