// SPDX-License-Identifier: MIT
// A thing done to a station, new or to be corrected.
#pragma once

#include <QDialog>
#include <functional>

#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace desktop {

class CautionStrip;
class MomentEdit;

class CareDialog : public QDialog {
    Q_OBJECT

  public:
    using Keep = std::function<Outcome(const core::Care&)>;

    /// `care` without an id is new.
    CareDialog(core::Care care, const QString& station, const core::DisplayUnits& units, core::Date today, Keep keep,
               QWidget* parent = nullptr);

  private:
    void build();
    void showVolume();
    void mind();
    /// False where what is typed is no volume; the field says so.
    bool readVolume(core::Care& care);
    void agree();

    core::Care care_;
    core::VolumeUnit unit_;
    Keep keep_;
    FaultMarks marks_;
    MomentEdit* at_;
    FaultLabel* atFault_;
    QComboBox* kind_;
    CautionStrip* cautions_{};
    QLineEdit* note_;
    QLineEdit* volume_;
    FaultLabel* volumeFault_;
    QLabel* volumeLabel_{};
    QWidget* volumeRow_{};
};

}  // namespace desktop
