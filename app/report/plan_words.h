// SPDX-License-Identifier: MIT
// What a plan leads to, in the words and the picture that the window and the print-out share.
#pragma once

#include <QString>
#include <QStringList>
#include <memory>
#include <string>
#include <vector>

#include "app/plot/figure.h"
#include "core/planning/plan_answer.h"

namespace report {

struct PlanWords {
    QString answer;                     // how many, or why not
    QString when;                       // by when, where a day is set
    std::vector<std::string> cautions;  // from core
    QStringList days;                   // "12 March 2027: stick 34 cuttings of ..."
    QStringList restsOn;                // records, days to root, one tray more, room
};

/// `fit` may be nullptr.
[[nodiscard]] PlanWords planWords(const core::PlanAnswer& answer, const core::PlanFit* fit);
/// Number stuck against the chance of enough.
[[nodiscard]] std::shared_ptr<const plot::Figure> planCurve(const core::PlanAnswer& answer);

}  // namespace report
