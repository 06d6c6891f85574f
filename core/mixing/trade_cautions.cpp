// SPDX-License-Identifier: MIT
// The topics and their sources are those of the reference data on propagation; the words are ours.
#include "core/mixing/trade_cautions.h"

namespace core {

namespace {

constexpr std::string_view ownPractice = "common practice, no source";

constexpr std::array<TradeCaution, cautionTopics> theCautions{{
    {CautionTopic::GrowthRegulators, "growth regulators",
     "Rooting hormone is a regulated product in many countries and its label is binding: only the crops it names, at "
     "the rate it gives. Gloves and eye protection; don't breathe the talc.",
     "US EPA (2000) fact sheet 046701, indole-3-butyric acid; gloves and talc: common practice, no source"},
    {CautionTopic::EdibleCrops, "edible crops",
     "Not every hormone may touch plants that will be eaten. Where the label doesn't allow your herb or vegetable, "
     "root it without: many do. That a residue is exempt from a limit doesn't change what the label forbids.",
     "US EPA (1999) Federal Register 64:31501 on exemptions; many root without: common practice, no source"},
    {CautionTopic::HormoneHygiene, "hormone hygiene",
     "Pour out what the day needs, dip into that, discard the rest. Nothing goes into the stock bottle or back to it, "
     "or one sick cutting passes it on to all. A dip with alcohol can burn soft stems.",
     "FAO document AD224E, section 10; alcohol: common practice, no source"},
    {CautionTopic::Acids, "acids",
     "Acid goes into water, never water into acid. Goggles, gloves, plenty of water within reach, fresh air. Buy acid "
     "already diluted, or have it diluted, and go by its safety data sheet.",
     "laboratory safety rules, from memory"},
    {CautionTopic::ChlorineGas, "chlorine gas",
     "Bleach with acid, vinegar, alcohol or ammonia makes poisonous gas. Rinse a bleached tub well before nutrient or "
     "acid goes into it.",
     "public-health advice, from memory"},
    {CautionTopic::Alkalis, "alkalis",
     "Potassium hydroxide burns eyes and skin no less than acid does: goggles, gloves, water within reach, and its "
     "safety data sheet.",
     "laboratory safety rules, from memory"},
    {CautionTopic::Oxidisers, "oxidisers",
     "Nitrates of calcium and potassium make a fire worse. Keep them dry and closed, away from heat, fuel, sawdust and "
     "acid, and from children; local rules may limit how much you may keep.",
     "GHS and UN transport lists (calcium nitrate, UN 1454, class 5.1), from memory"},
    {CautionTopic::Concentrates, "concentrates",
     "Parts of a feed never meet undiluted, or calcium settles out with sulfate and phosphate. One into the tub, stir, "
     "then the next. The label's order comes first.",
     ownPractice},
    {CautionTopic::ElectricityNearWater, "electricity near water",
     "Pumps, lamps and heaters near water belong behind residual-current protection. Cables with a drip loop, plugs "
     "and strips above the water and off to the side; unplug before hands go in. If the protection trips, that device "
     "is finished. The local wiring code rules; fixed wiring is for a licensed electrician.",
     "articles on drip loops and ground-fault protection near tanks; the rest: common practice, no source"},
    {CautionTopic::BackSiphon, "back-siphon",
     "An air pump stands above the water or has a check valve in its line, or water runs back into it when the power "
     "fails.",
     ownPractice},
    {CautionTopic::DrillingAndHotGlue, "drilling and hot glue",
     "Clamp the lid on wood, drill slowly, protect your eyes. Hot glue burns: gloves. Rinse out the swarf before stems "
     "go in.",
     ownPractice},
    {CautionTopic::Lamps, "lamps",
     "Don't look into a bright lamp, least of all one with ultraviolet. Domes, cloth and covers stay off what gets "
     "hot. "
     "Hang it so that it can't fall into water, as its maker says.",
     ownPractice},
    {CautionTopic::HeatUnderADome, "heat under a dome",
     "Under a closed dome in the sun, or below a strong lamp, cuttings can be dead within an hour. Shade or open it "
     "before the air is at 30 C.",
     ownPractice},
    {CautionTopic::MouldAndDust, "mould and dust",
     "Dust of dry media and mouldy trays harm the lungs. Wet perlite and coir before you mix them, wear a mask, and "
     "bin mouldy cuttings outside.",
     ownPractice},
    {CautionTopic::FungicidesAndPesticides, "fungicides and pesticides",
     "Only what is registered for this crop and place, at the label's rate; write down what, how much and when. Clean "
     "tools, less water and more air come first.",
     "advice on sanitation in propagation; the rest: common practice, no source"},
    {CautionTopic::ProtectedVarieties, "protected varieties",
     "A plant patent or breeders' right can forbid multiplying without a licence, in places even at home. Look for "
     "PBR, "
     "PVR, PP or the like and note it with the stock plant before you cut. A tag can be out of date: the register "
     "decides.",
     "texts of plant patent and breeders' rights law; the rest: common practice, no source"},
    {CautionTopic::PlantHealth, "plant health",
     "Plants that cross a border, and some even between regions, may need a passport, a certificate or a permit. Keep "
     "new plants apart. A notifiable pest is reported; ask your plant-health service.",
     ownPractice},
    {CautionTopic::WildPlants, "wild plants",
     "Cuttings of wild or protected plants may take the owner's leave and a permit.", ownPractice},
    {CautionTopic::InvasivePlants, "invasive or restricted plants",
     "What roots easily may be restricted as a weed where you are, such as water spinach. Look it up before you grow "
     "or "
     "sell it.",
     ownPractice},
    {CautionTopic::IrritantPlants, "irritant plants",
     "The sap of figs, spurges, aroids and others irritates skin and eyes. Gloves; keep it from children and pets.",
     ownPractice},
    {CautionTopic::Advice, "advice",
     "These figures are a guide. The label, the safety data sheet, local rules and licensed people come first.",
     ownPractice},
}};

constexpr bool areInOrder() {
    for (std::size_t i = 0; i < theCautions.size(); ++i)
        if (static_cast<std::size_t>(theCautions[i].topic) != i) return false;
    return true;
}
static_assert(areInOrder());

}  // namespace

const TradeCaution& tradeCaution(CautionTopic topic) {
    return theCautions[static_cast<std::size_t>(topic)];
}

const std::array<TradeCaution, cautionTopics>& allTradeCautions() {
    return theCautions;
}

}  // namespace core
