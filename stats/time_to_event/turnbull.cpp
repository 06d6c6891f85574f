// SPDX-License-Identifier: MIT
#include "stats/time_to_event/turnbull.h"

#include "stats/numeric/require.h"

namespace stats {

CumulativeIncidence turnbull(std::span<const Observation> observations, std::stop_token stop) {
    requireObservations("turnbull", observations);
    for (const Observation& one : observations) {
        if (one.cause == 2) throwDomainError("turnbull", "cause", one.cause, "0 or 1");
    }
    return competingRisksNpmle(observations, stop);
}

}  // namespace stats
