// SPDX-License-Identifier: MIT
#include "stats/numeric/label_arrangements.h"

#include <algorithm>
#include <functional>
#include <map>

#include "stats/numeric/require.h"

namespace stats {

LabelArrangements::LabelArrangements(std::span<const char> isFirst, std::span<const int> stratum)
    : labels_(isFirst.begin(), isFirst.end()) {
    if (isFirst.size() != stratum.size()) {
        throwDomainError("LabelArrangements", "length of stratum", static_cast<double>(stratum.size()),
                         "that of isFirst");
    }
    std::map<int, Stratum> byNumber;
    for (std::size_t i = 0; i < isFirst.size(); ++i) {
        byNumber[stratum[i]].members.push_back(i);
        byNumber[stratum[i]].labels.push_back(isFirst[i] != 0 ? 1 : 0);
    }
    for (auto& [number, one] : byNumber) {
        std::sort(one.labels.begin(), one.labels.end(), std::greater<>());
        show(one);
        strata_.push_back(std::move(one));
    }
}

double LabelArrangements::count() const {
    double product = 1;
    for (const Stratum& stratum : strata_) {
        const auto size = static_cast<double>(stratum.members.size());
        const auto first = std::count(stratum.labels.begin(), stratum.labels.end(), 1);
        double ways = 1;
        // Each partial product is itself a binomial coefficient, so it stays whole.
        for (std::ptrdiff_t i = 1; i <= first; ++i)
            ways = ways * (size - static_cast<double>(first - i)) / static_cast<double>(i);
        product *= ways;
    }
    return product;
}

bool LabelArrangements::advance() {
    for (Stratum& stratum : strata_) {
        const bool moved = std::prev_permutation(stratum.labels.begin(), stratum.labels.end());
        show(stratum);
        if (moved) return true;
    }
    return false;
}

void LabelArrangements::draw(SeededRandom& random) {
    for (Stratum& stratum : strata_) {
        random.shuffle(std::span<char>(stratum.labels));
        show(stratum);
    }
}

void LabelArrangements::show(const Stratum& stratum) {
    for (std::size_t i = 0; i < stratum.members.size(); ++i) labels_[stratum.members[i]] = stratum.labels[i];
}

}  // namespace stats
