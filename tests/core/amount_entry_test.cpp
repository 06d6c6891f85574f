// SPDX-License-Identifier: MIT
#include "core/money/amount_entry.h"

#include "core/money/price.h"
#include "gtest/gtest.h"

namespace {

TEST(AmountEntry, ReadsMoneyWithEitherDecimalSign) {
    EXPECT_EQ(core::hundredthsFrom("12.50").value(), 1250);
    EXPECT_EQ(core::hundredthsFrom("12,5").value(), 1250);
    EXPECT_EQ(core::hundredthsFrom(" 12 ").value(), 1200);
    EXPECT_EQ(core::hundredthsFrom("0").value(), 0);
}

TEST(AmountEntry, RefusesAThirdDecimalWhichMayBeAThousand) {
    const auto amount = core::hundredthsFrom("1.234");
    ASSERT_FALSE(amount);
    EXPECT_EQ(amount.error().front().field, "Amount");
    EXPECT_EQ(amount.error().front().sentence,
              "Amount is \"1.234\"; 0 to 1000000000 with at most two decimals is allowed.");
}

TEST(AmountEntry, ReadsAPriceInTenThousandths) {
    EXPECT_EQ(core::tenThousandthsFrom("12.5", 2).value(), 125'000);
    EXPECT_EQ(core::tenThousandthsFrom("0,3142", 4).value(), 3142);
    EXPECT_EQ(core::tenThousandthsFrom("0.3", 4).value(), 3000);
    EXPECT_EQ(core::tenThousandthsFrom("1000000000", 4).value(), core::mostTenThousandths);
}

TEST(AmountEntry, LetsOnlyATariffHaveFourDecimals) {
    EXPECT_FALSE(core::tenThousandthsFrom("0.314", 2));
    EXPECT_FALSE(core::tenThousandthsFrom("0.31425", 4));
    EXPECT_EQ(core::tenThousandthsFrom("0.31425", 4).error().front().sentence,
              "Amount is \"0.31425\"; 0 to 1000000000 with at most four decimals is allowed.");
}

TEST(AmountEntry, RefusesWhatIsNoAmount) {
    for (const char* typed : {"", " ", "much", "-1", "1,234.50", "1000000001"}) {
        SCOPED_TRACE(typed);
        EXPECT_FALSE(core::tenThousandthsFrom(typed, 4));
        EXPECT_FALSE(core::hundredthsFrom(typed));
    }
    EXPECT_EQ(core::tenThousandthsFrom("", 2).error().front().sentence,
              "Amount is blank; 0 to 1000000000 with at most two decimals is allowed.");
}

}  // namespace
