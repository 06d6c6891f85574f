// SPDX-License-Identifier: MIT
#include "core/batch/licence.h"

#include <gtest/gtest.h>

#include "tests/support/builders.h"

namespace {

using support::aBatch;

core::BatchLine line(const core::BatchRecord& record, const std::string& licence) {
    core::BatchLine made;
    made.batch = record.batch;
    made.batch.licence = licence;
    return made;
}

TEST(Licence, IsThatOfThePlantsNewestBatchThatHasOne) {
    const core::Date day = support::stickingDay();
    const std::vector<core::BatchLine> lines{
        line(aBatch().of(support::deutzia).stuckOn(core::addDays(day, 20)), "licence B"),
        line(aBatch().of(support::deutzia).stuckOn(day), "licence A"),
        line(aBatch().of(support::deutzia).stuckOn(core::addDays(day, 30)), ""),
        line(aBatch().of(support::hebe).stuckOn(core::addDays(day, 40)), "of another plant")};
    EXPECT_EQ(core::newestLicenceOf(support::deutzia, lines), "licence B");
    EXPECT_EQ(core::newestLicenceOf(support::hebe, {}), "");
}

TEST(Licence, IsSaidToBeMissingOnlyOfAProtectedPlant) {
    const core::Shelves shelves = support::someShelves();
    core::Batch batch = aBatch().of(support::deutzia).build().batch;
    EXPECT_EQ(core::licenceInWords(batch, shelves), "protected: no licence written down");
    batch.licence = "PVR 1234";
    EXPECT_EQ(core::licenceInWords(batch, shelves), "licence: PVR 1234");
    batch.plant = support::hebe;
    EXPECT_EQ(core::licenceInWords(batch, shelves), "licence: PVR 1234") << "what is written down is said";
    batch.licence.clear();
    EXPECT_EQ(core::licenceInWords(batch, shelves), "");
}

}  // namespace
