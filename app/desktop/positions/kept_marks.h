// SPDX-License-Identifier: MIT
// Keeps the marks of looks hole by hole until they are saved or given up: leaving a look asks nothing and loses nothing. One for each
// workspace, for one logbook at a time, as long as the program runs.
#pragma once

#include <QObject>
#include <filesystem>
#include <map>

#include "app/desktop/positions/position_look.h"

namespace desktop {

class Workspace;

class KeptMarks : public QObject {
    Q_OBJECT

  public:
    /// The workspace's own; empty when another logbook is open than the one it was marked for.
    [[nodiscard]] static KeptMarks& of(Workspace& workspace);

    [[nodiscard]] LookMarks at(core::StationId station) const;
    void keep(core::StationId station, LookMarks marks);

  private:
    using QObject::QObject;
    std::filesystem::path file_;
    std::map<core::StationId, LookMarks> marks_;
};

}  // namespace desktop
