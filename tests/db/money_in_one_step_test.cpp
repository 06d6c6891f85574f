// SPDX-License-Identifier: MIT
// What a grower does at once is one step of history: the first prices of a bench, a session's facts with the minutes that it took.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/actions/price_actions.h"
#include "db/actions/records_actions.h"
#include "db/actions/session_actions.h"
#include "db/safekeeping/verify.h"
#include "tests/support/builders.h"
#include "tests/support/every_action.h"

namespace {

using support::aBatch;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::SizeIs;

class MoneyInOneStep : public testing::Test {
  protected:
    MoneyInOneStep() {
        EXPECT_TRUE(db::addRecords(logbook, support::recordsOf({aBatch()}), "records", true));
        session = logbook.sessions().front();
    }

    static core::Price lasting(const std::string& what, std::optional<double> years) {
        return {.what = what, .from = support::stickingDay(), .tenThousandths = 350'000, .lastsYears = years};
    }
    core::Result<db::Changes> change(const core::Expense& work) {
        return db::changeSession(logbook, session, work, support::today());
    }
    core::Expense work(double minutes) const { return {.spentOn = session.date, .what = "work", .minutes = minutes}; }

    db::Logbook logbook = db::Logbook::inMemory({}, support::testOptions());
    core::Session session;
};

TEST_F(MoneyInOneStep, TheFirstPricesComeAndGoTogether) {
    const auto done = db::addPrices(logbook, {lasting("tub", 10), lasting("lamp", 5)}, support::today());
    ASSERT_TRUE(done) << done.error().front().sentence;
    EXPECT_EQ(done->words, "2 new prices");
    EXPECT_THAT(logbook.shelves().prices, SizeIs(2));
    EXPECT_THAT(db::verify(logbook, support::today()).faults, IsEmpty());
    ASSERT_TRUE(logbook.undo());
    EXPECT_THAT(logbook.shelves().prices, IsEmpty());
}

TEST_F(MoneyInOneStep, OneFaultyPriceKeepsAllOfThemOutAndIsNamed) {
    const auto done = db::addPrices(logbook, {lasting("tub", 10), lasting("lamp", std::nullopt)}, support::today());
    ASSERT_FALSE(done);
    ASSERT_THAT(done.error(), SizeIs(1));
    EXPECT_EQ(done.error().front().field, "lamp: Lasts for years");
    EXPECT_THAT(done.error().front().sentence, HasSubstr("lamp: Lasts for years is not given"));
    EXPECT_THAT(logbook.shelves().prices, IsEmpty());
}

TEST_F(MoneyInOneStep, TwoPricesOfOneNameAndDayRefuseEachOther) {
    const auto done = db::addPrices(logbook, {lasting("tub", 10), lasting("Tub", 8)}, support::today());
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().front().field, "Tub: From");
    EXPECT_THAT(logbook.shelves().prices, IsEmpty());
}

TEST_F(MoneyInOneStep, ASessionIsChangedWithTheMinutesThatItTook) {
    session.worker = "Ines";
    ASSERT_TRUE(change(work(90)));
    ASSERT_THAT(logbook.expenses(session.id), SizeIs(1));
    EXPECT_EQ(logbook.expenses(session.id).front().minutes, 90);
    EXPECT_EQ(logbook.sessions().front().worker, "Ines");
    ASSERT_TRUE(logbook.undo());
    EXPECT_THAT(logbook.expenses(session.id), IsEmpty());
    EXPECT_NE(logbook.sessions().front().worker, "Ines");
}

TEST_F(MoneyInOneStep, MinutesAreChangedAndGoWhereThereAreNone) {
    ASSERT_TRUE(change(work(90)));
    core::Expense kept = logbook.expenses(session.id).front();
    kept.minutes = 75;
    ASSERT_TRUE(change(kept));
    EXPECT_EQ(logbook.expenses(session.id).front().minutes, 75);
    kept.minutes.reset();
    ASSERT_TRUE(change(kept));
    EXPECT_THAT(logbook.expenses(session.id), IsEmpty());
    const auto gone = change(kept);
    ASSERT_TRUE(gone) << "blank minutes of what has gone already ask for nothing";
}

TEST_F(MoneyInOneStep, FaultyMinutesChangeNothing) {
    session.worker = "Ines";
    const auto done = change(work(-5));
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().front().field, "Minutes");
    EXPECT_NE(logbook.sessions().front().worker, "Ines");
    EXPECT_THAT(logbook.expenses(session.id), IsEmpty());
}

}  // namespace
