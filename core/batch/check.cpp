// SPDX-License-Identifier: MIT
#include "core/batch/check.h"

#include "core/batch/count_sum.h"

namespace core {

int Check::lost() const {
    int sum = 0;
    for (const Loss& loss : losses) sum = countSum(sum, loss.count);
    return sum;
}

}  // namespace core
