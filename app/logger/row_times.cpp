// SPDX-License-Identifier: MIT
#include "app/logger/row_times.h"

#include <cstdlib>

#include "core/climate/logger_day.h"

namespace logger {

void RowTimes::add(int number, const WrittenTime& time) {
    if (hasBegun_ && time.second != writtenBefore_) rising_ += time.second > writtenBefore_ ? 1 : -1;
    hasBegun_ = true;
    writtenBefore_ = time.second;
    const LoggerZone::Moments moments =
        time.secondsAhead
            ? LoggerZone::Moments{.first = time.second - *time.secondsAhead, .second = time.second - *time.secondsAhead}
            : zone_.at(time.second);
    if (moments.number == LoggerZone::Moments::Number::Two) {
        const bool isOfAnotherYear =
            !waiting_.empty() && std::abs(waiting_.back().first - moments.first) > core::secondsInADay;
        if (isOfAnotherYear) settle();
        waiting_.push_back({number, time.second, moments.first, moments.second});
        return;
    }
    if (!waiting_.empty()) settle();
    const bool isLeftOut = moments.number == LoggerZone::Moments::Number::None;
    take_({.number = number,
           .written = time.second,
           .moment = moments.first,
           .doubt = isLeftOut ? Doubt::LeftOut : Doubt::None});
}

bool RowTimes::goesBack(const Waiting& before, const Waiting& after) const {
    return rising_ < 0 ? after.written >= before.written : after.written <= before.written;
}

void RowTimes::settle() {
    std::size_t backAt = 0;
    int back = 0;
    for (std::size_t i = 1; i < waiting_.size(); ++i)
        if (goesBack(waiting_[i - 1], waiting_[i])) {
            backAt = i;
            ++back;
        }
    const bool isFalling = rising_ < 0;
    for (std::size_t i = 0; i < waiting_.size(); ++i) {
        const Waiting& row = waiting_[i];
        Row settled{.number = row.number, .written = row.written};
        bool isSecond = twiceHour_ == core::TwiceHour::Winter;
        if (back == 1) isSecond = (i >= backAt) != isFalling;
        if (back == 0 && twiceHour_ == core::TwiceHour::NotSettled) settled.doubt = Doubt::GoesOnce;
        if (back > 1) settled.doubt = Doubt::GoesOften;
        settled.moment = isSecond ? row.second : row.first;
        take_(settled);
    }
    waiting_.clear();
}

}  // namespace logger
