// SPDX-License-Identifier: MIT
#include "app/report/methods/pair_numbers.h"

#include <QLocale>
#include <cmath>

#include "app/plot/number_text.h"
#include "app/report/methods/note_numbers.h"

namespace report {
namespace {

void putArm(Numbers& numbers, const core::Arm& arm, const QString& place) {
    putCount(numbers, QStringLiteral("x") + place, arm.rooted);
    putCount(numbers, QStringLiteral("n") + place, arm.assessed);
    putCount(numbers, QStringLiteral("u") + place, arm.assessed - arm.rooted);
    put(numbers, QStringLiteral("rate") + place, arm.rate.value_or(0));
}

std::vector<int> inARow(std::vector<int> first, const std::vector<int>& second) {
    first.insert(first.end(), second.begin(), second.end());
    return first;
}

// A line of R that looks for the end of an interval between two numbers on either side of it.
QString searchForR(const QString& function, double from, double until, double found, int decimals) {
    return QStringLiteral("uniroot(%1, c(%2, %3), tol = 1e-9)$root    # %4")
        .arg(function, QLocale::c().toString(from, 'g', 3), QLocale::c().toString(until, 'g', 3),
             fixedForR(found, decimals));
}

// Where one arm has none rooted the ratio is 0 or infinite, and so is one end.
void putRatioLines(Numbers& numbers, const core::Limits& limits, double ratio) {
    constexpr double aside = 50;
    const QString over = QStringLiteral("over");
    const bool isBetween = ratio > 0 && std::isfinite(ratio);
    numbers[QStringLiteral("low_line_r")] =
        limits.low > 0 ? searchForR(over, limits.low / 2, isBetween ? ratio : limits.low * aside, limits.low, 2)
                       : QStringLiteral("0    # 0.00");
    numbers[QStringLiteral("high_line_r")] =
        std::isfinite(limits.high)
            ? searchForR(over, isBetween ? ratio : limits.high / aside, limits.high * 2, limits.high, 2)
            : QStringLiteral("Inf    # Inf");
}

MethodNote ratioNote(const ComparedPair& compared) {
    MethodNote note = pairNote(QStringLiteral("ratio"), compared);
    putRatioLines(note.numbers, compared.pair.koopman, *compared.pair.riskRatio);
    put(note.numbers, QStringLiteral("ratio"), *compared.pair.riskRatio, 2);
    putLimits(note.numbers, compared.pair.koopman, 2);
    return note;
}

MethodNote oddsNote(const ComparedPair& compared) {
    MethodNote note = pairNote(QStringLiteral("odds_ratio"), compared);
    const double unrooted1 = compared.first.assessed - compared.first.rooted,
                 unrooted2 = compared.second.assessed - compared.second.rooted;
    const double numerator = compared.first.rooted * unrooted2, denominator = unrooted1 * compared.second.rooted;
    note.numbers[QStringLiteral("plain")] = plot::decimalText(denominator > 0 ? numerator / denominator : HUGE_VAL, 2);
    put(note.numbers, QStringLiteral("odds_ratio"), *compared.pair.oddsRatio, 2);
    putLimits(note.numbers, compared.pair.oddsRatioExact, 2);
    note.numbers[QStringLiteral("estimate_r")] = fixedForR(*compared.pair.oddsRatio, 1);
    note.numbers[QStringLiteral("limits_r")] =
        fixedForR(compared.pair.oddsRatioExact.low, 1) + u' ' + fixedForR(compared.pair.oddsRatioExact.high, 1);
    return note;
}

MethodNote fisherNote(const ComparedPair& compared) {
    MethodNote note = pairNote(QStringLiteral("fisher_test"), compared);
    putCount(note.numbers, QStringLiteral("total"), compared.first.rooted + compared.second.rooted);
    putP(note.numbers, QStringLiteral("p"), compared.pair.fisher);
    putP(note.numbers, QStringLiteral("mid_p"), compared.pair.fisherMid);
    return note;
}

MethodNote exactNote(const QString& page, const ComparedPair& compared, double p) {
    MethodNote note = pairNote(page, compared);
    putP(note.numbers, QStringLiteral("p"), p);
    return note;
}

MethodNote chanceNote(const ComparedPair& compared) {
    MethodNote note = pairNote(QStringLiteral("chance_first_better"), compared);
    put(note.numbers, QStringLiteral("chance"), compared.pair.probabilityFirstBetter);
    return note;
}

void putMargin(Numbers& numbers, const ComparedPair& compared, const core::AsGoodAs& answer) {
    numbers[QStringLiteral("arm")] = named(compared.first.name);
    numbers[QStringLiteral("other")] = named(compared.second.name);
    numbers[QStringLiteral("margin")] = plot::amountText(100 * answer.margin);
    numbers[QStringLiteral("margin_share")] = plot::amountText(answer.margin);
    numbers[QStringLiteral("margin_r")] = forR(answer.margin);
}

MethodNote asGoodCountedNote(const ComparedPair& compared, const core::AsGoodAs& answer) {
    MethodNote note = pairNote(QStringLiteral("as_good_as"), compared);
    putMargin(note.numbers, compared, answer);
    putLimits(note.numbers, answer.asCounted);
    putP(note.numbers, QStringLiteral("p"), answer.asCountedP);
    return note;
}

MethodNote asGoodByBatchNote(const ComparedPair& compared, const core::AsGoodAs& answer) {
    MethodNote note = batchesNote(QStringLiteral("as_good_as_by_batch"), compared);
    putMargin(note.numbers, compared, answer);
    putLimits(note.numbers, *answer.withSpread);
    note.numbers[QStringLiteral("answer")] = answer.isShown ? QStringLiteral("it is") : QStringLiteral("not shown");
    return note;
}

}  // namespace

ComparedPair comparedPair(const core::Comparison& comparison, int pair) {
    const core::Pair& shown = comparison.pairs[static_cast<std::size_t>(pair)];
    return {.first = comparison.arms[static_cast<std::size_t>(shown.first)],
            .second = comparison.arms[static_cast<std::size_t>(shown.second)],
            .pair = shown,
            .level = comparison.level};
}

MethodNote pairNote(const QString& page, const ComparedPair& compared) {
    MethodNote note{page, {}};
    note.numbers[QStringLiteral("first")] = named(compared.first.name);
    note.numbers[QStringLiteral("second")] = named(compared.second.name);
    putArm(note.numbers, compared.first, QStringLiteral("1"));
    putArm(note.numbers, compared.second, QStringLiteral("2"));
    if (compared.pair.difference) put(note.numbers, QStringLiteral("difference"), compared.pair.difference->value);
    putLevel(note.numbers, compared.level);
    return note;
}

MethodNote batchesNote(const QString& page, const ComparedPair& compared) {
    MethodNote note = pairNote(page, compared);
    const auto batches1 = static_cast<int>(compared.first.counted.size()),
               batches2 = static_cast<int>(compared.second.counted.size());
    putCount(note.numbers, QStringLiteral("batches1"), batches1);
    putCount(note.numbers, QStringLiteral("batches2"), batches2);
    putCount(note.numbers, QStringLiteral("degrees"), batches1 + batches2 - 2);
    note.numbers[QStringLiteral("y_r")] =
        listForR(inARow(rootedOf(compared.first.counted), rootedOf(compared.second.counted)));
    note.numbers[QStringLiteral("n_r")] =
        listForR(inARow(assessedOf(compared.first.counted), assessedOf(compared.second.counted)));
    note.numbers[QStringLiteral("sizes_r")] = listForR(std::vector<int>{batches1, batches2});
    return note;
}

std::vector<MethodNote> notesOnCountedPair(const ComparedPair& compared) {
    const core::Pair& pair = compared.pair;
    std::vector<MethodNote> notes;
    if (pair.riskRatio) notes.push_back(ratioNote(compared));
    if (pair.oddsRatio) notes.push_back(oddsNote(compared));
    if (!pair.exactTestsLeftOut) notes.push_back(exactNote(QStringLiteral("boschloo_test"), compared, pair.boschloo));
    const int rooted = compared.first.rooted + compared.second.rooted;
    const bool isOneTableOnly = rooted == 0 || rooted == compared.first.assessed + compared.second.assessed;
    if (!isOneTableOnly) notes.push_back(fisherNote(compared));
    if (!pair.exactTestsLeftOut) notes.push_back(exactNote(QStringLiteral("barnard_test"), compared, pair.barnard));
    notes.push_back(chanceNote(compared));
    return notes;
}

std::vector<MethodNote> notesOnAsGoodAs(const ComparedPair& compared) {
    std::vector<MethodNote> notes;
    if (const auto& answer = compared.pair.firstAsGood) {
        if (answer->withSpread) notes.push_back(asGoodByBatchNote(compared, *answer));
        notes.push_back(asGoodCountedNote(compared, *answer));
    }
    return notes;
}

}  // namespace report
