// SPDX-License-Identifier: MIT
// datapackage.json, which tells other programs what the tables of an exchange folder hold (Frictionless Data Package, version 1:
// specs.frictionlessdata.io). The import needs none of it; it takes the source of the records from there where it is given.
#pragma once

#include <filesystem>
#include <optional>
#include <ostream>
#include <string>

#include "core/records.h"

namespace db {

/// The description of a folder with all our tables.
void writeDataPackage(std::ostream& out, const core::LogbookFacts& facts);

struct DataPackage {
    std::string title;
    std::string citation;              // the titles of its sources, in one line
    std::optional<std::string> fault;  // a sentence: it can't be read, or is from a newer program
};

/// An empty value when there is no such file.
[[nodiscard]] DataPackage readDataPackage(const std::filesystem::path& file);

}  // namespace db
