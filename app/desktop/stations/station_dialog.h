// SPDX-License-Identifier: MIT
// One station: its name, its method, its place in the walk, and its layout, drawn while it is typed. A refusal is shown where it belongs
// and the dialog stays open with all that was typed.
//
//   StationDialog::keeping(workspace, station, this)->open();     // changes the logbook; unset: a new station
#pragma once

#include <QDialog>
#include <functional>

#include "app/desktop/page.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "core/station/station.h"

class QComboBox;
class QDialogButtonBox;
class QLineEdit;

namespace desktop {

class CautionStrip;
class CountEdit;
class LayoutEdit;

class StationDialog : public QDialog {
    Q_OBJECT

  public:
    /// What becomes of the station; `method` is the name that was chosen or typed.
    using Keep = std::function<Outcome(const core::Station& station, const QString& method)>;
    struct Start {
        core::Station station{};  // id unset: new
        QStringList methods{};    // to choose from
        QString method{};
        bool mayNameMethods{};  // one that nobody has named before may be typed
        QString verb{};         // on the button
    };

    StationDialog(Workspace& workspace, const Start& start, Keep keep, QWidget* parent = nullptr);
    /// One that keeps its station in the logbook.
    [[nodiscard]] static StationDialog* keeping(Workspace& workspace, core::StationId station,
                                                QWidget* parent = nullptr);
    /// The same, with a button that leads to the template of a lid to drill.
    [[nodiscard]] static StationDialog* keeping(const PageContext& context, core::StationId station,
                                                QWidget* parent = nullptr);

    void reject() override;  // asks once where something typed would be lost

  signals:
    void described(const QString& name);

  private:
    void makeFields(const Start& start);
    void build(const QString& verb);
    void offerTemplate(const PageContext& context);
    void agree();
    [[nodiscard]] QStringList typed() const;  // what stands in the fields, one after the other

    Workspace& workspace_;
    core::Station station_;
    Keep keep_;
    FaultMarks marks_;
    QLineEdit* name_{};
    QComboBox* method_{};
    CountEdit* walk_{};
    QLineEdit* note_{};
    LayoutEdit* layout_{};
    CautionStrip* cautions_{};
    QDialogButtonBox* buttons_{};
    FaultLabel* rest_{};
    QStringList atFirst_;
    bool hasWarned_{};
};

}  // namespace desktop
