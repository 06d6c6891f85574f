// SPDX-License-Identifier: MIT
// The values of one column, day by day (UTC), as they come; at the end in order of time and each moment once. Inside logger only.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <vector>

#include "core/climate/logger_day.h"
#include "core/climate/logger_mapping.h"

namespace logger {

class LogValues {
  public:
    struct Entry {
        int second{};  // of the day
        int row{};
        double value{};
    };
    using TellTwo = std::function<void(const Entry& before, const Entry& after)>;

    void add(std::int64_t moment, int row, double value);

    /// Puts the days behind those that are there and forgets them. Values that stand there twice are counted in `repeated`; where they differ,
    /// `tell` hears of it.
    void moveInto(std::vector<core::LoggerDay>& days, const core::LoggerColumn& column, std::int64_t& repeated,
                  const TellTwo& tell);

  private:
    std::map<std::int64_t, std::vector<Entry>> days_;
    std::int64_t lastDay_{};
    std::vector<Entry>* last_{};
};

}  // namespace logger
