// SPDX-License-Identifier: MIT
#include "db/exchange/table_files.h"

#include <fstream>

#include "db/exchange/exchange_tables.h"
#include "db/logbook_error.h"

namespace db {

void TableFiles::file(const std::string& name, const std::function<void(std::ostream&)>& fill) const {
    if (waiting_.isCalledOff()) return;
    const std::filesystem::path path = folder_ / name;
    std::ofstream out(path, std::ios::binary | std::ios::trunc);
    fill(out);
    out.close();
    if (out.fail())
        // Without the folder, which has a passing name while it is being filled.
        throw LogbookError("The file " + name +
                           " can't be written; see whether the disk is full and the folder is yours to write in.");
}

void TableFiles::table(std::string_view name, const std::function<void(CsvWriter&)>& fill) const {
    file(std::string(name) + ".csv", [&](std::ostream& out) {
        CsvWriter csv(out);
        for (const ExchangeColumn& column : exchangeTable(name).columns) csv.text(column.name);
        csv.endRow();
        fill(csv);
    });
    waiting_.tellShare(static_cast<double>(++tablesWritten_) / static_cast<double>(exchangeTables().size()));
}

}  // namespace db
