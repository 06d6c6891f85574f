// SPDX-License-Identifier: MIT
#include "app/console/compare_text.h"

#include "app/console/dose_output.h"
#include "app/console/goes_with_output.h"
#include "app/console/speed_output.h"
#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"

namespace console {

namespace {

std::string plain(const QString& words) {
    return words.toStdString();
}

std::string limitsOrDash(const std::optional<core::Limits>& limits) {
    return limits ? plain(plot::limitsText(*limits)) : "–";
}

void printRates(const core::Comparison& comparison, std::ostream& out) {
    TextTable table({{plain(QString::fromUtf8(core::wordFor(comparison.factor).data())), TextTable::Align::Left},
                     {tr("strike rate"), TextTable::Align::Left},
                     {tr("as counted"), TextTable::Align::Left},
                     {tr("with spread"), TextTable::Align::Left},
                     {tr("batches"), TextTable::Align::Right},
                     {tr("stations"), TextTable::Align::Right}});
    for (const core::Arm& arm : comparison.arms)
        table.addRow({arm.name,
                      arm.rate ? plain(plot::percentText(*arm.rate, arm.rooted, arm.assessed)) : tr("nothing assessed"),
                      limitsOrDash(arm.asCounted), limitsOrDash(arm.withSpread), std::to_string(arm.batches),
                      std::to_string(arm.stations)});
    table.printTo(out);
    out << filled(
               tr("Intervals at %1: as counted (%2) takes each cutting for itself; with spread allows for batches that "
                  "share their fate."),
               {plain(plot::levelText(comparison.level)), std::string(core::nameOf(comparison.interval))})
        << "\n\n";
}

void printFates(const core::Comparison& comparison, std::ostream& out) {
    TextTable table({{tr("cuttings"), TextTable::Align::Left},
                     {tr("stuck"), TextTable::Align::Right},
                     {tr("rooted"), TextTable::Align::Right},
                     {tr("lost"), TextTable::Align::Right},
                     {tr("withdrawn"), TextTable::Align::Right},
                     {tr("undecided"), TextTable::Align::Right},
                     {tr("half of those stuck rooted"), TextTable::Align::Left},
                     {tr("half of those that root"), TextTable::Align::Left}});
    for (const core::Arm& arm : comparison.arms) {
        const auto number = [](int count) { return std::to_string(count); };
        std::string half = plain(plot::dayRangeText(arm.ofStuck.p50));
        if (arm.ofStuck.p50 && arm.ofStuck.p50Interval)
            half +=
                filled(tr(" (interval: day %1 to %2)"), {plain(plot::decimalText(arm.ofStuck.p50Interval->low, 0)),
                                                         plain(plot::decimalText(arm.ofStuck.p50Interval->high, 0))});
        table.addRow({arm.name, number(arm.stuck), number(arm.rooted), number(arm.lost), number(arm.withdrawn),
                      number(arm.undecided), half, plain(plot::dayRangeText(arm.ofRooted.p50))});
    }
    table.printTo(out);
}

void printLine(const std::string& label, const std::string& text, std::ostream& out) {
    constexpr std::size_t labelWidth = 22;
    out << "  " << label << std::string(label.size() < labelWidth ? labelWidth - label.size() : 1, ' ') << text << '\n';
}

void printSpecies(const core::Pair& pair, std::ostream& out) {
    if (pair.bySpecies.size() < 2) return;
    TextTable table({{tr("  by species"), TextTable::Align::Left},
                     {tr("first"), TextTable::Align::Left},
                     {tr("second"), TextTable::Align::Left},
                     {tr("first minus second, of 100"), TextTable::Align::Left}});
    for (const core::BySpecies& one : pair.bySpecies)
        table.addRow({"  " + one.species, plain(plot::percentText(one.firstRooted, one.firstAssessed)),
                      plain(plot::percentText(one.secondRooted, one.secondAssessed)),
                      one.difference ? plain(plot::pointsText(*one.difference, one.limits)) : "–"});
    table.printTo(out);
}

void printPooled(const core::Pooled& pooled, std::ostream& out) {
    if (pooled.strata < 2) return;
    if (pooled.riskDifference)
        printLine(
            tr("pooled over strata"),
            filled(tr("%1; %2 fit with spread, %3 as counted (Mantel-Haenszel, %4 strata of plant and block)"),
                   {plain(plot::differenceText(*pooled.riskDifference)),
                    plain(plot::differenceLimitsText(pooled.riskDifferenceWithSpread)),
                    plain(plot::differenceLimitsText(pooled.riskDifferenceLimits)), std::to_string(pooled.strata)}),
            out);
    if (pooled.oddsRatio)
        printLine(tr("pooled odds ratio"),
                  filled(tr("%1 as counted; %2 with spread"),
                         {plain(plot::ratioText(pooled.oddsRatio, pooled.oddsRatioLimits)),
                          plain(plot::ratioText(pooled.oddsRatio, pooled.oddsRatioWithSpread))}),
                  out);
    printLine(tr("no difference at all"), filled(tr("%1 (Cochran-Mantel-Haenszel)"), {plain(plot::pText(pooled.cmhP))}),
              out);
    if (pooled.agreementP)
        printLine(tr("the strata agree"),
                  filled(tr("%1 (Breslow-Day-Tarone)"), {plain(plot::pText(*pooled.agreementP))}), out);
}

std::string testsOf(const core::Pair& pair) {
    std::string tests = pair.exactTestsLeftOut
                            ? filled(tr("Fisher %1; Boschloo and Barnard left out, too many cuttings"),
                                     {plain(plot::pText(pair.fisher))})
                            : filled(tr("Boschloo %1; Fisher %2; Barnard %3"),
                                     {plain(plot::pText(pair.boschloo)), plain(plot::pText(pair.fisher)),
                                      plain(plot::pText(pair.barnard))});
    if (pair.batchRatesP) tests += filled(tr("; on batch rates %1"), {plain(plot::pText(*pair.batchRatesP))});
    if (pair.batchPermutationP) tests += filled(tr(", permuted %1"), {plain(plot::pText(*pair.batchPermutationP))});
    if (pair.batchRatesHolm && pair.batchRatesHolm != pair.batchRatesP)
        tests += filled(tr(", adjusted for the pairs looked at %1"), {plain(plot::pText(*pair.batchRatesHolm))});
    if (pair.curvesP) tests += filled(tr("; curves %1"), {plain(plot::pText(*pair.curvesP))});
    return tests;
}

void printAsGood(const core::Pair& pair, const std::vector<core::Arm>& arms, std::ostream& out) {
    const auto print = [&](int one, int other, const std::optional<core::AsGoodAs>& answer) {
        if (!answer) return;
        const core::Limits& deciding = answer->withSpread ? *answer->withSpread : answer->asCounted;
        const std::string verdict = answer->isShown      ? tr("shown")
                                    : answer->withSpread ? tr("not shown")
                                                         : tr("not shown, as counted only");
        printLine(
            one == pair.first ? tr("as good as") : "",
            filled(tr("%1 as good as %2 within %3 of 100: %4 (%5 or better)"),
                   {arms[static_cast<std::size_t>(one)].name, arms[static_cast<std::size_t>(other)].name,
                    plain(plot::amountText(100 * answer->margin)), verdict, plain(plot::pointsText(deciding.low))}),
            out);
    };
    print(pair.first, pair.second, pair.firstAsGood);
    print(pair.second, pair.first, pair.secondAsGood);
}

void printPair(const core::Pair& pair, const std::vector<core::Arm>& arms, std::ostream& out) {
    out << '\n'
        << filled(tr("%1 against %2"),
                  {arms[static_cast<std::size_t>(pair.first)].name, arms[static_cast<std::size_t>(pair.second)].name})
        << '\n';
    if (pair.difference) {
        printLine(tr("difference"),
                  filled(tr("%1; %2 fit as counted"),
                         {plain(plot::differenceText(pair.difference->value)),
                          plain(plot::differenceLimitsText(pair.difference->miettinenNurminen))}),
                  out);
        if (pair.difference->withSpread)
            printLine("",
                      filled(tr("%1 batch by batch; %2 fit with spread"),
                             {plain(plot::differenceText(pair.difference->valueWithSpread())),
                              plain(plot::differenceLimitsText(*pair.difference->withSpread))}),
                      out);
    } else {
        printLine(tr("difference"), tr("undefined: an arm has nothing assessed"), out);
    }
    printLine(tr("ratio of rates"), plain(plot::ratioText(pair.riskRatio, pair.koopman)), out);
    printLine(tr("odds ratio"), plain(plot::ratioText(pair.oddsRatio, pair.oddsRatioExact)), out);
    printLine(tr("tests"), testsOf(pair), out);
    printLine(tr("ratio of median days"), speedText(pair.speed), out);
    printAsGood(pair, arms, out);
    printPooled(pair.pooled, out);
    printSpecies(pair, out);
}

void printSeveral(const std::optional<core::SeveralArms>& several, std::ostream& out) {
    if (!several) return;
    out << '\n'
        << filled(tr("All %1 arms alike? As counted %2 (chi-square); on batch rates %3 (analysis of variance)."),
                  {std::to_string(several->arms), plain(plot::pText(several->chiSquareP)),
                   several->batchRatesP ? plain(plot::pText(*several->batchRatesP))
                                        : tr("needs three batches in each arm, and some that differ")})
        << '\n';
}

}  // namespace

void printText(const core::Comparison& comparison, std::ostream& out) {
    out << filled(tr("Head to head by %1, decided at day %2 (%3)"),
                  {std::string(core::wordFor(comparison.factor)), std::to_string(comparison.horizonDay),
                   comparison.horizonReason})
        << "\n\n";
    if (!comparison.arms.empty()) {
        printRates(comparison, out);
        printFates(comparison, out);
        printSpeeds(comparison, out);
    }
    for (const core::Pair& pair : comparison.pairs) {
        printPair(pair, comparison.arms, out);
        // The words on a single pair are those on the whole, which come last.
        if (comparison.pairs.size() > 1) out << "  " << pair.inWords << '\n';
    }
    printSeveral(comparison.severalArms, out);
    printDoses(comparison.doses, out);
    printGoesWith(comparison.goesWith, out);
    if (!comparison.spread.isFromRecords && !comparison.arms.empty())
        out << '\n'
            << filled(tr("Spread between batches: not to be seen, no two like batches are on record; where it is "
                         "needed, likeness %1 "
                         "is taken, as is usual."),
                      {plain(plot::decimalText(comparison.spread.intraclassCorrelation, 2))})
            << '\n';
    if (comparison.spread.isFromRecords)
        out << '\n'
            << filled(tr("Spread between batches: likeness %1 (%2 to %3) within a batch, from %4; design effect %5."),
                      {plain(plot::decimalText(comparison.spread.intraclassCorrelation, 2)),
                       plain(plot::decimalText(comparison.spread.limits.low, 2)),
                       plain(plot::decimalText(comparison.spread.limits.high, 2)),
                       plain(plot::batchesText(comparison.spread.batches)),
                       plain(plot::decimalText(comparison.spread.designEffect, 2))})
            << '\n';
    if (!comparison.cautions.empty()) out << '\n' << tr("To be minded:") << '\n';
    for (const std::string& caution : comparison.cautions) out << "- " << caution << '\n';
    if (!comparison.inWords.empty()) out << '\n' << comparison.inWords << '\n';
}

}  // namespace console
