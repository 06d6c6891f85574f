// SPDX-License-Identifier: MIT
#include "stats/regression/binomial_rows.h"

#include <cmath>

#include "stats/numeric/require.h"

namespace stats {

void requireRows(std::string_view function, std::span<const BinomialRow> rows) {
    for (const BinomialRow& row : rows) {
        requireCounts(function, row.successes, row.trials);
        if (row.covariates.size() != rows.front().covariates.size()) {
            throwDomainError(function, "number of covariates", static_cast<double>(row.covariates.size()),
                             "the same in each row");
        }
        for (const double covariate : row.covariates) {
            const double size = std::abs(covariate);
            if (size != 0 && !(size >= 1e-100 && size <= 1e100)) {
                throwDomainError(function, "covariate", covariate, "0 or from 1e-100 to 1e100 in size");
            }
        }
    }
}

}  // namespace stats
