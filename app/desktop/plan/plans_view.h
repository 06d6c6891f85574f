// SPDX-License-Identifier: MIT
// "How many, and when?": the kept plans with what to stick first on top, and below them all that the chosen one leads to.
#pragma once

#include <QWidget>
#include <memory>

#include "app/desktop/page.h"

class QBoxLayout;
class QDialog;
class QLabel;
class QPushButton;
class QStackedWidget;
class QTableView;

namespace desktop {

class FaultLabel;
class PlanAnswerView;
class PlansModel;
class PlanTableModel;
class TableColumns;

class PlansView : public QWidget {
    Q_OBJECT

  public:
    explicit PlansView(const PageContext& context, QWidget* parent = nullptr);

    void activated();
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

  signals:
    void said(const QString& sentence);
    void sheetChanged();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    void build();
    QWidget* makeTable();
    QWidget* makeButtons();
    QWidget* makeEmpty();
    QPushButton* button(const char* name, const QString& text, const QString& tip, void (PlansView::*verb)());
    bool handleKey(int key);
    void showPlans();
    void showCurrent();
    [[nodiscard]] core::PlanId currentPlan() const;

    void makeNew();
    void change();
    void removePlan();
    void saveCalendar();
    void print();
    void openForm(core::PlanId plan);

    PageContext context_;
    PlansModel* model_;
    PlanTableModel* rows_;
    core::PlanId shown_{};
    QStackedWidget* stack_{};
    QTableView* table_{};
    TableColumns* columns_{};
    QLabel* fits_{};
    PlanAnswerView* answer_{};
    FaultLabel* fault_{};
    QPushButton *new_{}, *change_{}, *remove_{}, *calendar_{}, *print_{}, *first_{};
};

}  // namespace desktop
