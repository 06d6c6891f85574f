// SPDX-License-Identifier: MIT
#include "app/logger/logger_zone.h"

#include <QDateTime>
#include <array>
#include <cstdio>

#include "app/logger/time_text.h"
#include "core/climate/logger_day.h"

namespace logger {

namespace {

QDateTime utcOf(std::int64_t second) {
    return QDateTime::fromSecsSinceEpoch(second, Qt::UTC);
}

/// "+02:00", "UTC+02:00"; as the end of an ISO 8601 time has it.
std::optional<int> offsetFrom(const std::string& name) {
    const std::string sign = name.starts_with("UTC") ? name.substr(3) : name;
    if (!sign.starts_with('+') && !sign.starts_with('-')) return {};
    const auto time = writtenTime("1970-01-01T00:00:00" + sign, core::TimeForm::YearMonthDay);
    constexpr int farthest = 14 * 3600;  // Qt's bound, and the world's
    if (!time || std::abs(*time->secondsAhead) > farthest) return {};
    return time->secondsAhead;
}

}  // namespace

std::string offsetText(int secondsAhead) {
    constexpr int minute = 60, hour = 3600;
    std::array<char, 16> text{};
    const int size = std::snprintf(text.data(), text.size(), "UTC%c%02d:%02d", secondsAhead < 0 ? '-' : '+',
                                   std::abs(secondsAhead) / hour, std::abs(secondsAhead) % hour / minute);
    return std::string(text.data(), static_cast<std::size_t>(size));
}

std::optional<LoggerZone> LoggerZone::from(const std::string& name) {
    if (name == "UTC") return LoggerZone(name, QTimeZone(0));
    if (name == "here" || (!name.empty() && name == here())) return LoggerZone(here(), QTimeZone::systemTimeZone());
    if (const auto offset = offsetFrom(name)) return LoggerZone(offsetText(*offset), QTimeZone(*offset));
    const QByteArray id = QByteArray::fromStdString(name);
    // Qt lists the zones of places only; those by their distance from Greenwich, as Etc/UTC, are there all the same.
    if (!QTimeZone::isTimeZoneIdAvailable(id) && !name.starts_with("Etc/")) return {};
    QTimeZone zone(id);
    if (!zone.isValid()) return {};
    return LoggerZone(name, std::move(zone));
}

std::string LoggerZone::here() {
    return QTimeZone::systemTimeZoneId().toStdString();
}

int LoggerZone::secondsAheadAt(std::int64_t moment) const {
    return zone_.offsetFromUtc(utcOf(moment));
}

std::string LoggerZone::winterTimeAt(std::int64_t moment) const {
    return offsetText(zone_.standardTimeOffset(utcOf(moment)));
}

LoggerZone::Moments LoggerZone::at(std::int64_t written) {
    if (written >= from_ && written < until_) return {.first = written - ahead_, .second = written - ahead_};
    // No zone is a day or more ahead of UTC, and clocks do not change twice within two days.
    const int before = secondsAheadAt(written - core::secondsInADay);
    const int after = secondsAheadAt(written + core::secondsInADay);
    if (before == after) {
        keepStretch(written - before, before);
        return {.first = written - before, .second = written - before};
    }
    const bool isBefore = secondsAheadAt(written - before) == before,
               isAfter = secondsAheadAt(written - after) == after;
    if (isBefore && isAfter)
        return {.number = Moments::Number::Two, .first = written - before, .second = written - after};
    if (!isBefore && !isAfter) return {.number = Moments::Number::None, .first = 0, .second = 0};
    const std::int64_t moment = written - (isBefore ? before : after);
    return {.first = moment, .second = moment};
}

void LoggerZone::keepStretch(std::int64_t moment, int ahead) {
    ahead_ = ahead;
    from_ = std::numeric_limits<std::int64_t>::min();
    until_ = std::numeric_limits<std::int64_t>::max();
    if (!zone_.hasTransitions()) return;
    // A day away from either change, nothing comes twice and nothing is left out.
    const QTimeZone::OffsetData last = zone_.previousTransition(utcOf(moment + 1));
    if (last.atUtc.isValid()) from_ = last.atUtc.toSecsSinceEpoch() + ahead + core::secondsInADay;
    const QTimeZone::OffsetData next = zone_.nextTransition(utcOf(moment));
    if (next.atUtc.isValid()) until_ = next.atUtc.toSecsSinceEpoch() + ahead - core::secondsInADay;
}

}  // namespace logger
