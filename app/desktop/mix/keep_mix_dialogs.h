// SPDX-License-Identifier: MIT
// A mix is kept with the session that it was mixed for, or with the care of a station that it went into.
#pragma once

#include <QDialog>
#include <optional>

#include "app/desktop/mix/mix_field.h"
#include "app/desktop/page.h"
#include "app/desktop/widgets/fault_label.h"
#include "core/mixing/kept_mix.h"

class QComboBox;
class QLineEdit;

namespace desktop {

class MomentEdit;

class KeepWithSessionDialog : public QDialog {
    Q_OBJECT

  public:
    /// Contract: the logbook has a session. Newest first, and as many as a list can be looked through.
    KeepWithSessionDialog(const PageContext& context, core::KeptMix mix, QWidget* parent = nullptr);

  private:
    void keep();

    Workspace& workspace_;
    core::KeptMix mix_;
    QComboBox* session_;
    FaultMarks marks_;
};

class KeepWithCareDialog : public QDialog {
    Q_OBJECT

  public:
    /// Contract: the logbook has a station. `litres` that went in, as far as the mix knows.
    KeepWithCareDialog(const PageContext& context, core::KeptMix mix, std::optional<double> litres,
                       QWidget* parent = nullptr);

  private:
    void build();
    void keep();

    PageContext context_;
    core::KeptMix mix_;
    QComboBox* station_;
    QComboBox* kind_;
    MixField* litres_;
    MomentEdit* at_;
    FaultLabel* atFault_;
    FaultLabel* litresFault_;
    QLineEdit* note_;
    FaultMarks marks_;
};

}  // namespace desktop
