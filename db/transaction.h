// SPDX-License-Identifier: MIT
// All or nothing: what was written is taken back unless commit() was reached.
#pragma once

#include "db/connection.h"

namespace db {

class WriteTransaction {
  public:
    /// Waits for its turn (BEGIN IMMEDIATE): what is read from here on is what will be changed.
    explicit WriteTransaction(Connection& connection);
    ~WriteTransaction();
    WriteTransaction(const WriteTransaction&) = delete;
    WriteTransaction& operator=(const WriteTransaction&) = delete;

    void commit();

  private:
    Connection& connection_;
};

/// Several queries that see one and the same state. Within a transaction it does nothing.
class ReadTransaction {
  public:
    explicit ReadTransaction(Connection& connection);
    ~ReadTransaction();
    ReadTransaction(const ReadTransaction&) = delete;
    ReadTransaction& operator=(const ReadTransaction&) = delete;

  private:
    Connection& connection_;
    bool isOurs_;
};

}  // namespace db
