// SPDX-License-Identifier: MIT
// What a number per arm is worth: the chance of finding the difference that would matter, as a curve and in words, worked out away from the
// window's thread while somebody types.
#pragma once

#include <QTimer>
#include <QWidget>
#include <memory>

#include "app/desktop/background/latest_answer.h"
#include "app/desktop/background/read_beside.h"
#include "app/desktop/page.h"
#include "app/desktop/trials/trial_draft.h"
#include "core/trial/trial_power.h"

class QLabel;

namespace desktop {

class FigurePanel;
class TrialRecords;

class TrialPowerPanel : public QWidget {
    Q_OBJECT

  public:
    explicit TrialPowerPanel(const PageContext& context, QWidget* parent = nullptr);

    /// The newest draft counts; the answer comes a moment after the last key.
    void ask(TrialDraft draft);
    [[nodiscard]] bool isAnswered() const { return isAnswered_; }

  signals:
    void said(const QString& sentence);

  private:
    struct Answer {
        core::ExpectedRate expected{};
        core::Result<core::TrialPower> power{core::TrialPower{}};
        std::optional<double> ofPlanned;  // power of the number per arm that stands there
    };

    void start();
    void workOut();
    void tell(const Answer& answer);

    PageContext context_;
    std::shared_ptr<const TrialRecords> records_;  // read at the first question
    TrialDraft draft_;
    QTimer typing_;
    bool isAnswered_{};
    QLabel *answer_, *planned_, *restsOn_, *warning_;
    FigurePanel* curve_;
    ReadBeside<std::shared_ptr<const TrialRecords>> reading_{context_.workspace, this};
    LatestAnswer<std::shared_ptr<const Answer>> sums_{this};
};

}  // namespace desktop
