// SPDX-License-Identifier: MIT
// A page shows the numbers that the figure shows.
#include "app/report/methods/notes.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "app/plot/number_text.h"
#include "app/report/methods/note_numbers.h"
#include "tests/report/methods/method_examples.h"

namespace {

const core::Comparison& methods() {
    static const core::Comparison comparison = examples::methodsCompared();
    return comparison;
}

report::MethodNote noteOn(const std::vector<report::MethodNote>& notes, const char* page) {
    for (const report::MethodNote& note : notes)
        if (note.page == QLatin1String(page)) return note;
    ADD_FAILURE() << "no page " << page;
    return {};
}

QString number(const report::MethodNote& note, const char* name) {
    const auto found = note.numbers.find(QLatin1String(name));
    return found == note.numbers.end() ? QStringLiteral("none") : found->second;
}

void expectLimits(const report::MethodNote& note, const core::Limits& limits, int decimals = 4) {
    EXPECT_EQ(number(note, "low"), plot::decimalText(limits.low, decimals)) << note.page.toStdString();
    EXPECT_EQ(number(note, "high"), plot::decimalText(limits.high, decimals)) << note.page.toStdString();
    EXPECT_EQ(number(note, "low_r"), report::fixedForR(limits.low, decimals)) << note.page.toStdString();
}

void expectP(const report::MethodNote& note, double p) {
    EXPECT_EQ(number(note, "p_r"), report::fixedForR(p, 4)) << note.page.toStdString();
}

TEST(NotesOnRates, AreThoseOfTheArmAskedFor) {
    for (int arm = 0; arm < std::ssize(methods().arms); ++arm) {
        const core::Arm& shown = methods().arms[static_cast<std::size_t>(arm)];
        const auto notes = report::notesOnRates(methods(), arm);
        const auto rate = noteOn(notes, "strike_rate");
        EXPECT_EQ(number(rate, "rooted"), QString::number(shown.rooted));
        EXPECT_EQ(number(rate, "assessed"), QString::number(shown.assessed));
        EXPECT_EQ(number(rate, "rate"), plot::decimalText(*shown.rate, 4));
        expectLimits(noteOn(notes, "wilson_interval"), *shown.asCounted);
        expectLimits(noteOn(notes, "interval_with_spread"), *shown.withSpread);
    }
    EXPECT_TRUE(report::notesOnRates(methods(), -1).empty());
    EXPECT_TRUE(report::notesOnRates(methods(), 3).empty());
}

TEST(NotesOnRates, ShowTheIntervalChosen) {
    for (const core::RateInterval interval : core::everyRateInterval) {
        const core::Comparison comparison = examples::methodsCompared(interval);
        const std::string page = std::string(core::wordFor(interval)) + "_interval";
        expectLimits(noteOn(report::notesOnRates(comparison), page.c_str()), *comparison.arms.front().asCounted);
    }
}

TEST(NotesOnRates, ShowTheSpreadAndTheTestsOfSeveralArms) {
    const auto notes = report::notesOnRates(methods());
    const auto spread = noteOn(notes, "spread");
    EXPECT_EQ(number(spread, "correlation"), plot::decimalText(methods().spread.intraclassCorrelation, 3));
    EXPECT_EQ(number(spread, "design_effect"), plot::decimalText(methods().spread.designEffect, 2));
    expectP(noteOn(notes, "several_arms"), methods().severalArms->chiSquareP);
    expectP(noteOn(notes, "several_arms_by_batch"), *methods().severalArms->batchRatesP);
    EXPECT_EQ(number(noteOn(notes, "holm"), "pairs"), QStringLiteral("3"));
    EXPECT_TRUE(number(noteOn(notes, "holm"), "adjusted_r")
                    .startsWith(report::fixedForR(*methods().pairs.front().batchRatesHolm, 4)));
}

TEST(NotesOnDifference, AreThoseOfThePairAskedFor) {
    for (int index = 0; index < std::ssize(methods().pairs); ++index) {
        const core::Pair& pair = methods().pairs[static_cast<std::size_t>(index)];
        const auto notes = report::notesOnDifference(methods(), index);
        expectLimits(noteOn(notes, "difference"), pair.difference->miettinenNurminen);
        expectLimits(noteOn(notes, "newcombe_difference"), pair.difference->newcombe);
        expectLimits(noteOn(notes, "difference_with_spread"), *pair.difference->withSpread);
        expectLimits(noteOn(notes, "ratio"), pair.koopman, 2);
        expectLimits(noteOn(notes, "odds_ratio"), pair.oddsRatioExact, 2);
        expectP(noteOn(notes, "batch_rates_test"), *pair.batchRatesP);
        expectP(noteOn(notes, "boschloo_test"), pair.boschloo);
        expectP(noteOn(notes, "fisher_test"), pair.fisher);
        expectP(noteOn(notes, "barnard_test"), pair.barnard);
        EXPECT_EQ(number(noteOn(notes, "chance_first_better"), "chance"),
                  plot::decimalText(pair.probabilityFirstBetter, 4));
        expectLimits(noteOn(notes, "as_good_as"), pair.firstAsGood->asCounted);
        expectLimits(noteOn(notes, "as_good_as_by_batch"), *pair.firstAsGood->withSpread);
        EXPECT_EQ(number(noteOn(notes, "verdict"), "words"), report::named(pair.inWords));
    }
    expectP(noteOn(report::notesOnDifference(methods(), 0), "batch_permutation"),
            *methods().pairs.front().batchPermutationP);
    EXPECT_TRUE(report::notesOnDifference(methods(), 3).empty());
}

TEST(NotesOnPlants, ShowThePooledFigures) {
    const core::Pooled& pooled = methods().pairs.front().pooled;
    const auto notes = report::notesOnPlants(methods(), 0);
    expectLimits(noteOn(notes, "pooled_over_plants"), pooled.oddsRatioLimits, 2);
    expectLimits(noteOn(notes, "pooled_difference"), pooled.riskDifferenceLimits);
    expectP(noteOn(notes, "difference_within_plants"), pooled.cmhP);
    expectP(noteOn(notes, "do_plants_agree"), *pooled.agreementP);
}

TEST(NotesOnDays, ShowTheCurvesAndTheirTests) {
    const core::Pair& pair = methods().pairs.front();
    const core::Arm& arm = methods().arms.front();
    const auto notes = report::notesOnDays(methods(), 0);
    EXPECT_EQ(number(noteOn(notes, "rooted_by_day"), "share"), plot::decimalText(arm.rootedByDay.back().share, 4));
    EXPECT_EQ(number(noteOn(notes, "days_to_root"), "p50"), plot::dayRangeText(arm.ofStuck.p50));
    expectP(noteOn(notes, "curves_differ"), *pair.curvesP);
    EXPECT_EQ(number(noteOn(notes, "who_roots_and_how_fast"), "share"),
              plot::decimalText(arm.speed.fits.front().rootingShare, 3));
    EXPECT_EQ(number(noteOn(notes, "ratio_of_speeds"), "ratio"), plot::decimalText(*pair.speed.ratio, 2));
    const auto bands = noteOn(notes, "bands");
    EXPECT_EQ(number(bands, "day"), QStringLiteral("28"));
    for (const core::DayShare& share : arm.rootedByDay)
        if (share.day == 28) expectLimits(bands, *share.band);
}

TEST(NotesOnDoses, ShowTheTrendTheCurveAndTheBestDose) {
    const core::Comparison comparison = examples::dosesCompared();
    ASSERT_EQ(comparison.doses.size(), 1U);
    const core::DoseSeries& series = comparison.doses.front();
    const auto notes = report::notesOnDoses(series, comparison.level);
    expectP(noteOn(notes, "dose_trend"), series.trendP);
    expectP(noteOn(notes, "dose_trend_by_batch"), *series.batchTrendP);
    EXPECT_EQ(number(noteOn(notes, "dose_curve"), "rate_low"), plot::decimalText(series.curve.front().rate, 4));
    EXPECT_EQ(number(noteOn(notes, "best_dose"), "best"), plot::amountText(*series.bestMilligrams));
}

TEST(NotesOnGoesWith, ShowTheFirstAssociationThatIsNotAPlant) {
    const auto notes = report::notesOnGoesWith(methods().goesWith, methods().level);
    const auto& all = methods().goesWith.associations;
    const core::Association& first =
        *std::find_if(all.begin(), all.end(), [](const core::Association& each) { return !each.isPlant; });
    const auto note = noteOn(notes, "goes_with_rooting");
    EXPECT_EQ(number(note, "odds_ratio"), plot::decimalText(first.oddsRatio, 2));
    expectLimits(note, first.asCounted, 2);
}

TEST(NotesOnBatch, ShowTheBatchAndItsPast) {
    const core::BatchSummary summary = examples::lastTub();
    const auto notes = report::notesOnBatch(summary);
    EXPECT_EQ(number(noteOn(notes, "strike_rate_so_far"), "rate"), plot::decimalText(summary.rate, 4));
    expectLimits(noteOn(notes, "wilson_interval"), summary.asCounted);
    const auto past = noteOn(notes, "against_the_past");
    EXPECT_EQ(number(past, "chance"), plot::decimalText(summary.againstPast->chanceOfSoFew, 4));
    EXPECT_EQ(number(past, "past_batches"), QString::number(summary.againstPast->past.size()));
    const auto chart = noteOn(report::notesOnChart(summary.chart), "control_chart");
    EXPECT_EQ(number(chart, "centre"), plot::decimalText(*summary.chart.centre, 4));
    EXPECT_EQ(number(chart, "code"), QString::fromStdString(summary.chart.batches.back().code));
}

TEST(NotesOnChart, ShowTheTurningPointWhereOneWasLookedFor) {
    const core::StrikeChart chart = examples::lastTub().chart;
    EXPECT_EQ(report::notesOnChart(chart).size(), 1U);
    const core::TurningPoint turn = examples::turnOfTheTubs();
    const auto note = noteOn(report::notesOnChart(chart, turn), "turning_point");
    EXPECT_EQ(number(note, "chance"), plot::decimalText(turn.chance, 4));
    EXPECT_EQ(number(note, "code"), QStringLiteral("T-18"));
    EXPECT_EQ(number(note, "before_high"), plot::decimalText(turn.before.limits.high, 4));
    EXPECT_EQ(number(note, "after"), plot::decimalText(turn.after.rate, 4));
}

}  // namespace
