// SPDX-License-Identifier: MIT
#include "app/report/comparison_tables.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"

namespace report {
namespace {

struct ComparisonTables {
    Q_DECLARE_TR_FUNCTIONS(ComparisonTables)
};

QString sayInTable(const char* text) {
    return ComparisonTables::tr(text);
}

class FigureRows {
  public:
    FigureRows()
        : table_{.title = {},
                 .headings = {sayInTable("Figure"), sayInTable("value"), sayInTable("method")},
                 .aligned = {Align::Left, Align::Right, Align::Left},
                 .rows = {},
                 .mayBeShortened = false,
                 .plantColumn = -1} {}

    void add(const QString& figure, const QString& value, const QString& method) {
        table_.rows.push_back({figure, value, method});
    }
    void addP(const QString& figure, const std::optional<double>& p, const QString& method) {
        if (p) add(figure, plot::pText(*p), method);
    }
    [[nodiscard]] Table take() { return std::move(table_); }

  private:
    Table table_;
};

QString withP(const QString& figure, double p) {
    return sayInTable("%1, %2").arg(figure, plot::pText(p));
}

void addDifference(FigureRows& rows, const core::PairDifference& difference) {
    rows.add(sayInTable("difference, points of 100"), plot::pointsText(difference.value, difference.miettinenNurminen),
             sayInTable("Miettinen and Nurminen"));
    rows.add(sayInTable("difference, points of 100"), plot::pointsText(difference.value, difference.newcombe),
             sayInTable("Newcombe"));
    if (difference.withSpread)
        rows.add(sayInTable("difference with spread"),
                 plot::pointsText(difference.valueWithSpread(), *difference.withSpread),
                 sayInTable("t interval on batch rates"));
}

void addAsGoodAs(FigureRows& rows, const QString& one, const QString& other,
                 const std::optional<core::AsGoodAs>& answer) {
    if (!answer) return;
    const QString question =
        sayInTable("%1 as good as %2, within %3 of 100").arg(one, other, plot::amountText(100 * answer->margin));
    rows.add(question,
             withP(sayInTable("%1 or better").arg(plot::pointsText(answer->asCounted.low)), answer->asCountedP),
             sayInTable("as counted, which can't show it"));
    if (!answer->withSpread || !answer->withSpreadP)
        return rows.add(question, sayInTable("not shown"), sayInTable("needs three batches or more per arm"));
    const QString verdict = answer->isShown ? sayInTable("shown: %1 or better") : sayInTable("not shown: %1 or better");
    rows.add(question, withP(verdict.arg(plot::pointsText(answer->withSpread->low)), *answer->withSpreadP),
             sayInTable("on batch rates"));
}

void addTests(FigureRows& rows, const core::Pair& pair, bool isOneOfSeveral) {
    if (!pair.exactTestsLeftOut)
        rows.add(sayInTable("as counted"), plot::pText(pair.boschloo),
                 sayInTable("Boschloo's exact test, twice the smaller side"));
    rows.add(sayInTable("as counted"), plot::pText(pair.fisher), sayInTable("Fisher's exact test, two-sided"));
    rows.addP(sayInTable("batch rates"), pair.batchRatesP, sayInTable("t test"));
    rows.addP(sayInTable("batch rates"), pair.batchPermutationP, sayInTable("exact permutation of batches"));
    if (isOneOfSeveral) {
        rows.addP(sayInTable("batch rates, adjusted"), pair.batchRatesHolm, sayInTable("t test, Holm for all pairs"));
        rows.addP(sayInTable("as counted, adjusted"), pair.boschlooHolm, sayInTable("Boschloo's, Holm for all pairs"));
    }
    rows.addP(sayInTable("the two curves"), pair.curvesP, sayInTable("permutation of batches within plant"));
}

void addSpeed(FigureRows& rows, const core::SpeedDifference& speed) {
    const QString figure = sayInTable("ratio of median days");
    if (!speed.ratio) {
        if (!speed.whyNot.empty()) rows.add(figure, sayInTable("none"), QString::fromStdString(speed.whyNot));
        return;
    }
    rows.add(figure, withP(plot::ratioText(speed.ratio, speed.asCounted), speed.asCountedP),
             sayInTable("of those that root, %1, as counted").arg(QString::fromStdString(speed.shape)));
    if (speed.byBatch && speed.byBatchP)
        rows.add(figure, withP(plot::ratioText(speed.ratio, *speed.byBatch), *speed.byBatchP),
                 sayInTable("the same, allowing for the spread"));
}

void addPooled(FigureRows& rows, const core::Pooled& pooled) {
    if (pooled.oddsRatio) {
        rows.add(sayInTable("odds ratio, plants pooled"), plot::ratioText(pooled.oddsRatio, pooled.oddsRatioLimits),
                 sayInTable("Mantel-Haenszel, as counted"));
        rows.add(sayInTable("odds ratio, plants pooled"), plot::ratioText(pooled.oddsRatio, pooled.oddsRatioWithSpread),
                 sayInTable("the same, allowing for the spread"));
    }
    if (!pooled.riskDifference) return;
    rows.add(sayInTable("difference, plants pooled"),
             plot::pointsText(*pooled.riskDifference, pooled.riskDifferenceLimits),
             sayInTable("Mantel-Haenszel, Sato, as counted"));
    rows.add(sayInTable("difference, plants pooled"),
             plot::pointsText(*pooled.riskDifference, pooled.riskDifferenceWithSpread),
             sayInTable("the same, allowing for the spread"));
}

}  // namespace

Table figuresOf(const core::Pair& pair, const QString& first, const QString& second, bool isOneOfSeveral) {
    FigureRows rows;
    addDifference(rows, *pair.difference);
    addAsGoodAs(rows, first, second, pair.firstAsGood);
    addAsGoodAs(rows, second, first, pair.secondAsGood);
    rows.add(sayInTable("ratio of rates"), plot::ratioText(pair.riskRatio, pair.koopman), sayInTable("Koopman"));
    rows.add(sayInTable("odds ratio"), plot::ratioText(pair.oddsRatio, pair.oddsRatioExact),
             sayInTable("conditional, exact"));
    addTests(rows, pair, isOneOfSeveral);
    addSpeed(rows, pair.speed);
    addPooled(rows, pair.pooled);
    rows.add(sayInTable("chance that the first is better"), plot::chanceText(pair.probabilityFirstBetter),
             sayInTable("Jeffreys priors, as counted"));
    return rows.take();
}

Table trendTable(const core::DoseSeries& series) {
    FigureRows rows;
    rows.addP(sayInTable("trend over the order of doses"), series.trendP, sayInTable("Cochran-Armitage, as counted"));
    if (series.batchTrendP && series.trendPerStep)
        rows.add(sayInTable("batch rates, from one dose to the next"),
                 withP(plot::pointsText(*series.trendPerStep), *series.batchTrendP), sayInTable("regression on order"));
    else
        rows.add(sayInTable("batch rates, from one dose to the next"), sayInTable("none"),
                 sayInTable("needs more batches"));
    return rows.take();
}

}  // namespace report
