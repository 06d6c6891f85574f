// SPDX-License-Identifier: MIT
#include <QStringList>

#include "app/plot/number_text.h"
#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"
#include "stats/overdispersion/tray_trend.h"
#include "stats/regression/dose_response.h"
#include "stats/several_proportions/cochran_armitage_trend.h"

namespace report {
namespace {

constexpr std::size_t mostDosesNamed = 12;

QString unitOf(const core::DoseSeries& series) {
    return series.isPowder ? QStringLiteral("mg/kg") : QStringLiteral("mg/L");
}

QString pointsInWords(const core::DoseSeries& series) {
    QStringList words;
    for (const core::DosePoint& point : std::span(series.points).first(std::min(mostDosesNamed, series.points.size())))
        words << QStringLiteral("%1 %2: %3 of %4")
                     .arg(plot::amountText(point.milligramsPerLitre), unitOf(series))
                     .arg(point.rooted)
                     .arg(point.assessed);
    return words.join(QStringLiteral("; "));
}

MethodNote trendNote(const core::DoseSeries& series) {
    MethodNote note{QStringLiteral("dose_trend"), {}};
    std::vector<int> rooted, assessed;
    std::vector<double> order;
    std::vector<stats::ArmCount> counts;
    for (const core::DosePoint& point : series.points) {
        order.push_back(static_cast<double>(rooted.size()));
        rooted.push_back(point.rooted);
        assessed.push_back(point.assessed);
        counts.push_back({.successes = point.rooted, .trials = point.assessed});
    }
    note.numbers[QStringLiteral("auxin")] = named(series.auxin);
    note.numbers[QStringLiteral("counts")] = pointsInWords(series);
    put(note.numbers, QStringLiteral("z_value"), stats::cochranArmitageTrend(counts, order).z.value_or(0), 3);
    putP(note.numbers, QStringLiteral("p"), series.trendP);
    note.numbers[QStringLiteral("y_r")] = listForR(rooted);
    note.numbers[QStringLiteral("n_r")] = listForR(assessed);
    note.numbers[QStringLiteral("score_r")] = listForR(order);
    return note;
}

std::vector<double> placesOf(const core::DoseSeries& series) {
    std::vector<double> places;
    double place = 0;
    for (std::size_t i = 0; i < series.batches.size(); ++i) {
        if (i > 0 && series.batches[i].milligramsPerLitre != series.batches[i - 1].milligramsPerLitre) ++place;
        places.push_back(place);
    }
    return places;
}

MethodNote batchTrendNote(const core::DoseSeries& series) {
    MethodNote note{QStringLiteral("dose_trend_by_batch"), {}};
    std::vector<int> rooted, assessed;
    for (const core::DosedBatch& batch : series.batches) {
        rooted.push_back(batch.rooted);
        assessed.push_back(batch.assessed);
    }
    const auto batches = static_cast<int>(series.batches.size());
    note.numbers[QStringLiteral("auxin")] = named(series.auxin);
    putCount(note.numbers, QStringLiteral("batches"), batches);
    putCount(note.numbers, QStringLiteral("doses"), static_cast<int>(series.points.size()));
    putCount(note.numbers, QStringLiteral("degrees"), batches - 2);
    put(note.numbers, QStringLiteral("slope"), *series.trendPerStep);
    putP(note.numbers, QStringLiteral("p"), *series.batchTrendP);
    note.numbers[QStringLiteral("y_r")] = listForR(rooted);
    note.numbers[QStringLiteral("n_r")] = listForR(assessed);
    note.numbers[QStringLiteral("score_r")] = listForR(placesOf(series));
    return note;
}

QString fitForR(bool isFirth) {
    if (!isFirth) return QStringLiteral("fit <- glm(cbind(y, n - y) ~ L + I(L^2), binomial); b <- unname(coef(fit))");
    return QStringLiteral(
        "X <- cbind(1, L, L^2)\n"
        "plus <- function(b) { p <- plogis(X %*% b); sum(dbinom(y, n, p, log = TRUE)) + "
        "determinant(t(X) %*% (X * c(n * p * (1 - p))))$modulus / 2 }\n"
        "b <- optim(c(0, 0, 0), function(b) -max(plus(b), -1e6), method = \"BFGS\", control = list(reltol = 1e-15, "
        "maxit = "
        "1000))$par; p <- c(plogis(X %*% b))");
}

void putTreated(Numbers& numbers, const core::DoseSeries& series) {
    std::vector<double> doses;
    std::vector<int> rooted, assessed;
    for (const core::DosedBatch& batch : series.batches) {
        if (batch.milligramsPerLitre <= 0) continue;
        doses.push_back(batch.milligramsPerLitre);
        rooted.push_back(batch.rooted);
        assessed.push_back(batch.assessed);
    }
    numbers[QStringLiteral("auxin")] = named(series.auxin);
    numbers[QStringLiteral("unit")] = unitOf(series);
    putCount(numbers, QStringLiteral("batches"), static_cast<int>(doses.size()));
    numbers[QStringLiteral("dose_r")] = listForR(doses);
    numbers[QStringLiteral("y_r")] = listForR(rooted);
    numbers[QStringLiteral("n_r")] = listForR(assessed);
    numbers[QStringLiteral("fit_r")] = fitForR(series.isFirth);
}

MethodNote curveNote(const core::DoseSeries& series) {
    MethodNote note{QStringLiteral("dose_curve"), {}};
    Numbers& numbers = note.numbers;
    putTreated(numbers, series);
    numbers[QStringLiteral("lowest")] = plot::amountText(series.curve.front().milligramsPerLitre);
    numbers[QStringLiteral("highest")] = plot::amountText(series.curve.back().milligramsPerLitre);
    put(numbers, QStringLiteral("rate_low"), series.curve.front().rate);
    put(numbers, QStringLiteral("rate_high"), series.curve.back().rate);
    numbers[QStringLiteral("firth")] =
        series.isFirth
            ? QStringLiteral(
                  "A dose rooted all or none, which would pull the curve to infinity; Firth's estimator, which "
                  "half a cutting or so at each dose holds back, stands in.")
            : QString();
    numbers[QStringLiteral("estimator")] =
        series.isFirth ? QStringLiteral("Firth's penalised likelihood") : QStringLiteral("maximum likelihood");
    return note;
}

stats::DoseResponse responseOf(const core::DoseSeries& series, double level) {
    std::vector<stats::DoseTray> trays;
    for (const core::DosedBatch& batch : series.batches)
        trays.push_back({.dose = batch.milligramsPerLitre, .successes = batch.rooted, .trials = batch.assessed});
    return stats::doseResponse(trays, level,
                               series.isFirth ? stats::DoseEstimator::Firth : stats::DoseEstimator::MaximumLikelihood);
}

QString rangeInWords(const std::optional<core::Limits>& limits, const QString& otherwise) {
    if (!limits) return otherwise;
    return QStringLiteral("%1 to %2").arg(plot::amountText(limits->low), plot::amountText(limits->high));
}

MethodNote bestDoseNote(const core::DoseSeries& series, double level) {
    MethodNote note{QStringLiteral("best_dose"), {}};
    Numbers& numbers = note.numbers;
    const stats::DoseResponse response = responseOf(series, level);
    putTreated(numbers, series);
    putLevel(numbers, level);
    numbers[QStringLiteral("best")] = plot::amountText(*series.bestMilligrams);
    numbers[QStringLiteral("best_r")] = fixedForR(*series.bestMilligrams, decimalsFor(*series.bestMilligrams));
    put(numbers, QStringLiteral("best_rate"), series.bestRate.value_or(0));
    put(numbers, QStringLiteral("dispersion"), response.dispersion, 2);
    putCount(numbers, QStringLiteral("degrees"), response.degreesOfFreedom);
    const QString any = QStringLiteral("no dose can be excluded");
    numbers[QStringLiteral("as_counted")] = rangeInWords(series.asCounted, any);
    numbers[QStringLiteral("with_spread")] =
        rangeInWords(series.withSpread, series.isUnboundedWithSpread ? any : QStringLiteral("can't be seen"));
    numbers[QStringLiteral("covariance_r")] =
        series.isFirth ? QStringLiteral("solve(t(X) %*% (X * c(n * p * (1 - p))))") : QStringLiteral("vcov(fit)");
    numbers[QStringLiteral("limits_r")] =
        series.asCounted ? QStringLiteral("exp(mean(log(dose)) + sort(Re(top)))    # %1 %2")
                               .arg(fixedForR(series.asCounted->low, decimalsFor(series.asCounted->low)),
                                    fixedForR(series.asCounted->high, decimalsFor(series.asCounted->high)))
                         : QStringLiteral("# as counted no dose can be excluded: the curve may as well be straight");
    return note;
}

}  // namespace

std::vector<MethodNote> notesOnDoses(const core::DoseSeries& series, double level) {
    std::vector<MethodNote> notes;
    if (series.points.size() < 2) return notes;
    notes.push_back(trendNote(series));
    if (series.batchTrendP && series.trendPerStep) notes.push_back(batchTrendNote(series));
    if (!series.curve.empty()) notes.push_back(curveNote(series));
    if (series.best == core::BestDose::Inside && series.bestMilligrams) notes.push_back(bestDoseNote(series, level));
    return notes;
}

}  // namespace report
