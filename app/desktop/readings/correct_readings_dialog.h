// SPDX-License-Identifier: MIT
// The readings of one day at one station, to be corrected or deleted: all of it is one step to undo.
#pragma once

#include <QDialog>
#include <functional>
#include <vector>

#include "app/desktop/workspace.h"
#include "db/actions/station_actions.h"

class QCheckBox;
class QGridLayout;
class QLineEdit;

namespace desktop {

class FaultLabel;
class ReadingField;
struct ReadingManner;

class CorrectReadingsDialog : public QDialog {
    Q_OBJECT

  public:
    using Keep = std::function<Outcome(const db::StationVisit&)>;

    /// Contract: there are readings, all of one day and station.
    CorrectReadingsDialog(std::vector<core::Reading> readings, const QString& station, const ReadingManner& manner,
                          Keep keep, QWidget* parent = nullptr);

  private:
    struct Row {
        core::Reading reading;
        QLineEdit* hour;
        ReadingField* field;
        QCheckBox* isGone;
        QString startHour, startFigure;
    };

    void addRow(QGridLayout& grid, const core::Reading& reading, const ReadingManner& manner);
    /// False where it can't be kept as it stands; says so.
    bool take(Row& row, db::StationVisit& visit);
    void agree();

    Keep keep_;
    std::vector<Row> rows_;
    FaultLabel* fault_;
};

}  // namespace desktop
