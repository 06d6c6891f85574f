// SPDX-License-Identifier: MIT
#include "tests/core/trial/trial_examples.h"

#include <algorithm>
#include <random>

#include "tests/support/builders.h"

namespace examples {

namespace {

core::TrialArm armOf(core::Factor factor, int number) {
    core::TrialArm arm;
    if (factor == core::Factor::Method) arm.method = {support::aeratedWater.value + number};
    if (factor == core::Factor::Treatment) arm.treatment = {support::nothing.value + number};
    if (factor == core::Factor::Medium) arm.medium = {support::coirMix.value + number};
    if (factor == core::Factor::CuttingKind) arm.cuttingKind = {support::stemTip.value + number};
    return arm;
}

class Draws {
  public:
    explicit Draws(std::uint32_t seed) : engine_(seed) {}
    int from(int low, int high) {
        return low + static_cast<int>(engine_() % static_cast<std::uint32_t>(high - low + 1));
    }
    bool chance() { return from(0, 1) == 1; }

  private:
    std::mt19937 engine_;
};

/// Some of its places are taken; of one in five nothing is described.
core::StationRoom someRoom(int number, int methods, bool hasSides, Draws& draws) {
    core::StationRoom room = roomOf({1000 + number}, draws.from(1, 6), draws.from(2, 10));
    room.method = {support::aeratedWater.value + number % methods};
    std::erase_if(room.free, [&draws](core::Position) { return draws.from(0, 4) == 0; });
    if (!hasSides && draws.from(0, 4) == 0) {
        room.columns = 0;
        room.free.clear();
        room.places = draws.from(0, 60);
        return room;
    }
    room.places = static_cast<int>(room.free.size());
    return room;
}

}  // namespace

core::Trial trialOf(core::Factor factor, int arms, int perArm) {
    core::Trial trial;
    trial.name = "Trial of arms";
    trial.horizonDay = 28;
    trial.factor = factor;
    trial.perArm = perArm;
    for (int arm = 0; arm < arms; ++arm) trial.arms.push_back(armOf(factor, arm));
    return trial;
}

core::StationRoom roomOf(core::StationId station, int rows, int columns) {
    const core::Shelves shelves = support::someShelves();
    const core::Station* known = core::find(shelves.stations, station);
    core::StationRoom room{.station = station,
                           .name = known == nullptr ? "Station " + std::to_string(station.value) : known->name,
                           .method = known == nullptr ? core::MethodId{} : known->method,
                           .columns = columns,
                           .free = {},
                           .places = rows * columns};
    for (int row = 0; row < rows; ++row)
        for (int column = 0; column < columns; ++column) room.free.push_back({row, column});
    return room;
}

std::vector<core::StationRoom> fourRooms() {
    std::vector<core::StationRoom> rooms;
    for (const core::StationId station : {support::tubNorth, support::tubSouth, support::benchWest, support::benchEast})
        rooms.push_back(roomOf(station, 6, 10));
    return rooms;
}

core::TrialLayout layoutOf(std::vector<core::StationRoom> stations) {
    core::TrialLayout layout;
    layout.stations = std::move(stations);
    return layout;
}

std::pair<core::Trial, core::TrialLayout> crossedOver(int arms, int sessions) {
    core::Trial design = trialOf(core::Factor::Method, arms, 20 * sessions);
    design.isCrossedOver = true;
    core::TrialLayout layout;
    for (int station = 0; station < 2 * arms; ++station) layout.stations.push_back(roomOf({1000 + station}, 6, 10));
    layout.sessions = sessions;
    return {design, layout};
}

std::pair<core::Trial, core::TrialLayout> anyDesign(std::uint32_t seed) {
    Draws draws(seed);
    const auto factor = static_cast<core::Factor>(draws.from(0, 3));
    const bool isOfMethods = factor == core::Factor::Method;
    core::Trial design = trialOf(factor, draws.from(2, 4), draws.from(1, 30));
    const int arms = static_cast<int>(design.arms.size());
    design.blockedBy = static_cast<core::BlockedBy>(draws.from(0, isOfMethods ? 3 : 4));
    design.isCrossedOver = isOfMethods && draws.chance();
    core::TrialLayout layout;
    layout.sessions = draws.from(2, 4);
    if (design.isCrossedOver) layout.sessions = arms * draws.from(1, 2);
    layout.isClearedBetween = draws.chance();
    const bool isBySide = design.blockedBy == core::BlockedBy::StationSide;
    for (int station = draws.from(isOfMethods ? arms : 1, 6); station > 0; --station)
        layout.stations.push_back(someRoom(station, arms, isBySide, draws));
    const bool isByStockPlant = design.blockedBy == core::BlockedBy::StockPlant;
    if (isByStockPlant || design.blockedBy == core::BlockedBy::Plant)
        for (int block = draws.from(1, 5); block > 0; --block)
            layout.blocks.push_back({.name = "block " + std::to_string(block),
                                     .plant = support::hebe,
                                     .stockPlant = isByStockPlant ? support::hebeByTheGate : core::StockPlantId{}});
    return {design, layout};
}

}  // namespace examples
