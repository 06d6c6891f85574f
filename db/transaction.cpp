// SPDX-License-Identifier: MIT
#include "db/transaction.h"

#include <sqlite3.h>

namespace db {

namespace {

bool isInTransaction(Connection& connection) {
    return sqlite3_get_autocommit(connection.handle()) == 0;
}

/// After a full disk or an I/O error SQLite may have rolled back by itself; should this fail too, the journal stays and the next
/// opening rolls back. So the answer is of no use.
void rollBack(Connection& connection) noexcept {
    if (isInTransaction(connection)) sqlite3_exec(connection.handle(), "ROLLBACK", nullptr, nullptr, nullptr);
}

}  // namespace

WriteTransaction::WriteTransaction(Connection& connection) : connection_(connection) {
    connection_.runScript("BEGIN IMMEDIATE");
}

WriteTransaction::~WriteTransaction() {
    rollBack(connection_);
}

void WriteTransaction::commit() {
    connection_.runScript("COMMIT");
}

ReadTransaction::ReadTransaction(Connection& connection)
    : connection_(connection), isOurs_(!isInTransaction(connection)) {
    if (isOurs_) connection_.runScript("BEGIN");
}

ReadTransaction::~ReadTransaction() {
    if (isOurs_) rollBack(connection_);
}

}  // namespace db
