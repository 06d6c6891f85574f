// SPDX-License-Identifier: MIT
#include "core/demo/demo_season.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <set>

#include "core/batch/batch_rules.h"
#include "core/batch/check_rules.h"
#include "core/batch/position_rules.h"
#include "core/batch/potting_rules.h"
#include "core/climate/stage_bands.h"
#include "core/due/due_today.h"
#include "core/event_rules.h"
#include "core/money/price_rules.h"
#include "core/planning/plan_rules.h"
#include "core/shelf_rules.h"
#include "core/treatment/lot_rules.h"
#include "core/trial/allocation.h"
#include "core/trial/trial_rules.h"

namespace {

using testing::IsEmpty;

core::Date demoToday() {
    using namespace std::chrono_literals;
    return 2026y / 5 / 20;
}

core::Records demoOf(int batches, std::uint32_t seed = 1) {
    return core::demoSeason({.batches = batches, .seed = seed, .today = demoToday()});
}

const core::Records& usualDemo() {
    static const core::Records records = demoOf(60);
    return records;
}

core::Tally tallyOf(const core::BatchRecord& record) {
    return core::tallyOf(record.batch, record.checks);
}

template <class Things>
void expectNoShelfFaults(const Things& things, const core::Shelves& shelves) {
    for (const auto& thing : things) EXPECT_THAT(core::faultsIn(thing, shelves), IsEmpty());
}

/// Everything that is written down beside the counts.
/// With all counts of the batch: the rule asks for every day.
void expectThePottingsHold(const core::Records& records) {
    std::map<core::BatchId, std::vector<core::Potting>> ofBatch;
    for (const core::Potting& potting : records.pottings) ofBatch[potting.batch].push_back(potting);
    for (const core::BatchRecord& record : records.batches)
        for (const core::Potting& potting : ofBatch[record.batch.id])
            EXPECT_THAT(core::faultsIn(potting, record, ofBatch[record.batch.id], demoToday()), IsEmpty());
}

void expectTheBenchHolds(const core::Records& records) {
    const core::Moment now = std::chrono::sys_days(demoToday());
    for (const core::Reading& reading : records.readings)
        EXPECT_THAT(core::faultsIn(reading, records.shelves, now), IsEmpty());
    for (const core::Care& care : records.care) EXPECT_THAT(core::faultsIn(care, records.shelves, now), IsEmpty());
    std::map<core::BatchId, const core::Batch*> batches;
    std::map<core::StationId, std::vector<core::HeldPosition>> held;
    for (const core::BatchRecord& record : records.batches) {
        batches[record.batch.id] = &record.batch;
        auto& there = held[record.batch.station];
        EXPECT_THAT(core::faultsInPositions(record.batch, record.checks, records.shelves, there), IsEmpty());
        for (core::HeldPosition& one : core::heldPositions(record)) there.push_back(std::move(one));
    }
    for (const core::Expense& expense : records.expenses) EXPECT_THAT(core::faultsIn(expense, demoToday()), IsEmpty());
    for (const core::Price& price : records.shelves.prices) {
        EXPECT_THAT(core::faultsIn(price, records.shelves, demoToday()), IsEmpty());
        EXPECT_EQ(core::tidied(price), price) << price.what;
    }
    for (const core::Lot& lot : records.shelves.lots)
        EXPECT_THAT(core::faultsIn(lot, records.shelves, demoToday()), IsEmpty());
    expectThePottingsHold(records);
}

void expectAllRulesHold(const core::Records& records) {
    for (const core::Session& session : records.sessions) EXPECT_THAT(core::faultsIn(session, demoToday()), IsEmpty());
    for (const core::BatchRecord& record : records.batches) {
        EXPECT_THAT(core::faultsIn(record.batch, record.checks, records.shelves, demoToday()), IsEmpty());
        for (std::size_t check = 0; check < record.checks.size(); ++check) {
            std::vector<core::Check> others = record.checks;
            others.erase(others.begin() + static_cast<std::ptrdiff_t>(check));
            EXPECT_THAT(core::faultsIn(record.checks[check], record.batch, others, records.shelves, demoToday()),
                        IsEmpty());
        }
    }
    expectTheBenchHolds(records);
}

TEST(DemoSeason, ObeysEveryRule) {
    const core::Shelves& shelves = usualDemo().shelves;
    EXPECT_THAT(core::faultsIn(shelves.facts), IsEmpty());
    expectNoShelfFaults(shelves.plants, shelves);
    expectNoShelfFaults(shelves.stockPlants, shelves);
    expectNoShelfFaults(shelves.methods, shelves);
    expectNoShelfFaults(shelves.stations, shelves);
    expectNoShelfFaults(shelves.media, shelves);
    expectNoShelfFaults(shelves.treatments, shelves);
    expectNoShelfFaults(shelves.cuttingKinds, shelves);
    expectNoShelfFaults(shelves.lossCauses, shelves);
    expectNoShelfFaults(shelves.trials, shelves);
    for (std::uint32_t seed = 1; seed <= 20; ++seed) expectAllRulesHold(demoOf(60, seed));
    expectAllRulesHold(demoOf(1200));
}

TEST(DemoSeason, HasSomethingOfAllThatABenchKnows) {
    const core::Records& records = usualDemo();
    int placed = 0, byPosition = 0;
    for (const core::BatchRecord& record : records.batches) {
        if (!record.batch.positions.empty()) ++placed;
        for (const core::Check& check : record.checks)
            if (!check.findings.empty()) {
                ++byPosition;
                EXPECT_EQ(static_cast<int>(check.findings.size()), check.rooted + check.lost() + check.withdrawn);
            }
    }
    EXPECT_GE(placed, 40);
    EXPECT_GE(byPosition, 60);
    const auto isOutside = [&](const core::Reading& reading) {
        const auto band = core::bandWhileRooting(records.shelves, reading.quantity);
        return band && core::isOutside(*band, reading.value);
    };
    const auto outside = std::ranges::count_if(records.readings, isOutside);
    EXPECT_GT(outside, 50);
    EXPECT_LT(outside, static_cast<std::ptrdiff_t>(records.readings.size()) / 2);
    EXPECT_GT(records.care.size(), 100U);
    EXPECT_GE(records.expenses.size(), 5U);
    EXPECT_TRUE(records.shelves.methods.front().checkSchedule.isSet());
    for (const core::Station& station : records.shelves.stations) EXPECT_TRUE(station.hasLayout()) << station.name;
}

TEST(DemoSeason, HasPricesOfEveryKindLotsAndCountsAfterPotting) {
    const core::Records& records = usualDemo();
    for (const core::PriceKind kind : core::allPriceKinds)
        EXPECT_GT(std::ranges::count(records.shelves.prices, kind, &core::Price::kind), 0) << core::wordFor(kind);
    const core::Date first = records.batches.front().batch.stuckOn, last = records.batches.back().batch.stuckOn;
    for (const auto& [day, tariff] : {std::pair(first, 2800), std::pair(last, 3100)})
        for (const core::Price& price : records.shelves.prices)
            if (price.kind == core::PriceKind::Tariff && core::holdsOn(day, price, records.shelves.prices)) {
                EXPECT_EQ(price.tenThousandths, tariff);
            }
    for (const core::BatchRecord& record : records.batches) {
        const core::Treatment* treated = core::find(records.shelves.treatments, record.batch.treatment);
        if (treated == nullptr || treated->carrier != core::Carrier::Gel) continue;
        EXPECT_NE(core::lotInUse(records.shelves.lots, record.batch.treatment, record.batch.stuckOn), nullptr);
    }
    const core::PottedTally tally = core::pottedTallyOf(records.pottings);
    EXPECT_GT(tally.potted, 200);
    EXPECT_GT(tally.lost, 5);
    const auto isOfASession = [](const core::Expense& expense) { return expense.session.isSet(); };
    EXPECT_GT(std::ranges::count_if(records.expenses, isOfASession), 2);
}

TEST(DemoSeason, SaysThatItIsInvented) {
    EXPECT_TRUE(usualDemo().shelves.facts.isInvented);
}

TEST(DemoSeason, HasAsManyBatchesAsWished) {
    for (const int batches : {1, 2, 3, 60, 601})
        EXPECT_EQ(demoOf(batches).batches.size(), static_cast<std::size_t>(batches));
}

TEST(DemoSeason, IsTheSameForTheSameWish) {
    const core::Records again = demoOf(60);
    EXPECT_EQ(again.shelves, usualDemo().shelves);
    EXPECT_EQ(again.sessions, usualDemo().sessions);
    EXPECT_EQ(again.batches, usualDemo().batches);
    EXPECT_NE(demoOf(60, 2).batches, usualDemo().batches);
}

TEST(DemoSeason, IsTheSameOnEveryMachine) {
    // Pinned: another compiler, processor or library must draw these very figures.
    core::Tally all;
    std::size_t checks = 0;
    for (const core::BatchRecord& record : usualDemo().batches) {
        const core::Tally tally = tallyOf(record);
        all.stuck += tally.stuck;
        all.rooted += tally.rooted;
        all.lost += tally.lost;
        all.withdrawn += tally.withdrawn;
        checks += record.checks.size();
    }
    EXPECT_EQ(all, (core::Tally{1181, 723, 304, 10, {}}));
    EXPECT_EQ(checks, 404U);
    EXPECT_EQ(usualDemo().batches.back().batch.id.value, 908'184'143'869'773'917);
}

TEST(DemoSeason, GivesEverythingAnIdOfItsOwn) {
    const core::Records& records = usualDemo();
    std::set<std::int64_t> ids;
    std::size_t things = 0;
    const auto add = [&](std::int64_t id) {
        EXPECT_GT(id, 0);
        ids.insert(id);
        ++things;
    };
    for (const auto& plant : records.shelves.plants) add(plant.id.value);
    for (const auto& stockPlant : records.shelves.stockPlants) add(stockPlant.id.value);
    for (const auto& station : records.shelves.stations) add(station.id.value);
    for (const auto& session : records.sessions) add(session.id.value);
    for (const auto& record : records.batches) {
        add(record.batch.id.value);
        for (const auto& check : record.checks) {
            EXPECT_EQ(check.batch, record.batch.id);
            add(check.id.value);
        }
    }
    EXPECT_EQ(ids.size(), things);
}

TEST(DemoSeason, GivesEachBatchACodeAndTheDayOfItsSession) {
    const core::Records& records = usualDemo();
    std::set<std::string> codes;
    for (const core::BatchRecord& record : records.batches) {
        codes.insert(record.batch.code);
        const core::Session* session = core::find(records.sessions, record.batch.session);
        ASSERT_NE(session, nullptr);
        EXPECT_EQ(session->date, record.batch.stuckOn);
    }
    EXPECT_EQ(codes.size(), records.batches.size());
}

TEST(DemoSeason, HasAnEndForEachThatABatchCanComeTo) {
    int open = 0, lostWholly = 0, closedByHand = 0, withdrawn = 0, full = 0;
    for (const core::BatchRecord& record : usualDemo().batches) {
        const core::Tally tally = tallyOf(record);
        if (!core::isClosed(record.batch, tally)) ++open;
        if (tally.lost == tally.stuck) ++lostWholly;
        if (record.batch.closedOn) ++closedByHand;
        if (tally.withdrawn > 0) ++withdrawn;
        if (tally.undecided() == 0) ++full;
    }
    EXPECT_GE(open, 5);
    EXPECT_GE(lostWholly, 2);
    EXPECT_GE(closedByHand, 5);
    EXPECT_GE(withdrawn, 3);
    EXPECT_GE(full, 15);
}

TEST(DemoSeason, HasBatchesDueAndOverdueToday) {
    std::vector<core::BatchLine> lines;
    for (const core::BatchRecord& record : usualDemo().batches) lines.push_back({record.batch, tallyOf(record)});
    const auto due = core::dueOn(demoToday(), lines, usualDemo().shelves);
    EXPECT_GE(std::ranges::count_if(due, [](const core::DueBatch& batch) { return batch.daysOverdue == 0; }), 1);
    EXPECT_GE(std::ranges::count_if(due, [](const core::DueBatch& batch) { return batch.daysOverdue > 0; }), 1);
}

TEST(DemoSeason, SplitsLotsByChanceAndKeepsTheSeed) {
    const core::Records& records = usualDemo();
    std::map<std::pair<core::TrialId, std::string>, std::vector<core::Batch>> blocks;
    const auto isOfALot = [&](const core::Batch& batch) {
        const core::Trial* trial = core::find(records.shelves.trials, batch.trial);
        return trial != nullptr && !trial->factor;
    };
    for (const core::BatchRecord& record : records.batches)
        if (isOfALot(record.batch)) blocks[{record.batch.trial, record.batch.block}].push_back(record.batch);
    EXPECT_GE(blocks.size(), 8U);
    for (const auto& [key, pair] : blocks) {
        const core::Trial* trial = core::find(records.shelves.trials, key.first);
        ASSERT_NE(trial, nullptr);
        ASSERT_TRUE(trial->allocationSeed);
        ASSERT_EQ(pair.size(), 2U);
        EXPECT_EQ(pair[0].session, pair[1].session);
        EXPECT_EQ(pair[0].stockPlant, pair[1].stockPlant);
        EXPECT_EQ(pair[0].treatment, pair[1].treatment);
        EXPECT_NE(pair[0].method, pair[1].method);
        const auto seed = *trial->allocationSeed + static_cast<std::uint32_t>(std::stoi(key.second));
        const core::Allocation allocation = core::allocateByChance(pair[0].stuck + pair[1].stuck, 2, seed);
        EXPECT_EQ(allocation.perArm[0], pair[0].stuck);
    }
}

TEST(DemoSeason, HasAPlannedTrialHalfStuckAndWatchedBeforeItsHorizon) {
    for (const int batches : {40, 60, 1200, 20'000}) {
        const core::Records records = demoOf(batches);
        const auto trial =
            std::ranges::find_if(records.shelves.trials, [](const core::Trial& t) { return !!t.factor; });
        ASSERT_NE(trial, records.shelves.trials.end());
        EXPECT_THAT(core::faultsInDesign(*trial, records.shelves), IsEmpty());
        int stuck = 0, looks = 0;
        for (const core::TrialBatch& dealt : trial->batches) {
            EXPECT_EQ(dealt.batch.isSet(), dealt.session == 1);
            if (!dealt.batch.isSet()) continue;
            const auto record = std::ranges::find(records.batches, dealt.batch,
                                                  [](const core::BatchRecord& one) { return one.batch.id; });
            ASSERT_NE(record, records.batches.end());
            EXPECT_EQ(record->batch.positions, dealt.positions) << "it stands where it was dealt";
            EXPECT_EQ(record->batch.trial, trial->id);
            EXPECT_GT(core::addDays(record->batch.stuckOn, *trial->horizonDay), demoToday());
            EXPECT_LT(*trial->setOn, record->batch.stuckOn);
            looks += static_cast<int>(record->checks.size());
            stuck += dealt.stuck;
        }
        EXPECT_EQ(stuck, *trial->perArm);
        EXPECT_GE(looks, 4);
    }
    EXPECT_EQ(demoOf(39).shelves.trials.size(), 2U);
}

TEST(DemoSeason, HasTwoPlansOfWhichOneHasADay) {
    const core::Shelves& shelves = usualDemo().shelves;
    ASSERT_EQ(shelves.plans.size(), 2U);
    for (const core::Plan& plan : shelves.plans) EXPECT_THAT(core::faultsIn(plan, shelves), IsEmpty());
    EXPECT_GT(*shelves.plans[0].needBy, demoToday());
    EXPECT_FALSE(shelves.plans[1].needBy);
}

TEST(DemoSeason, LetsMethodsBeComparedForSeveralPlants) {
    struct Arm {
        int batches{};
        std::set<core::StationId> stations;
    };
    std::map<std::pair<core::PlantId, core::MethodId>, Arm> arms;
    for (const core::BatchRecord& record : usualDemo().batches) {
        Arm& arm = arms[{record.batch.plant, record.batch.method}];
        ++arm.batches;
        arm.stations.insert(record.batch.station);
    }
    const core::Shelves& shelves = usualDemo().shelves;
    const auto isComparable = [&](const core::Plant& plant) {
        return std::ranges::all_of(shelves.methods, [&](const core::Method& method) {
            const Arm& arm = arms[{plant.id, method.id}];
            return arm.batches >= 3 && arm.stations.size() >= 2;
        });
    };
    EXPECT_GE(std::ranges::count_if(shelves.plants, isComparable), 3);
}

TEST(DemoSeason, NeverFillsAStationBeyondItsPositions) {
    const core::Records& records = usualDemo();
    for (const core::Station& station : records.shelves.stations)
        for (const core::Session& session : records.sessions) {
            int standing = 0;
            for (const core::BatchRecord& record : records.batches) {
                const bool isThere = record.batch.station == station.id && record.batch.stuckOn <= session.date &&
                                     !(record.batch.closedOn && *record.batch.closedOn < session.date);
                if (isThere) standing += core::tallyOf(record.batch, record.checks, session.date).undecided();
            }
            EXPECT_LE(standing, station.positions()) << station.name << " on " << core::isoText(session.date);
        }
}

TEST(DemoSeason, SpreadsBatchesOfOneKindAsTraysDo) {
    // Rooted of those stuck in closed batches of one plant by one method, many of them: the variance of the rates against the binomial's gives
    // the intra-class correlation back. Sizes are 30 to 70, so the sizes' mean stands for each within a few percent.
    const core::Records records = demoOf(20'000);
    const auto isPlain = [&](const core::BatchRecord& record) {
        return record.batch.station == records.shelves.stations[0].id ||
               record.batch.station == records.shelves.stations[3].id;
    };
    double size = 0, count = 0;
    const core::PlantId plant = records.shelves.plants[4].id;  // one with hardly any other influence: easy, and quick
    std::vector<double> shares;
    for (const core::BatchRecord& record : records.batches) {
        if (record.batch.plant != plant || !isPlain(record) || !record.batch.note.empty()) continue;
        if (!core::isClosed(record.batch, tallyOf(record))) continue;
        shares.push_back(static_cast<double>(tallyOf(record).rooted) / record.batch.stuck);
        size += record.batch.stuck;
        ++count;
    }
    ASSERT_GT(count, 300);
    double mean = 0, variance = 0;
    for (const double share : shares) mean += share / count;
    for (const double share : shares) variance += (share - mean) * (share - mean) / (count - 1);
    const double binomial = mean * (1 - mean) / (size / count);
    const double designEffect = variance / binomial;
    const double correlation = (designEffect - 1) / (size / count - 1);
    EXPECT_GT(correlation, 0.06);
    EXPECT_LT(correlation, 0.12);
}

TEST(DemoSeason, GrowsToANursery) {
    const core::Records records = demoOf(20'000);
    int cuttings = 0;
    std::set<std::string> codes;
    for (const core::BatchRecord& record : records.batches) {
        cuttings += record.batch.stuck;
        codes.insert(record.batch.code);
    }
    EXPECT_NEAR(cuttings, 1'000'000, 10'000);
    EXPECT_EQ(codes.size(), records.batches.size());
}

}  // namespace
