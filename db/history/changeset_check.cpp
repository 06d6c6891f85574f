// SPDX-License-Identifier: MIT
#include "db/history/changeset_check.h"

#include <algorithm>
#include <stdexcept>

namespace db {

namespace {

struct BadChangeset : std::runtime_error {
    using std::runtime_error::runtime_error;
};

enum class Cell { Undefined = 0, Whole = 1, Real = 2, Text = 3, Blob = 4, Null = 5 };

struct CellRead {
    Cell kind{};
    std::int64_t whole{};
};

/// Reads forward and never past the end.
class ChangesetBytes {
  public:
    explicit ChangesetBytes(std::span<const std::uint8_t> bytes) : rest_(bytes) {}

    [[nodiscard]] bool isAtEnd() const { return rest_.empty(); }
    [[nodiscard]] bool isAtTable() const { return !rest_.empty() && rest_.front() == 'T'; }

    std::uint8_t byte() { return take(1).front(); }

    std::span<const std::uint8_t> take(std::size_t count) {
        if (count > rest_.size()) throw BadChangeset("it ends too early");
        const auto taken = rest_.first(count);
        rest_ = rest_.subspan(count);
        return taken;
    }

    /// SQLite's variable-length number, up to the nine bytes that it may have.
    std::uint64_t length() {
        std::uint64_t value = 0;
        for (int i = 0; i < 8; ++i) {
            const std::uint8_t next = byte();
            value = (value << 7) | (next & 0x7fU);
            if ((next & 0x80U) == 0) return value;
        }
        return (value << 8) | byte();
    }

    std::string name() {
        const auto end = std::find(rest_.begin(), rest_.end(), std::uint8_t{0});
        if (end == rest_.end()) throw BadChangeset("a table's name has no end");
        const auto bytes = take(static_cast<std::size_t>(end - rest_.begin()));
        take(1);
        return {bytes.begin(), bytes.end()};
    }

    CellRead cell() {
        const std::uint8_t kind = byte();
        switch (static_cast<Cell>(kind)) {
            case Cell::Undefined:
            case Cell::Null:
                return {.kind = static_cast<Cell>(kind)};
            case Cell::Real:
                take(8);
                return {.kind = Cell::Real};
            case Cell::Text:
            case Cell::Blob:
                take(length());
                return {.kind = static_cast<Cell>(kind)};
            case Cell::Whole: {
                std::uint64_t value = 0;
                for (const std::uint8_t next : take(8)) value = (value << 8) | next;
                return {.kind = Cell::Whole, .whole = static_cast<std::int64_t>(value)};
            }
        }
        throw BadChangeset("it holds a value of an unknown kind");
    }

  private:
    std::span<const std::uint8_t> rest_;
};

using Record = std::vector<CellRead>;

Record readRecord(ChangesetBytes& bytes, const TableShape& table) {
    Record record;
    record.reserve(table.key.size());
    for (std::size_t column = 0; column < table.key.size(); ++column) record.push_back(bytes.cell());
    return record;
}

/// A row that came or went: every value is there, and its key is not null.
void requireWholeRow(const Record& record, const TableShape& table) {
    for (std::size_t column = 0; column < record.size(); ++column) {
        const bool isKey = table.key[column] != 0;
        if (record[column].kind == Cell::Undefined || (isKey && record[column].kind == Cell::Null))
            throw BadChangeset("a row of " + table.name + " lacks a value");
    }
}

/// A row that changed: its key stands in the old values only; every other column is in both or in neither.
void requireUpdate(const Record& before, const Record& after, const TableShape& table) {
    for (std::size_t column = 0; column < before.size(); ++column) {
        const bool wasGiven = before[column].kind != Cell::Undefined;
        const bool isGiven = after[column].kind != Cell::Undefined;
        const bool isKey = table.key[column] != 0;
        if (isKey ? (!wasGiven || before[column].kind == Cell::Null || isGiven) : wasGiven != isGiven)
            throw BadChangeset("a changed row of " + table.name + " does not fit together");
    }
}

std::vector<std::optional<std::int64_t>> wholeNumbersOf(const Record& record) {
    std::vector<std::optional<std::int64_t>> numbers(record.size());
    for (std::size_t column = 0; column < record.size(); ++column)
        if (record[column].kind == Cell::Whole) numbers[column] = record[column].whole;
    return numbers;
}

const TableShape& readTable(ChangesetBytes& bytes, std::span<const TableShape> tables) {
    if (bytes.byte() != 'T') throw BadChangeset("it does not begin with a table");
    const std::uint64_t columns = bytes.length();
    if (columns == 0 || columns > 100) throw BadChangeset("a table has an impossible number of columns");
    const auto key = bytes.take(columns);
    const std::string name = bytes.name();
    for (const TableShape& table : tables) {
        if (table.name != name) continue;
        if (!std::equal(key.begin(), key.end(), table.key.begin(), table.key.end()))
            throw BadChangeset("the columns of " + name + " are not those of this logbook");
        return table;
    }
    throw BadChangeset("it speaks of a table that actions don't change");
}

ChangedRow readRow(ChangesetBytes& bytes, const TableShape& table) {
    const auto change = static_cast<RowChange>(bytes.byte());
    if (bytes.byte() > 1) throw BadChangeset("a change has a flag that does not exist");
    switch (change) {
        case RowChange::Insert:
        case RowChange::Delete: {
            const Record row = readRecord(bytes, table);
            requireWholeRow(row, table);
            const bool came = change == RowChange::Insert;
            return {&table, change, came ? std::vector<std::optional<std::int64_t>>{} : wholeNumbersOf(row),
                    came ? wholeNumbersOf(row) : std::vector<std::optional<std::int64_t>>{}};
        }
        case RowChange::Update: {
            const Record before = readRecord(bytes, table);
            const Record after = readRecord(bytes, table);
            requireUpdate(before, after, table);
            return {&table, change, wholeNumbersOf(before), wholeNumbersOf(after)};
        }
    }
    throw BadChangeset("it holds a change of an unknown kind");
}

}  // namespace

std::optional<std::string> walkChangeset(std::span<const std::uint8_t> changeset, std::span<const TableShape> tables,
                                         const std::function<void(const ChangedRow&)>& visit) {
    try {
        ChangesetBytes bytes(changeset);
        std::vector<const TableShape*> seen;
        if (bytes.isAtEnd()) throw BadChangeset("it is empty");
        while (!bytes.isAtEnd()) {
            const TableShape& table = readTable(bytes, tables);
            if (std::find(seen.begin(), seen.end(), &table) != seen.end()) throw BadChangeset("a table comes twice");
            seen.push_back(&table);
            if (bytes.isAtEnd() || bytes.isAtTable()) throw BadChangeset("a table comes without a change");
            while (!bytes.isAtEnd() && !bytes.isAtTable()) {
                const ChangedRow row = readRow(bytes, table);
                if (visit) visit(row);
            }
        }
    } catch (const BadChangeset& bad) {
        return bad.what();
    }
    return std::nullopt;
}

}  // namespace db
