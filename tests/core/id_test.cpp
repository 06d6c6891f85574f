// SPDX-License-Identifier: MIT
#include "core/id.h"

#include <gtest/gtest.h>

#include <concepts>
#include <unordered_set>

namespace {

// What must not compile is a test too: ids of different things don't mix.
template <class A, class B>
concept Compares = requires(A a, B b) {
    a == b;
}
|| requires(A a, B b) {
    a < b;
};

static_assert(Compares<core::PlantId, core::PlantId>);
static_assert(!Compares<core::PlantId, core::StationId>);
static_assert(!std::convertible_to<core::PlantId, core::StationId>);
static_assert(!std::convertible_to<std::int64_t, core::PlantId>);
static_assert(!std::convertible_to<core::PlantId, std::int64_t>);

TEST(Id, IsUnsetUntilItHasAValue) {
    EXPECT_FALSE(core::BatchId{}.isSet());
    EXPECT_TRUE(core::BatchId{1}.isSet());
}

TEST(Id, CanBeKeptInASet) {
    const std::unordered_set<core::BatchId> ids{core::BatchId{1}, core::BatchId{2}, core::BatchId{1}};
    EXPECT_EQ(ids.size(), 2U);
}

}  // namespace
