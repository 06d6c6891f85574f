// SPDX-License-Identifier: MIT
#include "db/migrations/open_up_to_date.h"

#include "db/failure.h"
#include "db/safekeeping/checked_copy.h"

namespace db {

namespace {

/// "bench before format 2.strikebook", or with a number when there is one already.
std::filesystem::path nameBeforeMigrating(const std::filesystem::path& file, int version) {
    const std::string start = file.stem().string() + " before format " + std::to_string(version);
    const auto named = [&](const std::string& number) {
        return file.parent_path() / (start + number + file.extension().string());
    };
    auto name = named("");
    for (int number = 2; std::filesystem::exists(name); ++number) name = named(' ' + std::to_string(number));
    return name;
}

}  // namespace

OpenedFile openUpToDate(const std::filesystem::path& file, bool readOnly, std::chrono::milliseconds patience,
                        std::span<const Migration> migrations) {
    OpenedFile opened = openUntrusted(file, readOnly, patience, migrations);
    const int newest = newestVersion(migrations);
    if (opened.schemaVersion == newest) return opened;
    if (readOnly)
        throw LogbookError(
            quotedName(file) +
            " was written by an older Strikebook and must be brought up to date before it can be read, which needs the "
            "right to write it. Open a copy that you may write.");
    return plainly(file, [&] {
        writeCheckedCopy(*opened.connection, nameBeforeMigrating(file, newest), IfThere::Refuse, "The backup", {},
                         migrations);
        migrate(*opened.connection, migrations);
        opened.schemaVersion = schemaVersionOf(*opened.connection);
        return std::move(opened);
    });
}

}  // namespace db
