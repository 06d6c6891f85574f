// SPDX-License-Identifier: MIT
#include "core/causes/losses.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "core/comparison/english.h"
#include "core/comparison/rate_interval.h"
#include "stats/overdispersion/tray_interval.h"

namespace core {

namespace {

using std::chrono::year_month;

struct DaySpan {
    Date from, until;
    [[nodiscard]] bool holds(Date day) const { return from <= day && day <= until; }
};

/// One batch in one span.
struct BatchInSpan {
    int stood{}, lost{};
    std::map<LossCauseId, int> byCause;
};

struct SummedUp {
    LossCount count;
    std::map<LossCauseId, int> byCause;

    void add(const BatchInSpan& batch) {
        if (batch.stood <= 0 && batch.lost == 0) return;
        ++count.batches;
        count.stood += std::max(batch.stood, batch.lost);
        count.lost += batch.lost;
        for (const auto& [cause, lost] : batch.byCause) byCause[cause] += lost;
    }
};

Date beginOf(const BatchRecord& record) {
    Date first = record.batch.stuckOn;
    for (const Check& check : record.checks) first = std::min(first, check.checkedOn);
    return first;
}

BatchInSpan inSpan(const BatchRecord& record, const DaySpan& span) {
    BatchInSpan found;
    if (record.batch.stuckOn <= span.until && !(record.batch.closedOn && *record.batch.closedOn < span.from))
        found.stood = record.batch.stuck;
    for (const Check& check : record.checks) {
        if (check.checkedOn < span.from) found.stood -= check.rooted + check.withdrawn + check.lost();
        if (!span.holds(check.checkedOn)) continue;
        for (const Loss& loss : check.losses) {
            found.byCause[loss.cause] += loss.count;
            found.lost += loss.count;
        }
    }
    found.stood = std::max(found.stood, 0);
    return found;
}

year_month monthOf(Date day) {
    return day.year() / day.month();
}

DaySpan spanOf(year_month month, const DaySpan& whole) {
    const Date first = month / std::chrono::day{1}, last{month / std::chrono::last};
    return {.from = std::max(first, whole.from), .until = std::min(last, whole.until)};
}

/// Until when the batch can stand: to its last check where that decided the last cutting, to its closing, else to the end.
Date endOf(const BatchRecord& record, const DaySpan& span) {
    int undecided = record.batch.stuck;
    Date last = beginOf(record);
    for (const Check& check : record.checks) {
        undecided -= check.rooted + check.withdrawn + check.lost();
        last = std::max(last, check.checkedOn);
    }
    if (undecided <= 0) return std::min(last, span.until);
    if (record.batch.closedOn) return std::min(std::max(last, *record.batch.closedOn), span.until);
    return span.until;
}

std::optional<DaySpan> spanAsked(std::span<const BatchRecord* const> batches, const LossQuestion& question) {
    std::optional<DaySpan> span;
    for (const BatchRecord* record : batches)
        for (const Check& check : record->checks) {
            if (!span) span = DaySpan{check.checkedOn, check.checkedOn};
            span->from = std::min(span->from, check.checkedOn);
            span->until = std::max(span->until, check.checkedOn);
        }
    if (!span && !(question.from && question.until)) return {};
    if (!span) span = DaySpan{*question.from, *question.until};
    if (question.from) span->from = *question.from;
    if (question.until) span->until = *question.until;
    return span;
}

std::string nameOfCause(LossCauseId id, const Shelves& shelves) {
    const LossCause* cause = find(shelves.lossCauses, id);
    return cause == nullptr ? "cause not known" : cause->name;
}

Limits wilson(int count, int of, double level) {
    return rateLimits(RateInterval::Wilson, count, of, level);
}

/// Batches that lost any, each with what it lost to the cause of all that it lost.
std::vector<stats::Tray> traysOf(const std::vector<BatchInSpan>& batches, LossCauseId cause) {
    std::vector<stats::Tray> trays;
    for (const BatchInSpan& batch : batches) {
        if (batch.lost == 0) continue;
        const auto lost = batch.byCause.find(cause);
        trays.push_back({.successes = lost == batch.byCause.end() ? 0 : lost->second, .trials = batch.lost});
    }
    return trays;
}

std::vector<LossRow> rowsOf(const std::vector<BatchInSpan>& batches, const SummedUp& sum, const Shelves& shelves,
                            double level) {
    std::vector<LossRow> rows;
    const int lost = sum.count.lost;
    for (const auto& [cause, count] : sum.byCause) {
        if (count == 0) continue;
        LossRow row{.cause = cause, .loss = {.cause = nameOfCause(cause, shelves), .count = count}};
        row.share = static_cast<double>(count) / lost;
        row.asCounted = wilson(count, lost, level);
        row.counted = traysOf(batches, cause);
        row.batches =
            static_cast<int>(std::ranges::count_if(row.counted, [](const auto& tray) { return tray.successes > 0; }));
        const stats::TrayInterval spread = stats::trayInterval(row.counted, level);
        if (spread.includesTrayVariation) row.withSpread = Limits{.low = spread.limits.low, .high = spread.limits.high};
        rows.push_back(std::move(row));
    }
    std::ranges::stable_sort(rows, {}, [](const LossRow& row) { return std::tuple(-row.loss.count, row.loss.cause); });
    int running = 0;
    for (LossRow& row : rows) row.runningShare = static_cast<double>(running += row.loss.count) / lost;
    return rows;
}

LossCount finished(SummedUp sum, const std::vector<LossRow>& rows, double level) {
    LossCount& count = sum.count;
    for (const LossRow& row : rows) count.byCause.push_back(sum.byCause[row.cause]);
    count.asCounted = wilson(count.lost, count.stood, level);
    if (count.stood > 0) count.rate = static_cast<double>(count.lost) / count.stood;
    return count;
}

struct LossTables {
    std::map<year_month, SummedUp> months;
    std::map<StationId, SummedUp> stations;
    std::vector<BatchInSpan> batches;
    SummedUp all;

    void add(const BatchRecord& record, const DaySpan& span) {
        BatchInSpan whole = inSpan(record, span);
        if (whole.stood == 0 && whole.lost == 0) return;
        stations[record.batch.station].add(whole);
        all.add(whole);
        const year_month last = monthOf(endOf(record, span));
        for (year_month month = monthOf(std::max(beginOf(record), span.from)); month <= last;
             month += std::chrono::months{1})
            months[month].add(inSpan(record, spanOf(month, span)));
        batches.push_back(std::move(whole));
    }
};

void fillTables(LossTables tables, const Shelves& shelves, Losses& losses) {
    for (auto& [month, sum] : tables.months)
        if (sum.count.stood > 0)
            losses.months.push_back({.month = month, .count = finished(std::move(sum), losses.rows, losses.level)});
    for (auto& [id, sum] : tables.stations) {
        const Station* station = find(shelves.stations, id);
        losses.stations.push_back({.station = id,
                                   .name = station == nullptr ? "station not recorded" : station->name,
                                   .count = finished(std::move(sum), losses.rows, losses.level)});
    }
    std::ranges::stable_sort(losses.stations, {}, [](const StationOfLosses& station) {
        return std::tuple(-station.count.rate.value_or(0), station.name);
    });
}

std::string lossesInWords(const Losses& losses) {
    if (losses.batches == 0) return "No cuttings stood at risk in this time.";
    const std::string of =
        counted(losses.stood, "cutting", "cuttings") + " in " + counted(losses.batches, "batch", "batches");
    if (losses.lost == 0) return "Nothing was lost of " + of + ".";
    const LossRow& most = losses.rows.front();
    std::string words =
        "Of " + of + " " + std::to_string(losses.lost) + (losses.lost == 1 ? " was lost" : " were lost");
    if (!most.cause.isSet())
        return words + "; of most, " + counted(most.loss.count, "cutting", "cuttings") + ", the cause is not known.";
    words += ". Most were lost to \u201c" + most.loss.cause + "\u201d: " + std::to_string(most.loss.count) + " of " +
             std::to_string(losses.lost) + ".";
    for (const LossRow& row : losses.rows)
        if (!row.cause.isSet())
            words += " The cause of " + counted(row.loss.count, "cutting", "cuttings") + " is not known.";
    return words;
}

}  // namespace

Losses lossesOver(std::span<const BatchRecord> batches, const Shelves& shelves, const LossQuestion& question,
                  const std::stop_token& stop) {
    Losses losses{
        .from = question.from, .until = question.until, .level = question.level.value_or(shelves.facts.level)};
    std::vector<const BatchRecord*> asked;
    for (const BatchRecord& record : batches) {
        if (question.plant.isSet() && record.batch.plant != question.plant) continue;
        if (question.method.isSet() && record.batch.method != question.method) continue;
        asked.push_back(&record);
    }
    LossTables tables;
    if (const auto span = spanAsked(asked, question); span && span->from <= span->until) {
        losses.from = span->from;
        losses.until = span->until;
        for (const BatchRecord* record : asked) {
            if (stop.stop_requested()) return losses;
            tables.add(*record, *span);
        }
    }
    losses.batches = tables.all.count.batches;
    losses.stood = tables.all.count.stood;
    losses.lost = tables.all.count.lost;
    losses.batchesWithLosses = static_cast<int>(
        std::ranges::count_if(tables.batches, [](const BatchInSpan& batch) { return batch.lost > 0; }));
    losses.rows = rowsOf(tables.batches, tables.all, shelves, losses.level);
    fillTables(std::move(tables), shelves, losses);
    losses.inWords = lossesInWords(losses);
    return losses;
}

}  // namespace core
