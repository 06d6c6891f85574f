// SPDX-License-Identifier: MIT
// The part of Logbook that reads what loggers recorded and what was mixed.
#include <algorithm>

#include "db/inside.h"
#include "db/tables/logger_day_table.h"
#include "db/tables/logger_format_table.h"
#include "db/tables/mix_table.h"
#include "db/tables/reading_table.h"
#include "db/transaction.h"

namespace db {

std::vector<core::TimedValue> Logbook::loggerValues(core::StationId station, core::Quantity quantity, core::Moment from,
                                                    core::Moment until) const {
    return inside_->with(
        [&](Connection& connection) { return loggerValuesOf(connection, station, quantity, from, until); });
}

std::vector<core::TimedValue> Logbook::valuesOverTime(core::StationId station, core::Quantity quantity,
                                                      core::Moment from, core::Moment until) const {
    return inside_->with([&](Connection& connection) {
        const ReadTransaction reading(connection);
        std::vector<core::TimedValue> values;
        for (const core::Reading& byHand : readingsOf(connection, station, from, until))
            if (byHand.quantity == quantity) values.push_back({.at = byHand.readAt, .value = byHand.value});
        const auto recorded = static_cast<std::ptrdiff_t>(values.size());
        const auto logged = loggerValuesOf(connection, station, quantity, from, until);
        values.insert(values.end(), logged.begin(), logged.end());
        std::ranges::inplace_merge(values, values.begin() + recorded, {}, &core::TimedValue::at);
        return values;
    });
}

std::vector<core::Reading> Logbook::newestLoggerValues() const {
    return inside_->with(newestLoggerValuesIn);
}

std::vector<core::LoggerSpan> Logbook::loggerSpans() const {
    return inside_->with(allLoggerSpans);
}

std::vector<core::LoggerFormat> Logbook::loggerFormats() const {
    return inside_->with(allLoggerFormats);
}

std::vector<core::KeptMix> Logbook::mixes(core::SessionId session) const {
    return inside_->with([&](Connection& connection) { return mixesOf(connection, session); });
}

std::vector<core::KeptMix> Logbook::mixes(core::CareId care) const {
    return inside_->with([&](Connection& connection) { return mixesOf(connection, care); });
}

std::vector<core::KeptMix> Logbook::mixesAt(core::StationId station, core::Moment from, core::Moment until) const {
    return inside_->with([&](Connection& connection) { return mixesAtStation(connection, station, from, until); });
}

}  // namespace db
