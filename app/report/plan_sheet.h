// SPDX-License-Identifier: MIT
// The plans on paper: what to stick first, how many, by when, and for each its days and what it rests on.
#pragma once

#include <QDateTime>
#include <span>

#include "app/report/sheet.h"
#include "core/planning/plan_answer.h"

namespace report {

/// `answers` in the order of `fits`.
[[nodiscard]] Sheet planSheet(std::span<const core::PlanAnswer> answers, const core::WhatFits& fits, core::Date today,
                              const core::Shelves& shelves, const QDateTime& printedAt);

}  // namespace report
