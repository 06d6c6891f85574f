// SPDX-License-Identifier: MIT
// The moments of a file's rows, told apart where summer time ends: there an hour comes twice, and the rows that go through it twice say
// themselves which is which. So a row's moment may be known only some rows later.
#pragma once

#include <cstdint>
#include <functional>
#include <vector>

#include "app/logger/logger_zone.h"
#include "app/logger/time_text.h"

namespace logger {

class RowTimes {
  public:
    enum class Doubt {
        None,
        LeftOut,    // the clocks went over that hour
        GoesOnce,   // the rows go once through an hour that comes twice
        GoesOften,  // more than twice: they are in no order
    };
    struct Row {
        int number{};
        std::int64_t written{};
        std::int64_t moment{};  // of LeftOut and GoesOften: none
        Doubt doubt{Doubt::None};
    };
    using Take = std::function<void(const Row&)>;

    /// Hands rows on to `take` in the order in which they came.
    RowTimes(LoggerZone zone, core::TwiceHour twiceHour, Take take)
        : zone_(std::move(zone)), twiceHour_(twiceHour), take_(std::move(take)) {}

    void add(int number, const WrittenTime& time);
    /// No more rows come.
    void end() { settle(); }

    [[nodiscard]] const LoggerZone& zone() const { return zone_; }

  private:
    struct Waiting {
        int number{};
        std::int64_t written{};
        std::int64_t first{};
        std::int64_t second{};
    };

    void settle();
    [[nodiscard]] bool goesBack(const Waiting& before, const Waiting& after) const;

    LoggerZone zone_;
    core::TwiceHour twiceHour_;
    Take take_;
    std::vector<Waiting> waiting_;  // of the hour that comes twice
    std::int64_t writtenBefore_{};
    std::int64_t rising_{};  // how many rows are later than the one before, less those that are earlier
    bool hasBegun_{};
};

}  // namespace logger
