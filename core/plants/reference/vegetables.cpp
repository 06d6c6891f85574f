// SPDX-License-Identifier: MIT
// Vegetables: strike of 100, days to root, auxin in mg/L. What stands without a source is common practice.
#include "core/plants/reference/reference_rows.h"

namespace core::reference {
namespace {

constexpr PlantReference vegetablesRows[] = {
    {"Armoracia rusticana", "", "P.Gaertn., B.Mey. & Scherb.", "horseradish", "Brassicaceae", "root", "late winter",
     DaysMeaning::Usual, practice(21, 42), unknown, practice(0, 0), WaterCulture::Unknown, ""},
    {"Basella alba", "", "L.", "Malabar spinach", "Basellaceae", "nodal, stem tip", "warm season", DaysMeaning::Usual,
     practice(7, 14), unknown, practice(0, 0), WaterCulture::WellByPractice, ""},
    {"Capsicum annuum", "", "L.", "pepper", "Solanaceae", "stem tip", "spring to summer", DaysMeaning::Usual,
     practice(14, 35), unknown, practice(1000, 3000), WaterCulture::WellByPractice, ""},
    {"Cnidoscolus aconitifolius", "", "(Mill.) I.M.Johnst.", "chaya", "Euphorbiaceae", "hardwood", "warm season",
     DaysMeaning::Usual, practice(21, 60), unknown, practice(0, 0), WaterCulture::Unknown, ""},
    {"Crambe maritima", "", "L.", "sea kale", "Brassicaceae", "root", "late winter", DaysMeaning::Usual,
     practice(28, 60), unknown, practice(0, 0), WaterCulture::Unknown, ""},
    {"Ipomoea aquatica", "", "Forssk.", "water spinach", "Convolvulaceae", "stem tip, nodal", "warm season",
     DaysMeaning::Usual, practice(4, 10), unknown, practice(0, 0), WaterCulture::WellByPractice, ""},
    {"Ipomoea batatas", "", "(L.) Lam.", "sweet potato", "Convolvulaceae", "vine tip", "warm season",
     DaysMeaning::Usual, read(3, 10, "SWEETP SWEETP_R SWEETP_G"), read(86, 86, "SWEETP SWEETP_R SWEETP_G"),
     practice(0, 0), WaterCulture::WellByPractice, ""},
    {"Manihot esculenta", "", "Crantz", "cassava", "Euphorbiaceae", "hardwood stake", "start of rains",
     DaysMeaning::Usual, practice(10, 21), unknown, practice(0, 0), WaterCulture::Unknown, ""},
    {"Nasturtium officinale", "", "W.T.Aiton", "watercress", "Brassicaceae", "stem tip, nodal", "all year",
     DaysMeaning::Usual, practice(4, 10), unknown, practice(0, 0), WaterCulture::WellByPractice, ""},
    {"Solanum lycopersicum", "", "L.", "tomato", "Solanaceae", "side shoot", "spring to summer", DaysMeaning::Usual,
     practice(7, 14), unknown, practice(0, 500), WaterCulture::WellByPractice, ""},
};

}  // namespace

std::span<const PlantReference> vegetables() {
    return vegetablesRows;
}

}  // namespace core::reference
