// SPDX-License-Identifier: MIT
// Opens an untrusted file and brings an older one to this program's schema, after a backup beside it.
#pragma once

#include "db/safekeeping/untrusted_open.h"

namespace db {

/// LogbookError, with the file as it was, when a migration is due and can't be done.
[[nodiscard]] OpenedFile openUpToDate(const std::filesystem::path& file, bool readOnly,
                                      std::chrono::milliseconds patience,
                                      std::span<const Migration> migrations = releasedMigrations());

}  // namespace db
