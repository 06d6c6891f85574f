// SPDX-License-Identifier: MIT
#include "db/safekeeping/checked_copy.h"

#include <SQLiteCpp/Backup.h>

#include "db/failure.h"
#include "db/safekeeping/untrusted_open.h"

namespace db {

void writeCheckedCopy(Connection& from, const std::filesystem::path& to, IfThere ifThere, const std::string& what,
                      std::span<const Migration> migrations) {
    PartFile part(to, what);
    plainly(to, [&] {
        Connection copy(part.path().string(), SQLite::OPEN_READWRITE, 0);
        // What is half written goes away with the part file, and publish() syncs once: no journal is needed.
        copy.runScript("PRAGMA journal_mode = OFF; PRAGMA synchronous = OFF");
        SQLite::Backup backup(copy.database(), from.database());
        constexpr int allPages = -1;
        backup.executeStep(allPages);
    });
    const OpenedFile readBack = openUntrusted(part.path(), true, std::chrono::milliseconds(0), migrations);
    part.publish(ifThere);
}

}  // namespace db
