// SPDX-License-Identifier: MIT
// One question of the Mix page with its answer, which follows while one types.
#pragma once

#include <QWidget>
#include <memory>

#include "app/desktop/mix/mix_questions.h"
#include "app/desktop/page.h"

class QBoxLayout;
class QPushButton;

namespace desktop {

class MixAnswerView;

class MixView : public QWidget {
    Q_OBJECT

  public:
    MixView(const PageContext& context, MixQuestion question, QWidget* parent = nullptr);

    /// It has come to the front: what other questions have changed, and the focus where one types.
    void activated();
    void answerAnew() { answerNow(); }  // numbers are written another way
    [[nodiscard]] MixForm& form() { return *form_; }
    [[nodiscard]] const std::optional<report::MixAnswer>& answer() const { return reply_.answer; }
    /// The mixing card of what is shown; nullptr while there is no answer.
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

  signals:
    void said(const QString& sentence);
    void sheetChanged();

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    QWidget* makeButtons();
    void answerNow();
    void arrange();
    void printCard();
    void openTemplate();
    void keepWithSession();
    void keepWithCare();

    PageContext context_;
    MixQuestion question_;
    MixReply reply_;
    MixForm* form_;
    MixAnswerView* view_;
    QBoxLayout* sides_;
    QPushButton* print_{};
    QPushButton* withSession_{};
    QPushButton* withCare_{};
    QPushButton* template_{};
};

}  // namespace desktop
