// SPDX-License-Identifier: MIT
// Against an excerpt of the reference data on propagation, tests/data/reference/lid_holes.json, and against what must hold of any lid.
#include "core/station/lid_layout.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <limits>
#include <nlohmann/json.hpp>
#include <numbers>
#include <random>
#include <set>

#include "core/shelf_rules.h"
#include "stats/numeric/seeded_random.h"

namespace {

using core::LengthUnit;
using core::Lid;
using core::LidHole;
using core::LidLayout;
using core::RowPattern;
using testing::HasSubstr;
using testing::IsEmpty;

constexpr double tiny = 1e-5;  // mm: what rounding makes of a hole that just fits

/// Those of the reference about one function.
std::vector<nlohmann::json> checksOf(const std::string& function) {
    std::ifstream in(STRIKEBOOK_SOURCE_DIR "/tests/data/reference/lid_holes.json");
    const nlohmann::json all = nlohmann::json::parse(in);
    std::vector<nlohmann::json> checks;
    for (const nlohmann::json& check : all.at("checks"))
        if (check.at("function").get<std::string>() == function) checks.push_back(check);
    return checks;
}

Lid box(double length, double width, double hole, double edge, double web) {
    return {.isRound = false, .length = length, .width = width, .hole = hole, .web = web, .edge = edge};
}

Lid bucket(double diameter, double hole, double edge, double web) {
    return {.isRound = true, .length = diameter, .width = 0, .hole = hole, .web = web, .edge = edge};
}

double nearest(const LidLayout& layout) {
    double least = std::numeric_limits<double>::infinity();
    for (std::size_t one = 0; one < layout.holes.size(); ++one)
        for (std::size_t other = 0; other < one; ++other)
            least = std::min(least, std::hypot(layout.holes[one].across - layout.holes[other].across,
                                               layout.holes[one].down - layout.holes[other].down));
    return least;
}

/// How far the edge of a hole stays from the edge of the lid.
double toEdge(const Lid& lid, const LidLayout& layout, const LidHole& hole) {
    if (lid.isRound)
        return lid.length / 2 - std::hypot(hole.across - lid.length / 2, hole.down - lid.length / 2) - lid.hole / 2;
    return std::min({hole.across, hole.down, layout.across - hole.across, layout.down - hole.down}) - lid.hole / 2;
}

void expectDrillable(const Lid& lid, const LidLayout& layout) {
    EXPECT_GE(nearest(layout), lid.hole + lid.web - tiny);
    std::set<core::Position> positions;
    for (const LidHole& hole : layout.holes) {
        EXPECT_GE(toEdge(lid, layout, hole), lid.edge - tiny) << core::nameOf(hole.position);
        EXPECT_TRUE(positions.insert(hole.position).second) << core::nameOf(hole.position) << " twice";
        EXPECT_LT(hole.position.row, layout.rows);
        EXPECT_LT(hole.position.column, layout.columns);
    }
    EXPECT_TRUE(std::ranges::is_sorted(layout.holes, {}, &LidHole::position));
    EXPECT_LE(layout.rows, core::mostRows);
}

Lid randomLid(stats::SeededRandom& random) {
    const auto between = [&](double low, double high) { return low + (high - low) * random.uniform(); };
    return {.isRound = random.below(3) == 0,
            .length = between(60, 900),
            .width = between(60, 700),
            .hole = between(15, 70),
            .web = between(1, 40),
            .edge = between(1, 40)};
}

}  // namespace

TEST(LidLayout, HoldsAsManyAsTheReferenceCounts) {
    const std::vector<nlohmann::json> checks = checksOf("hole_count");
    EXPECT_GE(checks.size(), 10U);
    for (const nlohmann::json& check : checks) {
        SCOPED_TRACE(check.at("id").get<std::string>() + ", source: " + check.at("source").get<std::string>());
        const nlohmann::json& given = check.at("inputs");
        const nlohmann::json& expected = check.at("expected");
        const Lid lid = box(given.at("W"), given.at("L"), given.at("d"), given.at("edge"), given.at("web"));
        EXPECT_EQ(core::layoutOf(lid, RowPattern::Square).count(), expected.at("square").get<int>());
        EXPECT_EQ(core::layoutOf(lid, RowPattern::Staggered).count(), expected.at("hex").get<int>());
        EXPECT_EQ(core::bestLayout(lid).count(), expected.at("best").get<int>());
    }
}

TEST(LidLayout, TakesAnInchAsTheReferenceDoes) {
    const std::vector<nlohmann::json> checks = checksOf("inch_to_mm");
    EXPECT_EQ(checks.size(), 1U);
    for (const nlohmann::json& check : checks)
        EXPECT_NEAR(core::storedLength(check.at("inputs").at("in").get<double>(), LengthUnit::Inches),
                    check.at("expected").get<double>(), check.at("tolerance").get<double>())
            << "source: " << check.at("source");
}

TEST(LidLayout, GivesEachItsRoomAsTheReferenceDoes) {
    const std::vector<nlohmann::json> checks = checksOf("square_pitch_mm");
    EXPECT_EQ(checks.size(), 1U);
    constexpr double feetAMetre = 1000 / 304.8;
    for (const nlohmann::json& check : checks)
        EXPECT_NEAR(core::squarePitch(check.at("inputs").at("per_ft2").get<double>() * feetAMetre * feetAMetre).value(),
                    check.at("expected").get<double>(), check.at("tolerance").get<double>())
            << "source: " << check.at("source");
    EXPECT_DOUBLE_EQ(core::squarePitch(1).value(), 1000);
    for (const double wrong : {0.0, -12.0, 200'000.0})
        EXPECT_THAT(core::squarePitch(wrong).error().front().sentence, HasSubstr("more than 0 and up to 100000"));
}

TEST(LidLayout, KeepsItsDistancesOnAnyLid) {
    const std::uint64_t seed = std::random_device{}();
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    stats::SeededRandom random(seed);
    int drilled = 0;
    for (int round = 0; round < 400; ++round) {
        const Lid lid = randomLid(random);
        SCOPED_TRACE(testing::Message() << (lid.isRound ? "round " : "") << lid.length << " x " << lid.width
                                        << ", hole " << lid.hole << ", web " << lid.web << ", edge " << lid.edge);
        const LidLayout square = core::layoutOf(lid, RowPattern::Square);
        const LidLayout staggered = core::layoutOf(lid, RowPattern::Staggered);
        expectDrillable(lid, square);
        expectDrillable(lid, staggered);
        const LidLayout best = core::bestLayout(lid);
        EXPECT_EQ(best.count(), std::max(square.count(), staggered.count()));
        EXPECT_EQ(core::faultsIn(lid).empty(), best.count() > 0);
        drilled += best.count() > 0 ? 1 : 0;
        if (testing::Test::HasFailure()) return;
    }
    EXPECT_GT(drilled, 200);
}

TEST(LidLayout, LosesNoHoleThatJustFits) {
    // A row of exactly n holes, in figures that no binary fraction holds.
    for (int number = 1; number <= 25; ++number) {
        const double length = 2 * 5.1 + number * 4.4 + (number - 1) * 1.7;
        if (length < 20) continue;
        EXPECT_EQ(core::layoutOf(box(length, 25, 4.4, 5.1, 1.7), RowPattern::Square).columns, number);
        EXPECT_EQ(core::layoutOf(box(length - 0.01, 25, 4.4, 5.1, 1.7), RowPattern::Square).columns, number - 1);
    }
}

TEST(LidLayout, HasRowsWithLettersFromTheBackLeft) {
    const LidLayout layout = core::layoutOf(box(300, 200, 44, 15, 10), RowPattern::Square);
    ASSERT_EQ(layout.count(), 15);
    EXPECT_EQ(layout.rows, 3);
    EXPECT_EQ(layout.columns, 5);
    EXPECT_EQ(core::nameOf(layout.holes.front().position), "A1");
    EXPECT_EQ(core::nameOf(layout.holes.back().position), "C5");
    EXPECT_LT(layout.holes.front().across, layout.holes.back().across);
    EXPECT_LT(layout.holes.front().down, layout.holes.back().down);
    EXPECT_NEAR(layout.holes.front().across + layout.holes.back().across, 300, tiny) << "in the middle of the lid";
    EXPECT_NEAR(layout.holes.front().down + layout.holes.back().down, 200, tiny);
}

TEST(LidLayout, LiesTurnedWhereMoreFitThatWay) {
    const LidLayout layout = core::layoutOf(box(600, 400, 44.45, 20, 20), RowPattern::Staggered);
    EXPECT_TRUE(layout.isTurned);
    EXPECT_EQ(layout.across, 400);
    EXPECT_EQ(layout.down, 600);
    EXPECT_EQ(layout.rows, 10);
    EXPECT_EQ(layout.columns, 5);
    EXPECT_FALSE(core::layoutOf(box(600, 400, 44, 20, 20), RowPattern::Staggered).isTurned);
}

TEST(LidLayout, LiesTurnedRatherThanWithRowsThatHaveNoLetter) {
    const LidLayout layout = core::layoutOf(box(400, 1200, 20, 5, 15), RowPattern::Square);
    EXPECT_TRUE(layout.isTurned);
    EXPECT_EQ(layout.rows, 11);
    EXPECT_EQ(layout.columns, 34);
}

TEST(RoundLidLayout, LiesEvenlyAboutTheMiddle) {
    // One in the middle and six around it; three about the middle; four of a square.
    EXPECT_EQ(core::bestLayout(bucket(200, 44, 10, 10)).count(), 7);
    EXPECT_EQ(core::bestLayout(bucket(140, 44, 10, 10)).count(), 3);
    EXPECT_EQ(core::bestLayout(bucket(150, 44, 10, 10)).count(), 4);
    EXPECT_EQ(core::bestLayout(bucket(70, 44, 10, 10)).count(), 1);
    for (const double diameter : {140.0, 150.0, 200.0, 260.0, 300.0}) {
        const LidLayout layout = core::bestLayout(bucket(diameter, 44, 10, 10));
        double across = 0, down = 0;
        for (const LidHole& hole : layout.holes) across += hole.across, down += hole.down;
        EXPECT_NEAR(across / layout.count(), diameter / 2, tiny);
        EXPECT_NEAR(down / layout.count(), diameter / 2, tiny);
    }
}

TEST(RoundLidLayout, HasRowsThatStandAsTheStationsDo) {
    for (double diameter = 100; diameter < 600; diameter += 7) {
        const Lid lid = bucket(diameter, 44, 10, 10);
        const LidLayout layout = core::layoutOf(lid, RowPattern::Staggered);
        ASSERT_GT(layout.count(), 0);
        const LidHole& first = layout.holes.front();
        const auto halfSteps = [](const LidHole& hole) { return 2 * hole.position.column + hole.position.row % 2; };
        for (const LidHole& hole : layout.holes) {
            EXPECT_NEAR(hole.across - first.across, (halfSteps(hole) - halfSteps(first)) * 54 / 2.0, tiny);
            EXPECT_NEAR(hole.down - first.down, (hole.position.row - first.position.row) * 54 * std::numbers::sqrt3 / 2,
                        tiny);
        }
    }
}

TEST(LidLayout, BecomesTheLayoutOfAStation) {
    core::Station station;
    core::describeAs(core::layoutOf(box(600, 400, 44, 20, 20), RowPattern::Staggered), station);
    EXPECT_EQ(station.rows, 6);
    EXPECT_EQ(station.columns, 9);
    EXPECT_TRUE(station.isStaggered);
    EXPECT_EQ(station.blocked, "B9, D9, F9") << "every second row is one shorter";
    EXPECT_EQ(station.positions(), 51);
    core::describeAs(core::bestLayout(bucket(200, 44, 10, 10)), station);
    EXPECT_EQ(station.positions(), 7);
    core::Shelves shelves;
    for (const core::Refusal& fault : core::faultsIn(station, shelves))
        EXPECT_TRUE(fault.field == "Name" || fault.field == "Method") << fault.sentence;
}

TEST(LidFaults, NameTheMeasureItsValueAndWhatIsAllowed) {
    const core::Refusals faults = core::faultsIn(box(0, 400, 44, 20, 0));
    ASSERT_EQ(faults.size(), 2U);
    EXPECT_EQ(faults[0].field, "Length");
    EXPECT_EQ(faults[0].sentence, "Length is 0 mm; 20 to 3000 mm is allowed.");
    EXPECT_EQ(faults[1].sentence, "Web is 0 mm; 1 to 1000 mm is allowed.");
    EXPECT_EQ(core::faultsIn(bucket(5, 44, 20, 6)).front().sentence, "Diameter is 5 mm; 20 to 3000 mm is allowed.");
    EXPECT_THAT(core::faultsIn(box(600, std::nan(""), 44, 20, 6)).front().sentence, HasSubstr("20 to 3000 mm"));
}

TEST(LidFaults, SpeakTheGrowersUnit) {
    EXPECT_EQ(core::faultsIn(box(0, 400, 44, 20, 6), LengthUnit::Inches).front().sentence,
              "Length is 0 in; 0.787 to 118.11 in is allowed.");
}

TEST(LidFaults, SayThatNoHoleFits) {
    const core::Refusals faults = core::faultsIn(box(50, 80, 44, 5, 5));
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults.front().sentence,
              "Hole is 44 mm, which does not fit on a lid of 50 \u00d7 80 mm with that edge; up to 40 mm is allowed.");
    EXPECT_THAT(core::faultsIn(box(50, 80, 44, 30, 5)).front().sentence, HasSubstr("a narrower edge or a larger lid"));
    EXPECT_THAT(core::faultsIn(box(54, 54, 44, 5, 5)), IsEmpty());
}

TEST(LidFaults, SayThatThereAreMoreRowsThanLetters) {
    const core::Refusals faults = core::faultsIn(box(2000, 2000, 20, 5, 5));
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_THAT(faults.front().sentence, HasSubstr("no more than 26 rows"));
}
