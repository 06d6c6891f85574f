// SPDX-License-Identifier: MIT
#include "core/comparison/dose_words.h"

#include <cmath>

#include "core/comparison/english.h"
#include "core/units/figure_text.h"

namespace core {
namespace {

// Three digits are more than any dose is known to.
double threeDigits(double value) {
    if (!(value > 0)) return value;
    const double unit = std::pow(10, std::floor(std::log10(value)) - 2);
    return std::round(value / unit) * unit;
}

std::string limitsInWords(const DoseSeries& series, double level) {
    if (series.isUnboundedWithSpread)
        return "; allowing for the spread between batches no dose can be excluded, so it is not known where the best "
               "one lies";
    const std::optional<Limits>& limits = series.withSpread ? series.withSpread : series.asCounted;
    if (!limits) return "; no dose can be excluded, so it is not known where the best one lies";
    return " (" + figureText(threeDigits(limits->low)) + " to " + doseInWords(limits->high, series.isPowder) +
           " fits, " + levelWords(level) + " interval" +
           (series.withSpread ? ", allowing for the spread between batches)" : ", as counted)");
}

std::string topInWords(const DoseSeries& series, double level) {
    switch (series.best) {
        case BestDose::TooFewDoses:
            return "A curve takes three doses above none.";
        case BestDose::NoCurve:
            return "No curve can be drawn: " + series.whyNoCurve + ".";
        case BestDose::Inside:
            if (series.isUnboundedWithSpread || (!series.withSpread && !series.asCounted))
                return "Where the top of the curve lies can't be told from these batches: no dose can be excluded.";
            return "The curve is highest near " + doseInWords(*series.bestMilligrams, series.isPowder) +
                   ", where about " + std::to_string(perHundred(*series.bestRate)) + " of 100 would root" +
                   limitsInWords(series, level) + ".";
        case BestDose::NoTop:
            return "The curve has no top among these doses.";
        case BestDose::BelowLowest:
            return "The curve is highest at the lowest dose tried or below it: try lower ones.";
        case BestDose::AboveHighest:
            return "The curve is highest at the highest dose tried or above it: try a higher one, with an eye on burnt "
                   "stems.";
    }
    return {};
}

}  // namespace

std::string auxinInWords(const std::string& auxin, AuxinForm form, Carrier carrier) {
    std::string words = auxin;
    if (form == AuxinForm::Salt) words += " (salt)";
    if (carrier != Carrier::None) words += ", " + std::string(wordFor(carrier));
    return words;
}

std::string doseInWords(double milligramsPerLitre, bool isPowder) {
    return figureText(threeDigits(milligramsPerLitre)) + (isPowder ? " mg/kg" : " mg/L");
}

std::string whyNoCurve(stats::FitProblem problem) {
    switch (problem) {
        case stats::FitProblem::None:
            return {};
        case stats::FitProblem::NoTrials:
            return "nothing is assessed yet";
        case stats::FitProblem::Collinear:
            return "it takes three doses above none";
        case stats::FitProblem::AllOrNone:
            return "all rooted, or none did";
        case stats::FitProblem::Separated:
            return "one side of the doses rooted all and the other none";
        case stats::FitProblem::NotConverged:
            return "the search for the best curve ended without an answer";
    }
    return {};
}

std::string doseSeriesInWords(const DoseSeries& series, double level) {
    std::string words = series.auxin + ": ";
    if (!series.batchTrendP)
        words += "from these batches it can't be judged whether the rate rises or falls with the dose. ";
    else if (*series.batchTrendP >= 1 - level)
        words += "batch by batch the rate neither rises nor falls clearly with the dose. ";
    else
        words += "batch by batch the rate " + std::string(*series.trendPerStep > 0 ? "rises" : "falls") + " by about " +
                 std::to_string(std::abs(perHundred(*series.trendPerStep))) + " of 100 from each dose to the next. ";
    return words + topInWords(series, level);
}

}  // namespace core
