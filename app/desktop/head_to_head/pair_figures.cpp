// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/pair_figures.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"

namespace desktop {

namespace {

QString sayOfPair(const char* text) {
    return QCoreApplication::translate("PairFigures", text);
}

class PairRows {
  public:
    void add(const QString& what, const QString& figure) { rows_.push_back({what, figure}); }
    void addP(const QString& what, const std::optional<double>& p, const QString& otherwise) {
        add(what, p ? plot::pText(*p) : otherwise);
    }
    [[nodiscard]] std::vector<QStringList> take() { return std::move(rows_); }

  private:
    std::vector<QStringList> rows_;
};

void addDifference(PairRows& rows, const core::Pair& pair) {
    if (!pair.difference) return rows.add(sayOfPair("Difference, of 100"), sayOfPair("nothing assessed in one arm"));
    const core::PairDifference& difference = *pair.difference;
    rows.add(sayOfPair("Difference, of 100 (Miettinen and Nurminen)"),
             plot::pointsText(difference.value, difference.miettinenNurminen));
    rows.add(sayOfPair("Difference, of 100 (Newcombe)"), plot::pointsText(difference.value, difference.newcombe));
    rows.add(sayOfPair("Difference, allowing for the spread between batches"),
             difference.withSpread ? plot::pointsText(difference.valueWithSpread(), *difference.withSpread)
                                   : sayOfPair("needs two batches or more per arm"));
}

void addTests(PairRows& rows, const core::Pair& pair) {
    rows.add(sayOfPair("Chance that the first is better"), plot::chanceText(pair.probabilityFirstBetter));
    rows.add(sayOfPair("Ratio of rates (Koopman)"), plot::ratioText(pair.riskRatio, pair.koopman));
    rows.add(sayOfPair("Odds ratio (conditional, exact)"), plot::ratioText(pair.oddsRatio, pair.oddsRatioExact));
    rows.add(sayOfPair("Fisher's exact test"), plot::pText(pair.fisher));
    rows.add(sayOfPair("Fisher's test, mid-p"), plot::pText(pair.fisherMid));
    const std::optional<double> none;
    const QString large = sayOfPair("left out: too many cuttings to enumerate");
    rows.addP(sayOfPair("Boschloo's exact test"), pair.exactTestsLeftOut ? none : pair.boschloo, large);
    rows.addP(sayOfPair("Barnard's exact test"), pair.exactTestsLeftOut ? none : pair.barnard, large);
    rows.addP(sayOfPair("t test on batch rates"), pair.batchRatesP, sayOfPair("needs three batches or more per arm"));
    rows.addP(sayOfPair("Permutation of batches"), pair.batchPermutationP,
              sayOfPair("needs four batches or more per arm"));
    rows.addP(sayOfPair("Permutation of the two curves, within plant"), pair.curvesP,
              sayOfPair("needs two batches or more per arm"));
}

void addPooled(PairRows& rows, const core::Pooled& pooled) {
    rows.add(sayOfPair("Strata (plant by block)"), plot::countText(pooled.strata));
    rows.add(sayOfPair("Odds ratio pooled over strata (Mantel and Haenszel)"),
             plot::ratioText(pooled.oddsRatio, pooled.oddsRatioLimits));
    rows.add(sayOfPair("Difference pooled over strata, of 100"),
             pooled.riskDifference ? plot::pointsText(*pooled.riskDifference, pooled.riskDifferenceLimits)
                                   : sayOfPair("no stratum with both arms"));
    rows.add(sayOfPair("Cochran, Mantel and Haenszel's test"), plot::pText(pooled.cmhP));
    rows.addP(sayOfPair("Do the strata agree? (Breslow and Day, Tarone)"), pooled.agreementP,
              sayOfPair("needs two strata that say something"));
}

void addSpread(PairRows& rows, const core::Spread& spread) {
    rows.add(sayOfPair("Likeness within batches (intraclass correlation)"),
             spread.isFromRecords
                 ? sayOfPair("%1 (%2 to %3), from %4")
                       .arg(plot::decimalText(spread.intraclassCorrelation, 2), plot::decimalText(spread.limits.low, 2),
                            plot::decimalText(spread.limits.high, 2), plot::batchesText(spread.batches))
                 : sayOfPair("%1, as is usual: no two like batches yet").arg(plot::decimalText(spread.intraclassCorrelation, 2)));
    rows.add(sayOfPair("Design effect"), plot::decimalText(spread.designEffect, 2));
}

}  // namespace

plot::FigureTable pairFigures(const core::Comparison& comparison, int pair) {
    const core::Pair& figures = comparison.pairs[static_cast<std::size_t>(pair)];
    PairRows rows;
    addDifference(rows, figures);
    addTests(rows, figures);
    addPooled(rows, figures.pooled);
    addSpread(rows, comparison.spread);
    return {.title = pairName(comparison, pair),
            .headings = {sayOfPair("Figure"), sayOfPair("Value")},
            .rows = rows.take()};
}

QString pairName(const core::Comparison& comparison, int pair) {
    const core::Pair& arms = comparison.pairs[static_cast<std::size_t>(pair)];
    const auto nameOf = [&](int arm) {
        return QString::fromStdString(comparison.arms[static_cast<std::size_t>(arm)].name);
    };
    return sayOfPair("%1 against %2").arg(nameOf(arms.first), nameOf(arms.second));
}

}  // namespace desktop
