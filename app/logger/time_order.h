// SPDX-License-Identifier: MIT
// Which of the figures of a day is the day and which the month: settled by a whole column, or not at all. A day 13 to 31 settles it; so does
// a column of several rows a day whose days, read one way, follow one another, and read the other way never do.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "app/logger/time_text.h"

namespace logger {

class TimeOrder {
  public:
    /// The next cell of the column that holds the day; what is no day is passed over.
    void see(std::string_view cell);

    /// By what was seen so far. Contract: not of Unix seconds.
    [[nodiscard]] core::TimeForm settled() const;
    /// Nothing that is still to come can change it but faults.
    [[nodiscard]] bool isCertain() const;

  private:
    struct Candidate {
        core::TimeForm form;
        bool isPossible{true};
        std::int64_t dayBefore{};
        int nextDays{};  // how often the next day followed, or the day before in a file that runs backwards
    };

    std::array<Candidate, 3> candidates_{Candidate{core::TimeForm::DayMonthYear},
                                         Candidate{core::TimeForm::MonthDayYear},
                                         Candidate{core::TimeForm::YearMonthDay}};
    DayFigures last_{};
    std::int64_t rows_{};
    std::int64_t days_{};  // how often the day changed, the first included
};

}  // namespace logger
