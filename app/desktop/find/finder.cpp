// SPDX-License-Identifier: MIT
#include "app/desktop/find/finder.h"

#include <QKeySequence>

#include "app/desktop/names/mnemonic.h"
#include "app/desktop/registry.h"
#include "app/desktop/workspace.h"

namespace desktop {

namespace {

FoundThing doorTo(FindKind kind, const QString& title, const QString& keys, const QString& icon) {
    FoundThing door;
    door.kind = kind;
    door.title = withoutMnemonic(title);
    door.detail = QKeySequence(keys).toString(QKeySequence::NativeText);
    door.icon = icon;
    return door;
}

}  // namespace

Finder::Finder(const Workspace& workspace, const std::vector<PageEntry>& pages, const std::vector<TaskEntry>& tasks,
               QObject* parent)
    : QObject(parent), workspace_(workspace) {
    for (const PageEntry& page : pages) {
        pages_.push_back(doorTo(FindKind::Page, page.title, page.shortcut, page.icon));
        pages_.back().place = placeOf(page.name);
    }
    for (const TaskEntry& task : tasks) {
        tasks_.push_back(doorTo(FindKind::Task, task.title, task.shortcut, task.icon));
        tasks_.back().task = task.name;
    }
    connect(&workspace_, &Workspace::logbookReplaced, this, [this] { isBuilt_ = false; });
    connect(&workspace_, &Workspace::logbookChanged, this, &Finder::follow);
}

FindAnswer Finder::find(const QString& typed) {
    if (!workspace_.hasLogbook()) return {};
    if (!isBuilt_) build();
    return index_.find(typed);
}

void Finder::follow(const db::Changes& changes) {
    if (!isBuilt_) return;
    // A plant's or station's new name stands in many entries.
    if (!(workspace_.shelves() == index_.shelves()))
        isBuilt_ = false;
    else
        index_.refresh(changes.batches, workspace_.batchLinesOf(changes.batches));
}

void Finder::build() {
    std::vector<FoundThing> doors = pages_;
    // A logbook that is only read has no use for tasks.
    if (!workspace_.isReadOnly()) doors.insert(doors.end(), tasks_.begin(), tasks_.end());
    index_.setDoors(std::move(doors));
    index_.build(workspace_.shelves(), workspace_.batchLines());
    isBuilt_ = true;
}

}  // namespace desktop
