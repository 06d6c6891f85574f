// SPDX-License-Identifier: MIT
#include "db/tables/expense_table.h"

#include "db/tables/sql_text.h"

namespace db {

namespace {

constexpr const char* insertExpense = R"(
    INSERT INTO expenses (id, batch_id, session_id, spent_on, what, amount_hundredths, minutes)
    VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7))";
constexpr const char* updateExpense = R"(
    UPDATE expenses SET batch_id = ?2, session_id = ?3, spent_on = ?4, what = ?5, amount_hundredths = ?6, minutes = ?7
    WHERE id = ?1)";
constexpr const char* deleteExpenseRow = "DELETE FROM expenses WHERE id = ?1";
constexpr const char* deleteExpensesOfBatch = "DELETE FROM expenses WHERE batch_id = ?1";
constexpr const char* deleteExpensesOfSession = "DELETE FROM expenses WHERE session_id = ?1";
constexpr char expenseColumns[] =
    "SELECT id, batch_id, session_id, spent_on, what, amount_hundredths, minutes FROM expenses";
constexpr auto selectExpenseRow = joined(expenseColumns, " WHERE id = ?1");
constexpr auto selectExpenses = joined(expenseColumns, " ORDER BY spent_on, id");
constexpr auto selectExpensesOfBatch = joined(expenseColumns, " WHERE batch_id = ?1 ORDER BY spent_on, id");
constexpr auto selectExpensesOfSession = joined(expenseColumns, " WHERE session_id = ?1 ORDER BY spent_on, id");

core::Expense expenseFrom(const Query& row) {
    core::Expense expense{.id = row.id<core::ExpenseId>(0),
                          .batch = row.id<core::BatchId>(1),
                          .spentOn = row.date(3),
                          .what = row.text(4),
                          .hundredths = row.bigNumber(5),
                          .session = row.id<core::SessionId>(2),
                          .minutes = {}};
    if (!row.isNull(6)) expense.minutes = row.real(6);
    return expense;
}

template <class... Values>
std::vector<core::Expense> expensesBy(Connection& connection, const char* sql, const Values&... values) {
    std::vector<core::Expense> all;
    for (Query row = connection.query(sql, values...); row.step();) all.push_back(expenseFrom(row));
    return all;
}

int runExpense(Connection& connection, const char* sql, const core::Expense& expense) {
    return connection.run(sql, expense.id, expense.batch, expense.session, expense.spentOn, expense.what,
                          expense.hundredths, expense.minutes);
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

void deleteExpensesOf(Connection& connection, core::SessionId session) {
    connection.run(deleteExpensesOfSession, session);
}

std::optional<core::Expense> expenseIn(Connection& connection, core::ExpenseId id) {
    Query row = connection.query(selectExpenseRow.data(), id);
    if (!row.step()) return std::nullopt;
    return expenseFrom(row);
}

std::vector<core::Expense> expensesOf(Connection& connection, core::BatchId batch) {
    return expensesBy(connection, selectExpensesOfBatch.data(), batch);
}

std::vector<core::Expense> expensesOf(Connection& connection, core::SessionId session) {
    return expensesBy(connection, selectExpensesOfSession.data(), session);
}

std::vector<core::Expense> allExpenses(Connection& connection) {
    return expensesBy(connection, selectExpenses.data());
}

}  // namespace db
