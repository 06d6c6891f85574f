// SPDX-License-Identifier: MIT
// A folder of tables for one test, in the build folder; gone afterwards.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "core/records.h"

namespace support {

class TemporaryFolder {
  public:
    TemporaryFolder();
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    ~TemporaryFolder();

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }
    [[nodiscard]] std::filesystem::path operator/(std::string_view name) const { return path_ / name; }
    void write(std::string_view name, std::string_view content) const;
    [[nodiscard]] std::string read(std::string_view name) const;

  private:
    std::filesystem::path path_;
};

/// Facts of a new logbook of this name.
[[nodiscard]] core::LogbookFacts factsOf(const std::string& name);

/// Late enough for all that the tests write down.
inline constexpr core::Date lateDay{std::chrono::year{2026}, std::chrono::June, std::chrono::day{30}};

/// The rows with CRLF behind each.
[[nodiscard]] std::string rows(const std::vector<std::string>& rows);

inline constexpr std::string_view batchHeading =
    "batch,stuck_on,species,cultivar,stock_plant,method,station,medium,treatment,auxin,auxin_mg_per_l,cutting_kind,"
    "stuck,trial,block,note";
inline constexpr std::string_view checkHeading = "batch,checked_on,rooted,lost,withdrawn,cause,note";

}  // namespace support
