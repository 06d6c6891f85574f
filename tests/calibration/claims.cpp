// SPDX-License-Identifier: MIT
#include "tests/calibration/claims.h"

#include "tests/calibration/judged_comparison.h"
#include "tests/calibration/studies.h"

namespace calibration {
namespace {

constexpr double leastAsCounted = 0.94, leastWithSpread = 0.93, mostSaidInError = 0.05;

std::string withCorrelation(double correlation) {
    std::string text = std::to_string(correlation);
    return "correlation " + text.substr(0, 4);
}

std::string traysAnArm(int fewest, int most) {
    if (fewest == most) return std::to_string(fewest) + " trays an arm";
    return std::to_string(fewest) + " to " + std::to_string(most) + " trays an arm";
}

void claimEach(const Tally& tally, const std::string& words, const std::string& thing, Bound bound, double demanded,
               std::vector<Claim>& claims) {
    for (const double correlation : correlations) {
        const auto add = [&](int fewest, int most) {
            claims.push_back({.words = words + ", " + withCorrelation(correlation) + ", " + traysAnArm(fewest, most),
                              .bound = bound,
                              .demanded = demanded,
                              .found = tally.over(thing, correlation, fewest, most)});
        };
        add(fewestBatches, mostTrays);
        for (int trays = fewestBatches; trays <= mostTrays; ++trays) add(trays, trays);
    }
}

}  // namespace

bool Claim::holds() const {
    return found.asked > 0 && (bound == Bound::AtLeast ? found.share() >= demanded : found.share() <= demanded);
}

bool Claim::mayHold(double times) const {
    const double error = found.simulationError() * times;
    return found.asked > 0 &&
           (bound == Bound::AtLeast ? found.share() + error >= demanded : found.share() - error <= demanded);
}

std::vector<Claim> claimsOn(const Tally& tally) {
    std::vector<Claim> claims;
    for (const double correlation : correlations)
        claims.push_back({.words = "rate as counted covers the rate of its one tray, " + withCorrelation(correlation),
                          .bound = Bound::AtLeast,
                          .demanded = leastAsCounted,
                          .found = tally.of("Wilson, of the tray", {.correlation = correlation, .trays = 1})});
    claimEach(tally, "rate with spread covers", "Korn-Graubard, where shown", Bound::AtLeast, leastWithSpread, claims);
    claimEach(tally, "equal arms called different", "guarded t", Bound::AtMost, mostSaidInError, claims);
    for (const double correlation : correlations)
        claims.push_back({.words = "the whole program goes by the guarded t test, " + withCorrelation(correlation) +
                                   ", " + traysAnArm(fewestBatches, mostTrays),
                          .bound = Bound::AtLeast,
                          .demanded = 1,
                          .found = tally.over(wholeProgramAgrees, correlation, fewestBatches, mostTrays)});
    for (const double correlation : correlations)
        claims.push_back({.words = "one station an arm: said that it can't be told, " + withCorrelation(correlation),
                          .bound = Bound::AtLeast,
                          .demanded = 1,
                          .found = tally.of("one station an arm: said that it can't be told",
                                            {.correlation = correlation, .trays = 3})});
    return claims;
}

}  // namespace calibration
