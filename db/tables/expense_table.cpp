// SPDX-License-Identifier: MIT
#include "db/tables/expense_table.h"

#include "db/tables/sql_text.h"

namespace db {

namespace {

constexpr const char* insertExpense = R"(
    INSERT INTO expenses (id, batch_id, spent_on, what, amount_hundredths)
    VALUES (?1, ?2, ?3, ?4, ?5))";
constexpr const char* updateExpense = R"(
    UPDATE expenses SET batch_id = ?2, spent_on = ?3, what = ?4, amount_hundredths = ?5
    WHERE id = ?1)";
constexpr const char* deleteExpenseRow = "DELETE FROM expenses WHERE id = ?1";
constexpr const char* deleteExpensesOfBatch = "DELETE FROM expenses WHERE batch_id = ?1";
constexpr char expenseColumns[] = "SELECT id, batch_id, spent_on, what, amount_hundredths FROM expenses";
constexpr auto selectExpenseRow = joined(expenseColumns, " WHERE id = ?1");
constexpr auto selectExpenses = joined(expenseColumns, " ORDER BY spent_on, id");
constexpr auto selectExpensesOf = joined(expenseColumns, " WHERE batch_id = ?1 ORDER BY spent_on, id");

core::Expense expenseFrom(const Query& row) {
    return {.id = row.id<core::ExpenseId>(0),
            .batch = row.id<core::BatchId>(1),
            .spentOn = row.date(2),
            .what = row.text(3),
            .hundredths = row.bigNumber(4)};
}

int runExpense(Connection& connection, const char* sql, const core::Expense& expense) {
    return connection.run(sql, expense.id, expense.batch, expense.spentOn, expense.what, expense.hundredths);
}

}  // namespace

void insertRow(Connection& connection, const core::Expense& expense) {
    runExpense(connection, insertExpense, expense);
}

bool updateRow(Connection& connection, const core::Expense& expense) {
    return runExpense(connection, updateExpense, expense) == 1;
}

bool deleteRow(Connection& connection, core::ExpenseId id) {
    return connection.run(deleteExpenseRow, id) == 1;
}

void deleteExpensesOf(Connection& connection, core::BatchId batch) {
    connection.run(deleteExpensesOfBatch, batch);
}

std::optional<core::Expense> expenseIn(Connection& connection, core::ExpenseId id) {
    Query row = connection.query(selectExpenseRow.data(), id);
    if (!row.step()) return std::nullopt;
    return expenseFrom(row);
}

std::vector<core::Expense> expensesOf(Connection& connection, core::BatchId batch) {
    std::vector<core::Expense> all;
    for (Query row = connection.query(selectExpensesOf.data(), batch); row.step();) all.push_back(expenseFrom(row));
    return all;
}

std::vector<core::Expense> allExpenses(Connection& connection) {
    std::vector<core::Expense> all;
    for (Query row = connection.query(selectExpenses.data()); row.step();) all.push_back(expenseFrom(row));
    return all;
}

}  // namespace db
