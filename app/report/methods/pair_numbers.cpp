// SPDX-License-Identifier: MIT
#include "app/report/methods/pair_numbers.h"

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

MethodNote ratioNote(const ComparedPair& compared) {
    MethodNote note = pairNote(QStringLiteral("ratio"), compared);
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
    note.numbers[QStringLiteral("y1_r")] = listForR(rootedOf(compared.first.counted));
    note.numbers[QStringLiteral("n1_r")] = listForR(assessedOf(compared.first.counted));
    note.numbers[QStringLiteral("y2_r")] = listForR(rootedOf(compared.second.counted));
    note.numbers[QStringLiteral("n2_r")] = listForR(assessedOf(compared.second.counted));
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
    notes.push_back(fisherNote(compared));
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
