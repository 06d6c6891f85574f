// SPDX-License-Identifier: MIT
// Before the knife: how many to stick, when, and whether there is room; and trials that can answer a question.
#pragma once

#include "app/desktop/page.h"

class QTabWidget;

namespace desktop {

class PlansView;
class TrialsView;

class PlanPage : public Page {
    Q_OBJECT

  public:
    explicit PlanPage(const PageContext& context, QWidget* parent = nullptr);

    void activated() override;
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const override;

  private:
    QTabWidget* tabs_;
    PlansView* plans_;
    TrialsView* trials_;
};

}  // namespace desktop
