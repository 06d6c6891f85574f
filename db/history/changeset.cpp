// SPDX-License-Identifier: MIT
#include "db/history/changeset.h"

#include <sqlite3.h>

#include <set>
#include <string_view>
#include <unordered_map>

#include "db/tables/batch_table.h"
#include "db/tables/check_table.h"
#include "db/tables/expense_table.h"
#include "db/tables/photo_table.h"
#include "db/tables/potting_table.h"

namespace db {

namespace {

constexpr const char* selectTables = R"(
    SELECT name FROM sqlite_schema
    WHERE type = 'table' AND name NOT LIKE 'sqlite\_%' ESCAPE '\' AND name <> 'history' ORDER BY name)";
constexpr const char* selectKeyOfTable = "SELECT pk FROM pragma_table_info(?1) ORDER BY cid";

void requireSessionOk(Connection& connection, int code) {
    if (code != SQLITE_OK) throw SQLite::Exception(connection.handle(), code);
}

int isTableOfActions(void*, const char* table) {
    return std::string_view(table) != "history";
}

/// A row that isn't as the changeset expects was changed by something else since: never write over it.
int abortAtConflict(void*, int, sqlite3_changeset_iter*) {
    return SQLITE_CHANGESET_ABORT;
}

struct SqliteFree {
    void operator()(void* memory) const { sqlite3_free(memory); }
};

Changeset inverted(Connection& connection, const Changeset& changeset) {
    int size = 0;
    void* bytes = nullptr;
    const int code = sqlite3changeset_invert(static_cast<int>(changeset.size()), changeset.data(), &size, &bytes);
    const std::unique_ptr<void, SqliteFree> owner(bytes);
    requireSessionOk(connection, code);
    const auto* first = static_cast<const std::uint8_t*>(bytes);
    return {first, first + size};
}

/// Gathers the batches whose own row changed, or what belongs to them: checks, photos, pottings, expenses, those of its
/// session too.
class TouchedBatches {
  public:
    explicit TouchedBatches(Connection& connection) : connection_(connection) {}

    void see(const ChangedRow& row) {
        const std::string& table = row.table->name;
        const auto& known = row.change == RowChange::Insert ? row.after : row.before;
        if (table == "batches") batches_.insert(known[0].value_or(0));
        if (table == "sessions") sessions_.insert(known[0].value_or(0));
        if (table == "check_losses" || table == "check_findings") lossesOf_.insert(known[0].value_or(0));
        if (table == "photos") seeOwned(row, photos_);
        if (table == "pottings") seeOwned(row, pottings_);
        if (table == "expenses") seeExpense(row);
        if (table != "checks") return;
        const std::int64_t check = known[0].value_or(0);
        lossesOf_.insert(check);
        for (const auto* values : {&row.before, &row.after})
            if (values->size() > 1 && (*values)[1]) batchOf_[check] = *(*values)[1];
    }

    std::vector<core::BatchId> found() {
        for (const std::int64_t photo : photos_)
            if (const auto there = photoIn(connection_, {photo})) batches_.insert(there->batch.value);
        for (const std::int64_t expense : expenses_)
            if (const auto there = expenseIn(connection_, {expense})) {
                batches_.insert(there->batch.value);
                sessions_.insert(there->session.value);
            }
        for (const std::int64_t potting : pottings_)
            if (const auto there = pottingIn(connection_, {potting})) batches_.insert(there->batch.value);
        for (const std::int64_t check : lossesOf_) {
            const auto known = batchOf_.find(check);
            batches_.insert(known != batchOf_.end() ? known->second : batchOfCheck(connection_, {check}).value);
        }
        for (const std::int64_t session : sessions_)
            for (const core::BatchId batch : batchesOf(connection_, {session})) batches_.insert(batch.value);
        batches_.erase(0);
        std::vector<core::BatchId> all;
        for (const std::int64_t batch : batches_) all.push_back({batch});
        return all;
    }

  private:
    /// A row whose second column is its batch: when that is not among what changed, the row is there to be asked.
    void seeOwned(const ChangedRow& row, std::set<std::int64_t>& toAsk) {
        const auto& known = row.change == RowChange::Insert ? row.after : row.before;
        for (const auto* values : {&row.before, &row.after})
            if (values->size() > 1 && (*values)[1]) batches_.insert(*(*values)[1]);
        if (row.change == RowChange::Update) toAsk.insert(known[0].value_or(0));
    }

    /// The third column is the session that it belongs to in place of a batch.
    void seeExpense(const ChangedRow& row) {
        seeOwned(row, expenses_);
        for (const auto* values : {&row.before, &row.after})
            if (values->size() > 2 && (*values)[2]) sessions_.insert(*(*values)[2]);
    }

    Connection& connection_;
    std::set<std::int64_t> batches_, sessions_, lossesOf_, photos_, expenses_, pottings_;
    std::unordered_map<std::int64_t, std::int64_t> batchOf_;
};

}  // namespace

std::vector<TableShape> tablesOf(Connection& connection) {
    std::vector<TableShape> tables;
    for (Query row = connection.query(selectTables); row.step();) {
        TableShape table{.name = row.text(0), .key = {}};
        for (Query column = connection.query(selectKeyOfTable, table.name); column.step();)
            table.key.push_back(static_cast<std::uint8_t>(column.number(0)));
        tables.push_back(std::move(table));
    }
    return tables;
}

void ChangeRecorder::Ending::operator()(sqlite3_session* session) const {
    sqlite3session_delete(session);
}

ChangeRecorder::ChangeRecorder(Connection& connection) {
    sqlite3_session* session = nullptr;
    const int made = sqlite3session_create(connection.handle(), "main", &session);
    session_.reset(session);
    requireSessionOk(connection, made);
    sqlite3session_table_filter(session, isTableOfActions, nullptr);
    requireSessionOk(connection, sqlite3session_attach(session, nullptr));
}

Changeset ChangeRecorder::changeset() {
    int size = 0;
    void* bytes = nullptr;
    const int code = sqlite3session_changeset(session_.get(), &size, &bytes);
    const std::unique_ptr<void, SqliteFree> owner(bytes);
    if (code != SQLITE_OK) throw SQLite::Exception("changeset", code);
    const auto* first = static_cast<const std::uint8_t*>(bytes);
    return {first, first + size};
}

void applyChangeset(Connection& connection, const Changeset& changeset, Direction direction) {
    if (const auto fault = walkChangeset(changeset, tablesOf(connection)))
        throw LogbookError("This step of the history is damaged (" + *fault +
                           "), so it can't be undone or redone. The records themselves are as they were.");
    const Changeset todo = direction == Direction::Back ? inverted(connection, changeset) : changeset;
    const int code = sqlite3changeset_apply(connection.handle(), static_cast<int>(todo.size()),
                                            const_cast<std::uint8_t*>(todo.data()),  // SQLite only reads it
                                            nullptr, abortAtConflict, nullptr);
    if (code == SQLITE_ABORT || code == SQLITE_CONSTRAINT)
        throw LogbookError(
            "This step can't be undone or redone, because what it wrote has been changed since by something that is "
            "not in the "
            "history. Nothing was changed.");
    requireSessionOk(connection, code);
}

Changes changesIn(Connection& connection, const Changeset& changeset) {
    Changes changes;
    TouchedBatches touched(connection);
    const std::vector<TableShape> tables = tablesOf(connection);
    const auto fault = walkChangeset(changeset, tables, [&](const ChangedRow& row) {
        if (changes.tables.empty() || changes.tables.back() != row.table->name)
            changes.tables.push_back(row.table->name);
        touched.see(row);
    });
    if (fault) throw LogbookError("What was done can't be recorded (" + *fault + "). Nothing was changed.");
    changes.batches = touched.found();
    return changes;
}

}  // namespace db
