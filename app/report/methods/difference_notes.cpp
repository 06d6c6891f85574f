// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "app/plot/number_text.h"
#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"
#include "app/report/methods/pair_numbers.h"
#include "stats/proportion/wilson_interval.h"

namespace report {
namespace {

// A line of R that looks for the end of the interval between two differences on either side of it; an end at all or nothing is that.
QString endForR(char sign, double from, double until, double found, double level) {
    if (std::abs(found) >= 1) return QStringLiteral("%1    # %2").arg(forR(found), fixedForR(found, 4));
    return QStringLiteral("uniroot(function(d) z(d) %1 qnorm((1 + %2) / 2), c(%3, %4), tol = 1e-9)$root    # %5")
        .arg(QLatin1Char(sign))
        .arg(forR(level), fixedForR(from, 6), fixedForR(until, 6), fixedForR(found, 4));
}

MethodNote scoreNote(const ComparedPair& compared) {
    MethodNote note = pairNote(QStringLiteral("difference"), compared);
    constexpr double nearlyAll = 0.999999;  // at 1 itself no two rates are left to look among
    const core::Limits& limits = compared.pair.difference->miettinenNurminen;
    const double value = std::clamp(compared.pair.difference->value, -nearlyAll, nearlyAll);
    note.numbers[QStringLiteral("low_line_r")] = endForR('-', (limits.low - 1) / 2, value, limits.low, compared.level);
    note.numbers[QStringLiteral("high_line_r")] =
        endForR('+', value, (limits.high + 1) / 2, limits.high, compared.level);
    putLimits(note.numbers, compared.pair.difference->miettinenNurminen);
    return note;
}

MethodNote newcombeNote(const ComparedPair& compared) {
    MethodNote note = pairNote(QStringLiteral("newcombe_difference"), compared);
    const auto wilson1 = stats::wilsonInterval(compared.first.rooted, compared.first.assessed, compared.level);
    const auto wilson2 = stats::wilsonInterval(compared.second.rooted, compared.second.assessed, compared.level);
    put(note.numbers, QStringLiteral("low1"), wilson1.low);
    put(note.numbers, QStringLiteral("high1"), wilson1.high);
    put(note.numbers, QStringLiteral("low2"), wilson2.low);
    put(note.numbers, QStringLiteral("high2"), wilson2.high);
    putLimits(note.numbers, compared.pair.difference->newcombe);
    return note;
}

MethodNote differenceWithSpreadNote(const ComparedPair& compared) {
    MethodNote note = batchesNote(QStringLiteral("difference_with_spread"), compared);
    putLimits(note.numbers, *compared.pair.difference->withSpread);
    return note;
}

MethodNote batchRatesNote(const ComparedPair& compared) {
    MethodNote note = batchesNote(QStringLiteral("batch_rates_test"), compared);
    putP(note.numbers, QStringLiteral("p"), *compared.pair.batchRatesP);
    return note;
}

double waysOfDealing(std::size_t first, std::size_t second) {
    double ways = 1;
    for (std::size_t i = 1; i <= first; ++i) ways *= static_cast<double>(second + i) / static_cast<double>(i);
    return std::round(ways);
}

MethodNote permutationNote(const ComparedPair& compared) {
    constexpr double enumeratedUpTo = 200'000;  // as the comparison does
    MethodNote note = batchesNote(QStringLiteral("batch_permutation"), compared);
    Numbers& numbers = note.numbers;
    const double ways = waysOfDealing(compared.first.counted.size(), compared.second.counted.size());
    const bool isExact = ways <= enumeratedUpTo;
    const auto inFirst = compared.first.counted.size();
    numbers[QStringLiteral("dealings")] = isExact ? plot::decimalText(ways, 0) : QStringLiteral("very many");
    numbers[QStringLiteral("drawn")] =
        isExact ? QString() : QStringLiteral(" (of as many as could be drawn by chance)");
    put(numbers, QStringLiteral("distance"), std::abs(compared.pair.difference->value));
    putP(numbers, QStringLiteral("p"), *compared.pair.batchPermutationP);
    numbers[QStringLiteral("deal_r")] =
        isExact ? QStringLiteral("mean(combn(length(n), %1, apart) > apart(1:%1) * (1 - 1e-10))    # %2")
                      .arg(inFirst)
                      .arg(numbers[QStringLiteral("p_r")])
                : QStringLiteral("mean(replicate(20000, apart(sample(length(n), %1))) > apart(1:%1) * (1 - 1e-10))")
                      .arg(inFirst);
    return note;
}

QString verdictInWords(core::Verdict verdict, const ComparedPair& compared) {
    switch (verdict) {
        case core::Verdict::CannotTellMethodFromStation:
            return QStringLiteral("withheld: what is compared can't be told from the station or the batch");
        case core::Verdict::TooFewBatches:
            return QStringLiteral("withheld: fewer than three batches in an arm");
        case core::Verdict::NoClearDifference:
            return QStringLiteral("no clear difference");
        case core::Verdict::FirstBetter:
            return QString::fromStdString(compared.first.name) + QStringLiteral(" did better");
        case core::Verdict::SecondBetter:
            return QString::fromStdString(compared.second.name) + QStringLiteral(" did better");
    }
    return {};
}

QString testInWords(const core::Pair& pair) {
    if (pair.batchRatesP && pair.batchRatesHolm && *pair.batchRatesHolm != *pair.batchRatesP)
        return QStringLiteral("Test on batch rates: %1, after Holm's adjustment %2.")
            .arg(plot::pText(*pair.batchRatesP), plot::pText(*pair.batchRatesHolm));
    if (pair.batchRatesP) return QStringLiteral("Test on batch rates: %1.").arg(plot::pText(*pair.batchRatesP));
    if (pair.batchPermutationP)
        return QStringLiteral("No batch differs from its arm's others, so batches dealt anew decide: %1.")
            .arg(plot::pText(*pair.batchPermutationP));
    return QStringLiteral("There is no test on batch rates here.");
}

MethodNote verdictNote(const ComparedPair& compared) {
    constexpr double mostLuck = 0.1;
    MethodNote note = batchesNote(QStringLiteral("verdict"), compared);
    Numbers& numbers = note.numbers;
    putCount(numbers, QStringLiteral("stations1"), compared.first.stations);
    putCount(numbers, QStringLiteral("stations2"), compared.second.stations);
    numbers[QStringLiteral("alpha")] = plot::amountText(std::min(1 - compared.level, mostLuck));
    numbers[QStringLiteral("test")] = testInWords(compared.pair);
    numbers[QStringLiteral("verdict")] = verdictInWords(compared.pair.verdict, compared);
    numbers[QStringLiteral("words")] = named(compared.pair.inWords);
    return note;
}

}  // namespace

std::vector<MethodNote> notesOnDifference(const core::Comparison& comparison, int pair) {
    if (pair < 0 || pair >= std::ssize(comparison.pairs)) return {};
    const ComparedPair compared = comparedPair(comparison, pair);
    if (!compared.pair.difference) return {};
    std::vector<MethodNote> notes{verdictNote(compared), scoreNote(compared), newcombeNote(compared)};
    if (compared.pair.difference->withSpread) notes.push_back(differenceWithSpreadNote(compared));
    if (compared.pair.batchRatesP) notes.push_back(batchRatesNote(compared));
    if (compared.pair.batchPermutationP) notes.push_back(permutationNote(compared));
    for (MethodNote& note : notesOnCountedPair(compared)) notes.push_back(std::move(note));
    for (MethodNote& note : notesOnAsGoodAs(compared)) notes.push_back(std::move(note));
    return notes;
}

}  // namespace report
