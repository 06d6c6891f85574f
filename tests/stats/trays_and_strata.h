// SPDX-License-Identifier: MIT
// The inputs of reference cases as the values that stats takes.
#pragma once

#include <vector>

#include "stats/overdispersion/tray.h"
#include "stats/strata/stratum.h"
#include "stats/time_to_event/observation.h"
#include "tests/support/reference_cases.h"

[[nodiscard]] std::vector<stats::Stratum> strataIn(const support::ReferenceCase& each);
[[nodiscard]] std::vector<stats::Tray> traysIn(const support::ReferenceCase& each);
/// Trays by their group, which is numbered from 1.
[[nodiscard]] std::vector<std::vector<stats::Tray>> armsIn(const support::ReferenceCase& each);
/// Of L, R and w, with the case's causes; without causes an infinite R is cause 0 and all else cause 1.
[[nodiscard]] std::vector<stats::Observation> observationsIn(const support::ReferenceCase& each);
