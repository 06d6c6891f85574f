// SPDX-License-Identifier: MIT
#include "app/desktop/round/unfinished_round.h"

#include "app/desktop/workspace.h"

namespace desktop {

UnfinishedRound& UnfinishedRound::of(Workspace& workspace) {
    auto* kept = workspace.findChild<UnfinishedRound*>(QString(), Qt::FindDirectChildrenOnly);
    if (kept == nullptr) kept = new UnfinishedRound(&workspace);
    if (kept->file_ != workspace.logbook().file()) {
        kept->file_ = workspace.logbook().file();
        kept->forget();
    }
    return *kept;
}

QString UnfinishedRound::typedFor(core::BatchId batch) const {
    const auto found = typed_.find(batch);
    return found == typed_.end() ? QString() : found->second;
}

void UnfinishedRound::keep(core::BatchId batch, const QString& typed) {
    if (typed.isEmpty())
        typed_.erase(batch);
    else
        typed_.insert_or_assign(batch, typed);
}

void UnfinishedRound::forget() {
    typed_.clear();
    day.reset();
}

}  // namespace desktop
