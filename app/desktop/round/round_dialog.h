// SPDX-License-Identifier: MIT
// A round of checks over everything that is due, typed with one hand on the number pad. Nothing is saved before the end, and the foot says so;
// then the whole round is one action and one undo. Esc leaves everything as it was.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"
#include "core/due/due_today.h"

class QCheckBox;
class QLabel;
class QPushButton;

namespace desktop {

class DateEdit;
class FaultLabel;
class RoundModel;
class RoundView;

class RoundDialog : public QDialog {
    Q_OBJECT

  public:
    explicit RoundDialog(const PageContext& context, QWidget* parent = nullptr);
    ~RoundDialog() override;

    void reject() override;

  private:
    QWidget* makeHead();
    QWidget* makeFoot();
    [[nodiscard]] QString grammarText() const;
    void readLines();
    void showBatches();
    void takeDay();
    void sizeColumns();
    void showCount();
    void showReason();
    void save();

    PageContext context_;
    RoundModel* model_;
    std::vector<core::BatchLine> lines_;

    DateEdit* day_{};
    FaultLabel* dayFault_{};
    QCheckBox* all_{};
    RoundView* view_{};
    QLabel* count_{};
    FaultLabel* fault_{};
    QPushButton* save_{};
};

}  // namespace desktop
