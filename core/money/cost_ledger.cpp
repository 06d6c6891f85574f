// SPDX-License-Identifier: MIT
#include "core/money/cost_ledger.h"

#include <algorithm>
#include <tuple>

#include "core/comparison/english.h"

namespace core {
namespace {

auto placeOfLine(const CostLine& line) {
    return std::tuple(line.part, std::string_view(line.what));
}

auto placeOfEmpty(const StoodEmpty& empty) {
    return std::tuple(empty.part, std::string_view(empty.what), empty.method, empty.station, empty.medium,
                      empty.treatment);
}

void putInOrder(CostOfBatch& cost) {
    std::ranges::sort(cost.lines, {}, placeOfLine);
    std::vector<CostLine> lines;
    for (CostLine& line : cost.lines) {
        cost.parts.add(line.part, line.amount);
        if (!lines.empty() && placeOfLine(lines.back()) == placeOfLine(line))
            lines.back().amount += line.amount;
        else
            lines.push_back(std::move(line));
    }
    cost.lines = std::move(lines);
}

std::string daysInWords(std::span<const int> days) {
    const std::string first = isoText(dateOfDayNumber(days.front())), last = isoText(dateOfDayNumber(days.back()));
    const int stretch = days.back() - days.front() + 1, count = static_cast<int>(days.size());
    if (stretch == 1) return "on " + first;
    if (count == stretch) return "from " + first + " to " + last;
    return "on " + counted(count, "day", "days") + " between " + first + " and " + last;
}

}  // namespace

CostLedger::CostLedger(std::span<const BatchRecord> batches) {
    costs_.batches.reserve(batches.size());
    for (const BatchRecord& record : batches) {
        costs_.places.emplace(record.batch.id, costs_.batches.size());
        costs_.batches.push_back({.batch = record.batch.id});
    }
}

void CostLedger::charge(std::size_t batch, CostPart part, const std::string& what, double amount) {
    if (amount > 0) costs_.batches[batch].lines.push_back({.part = part, .what = what, .amount = amount});
}

void CostLedger::chargeOwnThing(std::size_t batch, const std::string& what, double amount) {
    charge(batch, CostPart::Lasting, what, amount);
    costs_.batches[batch].ofOwnThings += amount;
}

void CostLedger::noteEmpty(const Price& price, CostPart part, int days, double amount) {
    if (days == 0) return;
    StoodEmpty empty{.method = price.method,
                     .station = price.station,
                     .medium = price.medium,
                     .treatment = price.treatment,
                     .part = part,
                     .what = price.what,
                     .days = days,
                     .amount = amount};
    const auto known = std::ranges::find(costs_.stoodEmpty, placeOfEmpty(empty), placeOfEmpty);
    if (known == costs_.stoodEmpty.end()) return costs_.stoodEmpty.push_back(std::move(empty));
    known->days += days;
    known->amount += amount;
}

void CostLedger::noteMissing(const std::string& whatHolds, const std::string& whatIsNotIn, std::span<const int> days,
                             std::span<const std::size_t> batches) {
    if (days.empty()) return;
    for (const std::size_t batch : batches) costs_.batches[batch].missing.push_back(costs_.missing.size());
    costs_.missing.push_back(whatHolds + " " + daysInWords(days) + ", so " + whatIsNotIn + " isn't in it.");
}

void CostLedger::note(const std::string& sentence) {
    costs_.missing.push_back(sentence);
}

CostsOfBatches CostLedger::close() && {
    for (CostOfBatch& cost : costs_.batches) putInOrder(cost);
    std::ranges::sort(costs_.stoodEmpty, {}, placeOfEmpty);
    return std::move(costs_);
}

}  // namespace core
