// SPDX-License-Identifier: MIT
// Keeps what was typed into the session dialog until it is saved or given up. One for each workspace, and for one logbook at a time.
#pragma once

#include <QObject>
#include <filesystem>

#include "app/desktop/session/session_sheet.h"

namespace desktop {

class Workspace;

class UnfinishedSession : public QObject {
    Q_OBJECT

  public:
    /// The workspace's own; blank when another logbook is open than the one it was typed for.
    [[nodiscard]] static UnfinishedSession& of(Workspace& workspace);

    SessionSheet sheet;

  private:
    using QObject::QObject;
    std::filesystem::path file_;
};

}  // namespace desktop
