// SPDX-License-Identifier: MIT
// The files of an exchange folder while it is written, and things found by id for its rows.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <ostream>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "db/exchange/csv_writer.h"
#include "db/safekeeping/waiting.h"

namespace db {

/// Things by id: a logbook may have tens of thousands of batches, and each names eight of them.
template <class Thing>
class ById {
  public:
    explicit ById(const std::vector<Thing>& things) {
        for (const Thing& thing : things) things_.emplace(thing.id.value, &thing);
    }
    /// Where there is none: a blank one.
    const Thing& operator()(decltype(Thing::id) id) const {
        const auto found = things_.find(id.value);
        return found == things_.end() ? blank_ : *found->second;
    }

  private:
    std::unordered_map<std::int64_t, const Thing*> things_;
    Thing blank_{};
};

/// Nothing more is written once the one who waits has called it off.
class TableFiles {
  public:
    explicit TableFiles(std::filesystem::path folder, const Waiting& waiting = {})
        : folder_(std::move(folder)), waiting_(waiting) {}

    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }
    /// Throws LogbookError when the disk fails.
    void file(const std::string& name, const std::function<void(std::ostream&)>& fill) const;
    /// With its heading.
    void table(std::string_view name, const std::function<void(CsvWriter&)>& fill) const;

  private:
    std::filesystem::path folder_;
    Waiting waiting_;
    mutable std::size_t tablesWritten_{};
};

}  // namespace db
