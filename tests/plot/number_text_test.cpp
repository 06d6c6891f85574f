// SPDX-License-Identifier: MIT
#include "app/plot/number_text.h"

#include <QLocale>
#include <limits>

#include "gtest/gtest.h"

namespace {

class InLocale {
  public:
    explicit InLocale(const QLocale& locale) { QLocale::setDefault(locale); }
    ~InLocale() { QLocale::setDefault(before_); }

  private:
    QLocale before_;
};

core::Date day(const char* iso) {
    return *core::dateFromIso(iso);
}

std::string text(const QString& words) {
    return words.toStdString();
}

TEST(RatioText, HasTheDigitsThatSaySomething) {
    EXPECT_EQ(plot::ratioText(1.4249, core::Limits{0.0301, 665.81}), QStringLiteral("1.42 (0.030 to 666)"));
    EXPECT_EQ(plot::ratioText(0.0, core::Limits{0, 0.2}), QStringLiteral("0 (0 to 0.20)"));
    EXPECT_EQ(plot::ratioText(0.0004, core::Limits{1e-9, std::numeric_limits<double>::infinity()}),
              QStringLiteral("< 0.001 (< 0.001 to ∞)"));
    EXPECT_EQ(plot::ratioText(std::nullopt), QStringLiteral("–"));
}

TEST(AmountText, KeepsThreeDigitsThatCountAndNoEmptyOnes) {
    EXPECT_EQ(plot::amountText(1000), QStringLiteral("1000"));
    EXPECT_EQ(plot::amountText(1234.5), QStringLiteral("1230"));
    EXPECT_EQ(plot::amountText(0.25), QStringLiteral("0.25"));
    EXPECT_EQ(plot::amountText(0), QStringLiteral("0"));
    EXPECT_EQ(plot::amountText(99.96), QStringLiteral("100"));
}

}  // namespace

TEST(PercentText, NeverStandsWithoutItsCount) {
    EXPECT_EQ(text(plot::percentText(18, 24)), "75\u202f% (18 of 24)");
    EXPECT_EQ(text(plot::percentText(0, 0)), "nothing to count");
}

TEST(ShareText, KeepsNoneAndAllForNoneAndAll) {
    EXPECT_EQ(text(plot::shareText(0)), "0\u202f%");
    EXPECT_EQ(text(plot::shareText(0.001)), "<1\u202f%");
    EXPECT_EQ(text(plot::shareText(0.999)), ">99\u202f%");
    EXPECT_EQ(text(plot::shareText(1)), "100\u202f%");
}

TEST(DecimalText, HasARealMinusAndNoMinusZero) {
    EXPECT_EQ(text(plot::decimalText(-1.25, 1)), "−1.3");
    EXPECT_EQ(text(plot::decimalText(-0.04, 1)), "0.0");
    EXPECT_EQ(text(plot::decimalText(12345.6, 0)), "12346");
    EXPECT_EQ(text(plot::decimalText(std::numeric_limits<double>::infinity(), 2)), "∞");
}

TEST(NumberText, FollowsTheLocale) {
    const InLocale german(QLocale(QLocale::German, QLocale::Germany));
    EXPECT_EQ(text(plot::decimalText(-1.5, 1)), "−1,5");
    EXPECT_EQ(text(plot::dateText(day("2026-03-14"))), "14. März 2026");
}

TEST(DifferenceText, SpeaksOfAHundred) {
    EXPECT_EQ(text(plot::differenceText(0.14)), "14 more of 100");
    EXPECT_EQ(text(plot::differenceText(-0.03)), "3 fewer of 100");
    EXPECT_EQ(text(plot::differenceText(0.004)), "as many");
    EXPECT_EQ(text(plot::differenceLimitsText({-0.03, 0.3})), "3 fewer to 30 more");
    EXPECT_EQ(text(plot::differenceLimitsText({0.05, 0.3})), "5 to 30 more");
    EXPECT_EQ(text(plot::differenceLimitsText({-0.3, -0.05})), "5 to 30 fewer");
    EXPECT_EQ(text(plot::pointsText(0.14, {-0.03, 0.3})), "+14 (−3 to +30)");
}

TEST(PText, NeverRoundsToZero) {
    EXPECT_EQ(text(plot::pText(0.0000001)), "p < 0.001");
    EXPECT_EQ(text(plot::pText(0.0344)), "p = 0.034");
    EXPECT_EQ(text(plot::pText(0.416)), "p = 0.42");
}

TEST(ChanceText, NeverPromisesCertainty) {
    EXPECT_EQ(text(plot::chanceText(0.923)), "92 in 100");
    EXPECT_EQ(text(plot::chanceText(0.9999)), "more than 99 in 100");
    EXPECT_EQ(text(plot::chanceText(0.0001)), "fewer than 1 in 100");
}

TEST(DateText, NamesNoWeekdayAndFourDigitsOfTheYear) {
    EXPECT_EQ(text(plot::dateText(day("2026-03-14"))), "14 March 2026");
    EXPECT_EQ(text(plot::shortDateText(day("2026-03-04"))), "04/03/2026");
    const InLocale american(QLocale(QLocale::English, QLocale::UnitedStates));
    EXPECT_EQ(text(plot::dateText(day("2026-03-14"))), "March 14, 2026");
    EXPECT_EQ(text(plot::shortDateText(day("2026-03-04"))), "3/4/2026");
}

TEST(DayRangeText, IsAsVagueAsTheChecksWere) {
    EXPECT_EQ(text(plot::dayRangeText(core::DayRange{0, 7})), "by day 7");
    EXPECT_EQ(text(plot::dayRangeText(core::DayRange{7, 14})), "day 8 to 14");
    EXPECT_EQ(text(plot::dayRangeText(core::DayRange{7, 8})), "day 8");
    EXPECT_EQ(text(plot::dayRangeText(std::optional<core::DayRange>())), "not reached");
}

TEST(NounText, KnowsOneFromMany) {
    EXPECT_EQ(text(plot::cuttingsText(1)), "1 cutting");
    EXPECT_EQ(text(plot::cuttingsText(24)), "24 cuttings");
    EXPECT_EQ(text(plot::batchesText(0)), "0 batches");
}
