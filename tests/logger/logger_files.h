// SPDX-License-Identifier: MIT
// Files as loggers write them, invented, for tests.
#pragma once

#include <string>

#include "app/logger/file_form.h"
#include "app/logger/log_reader.h"
#include "core/climate/logger_mapping.h"
#include "tests/support/scratch_folder.h"

namespace support {

/// One file in a folder of its own.
class LoggerFile {
  public:
    explicit LoggerFile(const std::string& content, const std::string& name = "logger.csv") : file_(folder_ / name) {
        writeContent(file_, content);
    }
    [[nodiscard]] const std::filesystem::path& path() const { return file_; }

  private:
    ScratchFolder folder_;
    std::filesystem::path file_;
};

/// The UTF-8 text as a file of that encoding has it, with a byte order mark where it is asked for.
[[nodiscard]] std::string encoded(const std::string& text, logger::Encoding encoding, bool hasMark);

/// Air temperature in C of the north tub in the second column, the time in the first; year first, UTC.
[[nodiscard]] core::LoggerMapping timeAndAir();
/// Late enough for every row: 2026-11-26.
[[nodiscard]] core::Moment loggersNow();
/// The moment of an ISO 8601 text in UTC.
[[nodiscard]] core::Moment moment(const std::string& iso);

/// All moments with their values, one column after the other.
struct Logged {
    core::Quantity quantity{};
    core::Moment at{};
    double value{};

    bool operator==(const Logged&) const = default;
};
[[nodiscard]] std::vector<Logged> loggedIn(const logger::LogContents& contents);
/// "2026-10-25T00:00:00Z" of each, in order.
[[nodiscard]] std::vector<std::string> momentsIn(const logger::LogContents& contents);

/// Reads the text as a file of commas by the mapping.
[[nodiscard]] logger::LogContents readText(const std::string& text, const core::LoggerMapping& mapping);

}  // namespace support
