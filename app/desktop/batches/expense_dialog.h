// SPDX-License-Identifier: MIT
// Money and minutes that went into a batch or a session, new or to be corrected.
#pragma once

#include <QDialog>
#include <functional>
#include <optional>

#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"

class QFormLayout;
class QLineEdit;

namespace desktop {

class DateEdit;

/// What it is spent on, in words.
struct ExpenseOwner {
    QString name;                         // "B260047K", "the session of 2026-03-14"
    QString hint;                         // what is shared and what isn't
    std::optional<core::Date> dayZero{};  // of a batch: the day of sticking

    [[nodiscard]] static ExpenseOwner batch(const core::Batch& batch);
    [[nodiscard]] static ExpenseOwner session(const core::Session& session, int batches);
};

class ExpenseDialog : public QDialog {
    Q_OBJECT

  public:
    using Keep = std::function<Outcome(const core::Expense&)>;

    /// `expense` without an id is new.
    ExpenseDialog(core::Expense expense, const ExpenseOwner& owner, const std::string& currency, core::Date today,
                  Keep keep, QWidget* parent = nullptr);

  private:
    void build(const ExpenseOwner& owner, const std::string& currency);
    void addFigure(QFormLayout& form, const QString& label, QLineEdit* line, const QString& unit, FaultLabel* fault);
    bool readFigures(core::Expense& expense);
    void agree();

    core::Expense expense_;
    Keep keep_;
    FaultMarks marks_;
    QLineEdit* what_;
    QLineEdit* amount_;
    FaultLabel* amountFault_;
    QLineEdit* minutes_;
    FaultLabel* minutesFault_;
    DateEdit* day_;
    FaultLabel* dayFault_;
};

}  // namespace desktop
