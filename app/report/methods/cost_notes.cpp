// SPDX-License-Identifier: MIT
#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "app/plot/cost_text.h"
#include "app/plot/number_text.h"
#include "app/report/methods/note_numbers.h"
#include "app/report/methods/notes.h"

namespace report {
namespace {

/// With more decimals than money is paid in: who redoes a sum wants its parts to add up.
QString amountInWords(double amount) {
    const double size = std::abs(amount);
    return size >= 0.01 && size < 1 ? plot::decimalText(amount, 4) : plot::costAmount(amount);
}

/// `name` for people, and `name_r` with more digits than any cent has, yet none that are only rounding.
void putAmount(Numbers& numbers, const QString& name, double amount) {
    constexpr int digits = 10;
    numbers[name] = amountInWords(amount);
    numbers[name + QStringLiteral("_r")] = QLocale::c().toString(amount, 'g', digits);
}

/// The batches of a mix and the part of each plant in it.
void putMix(Numbers& numbers, const std::vector<core::MixedPlant>& mix, const QString& number = {}) {
    std::vector<core::BatchCount> batches;
    std::vector<int> plantOfBatch;
    std::vector<double> shares;
    for (const core::MixedPlant& plant : mix) {
        const std::size_t before = batches.size();
        for (const stats::Tray& tray : plant.batches)
            if (tray.trials > 0) batches.push_back({.code = {}, .rooted = tray.successes, .assessed = tray.trials});
        if (batches.size() == before) continue;
        shares.push_back(plant.share);
        plantOfBatch.resize(batches.size(), static_cast<int>(shares.size()));
    }
    numbers[QStringLiteral("counted") + number] = countsInWords(batches);
    numbers[QStringLiteral("y%1_r").arg(number)] = listForR(rootedOf(batches));
    numbers[QStringLiteral("n%1_r").arg(number)] = listForR(assessedOf(batches));
    numbers[QStringLiteral("plant%1_r").arg(number)] = listForR(plantOfBatch);
    numbers[QStringLiteral("share_r")] = listForR(shares);
}

void putLaw(Numbers& numbers, const core::Worth& worth) {
    numbers[QStringLiteral("rho_r")] = listForR(worth.correlations);
    numbers[QStringLiteral("law_r")] = sharedLinesOfR(QStringLiteral("rate_law"));
}

bool hasLaw(const core::WorthOfMethod& method) {
    return !method.rates.empty() && !method.mix.empty();
}

/// One of the two of a pair; `number` is 1 or 2.
void putOne(Numbers& numbers, const core::WorthOfMethod& method, const QString& number) {
    putCount(numbers, QStringLiteral("y") + number, method.strike.succeeded);
    putCount(numbers, QStringLiteral("n") + number, method.strike.of);
    putCount(numbers, QStringLiteral("batches") + number, method.strike.batches);
    put(numbers, QStringLiteral("rate") + number, method.strike.rate);
    putAmount(numbers, QStringLiteral("cost") + number, method.perCutting.total());
    putAmount(numbers, QStringLiteral("up") + number, method.upFront);
    putAmount(numbers, QStringLiteral("batch") + number, method.perBatch);
    putAmount(numbers, QStringLiteral("cut") + number, method.cuttingsPerBatch);
    numbers[QStringLiteral("cut") + number] = plot::decimalText(method.cuttingsPerBatch, 1);
    putMix(numbers, method.mix, number);
}

QString partsInWords(const core::CostParts& parts) {
    QStringList words;
    for (const core::CostPart part : core::allCostParts)
        if (parts.of(part) > 0)
            words << QStringLiteral("%1 %2").arg(plot::costPartText(part), amountInWords(parts.of(part)));
    return words.join(QStringLiteral(" + "));
}

/// Where none rooted, words take the place of numbers that there aren't; R says Inf.
void putEach(Numbers& numbers, const core::CostOfEach& cost) {
    const double value = cost.value.value_or(HUGE_VAL);
    put(numbers, QStringLiteral("each"), value, decimalsFor(value));
    put(numbers, QStringLiteral("each_low"), cost.limits.low, decimalsFor(cost.limits.low));
    put(numbers, QStringLiteral("each_high"), cost.limits.high, decimalsFor(cost.limits.high));
    if (!cost.value) numbers[QStringLiteral("each")] = QStringLiteral("none, as none rooted");
    if (std::isinf(cost.limits.high)) numbers[QStringLiteral("each_high")] = QStringLiteral("no bound");
}

MethodNote costNote(const core::Worth& worth, const core::WorthOfMethod& method) {
    MethodNote note{QStringLiteral("cost_per_plant"), {}};
    Numbers& numbers = note.numbers;
    numbers[QStringLiteral("method")] = method.plantName.empty()
                                            ? named(method.name)
                                            : QStringLiteral("%1, %2").arg(named(method.plantName), named(method.name));
    putCount(numbers, QStringLiteral("rooted"), method.strike.succeeded);
    putCount(numbers, QStringLiteral("assessed"), method.strike.of);
    putCount(numbers, QStringLiteral("batches"), method.strike.batches);
    putCount(numbers, QStringLiteral("priced"), method.pricedStuck);
    putCount(numbers, QStringLiteral("priced_batches"), method.pricedBatches);
    numbers[QStringLiteral("parts")] = partsInWords(method.perCutting);
    putAmount(numbers, QStringLiteral("cost"), method.perCutting.total());
    put(numbers, QStringLiteral("rate"), method.strike.rate);
    put(numbers, QStringLiteral("rate_low"), method.strike.limits.low);
    put(numbers, QStringLiteral("rate_high"), method.strike.limits.high);
    putEach(numbers, method.perRooted);
    putLevel(numbers, worth.level);
    putMix(numbers, method.mix);
    putLaw(numbers, worth);
    return note;
}

const core::WorthOfPair* pairWithLaws(const core::Worth& worth, int pair) {
    if (pair < 0 || pair >= std::ssize(worth.pairs)) return nullptr;
    const core::WorthOfPair& found = worth.pairs[static_cast<std::size_t>(pair)];
    const bool isWeighed = !found.plants.empty() && hasLaw(found.dear) && hasLaw(found.cheap);
    return isWeighed ? &found : nullptr;
}

void putBatches(Numbers& numbers, const QString& name, std::optional<int> batches) {
    numbers[name] = batches ? QString::number(*batches) : QStringLiteral("never");
    numbers[name + QStringLiteral("_r")] = batches ? QString::number(*batches) : forR(HUGE_VAL);
}

}  // namespace

std::vector<MethodNote> notesOnCosts(const core::Worth& worth, const std::vector<core::WorthOfMethod>& shown) {
    const auto found = std::ranges::find_if(
        shown, [](const core::WorthOfMethod& method) { return method.perCutting.total() > 0 && hasLaw(method); });
    if (found == shown.end()) return {};
    return {costNote(worth, *found)};
}

std::vector<MethodNote> notesOnWorth(const core::Worth& worth, int pair) {
    const core::WorthOfPair* shown = pairWithLaws(worth, pair);
    if (shown == nullptr || shown->verdict == core::WorthVerdict::NothingPriced) return {};
    MethodNote note{QStringLiteral("dearer_pays"), {}};
    Numbers& numbers = note.numbers;
    numbers[QStringLiteral("dear")] = named(shown->dear.name);
    numbers[QStringLiteral("cheap")] = named(shown->cheap.name);
    putOne(numbers, shown->dear, QStringLiteral("1"));
    putOne(numbers, shown->cheap, QStringLiteral("2"));
    putLaw(numbers, worth);
    put(numbers, QStringLiteral("days"), shown->daysSaved.value_or(0), 2);
    putAmount(numbers, QStringLiteral("day"), shown->worthOfADay.value_or(0));
    putAmount(numbers, QStringLiteral("shift"), shown->line.shift);
    put(numbers, QStringLiteral("chance"), shown->chanceDearPays, 3);
    put(numbers, QStringLiteral("tie"), shown->dearStrikeToTie.value_or(1));
    if (!shown->dearStrikeToTie) {
        numbers[QStringLiteral("tie")] = QStringLiteral("no rate up to 1");
        numbers[QStringLiteral("tie_r")] = QStringLiteral("NA: no rate up to 1");
    }
    return {std::move(note)};
}

std::vector<MethodNote> notesOnPayOff(const core::Worth& worth, int pair) {
    const core::WorthOfPair* shown = pairWithLaws(worth, pair);
    if (shown == nullptr || !shown->breakEven) return {};
    const core::BreakEvenBatches& even = *shown->breakEven;
    const bool isDearEquipped = even.method == shown->dear.method;
    const core::WorthOfMethod& own = isDearEquipped ? shown->dear : shown->cheap;
    const core::WorthOfMethod& other = isDearEquipped ? shown->cheap : shown->dear;
    if (own.perBatch <= 0 && other.perBatch <= 0) return {};  // then it is paid for by no number of batches
    MethodNote note{QStringLiteral("break_even"), {}};
    Numbers& numbers = note.numbers;
    numbers[QStringLiteral("own")] = named(own.name);
    numbers[QStringLiteral("other")] = named(other.name);
    putOne(numbers, own, QStringLiteral("1"));
    putOne(numbers, other, QStringLiteral("2"));
    putLaw(numbers, worth);
    putLevel(numbers, worth.level);
    put(numbers, QStringLiteral("ever"), even.chanceEver);
    putBatches(numbers, QStringLiteral("low"), even.low);
    putBatches(numbers, QStringLiteral("middle"), even.middle);
    putBatches(numbers, QStringLiteral("high"), even.high);
    return {std::move(note)};
}

}  // namespace report
