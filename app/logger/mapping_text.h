// SPDX-License-Identifier: MIT
// A mapping as a LoggerFormat of the logbook keeps it: JSON, read back as untrusted as any file.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/logger/file_form.h"
#include "core/climate/logger_format.h"
#include "core/climate/logger_mapping.h"

namespace logger {

[[nodiscard]] std::string textOf(const core::LoggerMapping& mapping);
/// Nothing where it is no mapping.
[[nodiscard]] std::optional<core::LoggerMapping> mappingFrom(const std::string& text);

/// A remembered format whose files have this heading.
struct KnownFormat {
    core::LoggerFormatId id{};
    std::string name{};
    core::LoggerMapping mapping{};
};
[[nodiscard]] std::vector<KnownFormat> formatsFor(const FileForm& form, const std::vector<core::LoggerFormat>& formats);
[[nodiscard]] core::LoggerFormat formatOf(const FileForm& form, const core::LoggerMapping& mapping,
                                          const std::string& name);
/// `wished`, with a number behind it where that name is taken.
[[nodiscard]] std::string freeName(const std::string& wished, const std::vector<core::LoggerFormat>& formats);

}  // namespace logger
