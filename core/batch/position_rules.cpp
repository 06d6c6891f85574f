// SPDX-License-Identifier: MIT
#include "core/batch/position_rules.h"

#include <algorithm>
#include <map>
#include <set>

#include "core/units/entered_text.h"

namespace core {

namespace {

std::vector<Position> positionsOf(const Batch& batch) {
    return positionsFrom(batch.positions).value_or(std::vector<Position>());
}

Refusal positionRefusal(const std::string& value, const std::string& allowed, const std::string& reason) {
    return {"Positions", value, allowed, "Positions are " + value + reason + "; " + allowed + " is allowed."};
}

Refusal unreadable(const Batch& batch) {
    return positionRefusal(quotable(batch.positions), "a list such as A1-A6, B2", ", which can't be read");
}

/// Those of `positions` that `isBad`, as text; empty when there are none.
template <class Claim>
std::string whereBad(const std::vector<Position>& positions, const Claim& isBad) {
    std::vector<Position> bad;
    std::ranges::copy_if(positions, std::back_inserter(bad), isBad);
    return textOf(std::move(bad));
}

std::vector<Position> allPositions(Station station) {
    station.blocked.clear();
    return usablePositions(station);
}

/// Where cuttings stand must not be blocked; where they stood may have broken since.
void judgeLayout(const std::vector<Position>& positions, const Station& station, bool isOpen, Refusals& faults) {
    const std::vector<Position> usable = isOpen ? usablePositions(station) : allPositions(station);
    const std::string bad =
        whereBad(positions, [&](Position position) { return !std::ranges::binary_search(usable, position); });
    if (bad.empty()) return;
    if (usable.empty())
        faults.push_back(
            positionRefusal(bad, "no position", ", but the layout of " + station.name + " is not described"));
    else
        faults.push_back(positionRefusal(bad, textOf(usable), ", where " + station.name + " holds no cutting"));
}

void judgeHeld(const std::vector<Position>& positions, std::span<const HeldPosition> held, Refusals& faults) {
    std::map<Position, std::string> holders;
    for (const HeldPosition& one : held) holders.emplace(one.position, one.code);
    const std::string bad = whereBad(positions, [&](Position position) { return holders.contains(position); });
    if (bad.empty()) return;
    const std::string& holder =
        holders.at(*std::ranges::find_if(positions, [&](Position position) { return holders.contains(position); }));
    faults.push_back(positionRefusal(bad, "a free position", ", where cuttings of " + holder + " stand"));
}

void judgeFound(const std::vector<Position>& positions, const Batch& batch, std::span<const Check> checks,
                Refusals& faults) {
    std::vector<Position> missing;
    for (const Check& check : checks)
        for (const Finding& finding : check.findings)
            if (!std::ranges::binary_search(positions, finding.position)) missing.push_back(finding.position);
    if (missing.empty()) return;
    const std::string without = textOf(std::move(missing));
    faults.push_back(positionRefusal(batch.positions.empty() ? "none" : batch.positions, "a list with " + without,
                                     " without " + without + ", which checks of " + batch.code + " name"));
}

std::vector<Position> standingOf(const Batch& batch, std::span<const Check> checks) {
    std::vector<Position> standing;
    for (const HeldPosition& held : heldPositions({.batch = batch, .checks = {checks.begin(), checks.end()}}))
        standing.push_back(held.position);
    return standing;
}

/// A layout that has lost positions of a batch: blames the rows when they are too few, else the columns.
Refusal outsideRefusal(const Station& station, const Batch& batch, const std::string& outside) {
    int rows = 0, columns = 0;
    for (const Position position : positionsOf(batch)) {
        rows = std::max(rows, position.row + 1);
        columns = std::max(columns, position.column + 1);
    }
    const bool isRows = station.rows < rows;
    const std::string field = isRows ? "Rows" : "Columns";
    const std::string value = std::to_string(isRows ? station.rows : station.columns);
    const std::string allowed = "at least " + std::to_string(isRows ? rows : columns);
    return {field, value, allowed,
            field + " is " + value + ", but " + batch.code + " is recorded at " + outside + "; " + allowed +
                " is allowed."};
}

Refusal blockedRefusal(const Station& station, const Batch& batch, const std::string& onBlocked) {
    const std::string field = "Blocked positions";
    return {field, station.blocked, "positions where nothing stands",
            field + " are " + station.blocked + ", but cuttings of " + batch.code + " stand at " + onBlocked +
                "; positions where nothing stands are allowed."};
}

Refusal findingRefusal(const Finding& finding, const std::string& allowed, const std::string& reason) {
    const std::string value = nameOf(finding.position) + ' ' + std::string(wordFor(finding.outcome));
    return {"Position " + nameOf(finding.position), value, allowed,
            "Position " + value + reason + "; " + allowed + " is allowed."};
}

void judgePlaces(const Check& check, const Batch& batch, std::span<const Check> others, Refusals& faults) {
    const std::vector<Position> positions = positionsOf(batch);
    std::map<Position, Date> found;
    for (const Check& other : others)
        for (const Finding& finding : other.findings) found.emplace(finding.position, other.checkedOn);
    for (const Finding& finding : check.findings) {
        if (!std::ranges::binary_search(positions, finding.position))
            faults.push_back(findingRefusal(finding, batch.positions.empty() ? "none" : batch.positions,
                                            " is not one of " + batch.code));
        const auto [earlier, isNew] = found.emplace(finding.position, check.checkedOn);
        if (!isNew)
            faults.push_back(
                findingRefusal(finding, "each position once", " is decided already, on " + isoText(earlier->second)));
    }
}

int countedAs(const Check& check, const Finding& finding) {
    switch (finding.outcome) {
        case Outcome::Rooted:
            return check.rooted;
        case Outcome::Withdrawn:
            return check.withdrawn;
        case Outcome::Lost:
            break;
    }
    const auto loss = std::ranges::find(check.losses, finding.cause, &Loss::cause);
    return loss == check.losses.end() ? 0 : loss->count;
}

/// No more findings of one sort than the check counts of it.
void judgeCounts(const Check& check, Refusals& faults) {
    std::map<std::pair<Outcome, LossCauseId>, int> sums;
    for (const Finding& finding : check.findings) ++sums[{finding.outcome, finding.cause}];
    for (const auto& [sort, sum] : sums) {
        const Finding finding{.outcome = sort.first, .cause = sort.second};
        const int counted = countedAs(check, finding);
        if (sum <= counted) continue;
        const std::string word(wordFor(sort.first)), value = std::to_string(sum);
        const std::string allowed = "up to " + std::to_string(counted);
        faults.push_back({"Positions", value, allowed,
                          "Positions marked " + word + " are " + value + ", but the check counts " +
                              std::to_string(counted) + " of them as " + word + "; " + allowed + " is allowed."});
    }
}

}  // namespace

std::string_view wordFor(Outcome outcome) {
    switch (outcome) {
        case Outcome::Rooted:
            return "rooted";
        case Outcome::Lost:
            return "lost";
        case Outcome::Withdrawn:
            break;
    }
    return "withdrawn";
}

std::vector<PositionState> positionStates(const BatchRecord& record, std::optional<Date> untilDay) {
    std::vector<PositionState> states;
    for (const Position position : positionsOf(record.batch)) states.push_back({.position = position});
    for (const Check& check : record.checks) {
        if (untilDay && check.checkedOn > *untilDay) continue;
        for (const Finding& finding : check.findings) {
            const auto state = std::ranges::lower_bound(states, finding.position, {}, &PositionState::position);
            if (state == states.end() || state->position != finding.position) continue;
            state->finding = finding;
            state->foundOn = check.checkedOn;
        }
    }
    return states;
}

std::vector<HeldPosition> heldPositions(const BatchRecord& record) {
    if (isClosed(record.batch, tallyOf(record.batch, record.checks))) return {};
    std::vector<HeldPosition> held;
    for (const PositionState& state : positionStates(record))
        if (!state.finding || state.finding->outcome == Outcome::Rooted)
            held.push_back({.position = state.position, .code = record.batch.code});
    return held;
}

std::vector<Position> freePositions(const Station& station, std::span<const HeldPosition> held, int count) {
    std::set<Position> taken;
    for (const HeldPosition& one : held) taken.insert(one.position);
    std::vector<Position> free;
    for (const Position position : usablePositions(station)) {
        if (static_cast<int>(free.size()) >= count) break;
        if (!taken.contains(position)) free.push_back(position);
    }
    return free;
}

Refusals faultsInLayout(const Station& station, std::span<const BatchRecord> batches) {
    Refusals faults;
    const std::vector<Position> all = allPositions(station), usable = usablePositions(station);
    for (const BatchRecord& record : batches) {
        const auto positions = positionsOf(record.batch);
        const std::string outside =
            whereBad(positions, [&](Position position) { return !std::ranges::binary_search(all, position); });
        if (!outside.empty()) faults.push_back(outsideRefusal(station, record.batch, outside));
        std::vector<Position> standing;
        for (const HeldPosition& held : heldPositions(record)) standing.push_back(held.position);
        const std::string onBlocked = whereBad(standing, [&](Position position) {
            return std::ranges::binary_search(all, position) && !std::ranges::binary_search(usable, position);
        });
        if (!onBlocked.empty()) faults.push_back(blockedRefusal(station, record.batch, onBlocked));
    }
    return faults;
}

Refusals faultsInPositions(const Batch& batch, std::span<const Check> checks, const Shelves& shelves,
                           std::span<const HeldPosition> held) {
    Refusals faults;
    const auto positions = positionsFrom(batch.positions);
    if (!positions) return {unreadable(batch)};
    judgeFound(*positions, batch, checks, faults);
    if (positions->empty()) return faults;
    if (static_cast<int>(positions->size()) != batch.stuck)
        faults.push_back(positionRefusal(batch.positions, "as many as were stuck, " + std::to_string(batch.stuck) + ',',
                                         ", which are " + std::to_string(positions->size())));
    const Station* station = find(shelves.stations, batch.station);
    if (station == nullptr)
        faults.push_back(positionRefusal(batch.positions, "no position", ", but the batch has no station"));
    else
        judgeLayout(*positions, *station, !isClosed(batch, tallyOf(batch, checks)), faults);
    judgeHeld(standingOf(batch, checks), held, faults);
    return faults;
}

Refusals faultsInFindings(const Check& check, const Batch& batch, std::span<const Check> others) {
    Refusals faults;
    judgePlaces(check, batch, others, faults);
    judgeCounts(check, faults);
    return faults;
}

}  // namespace core
