// SPDX-License-Identifier: MIT
#include "core/records.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/support/builders.h"

namespace {

TEST(StartingShelves, KnowTheTradesWaysAndWords) {
    const core::Shelves shelves = core::startingShelves();
    ASSERT_EQ(shelves.methods.size(), 2U);
    EXPECT_EQ(shelves.methods.front().name, "aerated water");
    EXPECT_EQ(shelves.methods.back().name, "media tray");
    EXPECT_EQ(shelves.cuttingKinds.front().name, "stem tip");
    std::string keys;
    for (const core::LossCause& cause : shelves.lossCauses) keys += cause.key;
    EXPECT_EQ(keys, "rdpbo");
    EXPECT_FALSE(shelves.facts.isInvented);
}

TEST(Records, FindByIdOrNot) {
    const core::Shelves shelves = support::someShelves();
    ASSERT_NE(core::find(shelves.stations, support::benchEast), nullptr);
    EXPECT_EQ(core::find(shelves.stations, support::benchEast)->name, "Bench east");
    EXPECT_EQ(core::find(shelves.stations, core::StationId{1}), nullptr);
}

}  // namespace
