// SPDX-License-Identifier: MIT
#include "stats/time_to_event/competing_risks_npmle.h"

#include "stats/time_to_event/repeated_npmle.h"

namespace stats {

CumulativeIncidence competingRisksNpmle(std::span<const Observation> observations, std::stop_token stop) {
    requireObservations("competingRisksNpmle", observations);
    RepeatedNpmle npmle(std::span(&observations, 1));
    constexpr double kOnce = 1;
    return npmle.estimate(std::span(&kOnce, 1), {}, stop);
}

}  // namespace stats
