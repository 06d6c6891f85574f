// SPDX-License-Identifier: MIT
// "What went wrong?": losses by cause, month and station over a span, batches that are out of the ordinary, and the way to what may have gone
// wrong with one of them.
#pragma once

#include "app/desktop/losses/losses_model.h"
#include "app/desktop/page.h"

class QComboBox;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace desktop {

class LossesParts;

class LossesPage : public Page {
    Q_OBJECT

  public:
    explicit LossesPage(const PageContext& context, QWidget* parent = nullptr);

    void activated() override;
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const override;

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

  private:
    QWidget* makeChoosers();
    QWidget* makeEmpty();
    void showChoices();
    void showView();
    void showEmpty();
    void openSuspects(core::BatchId batch);

    PageContext context_;
    LossesModel* model_;
    QComboBox *span_{}, *plant_{}, *method_{};
    QLabel* state_{};
    QStackedWidget* stack_{};
    LossesParts* parts_{};
    QLabel *emptyTitle_{}, *emptyText_{};
    QPushButton* emptyButton_{};
};

}  // namespace desktop
