// SPDX-License-Identifier: MIT
#include "app/desktop/find/trail.h"

#include "gtest/gtest.h"

namespace {

using desktop::Place;
using desktop::Trail;

Place batch(std::int64_t id) {
    return desktop::placeOf(core::BatchId{id});
}

/// Goes everywhere but to `gone`, and says where it went last.
struct Walker {
    Place at;
    Place gone = batch(-1);
    Trail::Going going = [this](const Place& place) {
        if (place == gone) return false;
        at = place;
        return true;
    };
};

TEST(Trail, LeadsBackAndForwardOverWhatWasVisited) {
    Trail trail;
    Walker walker;
    for (const int id : {1, 2, 3}) trail.visit(batch(id));
    EXPECT_TRUE(trail.back(walker.going));
    EXPECT_EQ(walker.at, batch(2));
    EXPECT_TRUE(trail.back(walker.going));
    EXPECT_EQ(walker.at, batch(1));
    EXPECT_FALSE(trail.hasBack());
    EXPECT_FALSE(trail.back(walker.going));
    EXPECT_TRUE(trail.forward(walker.going));
    EXPECT_EQ(walker.at, batch(2));
    EXPECT_TRUE(trail.hasForward());
}

TEST(Trail, ForgetsWhatLayAheadWhenOneGoesElsewhere) {
    Trail trail;
    Walker walker;
    for (const int id : {1, 2, 3}) trail.visit(batch(id));
    trail.back(walker.going);
    trail.visit(batch(4));
    EXPECT_FALSE(trail.hasForward());
    trail.back(walker.going);
    EXPECT_EQ(walker.at, batch(2));
}

TEST(Trail, NotesAPlaceOnceHoweverOftenItIsSaid) {
    Trail trail;
    trail.visit(batch(1));
    trail.visit(batch(1));
    EXPECT_FALSE(trail.hasBack());
}

TEST(Trail, PassesOverWhatIsGoneAndOverTheSamePlaceTwiceRunning) {
    Trail trail;
    Walker walker;
    walker.gone = batch(2);
    for (const int id : {1, 3, 2, 3}) trail.visit(batch(id));
    EXPECT_TRUE(trail.back(walker.going));
    EXPECT_EQ(walker.at, batch(1)) << "3 is in front already";
    EXPECT_TRUE(trail.forward(walker.going));
    EXPECT_EQ(walker.at, batch(3));
    EXPECT_FALSE(trail.hasForward());
}

TEST(Trail, KeepsTheNewestHundred) {
    Trail trail;
    Walker walker;
    for (int id = 0; id < 250; ++id) trail.visit(batch(id));
    int steps = 0;
    while (trail.back(walker.going)) ++steps;
    EXPECT_EQ(steps, 99);
    EXPECT_EQ(walker.at, batch(150));
}

}  // namespace
