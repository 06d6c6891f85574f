// SPDX-License-Identifier: MIT
// Rows, columns, staggered or square, and blocked positions of a station, drawn while they are typed. On the map a click, a stroke or Space
// blocks positions and frees them again. For use in forms: readInto() gives back what stands there.
#pragma once

#include <QWidget>
#include <vector>

#include "core/records.h"
#include "core/result.h"

class QCheckBox;
class QLabel;
class QLineEdit;

namespace desktop {

class CountEdit;
class FaultLabel;
class FaultMarks;
class PositionMapModel;
class PositionPaintView;
class Workspace;

class LayoutEdit : public QWidget {
    Q_OBJECT

  public:
    /// `standing` are batches recorded at the station; where they stand is drawn too.
    LayoutEdit(const Workspace& workspace, std::vector<core::BatchRecord> standing, QWidget* parent = nullptr);

    void showLayout(const core::Station& station);
    /// The layout as it stands in the fields; counts that can't be read stay as they were in `station`.
    void readInto(core::Station& station) const;
    /// Of the fields alone: what can't be read, and what the rules say of the layout. Shown in place already.
    [[nodiscard]] core::Refusals faults() const;
    /// Only the picture depends on it.
    void setMethod(core::MethodId method);
    [[nodiscard]] QWidget* firstField() const;

  signals:
    void changed();

  private:
    void makeFields();
    void build();
    void connectParts();
    void paint(const std::vector<core::Position>& positions);
    void judge();

    const Workspace& workspace_;
    PositionMapModel* map_;
    std::vector<core::BatchRecord> standing_;
    core::Station station_;  // as drawn
    CountEdit* rows_{};
    CountEdit* columns_{};
    QCheckBox* isStaggered_{};
    QLineEdit* blocked_{};
    PositionPaintView* view_{};
    QWidget* panel_{};
    QLabel* sum_{};
    FaultLabel* fault_{};
    bool blocks_{true};  // what the stroke under way does
};

}  // namespace desktop
