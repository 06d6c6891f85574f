// SPDX-License-Identifier: MIT
// Describes a treatment that the logbook doesn't know yet, while a session is typed. It is added when the session is saved.
#pragma once

#include "app/desktop/shelves/thing_form.h"

namespace desktop {

class SessionModel;

class TreatmentDialog : public ThingForm {
    Q_OBJECT

  public:
    TreatmentDialog(SessionModel& model, const QString& name, QWidget* parent = nullptr);

  signals:
    void described(const QString& name);
};

}  // namespace desktop
