// SPDX-License-Identifier: MIT
#include "core/demo/demo_shelves.h"

namespace core {

namespace {

constexpr const char* noAuxin = "Untreated";
constexpr const char* weakGel = "IBA gel 1000";
constexpr const char* strongGel = "IBA gel 3000";
constexpr const char* powder = "IBA powder 3000";
constexpr const char* dip = "K-IBA dip 2000, wounded";

constexpr DemoPlant plantsOfTheDemo[] = {
    {"Salvia microphylla",
     "Hot Lips",
     "baby sage",
     false,
     28,
     3,
     "stem tip",
     noAuxin,
     weakGel,
     1.1,
     {.91, .85},
     {10, 13}},
    {"Santolina chamaecyparissus",
     "",
     "cotton lavender",
     false,
     35,
     3,
     "semi-ripe",
     weakGel,
     powder,
     1.0,
     {.58, .85},
     {18, 19}},
    {"Weigela florida", "Fennow Ember", "weigela", true, 35, 3, "softwood", weakGel, noAuxin, .6, {.82, .78}, {16, 19}},
    {"Hebe albicans", "", "white hebe", false, 35, 3, "semi-ripe", weakGel, strongGel, 1.1, {.70, .84}, {18, 19}},
    {"Agastache foeniculum", "", "anise hyssop", false, 21, 1, "stem tip", noAuxin, weakGel, 1.0, {.94, .91}, {9, 11}},
    {"Teucrium chamaedrys",
     "",
     "wall germander",
     false,
     28,
     1,
     "stem tip",
     noAuxin,
     weakGel,
     1.2,
     {.84, .90},
     {13, 15}},
    {"Philadelphus coronarius",
     "Aureus",
     "golden mock orange",
     false,
     42,
     1,
     "softwood",
     strongGel,
     weakGel,
     .8,
     {.70, .79},
     {20, 22}},
    {"Deutzia gracilis",
     "",
     "slender deutzia",
     false,
     35,
     1,
     "softwood",
     weakGel,
     strongGel,
     1.1,
     {.84, .83},
     {17, 19}},
    {"Cistus \u00D7 purpureus", "", "rock rose", false, 42, 1, "semi-ripe", powder, dip, 1.4, {.40, .69}, {23, 22}},
    {"Choisya ternata", "", "Mexican orange", false, 49, 1, "semi-ripe", strongGel, dip, 1.5, {.52, .70}, {26, 26}},
    {"Trachelospermum jasminoides",
     "",
     "star jasmine",
     false,
     49,
     1,
     "nodal",
     strongGel,
     powder,
     .9,
     {.62, .66},
     {27, 28}},
    {"Daphne odora",
     "Aureomarginata",
     "winter daphne",
     false,
     56,
     1,
     "semi-ripe",
     dip,
     strongGel,
     .7,
     {.16, .36},
     {34, 33}},
};

void addPlants(Shelves& shelves, IdSource& ids) {
    constexpr const char* beds[] = {"long border", "pot yard",   "by the gate",
                                    "cold frame",  "north wall", "field row 4"};
    std::size_t bed = 0;
    for (const DemoPlant& made : plantsOfTheDemo) {
        Plant plant{.id = ids.next<PlantId>(),
                    .botanicalName = made.botanicalName,
                    .cultivar = made.cultivar,
                    .commonName = made.commonName,
                    .isProtected = made.isProtected,
                    .usualRootingDaysHigh = made.usualDaysHigh,
                    .note = made.isProtected ? "An invented cultivar; multiplied under an invented licence." : ""};
        for (const char* age : {"young", "old"})
            shelves.stockPlants.push_back({.id = ids.next<StockPlantId>(),
                                           .plant = plant.id,
                                           .label = std::string(age) + " plant, " + beds[bed++ % std::size(beds)],
                                           .note = ""});
        shelves.plants.push_back(std::move(plant));
    }
}

void addStations(Shelves& shelves, IdSource& ids) {
    const MethodId water = shelves.methods[aeratedWater].id, tray = shelves.methods[mediaTray].id;
    const auto add = [&](const char* name, MethodId method, int rows, int columns, const char* blocked,
                         const char* note) {
        const int place = static_cast<int>(shelves.stations.size()) + 1;
        shelves.stations.push_back({.id = ids.next<StationId>(),
                                    .name = name,
                                    .method = method,
                                    .rows = rows,
                                    .columns = columns,
                                    .isStaggered = method == water,
                                    .blocked = blocked,
                                    .walkingOrder = place,
                                    .note = note});
    };
    add("Tub north", water, 8, 14, "H14", "Air stone at the back; collars of foam.");
    add("Tub south", water, 8, 14, "H14", "Gets the evening sun.");
    add("Bench west", tray, 8, 16, "", "Over the heating mat.");
    add("Bench east", tray, 8, 16, "", "Next to the door.");
}

void addMedia(Shelves& shelves, IdSource& ids) {
    const auto add = [&](const char* name, std::vector<MediumComponent> components) {
        shelves.media.push_back(
            {.id = ids.next<MediumId>(), .name = name, .components = std::move(components), .note = ""});
    };
    add("Tap water", {});
    add("Rainwater", {});
    add("Coir mix", {{"coir", 3}, {"perlite", 2}});
    add("Bark and sand", {{"fine bark", 2}, {"sharp sand", 1}, {"perlite", 1}});
    add("Perlite alone", {{"perlite", 1}});
}

void addTreatments(Shelves& shelves, IdSource& ids) {
    const auto add = [&](const char* name, std::vector<Auxin> auxins, Carrier carrier, int seconds, bool isWounded) {
        shelves.treatments.push_back({.id = ids.next<TreatmentId>(),
                                      .name = name,
                                      .auxins = std::move(auxins),
                                      .carrier = carrier,
                                      .seconds = seconds,
                                      .isWounded = isWounded,
                                      .note = ""});
    };
    add(noAuxin, {}, Carrier::None, 0, false);
    add(weakGel, {{"IBA", AuxinForm::Acid, 1000}}, Carrier::Gel, 5, false);
    add(strongGel, {{"IBA", AuxinForm::Acid, 3000}}, Carrier::Gel, 5, false);
    add(powder, {{"IBA", AuxinForm::Acid, 3000}}, Carrier::Powder, 0, false);
    add(dip, {{"IBA", AuxinForm::Salt, 2000}}, Carrier::LiquidDip, 10, true);
}

void addTrials(Shelves& shelves, IdSource& ids, stats::SeededRandom& random) {
    constexpr std::uint64_t seeds = 1'000'000;
    for (const char* season : {"first season", "second season"})
        shelves.trials.push_back(
            {.id = ids.next<TrialId>(),
             .name = std::string("Tub or tray, ") + season,
             .horizonDay = 42,
             .allocationSeed = static_cast<std::uint32_t>(random.below(seeds)),
             .note = "Each block is one lot of cuttings of one stock plant, dealt over a tub and a bench on the day. "
                     "Block b was dealt from the allocation seed plus b."});
}

}  // namespace

std::span<const DemoPlant> demoPlants() {
    return plantsOfTheDemo;
}

Shelves demoShelves(IdSource& ids, stats::SeededRandom& random) {
    Shelves shelves = startingShelves();
    shelves.facts.name = "Fennow Lane, two seasons (invented)";
    shelves.facts.grower = "R. Oswin and friends (invented)";
    shelves.facts.isInvented = true;
    for (Method& method : shelves.methods) method.id = ids.next<MethodId>();
    for (CuttingKind& kind : shelves.cuttingKinds) kind.id = ids.next<CuttingKindId>();
    for (LossCause& cause : shelves.lossCauses) cause.id = ids.next<LossCauseId>();
    addPlants(shelves, ids);
    addStations(shelves, ids);
    addMedia(shelves, ids);
    addTreatments(shelves, ids);
    addTrials(shelves, ids, random);
    return shelves;
}

}  // namespace core
