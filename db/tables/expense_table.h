// SPDX-License-Identifier: MIT
// Rows of the table expenses: all SQL about it is here.
#pragma once

#include <optional>
#include <vector>

#include "core/money/expense.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::Expense& expense);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::Expense& expense);
[[nodiscard]] bool deleteRow(Connection& connection, core::ExpenseId id);
void deleteExpensesOf(Connection& connection, core::BatchId batch);
void deleteExpensesOf(Connection& connection, core::SessionId session);
// In order of day; a session's are its own only, not those of its batches.
[[nodiscard]] std::vector<core::Expense> expensesOf(Connection& connection, core::BatchId batch);
[[nodiscard]] std::vector<core::Expense> expensesOf(Connection& connection, core::SessionId session);
[[nodiscard]] std::optional<core::Expense> expenseIn(Connection& connection, core::ExpenseId id);
[[nodiscard]] std::vector<core::Expense> allExpenses(Connection& connection);

}  // namespace db
