// SPDX-License-Identifier: MIT
#include "db/actions/mix_actions.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "db/actions/event_actions.h"
#include "db/actions/merge_actions.h"
#include "db/actions/records_actions.h"
#include "db/actions/session_actions.h"
#include "db/safekeeping/verify.h"
#include "tests/support/builders.h"
#include "tests/support/every_action.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/table_dump.h"

namespace {

using namespace std::chrono_literals;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

class MixActions : public testing::Test {
  protected:
    MixActions() {
        core::Records records = support::recordsOf({support::aBatch()});
        logbook.emplace(db::Logbook::create(file, records.shelves.facts, support::testOptions()));
        EXPECT_TRUE(db::addRecords(*logbook, std::move(records), "records", true));
        session = logbook->sessions().front().id;
    }

    static core::KeptMix dip() {
        return {.madeAt = noon,
                .kind = core::MixKind::Auxin,
                .title = "100 mL at 1000 mg/L",
                .amounts = "100 mg of IBA\n100 mL of alcohol",
                .workings = "1000 mg/L x 0.1 L",
                .cautions = "growth regulators"};
    }
    static core::Care change() {
        return {.station = support::tubNorth, .doneAt = noon, .kind = core::CareKind::SolutionChanged, .litres = 12};
    }
    std::vector<core::KeptMix> mixesAtTub() const { return logbook->mixesAt(support::tubNorth, noon - 1h, noon + 1h); }
    void expectUndoneAndRedone(const std::string& before) {
        const std::string after = support::tableDump(file);
        ASSERT_TRUE(logbook->undo());
        EXPECT_EQ(support::tableDump(file), before);
        ASSERT_TRUE(logbook->redo());
        EXPECT_EQ(support::tableDump(file), after);
    }

    static constexpr core::Moment noon = std::chrono::sys_days(std::chrono::year{2026} / 3 / 10) + 12h;
    static constexpr core::Moment now = noon + 48h;
    support::ScratchFolder folder;
    std::filesystem::path file = folder / "mixes.strikebook";
    std::optional<db::Logbook> logbook;
    core::SessionId session;
};

TEST_F(MixActions, AMixIsKeptWithItsSession) {
    const std::string before = support::tableDump(file);
    ASSERT_TRUE(db::keepMix(*logbook, session, dip(), now));
    auto mixes = logbook->mixes(session);
    ASSERT_EQ(mixes.size(), 1U);
    EXPECT_EQ(mixes.front().amounts, dip().amounts);
    EXPECT_EQ(mixes.front().session, session);
    EXPECT_EQ(logbook->wordsToUndo(), "mix \"100 mL at 1000 mg/L\"");
    expectUndoneAndRedone(before);
    mixes.front().title = "200 mL at 1000 mg/L";
    ASSERT_TRUE(db::keepMix(*logbook, session, mixes.front(), now));
    EXPECT_EQ(logbook->mixes(session), mixes);
    EXPECT_THAT(db::verify(*logbook, support::today()).faults, IsEmpty());
}

TEST_F(MixActions, CareAndItsMixAreOneStep) {
    const std::string before = support::tableDump(file);
    ASSERT_TRUE(db::keepMixWithCare(*logbook, change(), dip(), now));
    const auto care = logbook->care(support::tubNorth, noon, noon);
    ASSERT_EQ(care.size(), 1U);
    EXPECT_EQ(care.front().litres, 12);
    ASSERT_EQ(logbook->mixes(care.front().id).size(), 1U);
    EXPECT_EQ(mixesAtTub(), logbook->mixes(care.front().id));
    EXPECT_THAT(logbook->mixesAt(support::tubNorth, noon + 1s, noon + 1h), IsEmpty());
    expectUndoneAndRedone(before);
    // Once more for the same care, which is there now.
    ASSERT_TRUE(db::keepMixWithCare(*logbook, care.front(), dip(), now));
    EXPECT_EQ(logbook->care(support::tubNorth, noon, noon).size(), 1U);
    EXPECT_EQ(mixesAtTub().size(), 2U);
}

TEST_F(MixActions, ABadMixOrBadCareKeepsBothOut) {
    const std::string before = support::tableDump(file);
    core::KeptMix bad = dip();
    bad.amounts = "";
    core::Care none = change();
    none.litres = 0;
    auto refused = db::keepMixWithCare(*logbook, change(), bad, now);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().front().field, "Mix: Amounts");
    refused = db::keepMixWithCare(*logbook, none, bad, now);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().size(), 2U) << "both are named at once";
    EXPECT_EQ(refused.error().front().field, "Litres");
    EXPECT_FALSE(db::keepMix(*logbook, {4711}, dip(), now)) << "no such session";
    core::KeptMix gone = dip();
    gone.id = {4711};
    EXPECT_FALSE(db::keepMix(*logbook, session, gone, now));
    EXPECT_EQ(support::tableDump(file), before);
}

TEST_F(MixActions, AMixIsRemoved) {
    ASSERT_TRUE(db::keepMix(*logbook, session, dip(), now));
    const std::string before = support::tableDump(file);
    const core::KeptMixId id = logbook->mixes(session).front().id;
    ASSERT_TRUE(db::remove(*logbook, id));
    EXPECT_THAT(logbook->mixes(session), IsEmpty());
    EXPECT_FALSE(db::remove(*logbook, id));
    expectUndoneAndRedone(before);
}

TEST_F(MixActions, GoWithTheirCareAndWithTheirSessionAndComeBack) {
    ASSERT_TRUE(db::keepMix(*logbook, session, dip(), now));
    ASSERT_TRUE(db::keepMixWithCare(*logbook, change(), dip(), now));
    std::string before = support::tableDump(file);
    ASSERT_TRUE(db::deleteCare(*logbook, logbook->care(support::tubNorth, noon, noon).front()));
    EXPECT_THAT(mixesAtTub(), IsEmpty());
    expectUndoneAndRedone(before);
    before = support::tableDump(file);
    ASSERT_TRUE(db::deleteBatch(*logbook, logbook->batchLines().front().batch.id));
    EXPECT_THAT(logbook->sessions(), IsEmpty());
    EXPECT_THAT(logbook->records().mixes, IsEmpty());
    expectUndoneAndRedone(before);
    EXPECT_THAT(db::verify(*logbook, support::today()).faults, IsEmpty());
}

TEST_F(MixActions, MoveWithTheCareWhenStationsAreMerged) {
    core::Care elsewhere = change();
    core::StationId other;
    for (const core::Station& station : logbook->shelves().stations)
        if (station.id != support::tubNorth &&
            station.method == core::find(logbook->shelves().stations, support::tubNorth)->method)
            other = station.id;
    if (!other.isSet()) FAIL() << "another tub is needed";
    elsewhere.station = other;
    ASSERT_TRUE(db::keepMixWithCare(*logbook, elsewhere, dip(), now));
    EXPECT_THAT(mixesAtTub(), IsEmpty());
    ASSERT_TRUE(db::mergeStations(*logbook, other, support::tubNorth));
    EXPECT_EQ(mixesAtTub().size(), 1U);
}

}  // namespace
