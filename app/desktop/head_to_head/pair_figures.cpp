// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/pair_figures.h"

#include <QCoreApplication>
#include <algorithm>
#include <utility>

#include "app/plot/number_text.h"
#include "app/report/methods/notes.h"

namespace desktop {

namespace {

QString sayOfPair(const char* text) {
    return QCoreApplication::translate("PairFigures", text);
}

class PairRows {
  public:
    void add(const QString& what, const QString& figure, const char* page) {
        figures_.table.rows.push_back({what, figure});
        figures_.pages << QLatin1String(page);
    }
    void addP(const QString& what, const std::optional<double>& p, const QString& otherwise, const char* page) {
        add(what, p ? plot::pText(*p) : otherwise, page);
    }
    [[nodiscard]] PairFigures take() { return std::move(figures_); }

  private:
    PairFigures figures_;
};

QString withP(const QString& figure, double p) {
    return sayOfPair("%1, %2").arg(figure, plot::pText(p));
}

void addDifference(PairRows& rows, const core::Pair& pair) {
    if (!pair.difference)
        return rows.add(sayOfPair("Difference, of 100"), sayOfPair("nothing assessed in one arm"), "difference");
    const core::PairDifference& difference = *pair.difference;
    rows.add(sayOfPair("Difference, of 100 (Miettinen and Nurminen)"),
             plot::pointsText(difference.value, difference.miettinenNurminen), "difference");
    rows.add(sayOfPair("Difference, of 100 (Newcombe)"), plot::pointsText(difference.value, difference.newcombe),
             "newcombe_difference");
    rows.add(sayOfPair("Difference, allowing for the spread between batches"),
             difference.withSpread ? plot::pointsText(difference.valueWithSpread(), *difference.withSpread)
                                   : sayOfPair("needs two batches or more per arm"),
             "difference_with_spread");
}

void addExactTests(PairRows& rows, const core::Pair& pair) {
    rows.add(sayOfPair("Chance that the first is better"), plot::chanceText(pair.probabilityFirstBetter),
             "chance_first_better");
    rows.add(sayOfPair("Ratio of rates (Koopman)"), plot::ratioText(pair.riskRatio, pair.koopman), "ratio");
    rows.add(sayOfPair("Odds ratio (conditional, exact)"), plot::ratioText(pair.oddsRatio, pair.oddsRatioExact),
             "odds_ratio");
    rows.add(sayOfPair("Fisher's exact test"), plot::pText(pair.fisher), "fisher_test");
    rows.add(sayOfPair("Fisher's test, mid-p"), plot::pText(pair.fisherMid), "fisher_test");
    const std::optional<double> none;
    const QString large = sayOfPair("left out: too many cuttings to enumerate");
    rows.addP(sayOfPair("Boschloo's exact test"), pair.exactTestsLeftOut ? none : pair.boschloo, large,
              "boschloo_test");
    rows.addP(sayOfPair("Barnard's exact test"), pair.exactTestsLeftOut ? none : pair.barnard, large, "barnard_test");
}

// Adjusted for the number of pairs that are looked at; of a single pair they are the tests themselves.
void addBatchTests(PairRows& rows, const core::Pair& pair, bool isOneOfSeveral) {
    const QString three = sayOfPair("needs three batches or more per arm");
    rows.addP(sayOfPair("t test on batch rates"), pair.batchRatesP, three, "batch_rates_test");
    rows.addP(sayOfPair("Permutation of batches"), pair.batchPermutationP,
              sayOfPair("needs four batches or more per arm"), "batch_permutation");
    if (isOneOfSeveral) {
        rows.addP(sayOfPair("t test on batch rates, adjusted for all pairs (Holm)"), pair.batchRatesHolm, three,
                  "holm");
        rows.addP(sayOfPair("Boschloo's test, adjusted for all pairs (Holm)"), pair.boschlooHolm, sayOfPair("left out"),
                  "holm");
    }
    rows.addP(sayOfPair("Permutation of the two curves, within plant"), pair.curvesP,
              sayOfPair("needs two batches or more per arm"), "curves_differ");
}

void addAsGoodAs(PairRows& rows, const QString& one, const QString& other,
                 const std::optional<core::AsGoodAs>& answer) {
    if (!answer) return;
    const QString question =
        sayOfPair("%1 as good as %2, within %3 of 100").arg(one, other, plot::amountText(100 * answer->margin));
    rows.add(sayOfPair("%1, as counted").arg(question),
             withP(plot::pointsText(answer->asCounted.low) + sayOfPair(" or better"), answer->asCountedP),
             "as_good_as");
    if (!answer->withSpread || !answer->withSpreadP)
        return rows.add(question, sayOfPair("needs three batches or more per arm"), "as_good_as_by_batch");
    const QString least = plot::pointsText(answer->withSpread->low);
    rows.add(
        question,
        withP((answer->isShown ? sayOfPair("shown: %1 or better") : sayOfPair("not shown: %1 or better")).arg(least),
              *answer->withSpreadP),
        "as_good_as_by_batch");
}

void addSpeed(PairRows& rows, const core::SpeedDifference& speed) {
    constexpr const char* page = "ratio_of_speeds";
    if (!speed.ratio)
        return rows.add(sayOfPair("Ratio of median days of those that root"),
                        speed.whyNot.empty() ? sayOfPair("not worked out") : QString::fromStdString(speed.whyNot),
                        page);
    const QString shape = QString::fromStdString(speed.shape);
    rows.add(sayOfPair("Ratio of median days of those that root (%1), as counted").arg(shape),
             withP(plot::ratioText(speed.ratio, speed.asCounted), speed.asCountedP), page);
    rows.add(sayOfPair("The same, allowing for the spread between batches"),
             speed.byBatch && speed.byBatchP ? withP(plot::ratioText(speed.ratio, *speed.byBatch), *speed.byBatchP)
                                             : sayOfPair("needs more batches"),
             page);
}

void addPooled(PairRows& rows, const core::Pooled& pooled) {
    rows.add(sayOfPair("Strata (plant by block)"), plot::countText(pooled.strata), "pooled_over_plants");
    rows.add(sayOfPair("Odds ratio pooled over strata (Mantel and Haenszel)"),
             plot::ratioText(pooled.oddsRatio, pooled.oddsRatioLimits), "pooled_over_plants");
    if (pooled.oddsRatio)
        rows.add(sayOfPair("The same, allowing for the spread between batches"),
                 plot::ratioText(pooled.oddsRatio, pooled.oddsRatioWithSpread), "pooled_over_plants");
    rows.add(sayOfPair("Difference pooled over strata, of 100"),
             pooled.riskDifference ? plot::pointsText(*pooled.riskDifference, pooled.riskDifferenceLimits)
                                   : sayOfPair("no stratum with both arms"),
             "pooled_difference");
    if (pooled.riskDifference)
        rows.add(sayOfPair("The same, allowing for the spread between batches"),
                 plot::pointsText(*pooled.riskDifference, pooled.riskDifferenceWithSpread), "pooled_difference");
    rows.add(sayOfPair("Cochran, Mantel and Haenszel's test"), plot::pText(pooled.cmhP), "difference_within_plants");
    rows.addP(sayOfPair("Do the strata agree? (Breslow and Day, Tarone)"), pooled.agreementP,
              sayOfPair("needs two strata that say something"), "do_plants_agree");
}

void addSpread(PairRows& rows, const core::Spread& spread) {
    const QString likeness = plot::decimalText(spread.intraclassCorrelation, 2);
    rows.add(sayOfPair("Likeness within batches (intraclass correlation)"),
             spread.isFromRecords
                 ? sayOfPair("%1 (%2 to %3), from %4")
                       .arg(likeness, plot::decimalText(spread.limits.low, 2), plot::decimalText(spread.limits.high, 2),
                            plot::batchesText(spread.batches))
                 : sayOfPair("%1, as is usual: no two like batches yet").arg(likeness),
             "spread");
    rows.add(sayOfPair("Design effect"), plot::decimalText(spread.designEffect, 2), "spread");
}

QString armName(const core::Comparison& comparison, int arm) {
    return QString::fromStdString(comparison.arms[static_cast<std::size_t>(arm)].name);
}

}  // namespace

PairFigures pairFigures(const core::Comparison& comparison, int pair) {
    const core::Pair& figures = comparison.pairs[static_cast<std::size_t>(pair)];
    const QString first = armName(comparison, figures.first), second = armName(comparison, figures.second);
    PairRows rows;
    addDifference(rows, figures);
    addAsGoodAs(rows, first, second, figures.firstAsGood);
    addAsGoodAs(rows, second, first, figures.secondAsGood);
    addExactTests(rows, figures);
    addBatchTests(rows, figures, comparison.pairs.size() > 1);
    addSpeed(rows, figures.speed);
    addPooled(rows, figures.pooled);
    addSpread(rows, comparison.spread);
    PairFigures all = rows.take();
    all.table.title = pairName(comparison, pair);
    all.table.headings = {sayOfPair("Figure"), sayOfPair("Value")};
    return all;
}

std::vector<report::MethodNote> notesOnPair(const core::Comparison& comparison, int pair) {
    std::vector<report::MethodNote> all;
    const auto append = [&all](std::vector<report::MethodNote> notes) {
        for (report::MethodNote& note : notes) {
            const auto isSame = [&note](const report::MethodNote& other) { return other.page == note.page; };
            if (std::none_of(all.begin(), all.end(), isSame)) all.push_back(std::move(note));
        }
    };
    append(report::notesOnDifference(comparison, pair));
    append(report::notesOnDays(comparison, pair));
    append(report::notesOnPlants(comparison, pair));
    append(report::notesOnRates(comparison, comparison.pairs[static_cast<std::size_t>(pair)].first));
    return all;
}

QString pairName(const core::Comparison& comparison, int pair) {
    const core::Pair& arms = comparison.pairs[static_cast<std::size_t>(pair)];
    return sayOfPair("%1 against %2").arg(armName(comparison, arms.first), armName(comparison, arms.second));
}

}  // namespace desktop
