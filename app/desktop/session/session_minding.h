// SPDX-License-Identifier: MIT
// Under the session's table: what to mind of what stands in it, and for each protected plant the licence or permission that it is stuck under.
#pragma once

#include <QWidget>
#include <vector>

#include "core/id.h"

class QFormLayout;
class QLineEdit;

namespace desktop {

class CautionStrip;
class SessionModel;

class SessionMinding : public QWidget {
    Q_OBJECT

  public:
    explicit SessionMinding(SessionModel& model, QWidget* parent = nullptr);

  private:
    void show();
    void askForLicences();

    SessionModel& model_;
    CautionStrip* strip_;
    QFormLayout* form_;
    std::vector<core::PlantId> asked_;
    std::vector<QLineEdit*> licences_;
};

}  // namespace desktop
