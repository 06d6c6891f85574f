// SPDX-License-Identifier: MIT
// What do I mix? The trade's arithmetic, one question at a time: nutrient, elements, the tub, pH, hormone, medium, the holes of a lid.
#pragma once

#include "app/desktop/mix/mix_questions.h"
#include "app/desktop/page.h"

class QListWidget;
class QStackedWidget;

namespace desktop {

class MixView;

class MixPage : public Page {
    Q_OBJECT

  public:
    explicit MixPage(const PageContext& context, QWidget* parent = nullptr);

    void activated() override;
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const override;

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void fitList();
    void showQuestion(int number);
    [[nodiscard]] MixView* makeView(int number);
    [[nodiscard]] MixView* viewInFront() const;
    void followUnits();
    void writeAnew();

    PageContext context_;
    std::vector<MixQuestion> questions_;
    QListWidget* list_;
    QStackedWidget* stack_;
    std::vector<MixView*> views_;  // as long as the questions; nullptr until it was in front
    core::DisplayUnits units_;
};

}  // namespace desktop
