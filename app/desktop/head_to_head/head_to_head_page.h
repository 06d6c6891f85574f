// SPDX-License-Identifier: MIT
// "Which way is better?": asks what to compare, and shows the verdict in words, the cautions, the figures of each arm and the plots.
#pragma once

#include "app/desktop/page.h"

namespace desktop {

class ComparisonChooser;
class ComparisonView;
class HeadToHeadModel;

class HeadToHeadPage : public Page {
    Q_OBJECT

  public:
    explicit HeadToHeadPage(const PageContext& context, QWidget* parent = nullptr);

    void activated() override;
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const override;

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    void print();

    PageContext context_;
    HeadToHeadModel* model_;
    ComparisonChooser* chooser_;
    ComparisonView* view_;
};

}  // namespace desktop
