// SPDX-License-Identifier: MIT
// Turns what SQLite and the file system report into the sentences of LogbookError. The one place that knows their codes.
#pragma once

#include <SQLiteCpp/Exception.h>

#include <filesystem>
#include <string>
#include <utility>

#include "db/logbook_error.h"

namespace db {

/// The file's name in quotes, as sentences say it; "the logbook" when it has none.
[[nodiscard]] std::string quotedName(const std::filesystem::path& file);

/// `code` is SQLite's, plain or extended. One sentence that says what is wrong and what to do.
[[nodiscard]] LogbookError failureOf(int code, const std::filesystem::path& file);
/// `systemError` is errno; `deed` as in "The backup could not be written".
[[nodiscard]] LogbookError systemFailure(int systemError, const std::string& deed);

/// Runs `work`; what SQLite throws comes out as a LogbookError about `file`.
template <class Work>
auto plainly(const std::filesystem::path& file, Work&& work) {
    try {
        return std::forward<Work>(work)();
    } catch (const SQLite::Exception& error) {
        // SQLiteCpp knows the extended code only of some of its exceptions, the plain one of all.
        throw failureOf(error.getErrorCode(), file);
    }
}

}  // namespace db
