// SPDX-License-Identifier: MIT
// The time zone that a logger's clock ran in, quick enough for a million rows: it asks Qt once for each stretch between two changes of the
// clocks. Not shared between threads.
#pragma once

#include <QTimeZone>
#include <cstdint>
#include <limits>
#include <optional>
#include <string>

namespace logger {

class LoggerZone {
  public:
    /// "UTC", "here" (the zone of this computer), "+02:00", or a name of the IANA list as this system has it: "Europe/Berlin".
    [[nodiscard]] static std::optional<LoggerZone> from(const std::string& name);
    /// The name of this computer's zone.
    [[nodiscard]] static std::string here();

    /// Seconds since 1970-01-01 00:00 UTC of a moment that the clock showed.
    struct Moments {
        enum class Number {
            None,
            One,
            Two
        };  // none: the hour that is left out in spring; two: the one that comes twice in autumn
        Number number{Number::One};
        std::int64_t first{};
        std::int64_t second{};  // the later of two; else as the first
    };
    [[nodiscard]] Moments at(std::int64_t written);

    [[nodiscard]] const std::string& name() const { return name_; }
    /// "UTC+01:00": what the clock would be ahead of UTC without summer time, as of that moment.
    [[nodiscard]] std::string winterTimeAt(std::int64_t moment) const;
    [[nodiscard]] int secondsAheadAt(std::int64_t moment) const;

  private:
    LoggerZone(std::string name, QTimeZone zone) : name_(std::move(name)), zone_(std::move(zone)) {}
    void keepStretch(std::int64_t moment, int ahead);

    std::string name_;
    QTimeZone zone_;
    // The stretch that was asked about last: what the clock shows from and until, without the hours that are none or two.
    std::int64_t from_{std::numeric_limits<std::int64_t>::max()};
    std::int64_t until_{std::numeric_limits<std::int64_t>::min()};
    int ahead_{};
};

/// "UTC+05:30"
[[nodiscard]] std::string offsetText(int secondsAhead);

}  // namespace logger
