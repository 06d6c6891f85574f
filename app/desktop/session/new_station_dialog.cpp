// SPDX-License-Identifier: MIT
#include "app/desktop/session/new_station_dialog.h"

#include "app/desktop/session/session_model.h"

namespace desktop {

namespace {

StationDialog::Start startNaming(const SessionModel& model, const QString& name) {
    StationDialog::Start start{
        .methods = model.names().methods(), .mayNameMethods = true, .verb = NewStationDialog::tr("Use this station")};
    start.station.name = name.toStdString();
    return start;
}

}  // namespace

NewStationDialog::NewStationDialog(SessionModel& model, const QString& name, QWidget* parent)
    : StationDialog(
          model.workspace(), startNaming(model, name),
          [&model](const core::Station& station, const QString& method) {
              const QString fault = model.describe(station, method);
              if (fault.isEmpty()) return Outcome{.isDone = true, .refusals = {}, .changes = {}};
              const core::Refusal refusal{.field = {}, .value = {}, .allowed = {}, .sentence = fault.toStdString()};
              return Outcome{.isDone = false, .refusals = {refusal}, .changes = {}};
          },
          parent) {}

}  // namespace desktop
