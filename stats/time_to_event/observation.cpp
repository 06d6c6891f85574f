// SPDX-License-Identifier: MIT
#include "stats/time_to_event/observation.h"

#include <cmath>

#include "stats/numeric/require.h"

namespace stats {

void requireObservations(std::string_view function, std::span<const Observation> observations) {
    for (const Observation& one : observations) {
        if (one.cause < 0 || one.cause > 2) throwDomainError(function, "cause", one.cause, "0, 1 or 2");
        if (!(one.after >= 0) || std::isinf(one.after))
            throwDomainError(function, "after", one.after, "0 or more and finite");
        if (one.cause == 0 && !(std::isinf(one.by) && one.by > 0))
            throwDomainError(function, "by", one.by, "infinite for cause 0");
        if (one.cause != 0 && (!(one.by >= one.after) || std::isinf(one.by))) {
            throwDomainError(function, "by", one.by, "finite and not before `after` for causes 1 and 2");
        }
        if (!(one.weight >= 0) || std::isinf(one.weight))
            throwDomainError(function, "weight", one.weight, "0 or more and finite");
    }
}

}  // namespace stats
