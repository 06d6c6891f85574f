// SPDX-License-Identifier: MIT
// Fruit and nuts: strike of 100, days to root, auxin in mg/L. What stands without a source is common practice.
#include "core/plants/reference/reference_rows.h"

namespace core::reference {
namespace {

constexpr PlantReference softFruitRows[] = {
    {"Actinidia deliciosa", "", "(A.Chev.) C.F.Liang & A.R.Ferguson", "kiwifruit", "Actinidiaceae",
     "softwood, semi-ripe", "early to mid summer", DaysMeaning::Usual, practice(42, 70), unknown, practice(3000, 6000),
     WaterCulture::Unknown, ""},
    {"Cydonia oblonga", "", "Mill.", "quince", "Rosaceae", "hardwood", "winter", DaysMeaning::Usual, practice(60, 120),
     unknown, practice(1000, 2500), WaterCulture::Unknown, ""},
    {"Ficus carica", "", "L.", "fig", "Moraceae", "hardwood, softwood", "autumn to winter", DaysMeaning::Scored,
     read(30, 90, "FIG_BR FIG_SO QPF"), read(93, 100, "FIG_BR FIG_SO QPF"), read(0, 100, "FIG_BR FIG_SO QPF"),
     WaterCulture::WellByPractice, ""},
    {"Lycium barbarum", "", "L.", "goji", "Solanaceae", "softwood, hardwood", "early summer; winter",
     DaysMeaning::Usual, practice(14, 35), unknown, practice(0, 1000), WaterCulture::WellByPractice, ""},
    {"Morus alba", "", "L.", "white mulberry", "Moraceae", "hardwood, softwood", "winter; early summer",
     DaysMeaning::Usual, practice(42, 90), unknown, practice(2000, 5000), WaterCulture::Unknown, ""},
    {"Olea europaea", "", "L.", "olive", "Oleaceae", "semi-ripe", "late winter to spring, late summer",
     DaysMeaning::Usual, read(42, 84, "OLIVE_TX OLIVE_IQ OLIVE_PK"), read(51, 63, "OLIVE_TX OLIVE_IQ OLIVE_PK"),
     read(3000, 5000, "OLIVE_TX OLIVE_IQ OLIVE_PK"), WaterCulture::Unknown, ""},
    {"Passiflora edulis", "", "Sims", "passion fruit", "Passifloraceae", "semi-ripe, nodal", "spring to summer",
     DaysMeaning::Usual, practice(21, 42), unknown, practice(500, 2000), WaterCulture::Unknown, ""},
    {"Prunus domestica", "rootstock", "L.", "plum rootstock", "Rosaceae", "root",
     "autumn at once, or bedded till spring", DaysMeaning::Unknown, unknown, read(13, 65, "BARTLETT"), unknown,
     WaterCulture::Unknown, ""},
    {"Punica granatum", "", "L.", "pomegranate", "Lythraceae", "hardwood", "late winter", DaysMeaning::Usual,
     practice(60, 90), read(44, 50, "QPF"), practice(1000, 3000), WaterCulture::Unknown, ""},
    {"Ribes nigrum", "", "L.", "blackcurrant", "Grossulariaceae", "hardwood with one bud, softwood",
     "January to March; softwood April to June", DaysMeaning::Usual, practice(42, 90), unknown, practice(0, 0),
     WaterCulture::WellByPractice, ""},
    {"Ribes uva-crispa", "", "L.", "gooseberry", "Grossulariaceae", "hardwood", "autumn at leaf fall",
     DaysMeaning::Usual, practice(90, 180), unknown, practice(0, 2000), WaterCulture::Unknown, ""},
    {"Rubus idaeus", "", "L.", "raspberry", "Rosaceae", "leafy stem, root", "autumn; root cuttings in winter",
     DaysMeaning::Scored, read(60, 90, "RASP"), unknown, practice(0, 2000), WaterCulture::Unknown, ""},
    {"Rubus subg. Rubus", "", "", "blackberry", "Rosaceae", "leaf bud, hardwood, root, tip",
     "summer leaf-bud; Nov-Dec hardwood; winter root", DaysMeaning::Scored,
     read(60, 90, "BLACK_1N BLACK_HW BLACK_RC BLACK_RF"), read(65, 90, "BLACK_1N BLACK_HW BLACK_RC BLACK_RF"),
     read(0, 1000, "BLACK_1N BLACK_HW BLACK_RC BLACK_RF"), WaterCulture::WellByPractice, ""},
    {"Sambucus canadensis", "", "L.", "American elderberry", "Viburnaceae", "hardwood with one node, softwood",
     "late winter", DaysMeaning::Scored, read(60, 90, "ELDER_MO"), unknown, practice(0, 1000),
     WaterCulture::WellByPractice, ""},
    {"Sambucus cerulea", "", "Raf.", "blue elderberry", "Viburnaceae", "semi-ripe, hardwood",
     "full bloom; winter with cold callusing", DaysMeaning::Usual, read(98, 126, "ELDER_BL"),
     read(60, none, "ELDER_BL"), unknown, WaterCulture::Unknown, ""},
    {"Vaccinium angustifolium", "", "Aiton", "lowbush blueberry", "Ericaceae", "softwood",
     "late June to early July, before shoot tips abort", DaysMeaning::Usual, practice(42, 70),
     read(none, 99, "LOWBUSH"), read(0, 0, "LOWBUSH"), WaterCulture::Unknown, ""},
    {"Vaccinium corymbosum", "", "L.", "highbush blueberry", "Ericaceae", "hardwood, softwood",
     "January, or early summer softwood", DaysMeaning::Scored, read(60, 90, "BLUE_XK BLUE_KR MIRTILO"),
     read(52, 73, "BLUE_XK BLUE_KR MIRTILO"), read(1000, 2000, "BLUE_XK BLUE_KR MIRTILO"), WaterCulture::Unknown, ""},
    {"Vitis vinifera", "", "L.", "grape", "Vitaceae", "hardwood", "winter to early spring", DaysMeaning::Scored,
     read(28, 90, "GRAPE_IQ"), unknown, read(0, 2000, "GRAPE_IQ"), WaterCulture::WellByPractice, ""},
};

}  // namespace

std::span<const PlantReference> softFruit() {
    return softFruitRows;
}

}  // namespace core::reference
