// SPDX-License-Identifier: MIT
// "What did I do?": the table of all batches or of those of one plant, stock plant or station, and the page of one batch in front of it.
// Esc returns to the table with its filter, order and current row as they were left.
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
    bool showPlace(const Place& place) override;
    [[nodiscard]] Place place() const override;
    bool showBatch(core::BatchId batch);
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const override;
    void focusFilter() override;

  private:
    void showList();

    core::BatchId shown_{};
    QStackedWidget* stack_;
    BatchListPage* list_;
    BatchPage* batch_;
};

}  // namespace desktop
