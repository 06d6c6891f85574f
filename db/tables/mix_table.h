// SPDX-License-Identifier: MIT
// Rows of the table mixes: all SQL about it is here.
#pragma once

#include <optional>
#include <vector>

#include "core/mixing/kept_mix.h"
#include "db/connection.h"

namespace db {

void insertRow(Connection& connection, const core::KeptMix& mix);
/// False: there is no such row.
[[nodiscard]] bool updateRow(Connection& connection, const core::KeptMix& mix);
[[nodiscard]] bool deleteRow(Connection& connection, core::KeptMixId id);
void deleteMixesOf(Connection& connection, core::SessionId session);
void deleteMixesOf(Connection& connection, core::CareId care);
[[nodiscard]] std::optional<core::KeptMix> mixIn(Connection& connection, core::KeptMixId id);
// In order of time.
[[nodiscard]] std::vector<core::KeptMix> mixesOf(Connection& connection, core::SessionId session);
[[nodiscard]] std::vector<core::KeptMix> mixesOf(Connection& connection, core::CareId care);
/// Kept with care of this station that was done from then until then, the ends included.
[[nodiscard]] std::vector<core::KeptMix> mixesAtStation(Connection& connection, core::StationId station,
                                                        core::Moment from, core::Moment until);
[[nodiscard]] std::vector<core::KeptMix> allMixes(Connection& connection);

}  // namespace db
