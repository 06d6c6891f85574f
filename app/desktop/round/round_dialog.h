// SPDX-License-Identifier: MIT
// A round of checks over everything that is due, typed with one hand on the number pad, or pressed. Nothing is saved before the end, and the foot
// says so; then the whole round is one action and one undo. Esc leaves everything as it was; what was typed stands there again the next time.
#pragma once

#include <QDialog>

#include "app/desktop/page.h"
#include "core/batch/check_entry.h"

class QLabel;
class QPushButton;

namespace desktop {

class FaultLabel;
class RoundButtons;
class RoundHead;
class RoundModel;
class RoundView;

class RoundDialog : public QDialog {
    Q_OBJECT

  public:
    explicit RoundDialog(const PageContext& context, QWidget* parent = nullptr);
    ~RoundDialog() override;

    void reject() override;

  private:
    void build();
    void connectParts();
    QWidget* makeLeftovers();
    QWidget* makeFoot();
    void readChoice();
    void takeReading(core::PlainNumber plain);
    void showBatches();
    void startAfresh();
    void sizeColumns();
    void showCount();
    void showRow();
    void showReason();
    void save();
    void printCheckSheet();

    PageContext context_;
    RoundModel* model_;

    QWidget* leftovers_{};
    RoundHead* head_{};
    RoundView* view_{};
    RoundButtons* buttons_{};
    QLabel* count_{};
    FaultLabel* fault_{};
    QPushButton* print_{};
    QPushButton* save_{};
};

}  // namespace desktop
