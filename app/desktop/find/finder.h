// SPDX-License-Identifier: MIT
// Keeps a find_index.h true to the logbook: built when somebody first looks for something, brought up to date by what changed since.
#pragma once

#include <QObject>
#include <vector>

#include "app/desktop/find/find_index.h"

namespace db {
struct Changes;
}

namespace desktop {

class Workspace;
struct PageEntry;
struct TaskEntry;

class Finder : public QObject {
    Q_OBJECT

  public:
    Finder(const Workspace& workspace, const std::vector<PageEntry>& pages, const std::vector<TaskEntry>& tasks,
           QObject* parent = nullptr);

    /// Nothing while no logbook is open.
    [[nodiscard]] FindAnswer find(const QString& typed);

  private:
    void follow(const db::Changes& changes);
    void build();

    const Workspace& workspace_;
    FindIndex index_;
    std::vector<FoundThing> pages_;
    std::vector<FoundThing> tasks_;
    bool isBuilt_{};
};

}  // namespace desktop
