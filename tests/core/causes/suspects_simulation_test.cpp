// SPDX-License-Identifier: MIT
// How often suspects are right, in seasons drawn by chance. The figures are those of docs/statistics/suspects.md.
#include <gtest/gtest.h>

#include <iostream>
#include <string>

#include "tests/core/causes/simulated_bench.h"

namespace {

using examples::Planted;

constexpr int runs = 200;
constexpr std::uint64_t firstSeed = 20261126;

struct HowOften {
    int first{};       // the planted one ranks first
    int named{};       // any is named
    int namedRight{};  // the planted one is
};

bool isPlanted(const core::Suspect& suspect, Planted planted) {
    switch (planted) {
        case Planted::Nothing:
            return false;
        case Planted::ColdTub:
            return suspect.kind == core::SuspectKind::Condition && suspect.name == "cold solution";
        case Planted::BadLot:
            return suspect.kind == core::SuspectKind::Lot;
        case Planted::PestMonth:
            return suspect.kind == core::SuspectKind::LossCause && suspect.name == "pests";
    }
    return false;
}

HowOften simulated(Planted planted, const char* name) {
    HowOften often;
    for (int run = 0; run < runs; ++run) {
        const core::Suspects found =
            examples::suspectsOfWorst(examples::simulatedBench(planted, firstSeed + static_cast<std::uint64_t>(run)));
        const bool isFirst = !found.suspects.empty() && isPlanted(found.suspects.front(), planted);
        often.first += isFirst ? 1 : 0;
        often.named += found.isNamed ? 1 : 0;
        often.namedRight += found.isNamed && isFirst ? 1 : 0;
    }
    std::cout << name << ", " << runs << " seasons from seed " << firstSeed << ": ranked first " << often.first
              << ", named " << often.namedRight << ", something else named " << often.named - often.namedRight << "\n";
    return often;
}

TEST(SuspectsInSimulatedSeasons, RankAColdTubFirstEightTimesInTen) {
    EXPECT_GE(simulated(Planted::ColdTub, "cold tub").first, 0.8 * runs);
}

TEST(SuspectsInSimulatedSeasons, RankABadLotOfHormoneFirstEightTimesInTen) {
    EXPECT_GE(simulated(Planted::BadLot, "bad lot").first, 0.8 * runs);
}

TEST(SuspectsInSimulatedSeasons, RankThePestsOfAMonthFirstEightTimesInTen) {
    EXPECT_GE(simulated(Planted::PestMonth, "pest month").first, 0.8 * runs);
}

TEST(SuspectsInSimulatedSeasons, NameNothingNineTimesInTenWhereNothingWasPlanted) {
    EXPECT_LE(simulated(Planted::Nothing, "nothing planted, worst batch").named, 0.1 * runs);
}

}  // namespace
