// SPDX-License-Identifier: MIT
#include "tests/calibration/report.h"

#include <cmath>
#include <ostream>
#include <span>
#include <vector>

#include "tests/calibration/claims.h"
#include "tests/calibration/horizon_rules.h"
#include "tests/calibration/judged_comparison.h"
#include "tests/calibration/studies.h"

namespace calibration {
namespace {

using Names = std::vector<std::string>;

std::string decimals(double value, int places) {
    const double scale = std::pow(10, places);
    const long long whole = std::llround(std::abs(value) * scale);
    std::string digits = std::to_string(whole);
    if (static_cast<int>(digits.size()) <= places)
        digits.insert(0, static_cast<std::size_t>(places) + 1 - digits.size(), '0');
    if (places > 0) digits.insert(digits.size() - static_cast<std::size_t>(places), ".");
    return (value < 0 && whole > 0 ? "-" : "") + digits;
}

std::string percent(const Count& count) {
    return count.asked == 0 ? "" : decimals(100 * count.share(), 1);
}

std::string percentAndWidth(const Count& count) {
    return count.asked == 0 ? "" : percent(count) + " (" + decimals(100 * count.mean(), 0) + ")";
}

std::string correlationText(double correlation) {
    return correlation == 0 ? "0" : decimals(correlation, correlation == 0.05 ? 2 : 1);
}

void line(std::ostream& out, const Names& cells) {
    out << "|";
    for (const std::string& cell : cells) out << " " << cell << " |";
    out << "\n";
}

void heading(std::ostream& out, const Names& cells) {
    out << "\n";
    line(out, cells);
    out << "| --- |";
    for (std::size_t i = 1; i < cells.size(); ++i) out << " ---: |";
    out << "\n";
}

/// One row a thing, one column a correlation, over arms of `fewest` to `most` trays.
void byCorrelation(std::ostream& out, const Tally& tally, const Names& things, int fewest, int most,
                   std::string (*text)(const Count&), const std::string& after = {}) {
    Names top{""};
    for (const double correlation : correlations) top.push_back("correlation " + correlationText(correlation));
    heading(out, top);
    for (const std::string& thing : things) {
        Names row{thing};
        for (const double correlation : correlations)
            row.push_back(text(tally.over(thing + after, correlation, fewest, most)));
        line(out, row);
    }
}

/// One row a correlation, one column a number of trays.
void byTrays(std::ostream& out, const Tally& tally, const std::string& thing, int fewest,
             std::string (*text)(const Count&)) {
    Names top{thing};
    for (int trays = fewest; trays <= mostTrays; ++trays)
        top.push_back(std::to_string(trays) + (trays == 1 ? " tray" : " trays"));
    heading(out, top);
    for (const double correlation : correlations) {
        Names row{"correlation " + correlationText(correlation)};
        for (int trays = fewest; trays <= mostTrays; ++trays)
            row.push_back(text(tally.of(thing, {.correlation = correlation, .trays = trays})));
        line(out, row);
    }
}

void writeClaims(std::ostream& out, const Tally& tally) {
    out << "\n## What must hold\n";
    heading(out, {"at a nominal 95 %", "demanded, %", "found, %", "+-", "holds"});
    for (const Claim& claim : claimsOn(tally))
        line(out, {claim.words,
                   (claim.bound == Bound::AtLeast ? "at least " : "at most ") + decimals(100 * claim.demanded, 0),
                   decimals(100 * claim.found.share(), 2), decimals(100 * claim.found.simulationError(), 2),
                   claim.holds() ? "yes" : "no"});
}

const Names asCounted{"Wilson", "Wilson with continuity correction", "Clopper-Pearson", "Jeffreys", "Agresti-Coull",
                      "mid-p"};
const Names withSpread{"Korn-Graubard, where shown",
                       "Korn-Graubard, else Wilson",
                       "Korn-Graubard, else pooled spread",
                       "Korn-Graubard, at least pooled spread",
                       "pooled spread alone",
                       "Student on tray rates",
                       "Student on arcsines of tray rates",
                       "Student on logits of tray rates",
                       "Wilson"};
const Names tests{"guarded t",
                  "t on tray rates",
                  "weighted t, correlation 0",
                  "weighted t, correlation 0.1",
                  "weighted t, pooled spread",
                  "Welch's t on tray rates",
                  "t on arcsines of tray rates",
                  "t on logits of tray rates",
                  "permutation of trays",
                  "guarded t and permutation",
                  "Rao-Scott",
                  "beta-binomial likelihood ratio",
                  "pooled Fisher"};

Names eachWith(const Names& things, const std::string& after) {
    Names result;
    for (const std::string& thing : things) result.push_back(thing + after);
    return result;
}

void writeRates(std::ostream& out, const Tally& tally) {
    out << "\n## One rate\n\nHow often a 95 % interval holds the truth, in %, and in brackets its mean width, in "
           "points of 100. One tray: the "
           "interval as counted is about the rate\nof that tray.\n";
    byCorrelation(out, tally, eachWith(asCounted, ", of the tray"), 1, 1, percentAndWidth);
    out << "\nThe same interval, taken as one about the rate of the method, of which one tray tells little:\n";
    byCorrelation(out, tally, asCounted, 1, 1, percentAndWidth);
    out << "\nThree to six trays, about the rate of the method. The program shows the first; where all or none rooted "
           "it shows none with "
           "spread. Pooled spread:\n`pooledSpread()` of the two arms alone, where a logbook would have more to say.\n";
    byCorrelation(out, tally, withSpread, 3, mostTrays, percentAndWidth);
    byTrays(out, tally, "Korn-Graubard, where shown", 2, percentAndWidth);
    byTrays(out, tally, "Korn-Graubard, else Wilson", 2, percentAndWidth);
    byTrays(out, tally, "Korn-Graubard, else pooled spread", 2, percentAndWidth);
}

void writeTests(std::ostream& out, const Tally& tally) {
    out << "\n## Verdicts\n\nHow often equal arms are called different at 5 %, in %, over arms of three to six trays. "
           "The program goes by the "
           "first; the others were not chosen.\n";
    byCorrelation(out, tally, tests, 3, mostTrays, percent);
    byTrays(out, tally, "guarded t", 2, percent);
    byTrays(out, tally, "t on tray rates", 2, percent);
    byTrays(out, tally, "Rao-Scott", 2, percent);
    byTrays(out, tally, "beta-binomial likelihood ratio", 2, percent);
    byTrays(out, tally, "permutation of trays", 4, percent);
    out << "\nHow often rates 0.25 apart (the lower from 0.1 to 0.6) are found to differ, in %, three to six trays. "
           "Only tests whose size is "
           "right compete.\n";
    byCorrelation(out, tally, tests, 3, mostTrays, percent, ", apart");
    byTrays(out, tally, "guarded t, apart", 2, percent);
    byTrays(out, tally, "t on tray rates, apart", 2, percent);
    out << "\nArms that differ in the number and size of their trays but not in their rate:\n";
    for (const Lopsided& kind : lopsided) {
        out << "\n" << kind.name << ":\n";
        byCorrelation(out, tally,
                      {"guarded t", "t on tray rates", "weighted t, correlation 0.1", "weighted t, pooled spread",
                       "Welch's t on tray rates"},
                      kind.asTrays, kind.asTrays, percent);
    }
}

void writeLogitNormal(std::ostream& out, const Tally& tally) {
    out << "\n## Does it hang on the beta distribution?\n\nThe same with shares of trays whose logits are normal, "
           "three to six trays:\n";
    byCorrelation(out, tally, eachWith({"Korn-Graubard, where shown"}, logitNormal), 3, mostTrays, percentAndWidth);
    byCorrelation(out, tally, eachWith({"guarded t", "t on tray rates", "Rao-Scott", "pooled Fisher"}, logitNormal), 3,
                  mostTrays, percent);
}

void writeWhole(std::ostream& out, const Tally& tally, const std::string& after) {
    byCorrelation(out, tally, eachWith({"rate with spread", "difference with spread"}, after), 3, mostTrays,
                  percentAndWidth);
    out << "\nFigures as counted, one tray an arm, about the rates of the methods:\n";
    byCorrelation(out, tally,
                  eachWith({"rate as counted", "Miettinen-Nurminen difference", "Newcombe difference", "Koopman ratio",
                            "exact odds ratio"},
                           after),
                  1, 1, percent);
    out << "\nDays to root, three to six trays (the bands on each day on which somebody looked, from the true median "
           "day of rooting to the "
           "horizon):\n";
    byCorrelation(
        out, tally,
        eachWith({"band of the rooted-by-day curve", "median day of all stuck", "median day of those that root",
                  "fitted curve: share that roots", "fitted curve: median day of those that root"},
                 after),
        3, mostTrays, percent);
    out << "\nWhat is said of equal arms, and (apart) of any two different rates, three to six trays:\n";
    byCorrelation(
        out, tally,
        eachWith({"what the program says", "pooled Boschloo", "what the program says, apart", "pooled Boschloo, apart"},
                 after),
        3, mostTrays, percent);
    out << "\nOne or two trays an arm (no verdict may be given):\n";
    byCorrelation(out, tally, eachWith({"what the program says"}, after), 1, 2, percent);
}

void writeChance(std::ostream& out, const Tally& tally) {
    out << "\n## Chance that the first is better\n\nWhere arms have two rates drawn at random, how often the first "
           "truly is better, in %, by the "
           "chance that was shown. One tray an arm:\n";
    const Names ranges(chanceRanges().begin(), chanceRanges().end());
    byCorrelation(out, tally, ranges, 1, 1, percent);
    out << "\nThree to six trays an arm:\n";
    byCorrelation(out, tally, ranges, 3, mostTrays, percent);
}

void writePlants(std::ostream& out, const Tally& tally) {
    out << "\n## Pooled over plants\n\nFour plants, one or two trays of each an arm: how often the interval holds the "
           "common truth, in %. It takes "
           "cuttings as independent.\n";
    byCorrelation(out, tally, {"Mantel-Haenszel odds ratio", "Mantel-Haenszel difference"}, 1, 2, percent);
}

std::string error(const Count& count) {
    return decimals(100 * count.mean(), 1) + " (" + decimals(100 * count.rootMeanSquare(), 1) + ")";
}

void writeHorizon(std::ostream& out, const Tally& tally) {
    out << "\n## Looks that straddle the horizon\n\nFour trays an arm, equal arms, looks on days of their own. For "
           "each way to count: mean error "
           "of the second arm's rate, where the true one is below and above 0.5, and of the difference, in points "
           "of\n100 (root mean square in brackets); how "
           "often the interval with "
           "spread holds the rate and how often equal arms are called different by the guarded t test, in %. Over\nall "
           "four correlations.\n";
    for (int scene = 0; scene < static_cast<int>(horizonScenes().size()); ++scene) {
        out << "\n" << horizonScenes()[static_cast<std::size_t>(scene)].name << ":\n";
        heading(out, {"", "rate below 0.5", "rate above 0.5", "difference", "covers", "called different"});
        const auto all = [&](const std::string& thing) {
            Count count;
            for (const double correlation : correlations)
                count += tally.of(thing, {.correlation = correlation, .trays = scene});
            return count;
        };
        const auto row = [&](const std::string& rule) {
            line(out,
                 {rule, error(all(rule + ": low rate")), error(all(rule + ": high rate")),
                  error(all(rule + ": difference")), percent(all(rule + ": covers")), percent(all(rule + ": differ"))});
        };
        for (const NamedRule& rule : horizonRules()) row(rule.name);
        row(curveAtHorizon);
    }
}

}  // namespace

std::string commandOf(const SimulationOptions& options) {
    return "strikebook-calibration --seasons " + std::to_string(options.seasons) + " --seed " +
           std::to_string(options.seed);
}

void writeReport(const Tally& tally, const SimulationOptions& options, std::ostream& out) {
    out << "# How often the figures are right\n\n"
           "Simulated seasons whose truth is known, and how often what Strikebook shows of them is right. Everything "
           "here is invented by a "
           "seeded generator; written by\n\n    "
        << commandOf(options) << "\n\n(`tests/calibration/run` builds and runs it.) Each number stands on "
        << options.seasons << " seasons of its kind that went through the whole program,\n"
        << options.seasons * seasonsOfFiguresForOne
        << " where figures alone are judged (two thirds of them with equal arms) or "
        << options.seasons * seasonsAsideForOne
        << " where they are looked at beside (logit-normal, unlike arms, several plants, looks that straddle).\nIn the "
           "first table +- is "
           "the two-sided 95 % error of the simulation itself; elsewhere it is about 200 x sqrt(p (1 - p) / seasons) "
           "points.\n\n"
           "A season: two arms of one to six trays, each of 5 to 30 cuttings, sizes unequal; true rates 0.1, 0.2 ... "
           "0.9, 0.95; a tray's "
           "own share is drawn from a beta distribution with the\nintra-class correlation named; those that root do so "
           "on log-normal "
           "days (median day 12 to 21), half of those that never root are lost; somebody looks every 2 to 7 days, last "
           "on\nthe horizon, day "
           "28. *As it comes*: looks fall where they fall, and one batch in seven was looked at last before the "
           "horizon.\n";
    writeClaims(out, tally);
    writeRates(out, tally);
    writeTests(out, tally);
    writeLogitNormal(out, tally);
    out << "\n## Through the whole program\n\nFrom records to the figures of a comparison, every batch looked at on "
           "the horizon, in %:\n";
    writeWhole(out, tally, "");
    out << "\n### As it comes\n\nThe same where looks straddle the horizon and one batch in seven is open:\n";
    writeWhole(out, tally, asItComes);
    writeChance(out, tally);
    writePlants(out, tally);
    writeHorizon(out, tally);
}

}  // namespace calibration
