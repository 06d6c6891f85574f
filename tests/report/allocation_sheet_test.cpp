// SPDX-License-Identifier: MIT
#include "app/report/allocation_sheet.h"

#include "app/report/plain_text.h"
#include "gtest/gtest.h"
#include "tests/report/golden.h"
#include "tests/report/sheet_examples.h"

TEST(AllocationSheet, ListsEachCuttingWithItsArm) {
    const report::AllocationPlan plan{.trial = "Lavender 2026",
                                      .plant = "Lavandula angustifolia 'Hafod Blue'",
                                      .stuckOn = *core::dateFromIso("2026-03-14"),
                                      .arms = {"media tray", "aerated water"},
                                      .allocation = {.armOfCutting = {1, 0, 0, 1, 1, 0, 1}, .perArm = {3, 4}},
                                      .seed = 7};
    examples::expectGolden(
        report::plainText(report::allocationSheet(plan, examples::smallShelves(), examples::printedAt())),
        "allocation");
}

TEST(AllocationSheet, PutsUpWithAnEmptyPlan) {
    report::AllocationPlan plan;
    plan.stuckOn = *core::dateFromIso("2026-03-14");
    EXPECT_FALSE(report::plainText(report::allocationSheet(plan, {}, examples::printedAt())).isEmpty());
}
