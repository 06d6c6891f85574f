// SPDX-License-Identifier: MIT
// A round of readings and care: one line a station, figures typed one after the other, Enter goes on. Each line is kept when it ends, as
// one step to undo.
#pragma once

#include <QDialog>
#include <vector>

#include "app/desktop/page.h"
#include "app/desktop/workspace.h"

class QLabel;
class QVBoxLayout;

namespace desktop {

class FaultLabel;
class MomentEdit;
class StationLine;

class ReadingDialog : public QDialog {
    Q_OBJECT

  public:
    /// All stations in use, in walking order.
    explicit ReadingDialog(const PageContext& context, QWidget* parent = nullptr);
    /// One of them.
    ReadingDialog(const PageContext& context, core::StationId station, QWidget* parent = nullptr);

    void reject() override;  // asks once where something typed would be lost

  private:
    void build(const std::vector<core::Station>& stations);
    QWidget* makeLines(const std::vector<core::Station>& stations);
    void end(StationLine& line);
    bool save(StationLine& line);
    void saveAll();
    void goOnAfter(const StationLine& line);

    PageContext context_;
    MomentEdit* at_{};
    FaultLabel* atFault_{};
    FaultLabel* unsaved_{};
    std::vector<StationLine*> lines_;
    QPushButton* done_{};
    bool hasWarned_{};
};

}  // namespace desktop
