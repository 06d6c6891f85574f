// SPDX-License-Identifier: MIT
#include "core/units/moment.h"

#include <gtest/gtest.h>

#include <random>

#include "stats/numeric/seeded_random.h"

namespace {

using namespace std::chrono_literals;

TEST(Moment, IsWrittenToTheSecondInUtc) {
    EXPECT_EQ(core::isoText(std::chrono::sys_days(2026y / 3 / 14) + 10h + 42min + 5s), "2026-03-14T10:42:05Z");
    EXPECT_EQ(core::isoText(core::Moment{}), "1970-01-01T00:00:00Z");
    EXPECT_EQ(core::isoText(core::Moment{} - 1s), "1969-12-31T23:59:59Z");
}

TEST(Moment, AnyOneComesBack) {
    const std::uint64_t seed = std::random_device{}();
    SCOPED_TRACE(testing::Message() << "seed " << seed);
    stats::SeededRandom random(seed);
    const core::Moment first = std::chrono::sys_days(1800y / 1 / 1), last = std::chrono::sys_days(9999y / 12 / 31);
    const auto range = static_cast<std::uint64_t>((last - first).count());
    for (int round = 0; round < 5000; ++round) {
        const core::Moment moment = first + std::chrono::seconds(static_cast<std::int64_t>(random.below(range)));
        ASSERT_EQ(core::momentFromIso(core::isoText(moment)), moment) << core::isoText(moment);
    }
}

TEST(Moment, NothingElseIsRead) {
    for (const char* text :
         {"", "2026-03-14", "2026-03-14T10:42:05", "2026-03-14 10:42:05Z", "2026-03-14T10:42:05z",
          "2026-02-30T10:42:05Z", "2026-03-14T24:00:00Z", "2026-03-14T10:60:00Z", "2026-03-14T10:42:60Z",
          "2026-03-14T+1:42:05Z", "2026-03-14T1 :42:05Z", "2026-03-14T10:42:05Z ", "1799-12-31T23:59:59Z"})
        EXPECT_FALSE(core::momentFromIso(text)) << text;
}

}  // namespace
