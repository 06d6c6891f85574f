// SPDX-License-Identifier: MIT
#include "core/demo/demo_season.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <map>

#include "core/batch/batch_code.h"
#include "core/demo/demo_batch.h"
#include "core/demo/demo_bench.h"
#include "core/demo/demo_money.h"
#include "core/demo/demo_plan.h"
#include "core/demo/demo_shelves.h"
#include "core/demo/demo_trial.h"

namespace core {

namespace {

// Every so many batches something out of the ordinary happens, so that a demo of usual size has some of each.
constexpr int accidentEvery = 19;
constexpr int withdrawalEvery = 11;
constexpr int fewestWithTrial = 40;  // batches

// How long ago somebody last went round each station: one is due today, one not yet, one overdue, one not yet.
constexpr std::array<int, 4> daysSinceLastRound{7, 2, 10, 4};

double withOdds(double share, double factor) {
    const double odds = share / (1 - share) * factor;
    return odds / (1 + odds);
}

/// Each station has its own rounds, every 2 to 8 days.
std::vector<int> roundsOf(int daysSinceLast, stats::SeededRandom& random) {
    std::vector<int> days;
    for (int day = DemoCalendar::lastDay - daysSinceLast; day > 0; day -= 2 + static_cast<int>(random.below(7)))
        days.push_back(day);
    std::ranges::reverse(days);
    return days;
}

template <class Thing>
auto idNamed(const std::vector<Thing>& things, const std::string& name) {
    const auto found = std::ranges::find(things, name, &Thing::name);
    assert(found != things.end());
    return found->id;
}

/// Writes the demo down batch by batch, as the people of that place would have.
class SeasonWriter {
  public:
    explicit SeasonWriter(const DemoWish& wish)
        : calendar_{wish.today},
          ids_(stream(wish, 0)),
          planning_(stream(wish, 1)),
          fates_(stream(wish, 2)),
          bench_(stream(wish, 3)),
          trial_(stream(wish, 4)),
          money_(stream(wish, 5)) {
        records_.shelves = demoShelves(ids_, planning_);
        for (const int days : daysSinceLastRound) rounds_.push_back(roundsOf(days, planning_));
    }

    Records write(int batches) {
        const bool hasTrial = batches >= fewestWithTrial;
        left_ = hasTrial ? batches - demoTrialBatches : batches;
        for (const DemoSessionPlan& plan : demoPlan(batches, records_.shelves.trials, planning_)) writeSession(plan);
        addBenchRecords(records_, calendar_, ids_, bench_);
        if (hasTrial) writeTrial();
        addDemoPlans(records_, calendar_, ids_);
        addDemoMoney(records_, calendar_, ids_, money_);
        return std::move(records_);
    }

  private:
    static std::uint64_t stream(const DemoWish& wish, std::uint64_t number) {
        return (std::uint64_t{wish.seed} << 8U) | number;
    }

    /// The last batches make room for the trial's, so that all before them are as they would be without it.
    void writeTrial() {
        std::vector<std::string> codes;
        for (int batch = 0; batch < demoTrialBatches; ++batch) codes.push_back(nextCode(calendar_.today));
        addDemoTrial(records_, calendar_, codes, rounds_, ids_, trial_);
    }

    void writeSession(const DemoSessionPlan& plan) {
        if (left_ == 0) return;
        constexpr std::array<const char*, 3> workers{"R.O.", "M.T.", "J.V."};
        Session session{.id = ids_.next<SessionId>(),
                        .date = calendar_.dateOf(plan.day),
                        .worker = workers[planning_.below(workers.size())],
                        .note = coldSpell.holds(plan.day)
                                    ? "Hard frost at night; the tubs stood at 11 \u00B0C in the morning."
                                    : ""};
        for (DemoBatchPlan batch : plan.batches) {
            if (left_ == 0) break;
            if (left_ == 1 && batch.method == aeratedWater) batch.block = 0;  // its other half is not written
            records_.batches.push_back(writtenBatch(batch, session, plan.day));
            --left_;
        }
        records_.sessions.push_back(std::move(session));
    }

    BatchRecord writtenBatch(const DemoBatchPlan& plan, const Session& session, int day) {
        ++written_;
        Batch batch = stuckBatch(plan, session);
        const DemoBatchTruth truth = truthOf(plan, day);
        if (truth.accidentAfter)
            batch.note = truth.isInWater ? "The air pump stood still over a weekend." : "Dried out on a hot afternoon.";
        const std::vector<int>& rounds = rounds_[static_cast<std::size_t>(plan.station)];
        const DemoHistory history = historyOf(truth, rounds, records_.shelves.lossCauses, fates_);
        if (history.closedOn) {
            batch.closedOn = calendar_.dateOf(*history.closedOn);
            batch.closeReason = history.undecided > 3 ? "Alive without roots for too long; the room was needed."
                                                      : "The last ones would not root.";
        }
        std::vector<Check> checks;
        for (const DemoLook& look : history.looks) checks.push_back(writtenCheck(look, batch.id));
        return {std::move(batch), std::move(checks)};
    }

    Batch stuckBatch(const DemoBatchPlan& plan, const Session& session) {
        const Shelves& shelves = records_.shelves;
        const DemoPlant& nature = demoPlants()[static_cast<std::size_t>(plan.plant)];
        Batch batch;
        batch.id = ids_.next<BatchId>();
        batch.code = nextCode(session.date);
        batch.session = session.id;
        batch.stuckOn = session.date;
        batch.plant = shelves.plants[static_cast<std::size_t>(plan.plant)].id;
        batch.stockPlant = shelves.stockPlants[static_cast<std::size_t>(2 * plan.plant + plan.mother)].id;
        batch.method = shelves.methods[static_cast<std::size_t>(plan.method)].id;
        batch.station = shelves.stations[static_cast<std::size_t>(plan.station)].id;
        batch.medium = mediumFor(plan);
        batch.treatment =
            idNamed(shelves.treatments, plan.hasOtherTreatment ? nature.otherTreatment : nature.treatment);
        batch.cuttingKind = idNamed(shelves.cuttingKinds, nature.kindOfCutting);
        batch.stuck = plan.stuck;
        if (plan.block > 0) {
            batch.trial = shelves.trials[static_cast<std::size_t>(plan.trial)].id;
            batch.block = std::to_string(plan.block);
        }
        return batch;
    }

    MediumId mediumFor(const DemoBatchPlan& plan) {
        constexpr std::array<const char*, 4> inTrays{"Coir mix", "Coir mix", "Bark and sand", "Perlite alone"};
        if (plan.method == aeratedWater)
            return idNamed(records_.shelves.media, plan.station == 0 ? "Tap water" : "Rainwater");
        return idNamed(records_.shelves.media, inTrays[planning_.below(inTrays.size())]);
    }

    /// Labels have room for four digits; a nursery that sticks more batches a year writes longer codes without a check
    /// letter.
    std::string nextCode(Date day) {
        const int year = static_cast<int>(day.year());
        const int number = ++numbers_[year];
        if (number <= 9999) return batchCode(year, number);
        return "B" + isoText(day).substr(2, 2) + "-" + std::to_string(number);
    }

    [[nodiscard]] DemoBatchTruth truthOf(const DemoBatchPlan& plan, int day) {
        const DemoPlant& nature = demoPlants()[static_cast<std::size_t>(plan.plant)];
        const std::size_t method = static_cast<std::size_t>(plan.method);
        DemoBatchTruth truth;
        truth.stuckDay = day;
        truth.stuck = plan.stuck;
        truth.strike = nature.strike[method];
        truth.medianDays = nature.medianDays[method];
        truth.isInWater = plan.method == aeratedWater;
        truth.giveUpAfter = nature.usualDaysHigh * 5 / 4;
        if (plan.hasOtherTreatment) truth.strike = withOdds(truth.strike, nature.oddsWithOther);
        if (plan.mother == 1) truth.strike = withOdds(truth.strike, 0.8);
        if (coldSpell.holds(day)) {
            truth.strike = withOdds(truth.strike, truth.isInWater ? 0.35 : 0.6);
            truth.medianDays *= 1.3;
        }
        if (plan.station == stationWithPests) truth.pests = pestOutbreak;
        if (written_ % accidentEvery == 0) truth.accidentAfter = 5;
        if (written_ % withdrawalEvery == 0) {
            truth.withdrawnAfter = nature.usualDaysHigh / 3;
            truth.withdrawn = 1 + static_cast<int>(fates_.below(4));
        }
        return truth;
    }

    Check writtenCheck(const DemoLook& look, BatchId batch) {
        Check check;
        check.id = ids_.next<CheckId>();
        check.batch = batch;
        check.checkedOn = calendar_.dateOf(look.day);
        check.rooted = look.rooted;
        check.withdrawn = look.withdrawn;
        check.losses = look.losses;
        const LossCauseId pests = idNamed(records_.shelves.lossCauses, "pests");
        const bool sawPests =
            std::ranges::any_of(look.losses, [pests](const Loss& loss) { return loss.cause == pests; });
        if (look.withdrawn > 0) check.note = "Some taken along for the school class.";
        if (sawPests && pestOutbreak.holds(look.day))
            check.note = "Aphids on the young tips; washed off with soft soap.";
        return check;
    }

    DemoCalendar calendar_;
    IdSource ids_;
    stats::SeededRandom planning_;
    stats::SeededRandom fates_;
    stats::SeededRandom bench_;
    stats::SeededRandom trial_;
    stats::SeededRandom money_;
    Records records_;
    std::vector<std::vector<int>> rounds_;  // by station
    std::map<int, int> numbers_;            // of batches, by year
    int written_{};
    int left_{};  // batches still to write, but the trial's
};

}  // namespace

Records demoSeason(const DemoWish& wish) {
    assert(wish.batches >= 1 && wish.batches <= 100'000 && wish.today.ok());
    return SeasonWriter(wish).write(wish.batches);
}

}  // namespace core
