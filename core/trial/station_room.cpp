// SPDX-License-Identifier: MIT
#include "core/trial/station_room.h"

#include <algorithm>
#include <map>

#include "core/batch/batch_rules.h"
#include "core/batch/position_rules.h"
#include "core/field_faults.h"
#include "stats/numeric/seeded_random.h"

namespace core {

namespace {

/// A session's own stream of chance, so that its places can be dealt again without the other sessions'.
stats::SeededRandom chanceOf(std::uint32_t seed, int session) {
    constexpr unsigned bitsOfSeed = 32;
    return stats::SeededRandom((static_cast<std::uint64_t>(session) << bitsOfSeed) | seed);
}

/// Cuttings that stand side by side: what a station has of one block, arm by arm.
struct Group {
    StationId station{};
    std::string block{};
    std::vector<std::size_t> batches{};

    [[nodiscard]] bool holds(const TrialBatch& dealt) const { return dealt.station == station && dealt.block == block; }
};

std::vector<Group> groupsOf(std::span<const TrialBatch> batches) {
    std::vector<Group> groups;
    for (std::size_t place = 0; place < batches.size(); ++place) {
        const TrialBatch& dealt = batches[place];
        auto group = std::ranges::find_if(groups, [&](const Group& one) { return one.holds(dealt); });
        if (group == groups.end())
            group = groups.insert(groups.end(), {.station = dealt.station, .block = dealt.block, .batches = {}});
        group->batches.push_back(place);
    }
    return groups;
}

/// The first of the free places of the group's side, or anywhere where its block is no side. Takes them off the room.
std::vector<Position> takenFrom(StationRoom& room, const Group& group, BlockedBy blocks, std::size_t count) {
    const bool isBySide = blocks == BlockedBy::StationSide, isLeft = group.block == sideName(room.name, true);
    std::vector<Position> taken, left;
    for (const Position position : room.free) {
        const bool isFit = !isBySide || isOnLeft(room, position) == isLeft;
        (isFit && taken.size() < count ? taken : left).push_back(position);
    }
    room.free = std::move(left);
    room.places -= static_cast<int>(count);
    return taken;
}

void placeGroup(const Group& group, BlockedBy blocks, std::span<TrialBatch> batches, stats::SeededRandom& random,
                StationRoom& room) {
    if (room.columns == 0) {
        for (const std::size_t batch : group.batches) room.places -= batches[batch].stuck;
        return;
    }
    std::vector<std::size_t> owners;
    for (const std::size_t batch : group.batches)
        owners.insert(owners.end(), static_cast<std::size_t>(batches[batch].stuck), batch);
    const std::vector<Position> places = takenFrom(room, group, blocks, owners.size());
    if (group.batches.size() > 1) random.shuffle(std::span<std::size_t>(owners));
    std::map<std::size_t, std::vector<Position>> of;
    for (std::size_t cutting = 0; cutting < places.size(); ++cutting) of[owners[cutting]].push_back(places[cutting]);
    for (const std::size_t batch : group.batches) batches[batch].positions = textOf(of[batch]);
}

int placesFor(const StationRoom& room, const Group& group, BlockedBy blocks) {
    if (room.columns == 0) return room.places;
    StationRoom tried = room;
    return static_cast<int>(takenFrom(tried, group, blocks, room.free.size()).size());
}

/// Whether each group of a session finds room.
Refusals faultsInRoom(std::span<const TrialBatch> batches, BlockedBy blocks, std::vector<StationRoom> rooms) {
    Refusals faults;
    for (const Group& group : groupsOf(batches)) {
        int needed = 0;
        for (const std::size_t batch : group.batches) needed += batches[batch].stuck;
        const auto room = std::ranges::find(rooms, group.station, &StationRoom::station);
        const int places = room == rooms.end() ? 0 : placesFor(*room, group, blocks);
        if (room != rooms.end() && needed <= places) {
            (void)takenFrom(*room, group, blocks, static_cast<std::size_t>(needed));
            continue;
        }
        const std::string field = "Free places at " + (room == rooms.end() ? std::string("a station") : room->name);
        const std::string allowed = "at least " + std::to_string(needed);
        faults.push_back({field, std::to_string(places), allowed,
                          field + " are " + std::to_string(places) + "; " + allowed + " are needed."});
    }
    return faults;
}

}  // namespace

StationRoom roomAt(const Station& station, std::span<const BatchRecord> there) {
    StationRoom room{.station = station.id, .name = station.name, .method = station.method, .places = mostStuck};
    if (!station.hasLayout()) return room;
    std::vector<HeldPosition> held;
    for (const BatchRecord& record : there)
        for (HeldPosition& one : heldPositions(record)) held.push_back(std::move(one));
    room.columns = station.columns;
    room.free = freePositions(station, held, station.rows * station.columns);
    room.places = static_cast<int>(room.free.size());
    return room;
}

std::string sideName(const std::string& station, bool isLeft) {
    return station + (isLeft ? ", left" : ", right");
}

bool isOnLeft(const StationRoom& room, Position position) {
    return position.column < (room.columns + 1) / 2;
}

void placeSession(std::span<TrialBatch> batches, BlockedBy blocks, std::uint32_t seed,
                  std::vector<StationRoom>& rooms) {
    if (batches.empty()) return;
    stats::SeededRandom random = chanceOf(seed, batches.front().session);
    for (const Group& group : groupsOf(batches)) {
        const auto room = std::ranges::find(rooms, group.station, &StationRoom::station);
        if (room != rooms.end()) placeGroup(group, blocks, batches, random, *room);
    }
}

Result<std::vector<TrialBatch>> placedAgain(const Trial& trial, int session, std::vector<StationRoom> rooms) {
    std::vector<TrialBatch> ofSession;
    std::ranges::copy_if(trial.batches, std::back_inserter(ofSession),
                         [session](const TrialBatch& dealt) { return dealt.session == session; });
    const bool isOpen = std::ranges::none_of(ofSession, [](const TrialBatch& dealt) { return dealt.batch.isSet(); });
    if (ofSession.empty() || !isOpen)
        return refused(
            {outOfRange("Session", std::to_string(session), "a session of the trial of which nothing is stuck yet")});
    Refusals faults = faultsInRoom(ofSession, trial.blockedBy, rooms);
    if (!faults.empty()) return refused(std::move(faults));
    placeSession(ofSession, trial.blockedBy, trial.allocationSeed.value_or(0), rooms);
    std::vector<TrialBatch> all = trial.batches;
    auto next = ofSession.begin();
    for (TrialBatch& dealt : all)
        if (dealt.session == session) dealt = *next++;
    return all;
}

}  // namespace core
