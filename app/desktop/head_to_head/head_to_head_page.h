// SPDX-License-Identifier: MIT
// "Which way is better?": asks what to compare, and shows the verdict in words, the cautions, the figures of each arm and the plots.
#pragma once

#include "app/desktop/page.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;
class QStackedWidget;
class QTableView;
class QVBoxLayout;

namespace plot {
class FigureView;
}

namespace desktop {

class ArmTableModel;
class FaultLabel;
class HeadToHeadModel;

class HeadToHeadPage : public Page {
    Q_OBJECT

  public:
    explicit HeadToHeadPage(const PageContext& context, QWidget* parent = nullptr);
    ~HeadToHeadPage() override;

    void activated() override;
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const override;

  private:
    class Parts;

    PageContext context_;
    HeadToHeadModel* model_;
    std::unique_ptr<Parts> parts_;
};

}  // namespace desktop
