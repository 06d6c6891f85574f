// SPDX-License-Identifier: MIT
// "Does it pay?": what a rooted plant costs by each method, and whether the dearer of two is worth it.
#pragma once

#include "app/desktop/page.h"

namespace desktop {

class WorthItChooser;
class WorthItModel;
class WorthItView;

class WorthItPage : public Page {
    Q_OBJECT

  public:
    explicit WorthItPage(const PageContext& context, QWidget* parent = nullptr);

    void activated() override;
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const override;

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    void print();

    PageContext context_;
    WorthItModel* model_;
    WorthItChooser* chooser_;
    WorthItView* view_;
};

}  // namespace desktop
