// SPDX-License-Identifier: MIT
// The two pages whose figures no window shows yet.
#include <cmath>

#include "app/plot/number_text.h"
#include "app/report/methods/note_numbers.h"
#include "stats/planning/exact_power.h"
#include "stats/planning/normal_power.h"
#include "stats/planning/predictive_count.h"
#include "stats/planning/sample_size.h"
#include "tests/report/methods/method_examples.h"

namespace examples {
namespace {

using report::put;
using report::putCount;

constexpr int tray = 20;
constexpr double correlation = 0.1;

report::MethodNote countNote() {
    constexpr int wanted = 40, rooted = 42, assessed = 60;
    constexpr double assurance = 0.9, rate = static_cast<double>(rooted) / assessed;
    const stats::CountToStick known = stats::countForKnownRate(wanted, rate, assurance);
    const stats::CountToStick unknown = stats::countForPastRecords(wanted, rooted, assessed, assurance);
    const stats::PastBatches past{
        .batches = {{14, 20}, {17, 20}, {11, 20}}, .spread = stats::knownCorrelation(correlation), .prior = {}};
    const stats::CountToStick spread = stats::countForPastBatches(wanted, past, tray, assurance);
    report::MethodNote note{QStringLiteral("how_many_to_stick"), {}};
    putCount(note.numbers, QStringLiteral("wanted"), wanted);
    putCount(note.numbers, QStringLiteral("rooted"), rooted);
    putCount(note.numbers, QStringLiteral("unrooted"), assessed - rooted);
    putCount(note.numbers, QStringLiteral("assessed"), assessed);
    putCount(note.numbers, QStringLiteral("naive"), static_cast<int>(std::ceil(wanted / rate)));
    put(note.numbers, QStringLiteral("assurance"), assurance, 2);
    put(note.numbers, QStringLiteral("rate"), rate);
    putCount(note.numbers, QStringLiteral("known"), *known.count);
    put(note.numbers, QStringLiteral("known_chance"), *known.achieved);
    putCount(note.numbers, QStringLiteral("count"), *unknown.count);
    put(note.numbers, QStringLiteral("chance"), *unknown.achieved);
    putCount(note.numbers, QStringLiteral("tray"), tray);
    put(note.numbers, QStringLiteral("correlation"), correlation, 1);
    putCount(note.numbers, QStringLiteral("spread_count"), *spread.count);
    put(note.numbers, QStringLiteral("spread_chance"), *spread.achieved);
    return note;
}

report::MethodNote powerNote() {
    constexpr int perArm = 30;
    constexpr double rate1 = 0.5, rate2 = 0.8, alpha = 0.05, power = 0.8;
    const stats::PlannedArms arms{.trials1 = perArm, .trials2 = perArm, .rate1 = rate1, .rate2 = rate2};
    const double designEffect = stats::designEffectOfTrays(tray, correlation);
    const stats::SampleSize size = stats::sampleSize(
        {.rate1 = rate1, .rate2 = rate2, .alpha = alpha, .power = power, .designEffect = designEffect});
    report::MethodNote note{QStringLiteral("power_and_number"), {}};
    putCount(note.numbers, QStringLiteral("per_arm"), perArm);
    put(note.numbers, QStringLiteral("rate1"), rate1, 2);
    put(note.numbers, QStringLiteral("rate2"), rate2, 2);
    put(note.numbers, QStringLiteral("alpha"), alpha, 2);
    put(note.numbers, QStringLiteral("power"), power, 2);
    note.numbers[QStringLiteral("power_wanted")] = plot::shareText(power);
    put(note.numbers, QStringLiteral("fisher"), stats::fisherPower(arms, alpha, stats::FisherSide::TwoSided).power);
    put(note.numbers, QStringLiteral("boschloo"),
        stats::boschlooPower(arms, alpha, stats::BoschlooKind::Central).power);
    putCount(note.numbers, QStringLiteral("number"), *size.independentPerArm);
    put(note.numbers, QStringLiteral("normal"), *size.normalPerArm, 1);
    putCount(note.numbers, QStringLiteral("tray"), tray);
    put(note.numbers, QStringLiteral("correlation"), correlation, 1);
    put(note.numbers, QStringLiteral("design_effect"), designEffect, 2);
    putCount(note.numbers, QStringLiteral("with_trays"), *size.perArm);
    return note;
}

}  // namespace

std::vector<report::MethodNote> notesOfPlans() {
    return {countNote(), powerNote()};
}

}  // namespace examples
