// SPDX-License-Identifier: MIT
// "What did I do?": the table of all batches, and the page of one batch in front of it. Back (Esc, Alt+Left) returns to the table
// with its filter, order and current row as they were left.
#pragma once

#include "app/desktop/page.h"

class QStackedWidget;

namespace desktop {

class BatchListPage;
class BatchPage;

class BatchesPage : public Page {
    Q_OBJECT

  public:
    explicit BatchesPage(const PageContext& context, QWidget* parent = nullptr);

    void activated() override;
    void showBatch(core::BatchId batch) override;
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const override;
    void focusFilter() override;

  private:
    void showList();

    QStackedWidget* stack_;
    BatchListPage* list_;
    BatchPage* batch_;
};

}  // namespace desktop
