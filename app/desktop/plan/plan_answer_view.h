// SPDX-License-Identifier: MIT
// What one plan leads to: the number and the day in words, the chance curve, the days one by one, and what it all rests on.
#pragma once

#include <QScrollArea>

#include "app/desktop/page.h"
#include "core/planning/plan_answer.h"

class QBoxLayout;
class QLabel;

namespace desktop {

class FigurePanel;

class PlanAnswerView : public QScrollArea {
    Q_OBJECT

  public:
    explicit PlanAnswerView(const PageContext& context, QWidget* parent = nullptr);

    /// `fit`: where there is room for it; nullptr where nothing is to be stuck.
    void show(const core::PlanAnswer& answer, const core::PlanFit* fit);
    void clear();

  signals:
    void said(const QString& sentence);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    QBoxLayout* sides_;  // words and picture, beside or above one another
    QLabel *answer_, *when_, *days_, *restsOn_;
    QLabel* cautions_;
    FigurePanel* curve_;
};

}  // namespace desktop
