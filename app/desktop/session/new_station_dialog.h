// SPDX-License-Identifier: MIT
// Describes a station that the logbook doesn't know yet, while a session is typed. It is added when the session is saved.
#pragma once

#include "app/desktop/stations/station_dialog.h"

namespace desktop {

class SessionModel;

class NewStationDialog : public StationDialog {
    Q_OBJECT

  public:
    NewStationDialog(SessionModel& model, const QString& name, QWidget* parent = nullptr);
};

}  // namespace desktop
