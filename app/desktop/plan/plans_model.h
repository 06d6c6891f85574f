// SPDX-License-Identifier: MIT
// The plans that are kept, each with its answer, and the answer to one that is being typed. The sums run on copies in the background. No
// widgets.
#pragma once

#include <QObject>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/background/read_beside.h"
#include "core/planning/plan_answer.h"

namespace report {
struct Sheet;
}

namespace desktop {

class Workspace;

/// Answers to the kept plans, what to stick first coming first; those that nothing can be said of come last.
struct AnsweredPlans {
    std::vector<core::PlanAnswer> answers;
    core::WhatFits fits;

    [[nodiscard]] const core::PlanFit* fitOf(std::size_t answer) const;
};

class PlansModel : public QObject {
    Q_OBJECT

  public:
    explicit PlansModel(Workspace& workspace, QObject* parent = nullptr);

    /// Empty until the first answer.
    [[nodiscard]] const AnsweredPlans& plans() const { return *plans_; }
    [[nodiscard]] bool isWorking() const { return isWorking_; }

    /// What a plan that is not kept yet would lead to; answered() brings it.
    void ask(const core::Plan& plan);

    /// Nobody looks: changes of the logbook wait until somebody does.
    void setWatched(bool isWatched);
    /// nullptr while there is no plan.
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

  signals:
    void plansChanged();
    void answered(const core::PlanAnswer& answer);

  private:
    struct Copies;

    void forget();
    void readAgain();
    void work();
    void readCopies();
    void sumOne(const core::Plan& plan);
    void sumAll();

    Workspace& workspace_;
    std::shared_ptr<const Copies> copies_;  // read once, until something changes
    std::shared_ptr<const AnsweredPlans> plans_{std::make_shared<AnsweredPlans>()};
    std::optional<core::Plan> asked_;  // waits for the copies
    bool isAllAsked_{};                // the kept ones do
    bool isReading_{};
    bool isWatched_{};
    bool isStale_{true};
    bool isWorking_{};
    ReadBeside<std::vector<core::BatchRecord>> reading_{workspace_, this};
    LatestAnswer<std::shared_ptr<const AnsweredPlans>> allSums_{this};
    LatestAnswer<std::shared_ptr<const core::PlanAnswer>> oneSum_{this};
};

}  // namespace desktop
