// SPDX-License-Identifier: MIT
#include "core/trial/allocate_trial.h"

#include <algorithm>
#include <numeric>
#include <optional>
#include <tuple>

#include "core/batch/batch_rules.h"
#include "core/trial/sharing_out.h"
#include "stats/numeric/seeded_random.h"
#include "stats/planning/random_allocation.h"

namespace core {

namespace {

std::size_t at(int index) {
    return static_cast<std::size_t>(index);
}

/// Cuttings of one block in one session at one place, which are alike but for their arm.
struct Cell {
    int block{};
    int session{};
    int place{};
    int cuttings{};
    std::vector<int> perArm{};
};

/// A station, or one side of it.
struct Place {
    const StationRoom* room{};
    std::string side{};  // its name as a block; empty: the whole station
    int places{};
};

/// How many cuttings all sessions together have room for, be they dealt as they may.
std::int64_t roomOfAll(const TrialLayout& layout, bool isClearedBetween) {
    std::int64_t places = 0;
    for (const StationRoom& room : layout.stations) places += room.places;
    return isClearedBetween ? places * layout.sessions : places;
}

class TrialDeal {
  public:
    TrialDeal(const Trial& design, const TrialLayout& layout, std::uint32_t seed)
        : design_(design), layout_(layout), seed_(seed), random_(seed), arms_(static_cast<int>(design.arms.size())) {
        for (const StationRoom& room : layout.stations) addPlaces(room);
    }

    /// Nothing when the stations are too small.
    std::optional<std::vector<TrialBatch>> dealt() {
        if (cuttings() > roomOfAll(layout_, isClearedBetween())) return {};
        const bool isSideBySide = design_.factor != Factor::Method;
        if (!(isSideBySide ? dealSideBySide() : dealApart())) return {};
        std::vector<TrialBatch> batches = batchesOfCells();
        std::vector<StationRoom> rooms = layout_.stations;
        for (auto first = batches.begin(); first != batches.end();) {
            const auto last = std::find_if(
                first, batches.end(), [first](const TrialBatch& dealt) { return dealt.session != first->session; });
            if (isClearedBetween()) rooms = layout_.stations;
            placeSession(std::span<TrialBatch>(first, last), design_.blockedBy, seed_, rooms);
            first = last;
        }
        return batches;
    }

  private:
    void addPlaces(const StationRoom& room) {
        if (design_.blockedBy != BlockedBy::StationSide) return places_.push_back({&room, {}, room.places});
        const auto onLeft =
            std::ranges::count_if(room.free, [&room](Position position) { return isOnLeft(room, position); });
        const int left = static_cast<int>(onLeft), right = static_cast<int>(room.free.size()) - left;
        places_.push_back({&room, sideName(room.name, true), left});
        places_.push_back({&room, sideName(room.name, false), right});
    }

    /// What the blocks have, where that is said, else what the arms need.
    [[nodiscard]] std::int64_t cuttings() const {
        std::int64_t said = 0;
        for (const TrialBlock& block : layout_.blocks) said += isByPlants() ? block.cuttings : 0;
        return said > 0 ? said : std::int64_t{arms_} * design_.perArm.value_or(0);
    }
    [[nodiscard]] bool isByPlants() const {
        return design_.blockedBy == BlockedBy::Plant || design_.blockedBy == BlockedBy::StockPlant;
    }
    [[nodiscard]] bool isClearedBetween() const { return layout_.isClearedBetween || design_.isCrossedOver; }

    [[nodiscard]] PlacesLeft allRoom() const {
        std::vector<int> room;
        for (const Place& place : places_) room.push_back(place.places);
        return PlacesLeft(std::move(room));
    }

    /// How many cuttings each block has in each session, block by block.
    [[nodiscard]] std::vector<Cell> blockSessions() const {
        std::vector<int> blocks{static_cast<int>(cuttings())};
        if (isByPlants()) blocks = Turns(static_cast<int>(layout_.blocks.size())).shared(blocks.front(), arms_);
        for (std::size_t block = 0; isByPlants() && block < blocks.size(); ++block)
            if (layout_.blocks[block].cuttings > 0) blocks[block] = layout_.blocks[block].cuttings;
        Turns turns(layout_.sessions);
        std::vector<Cell> cells;
        for (std::size_t block = 0; block < blocks.size(); ++block) {
            const std::vector<int> shares = turns.shared(blocks[block], arms_);
            for (int session = 0; session < layout_.sessions; ++session)
                cells.push_back(
                    {.block = static_cast<int>(block), .session = session, .cuttings = shares[at(session)]});
        }
        return cells;
    }

    /// Each cell's cuttings to the arms by chance, evenly in each cell and over all of them.
    void dealArms(std::vector<Cell>& cells) {
        std::vector<int> sizes;
        for (const Cell& cell : cells) sizes.push_back(cell.cuttings);
        const std::vector<int> arms = stats::allocateWithinBlocks(sizes, arms_, random_);
        auto arm = arms.begin();
        for (Cell& cell : cells) {
            cell.perArm.assign(at(arms_), 0);
            for (int cutting = 0; cutting < cell.cuttings; ++cutting) ++cell.perArm[at(*arm++)];
        }
    }

    /// Calls `share` with each block's cuttings of each session and the room that is left; false as soon as there isn't enough.
    template <class Share>
    bool inOrderOfSessions(const std::vector<Cell>& parts, const Share& share) const {
        PlacesLeft room = allRoom();
        for (int session = 0; session < layout_.sessions; ++session) {
            if (isClearedBetween()) room = allRoom();
            for (const Cell& part : parts)
                if (part.session == session && !share(part, room)) return false;
        }
        return true;
    }

    /// All arms at each place: blocks and sessions are shared out over the places, then each share over the arms.
    bool dealSideBySide() {
        std::vector<int> all(places_.size());
        std::iota(all.begin(), all.end(), 0);
        std::size_t next = 0;
        const bool hasRoom = inOrderOfSessions(blockSessions(), [&](const Cell& part, PlacesLeft& room) {
            const auto shares = room.shared(part.cuttings, arms_, all, next);
            if (!shares) return false;
            for (std::size_t place = 0; place < shares->size(); ++place)
                if ((*shares)[place] > 0)
                    cells_.push_back({.block = part.block,
                                      .session = part.session,
                                      .place = static_cast<int>(place),
                                      .cuttings = (*shares)[place]});
            return true;
        });
        if (!hasRoom) return false;
        // What is left over in a cell goes on to the next arms in the next cell, so the cells of a block stand together.
        const bool isBySide = design_.blockedBy == BlockedBy::StationSide;
        std::ranges::sort(cells_, {}, [isBySide](const Cell& cell) {
            return std::tuple(isBySide ? cell.place : cell.block, cell.session, cell.place);
        });
        dealArms(cells_);
        return true;
    }

    /// Arms apart, each at stations of its own: blocks and sessions are shared out over the arms, then each arm's over its stations.
    bool dealApart() {
        const std::vector<std::vector<std::vector<int>>> stations = stationsOfArms();
        std::vector<Cell> parts = blockSessions();
        dealArms(parts);
        std::vector<std::size_t> next(at(arms_));
        return inOrderOfSessions(parts, [&](const Cell& part, PlacesLeft& room) {
            for (int arm = 0; arm < arms_; ++arm) {
                const auto shares =
                    room.shared(part.perArm[at(arm)], 1, stations[at(part.session)][at(arm)], next[at(arm)]);
                if (!shares) return false;
                addApart(part, arm, *shares);
            }
            return true;
        });
    }

    void addApart(const Cell& part, int arm, const std::vector<int>& shares) {
        for (std::size_t place = 0; place < shares.size(); ++place) {
            if (shares[place] == 0) continue;
            Cell cell{.block = part.block,
                      .session = part.session,
                      .place = static_cast<int>(place),
                      .cuttings = shares[place],
                      .perArm = std::vector<int>(at(arms_))};
            cell.perArm[at(arm)] = shares[place];
            cells_.push_back(std::move(cell));
        }
    }

    /// By session and arm. Crossed over: station, session and method are each put in an order by chance, and the method moves on by one
    /// from station to station and from session to session.
    std::vector<std::vector<std::vector<int>>> stationsOfArms() {
        const auto inOrderOfChance = [this](int count) {
            std::vector<int> order(at(count));
            std::iota(order.begin(), order.end(), 0);
            if (design_.isCrossedOver) random_.shuffle(std::span<int>(order));
            return order;
        };
        const int stations = static_cast<int>(places_.size());
        const std::vector<int> station = inOrderOfChance(stations), session = inOrderOfChance(layout_.sessions);
        const std::vector<int> method = inOrderOfChance(arms_);
        std::vector<std::vector<std::vector<int>>> of(at(layout_.sessions), std::vector<std::vector<int>>(at(arms_)));
        for (int held = 0; held < layout_.sessions; ++held)
            for (int place = 0; place < stations; ++place) {
                const int crossed = method[at((station[at(place)] + session[at(held)]) % arms_)];
                for (int arm = 0; arm < arms_; ++arm)
                    if (design_.isCrossedOver ? arm == crossed
                                              : places_[at(place)].room->method == design_.arms[at(arm)].method)
                        of[at(held)][at(arm)].push_back(place);
            }
        return of;
    }

    [[nodiscard]] std::string blockName(const Cell& cell) const {
        if (design_.blockedBy == BlockedBy::StationSide) return places_[at(cell.place)].side;
        if (design_.blockedBy == BlockedBy::Session) return "session " + std::to_string(cell.session + 1);
        return design_.blockedBy == BlockedBy::Nothing ? std::string() : layout_.blocks[at(cell.block)].name;
    }

    [[nodiscard]] std::vector<TrialBatch> batchesOfCells() const {
        std::vector<const Cell*> cells;
        for (const Cell& cell : cells_) cells.push_back(&cell);
        std::ranges::stable_sort(cells, {}, [this](const Cell* cell) {
            const int station = static_cast<int>(places_[at(cell->place)].room - layout_.stations.data());
            return std::tuple(cell->session, station, cell->block, cell->place);
        });
        std::vector<TrialBatch> batches;
        for (const Cell* cell : cells)
            for (int arm = 0; arm < arms_; ++arm) {
                if (cell->perArm[at(arm)] == 0) continue;
                TrialBatch dealt{.number = static_cast<int>(batches.size()) + 1,
                                 .session = cell->session + 1,
                                 .station = places_[at(cell->place)].room->station,
                                 .block = blockName(*cell),
                                 .arm = arm,
                                 .stuck = cell->perArm[at(arm)]};
                if (at(cell->block) < layout_.blocks.size()) {
                    dealt.plant = layout_.blocks[at(cell->block)].plant;
                    dealt.stockPlant = layout_.blocks[at(cell->block)].stockPlant;
                }
                batches.push_back(std::move(dealt));
            }
        return batches;
    }

    const Trial& design_;
    const TrialLayout& layout_;
    std::uint32_t seed_;
    stats::SeededRandom random_;
    int arms_;
    std::vector<Place> places_;
    std::vector<Cell> cells_;
};

/// The largest number per arm below `tooMany` that fits with this seed.
int mostBelow(int tooMany, const Trial& design, const TrialLayout& layout, std::uint32_t seed) {
    Trial tried = design;
    TrialLayout shared = layout;
    for (TrialBlock& block : shared.blocks) block.cuttings = 0;
    int fits = 0;
    while (tooMany - fits > 1) {
        tried.perArm = fits + (tooMany - fits) / 2;
        (TrialDeal(tried, shared, seed).dealt() ? fits : tooMany) = *tried.perArm;
    }
    return fits;
}

}  // namespace

int mostPerArm(const Trial& design, const TrialLayout& layout, std::uint32_t seed) {
    Trial tried = design;
    tried.perArm = tried.perArm.value_or(1);
    if (!faultsIn(tried, layout).empty()) return 0;
    const std::int64_t places = roomOfAll(layout, layout.isClearedBetween || design.isCrossedOver);
    const std::int64_t most = std::min<std::int64_t>(places / std::ssize(design.arms), mostStuck);
    return mostBelow(static_cast<int>(most) + 1, design, layout, seed);
}

Result<std::vector<TrialBatch>> allocateTrial(const Trial& design, const TrialLayout& layout, std::uint32_t seed) {
    Refusals faults = faultsIn(design, layout);
    if (!faults.empty()) return refused(std::move(faults));
    if (auto batches = TrialDeal(design, layout, seed).dealt()) return std::move(*batches);
    const std::string wanted = std::to_string(*design.perArm),
                      most = std::to_string(mostBelow(*design.perArm, design, layout, seed));
    return refused({{"Per arm", wanted, "up to " + most,
                     "Per arm is " + wanted + ", but the stations have room for " + most + "; up to " + most +
                         " is allowed, or more stations."}});
}

}  // namespace core
