// SPDX-License-Identifier: MIT
// Houseplants: strike of 100, days to root, auxin in mg/L. What stands without a source is common practice.
#include "core/plants/reference/reference_rows.h"

namespace core::reference {
namespace {

constexpr PlantReference houseplantsRows[] = {
    {"Begonia", "", "Rex Cultorum Group", "rex begonia", "Begoniaceae", "leaf", "spring to summer", DaysMeaning::Usual,
     practice(28, 60), unknown, read(250, 400, "BEG"), WaterCulture::Unknown, ""},
    {"Cordyline", "species not given", "Comm. ex R.Br.", "cordyline", "Asparagaceae", "stem section, stem tip",
     "spring to summer", DaysMeaning::Usual, practice(21, 42), read(93, 100, "DRAC"), read(0, 1000, "DRAC"),
     WaterCulture::WellByPractice, ""},
    {"Crassula ovata", "", "(Mill.) Druce", "jade plant", "Crassulaceae", "stem tip, leaf", "spring to summer",
     DaysMeaning::Usual, practice(14, 42), unknown, practice(0, 0), WaterCulture::PoorlyByPractice, ""},
    {"Dieffenbachia seguine", "", "(Jacq.) Schott", "dumb cane", "Araceae", "stem tip, stem section",
     "spring to summer", DaysMeaning::Usual, practice(21, 42), unknown, practice(0, 1000), WaterCulture::WellByPractice,
     ""},
    {"Dracaena", "species not given", "Vand. ex L.", "dracaena", "Asparagaceae", "stem section, stem tip",
     "spring to summer", DaysMeaning::Usual, practice(28, 60), read(22, 73, "DRAC"), read(1000, 1000, "DRAC"),
     WaterCulture::WellByPractice, ""},
    {"Dracaena trifasciata", "", "(Prain) Mabb.", "snake plant", "Asparagaceae", "leaf section", "spring to summer",
     DaysMeaning::Usual, read(30, 90, "JOYNER"), unknown, read(0, 1000, "JOYNER"), WaterCulture::WellByPractice, ""},
    {"Epipremnum aureum", "", "(Linden & Andre) G.S.Bunting", "pothos", "Araceae", "nodal, stem tip",
     "spring to summer", DaysMeaning::Usual, read(10, 42, "ISU UNR"), unknown, read(0, 1000, "ISU UNR"),
     WaterCulture::Rooted, "ISU UNR"},
    {"Ficus benjamina", "", "L.", "weeping fig", "Moraceae", "semi-ripe, stem tip", "spring to summer",
     DaysMeaning::Usual, practice(28, 56), read(38, 80, "FICB FICB2 SOFFER_A SOFFER_J"),
     read(3000, 4000, "FICB FICB2 SOFFER_A SOFFER_J"), WaterCulture::Better, "FICB FICB2 SOFFER_A SOFFER_J"},
    {"Ficus elastica", "", "Roxb. ex Hornem.", "rubber plant", "Moraceae", "leaf bud", "spring to summer",
     DaysMeaning::Usual, practice(28, 56), unknown, read(2000, 3000, "FICE"), WaterCulture::WellByPractice, ""},
    {"Hedera helix", "", "L.", "English ivy", "Araliaceae", "nodal, stem tip", "spring to autumn", DaysMeaning::Usual,
     read(21, 42, "ISU"), unknown, read(0, 1000, "ISU"), WaterCulture::WellByPractice, ""},
    {"Heptapleurum arboricola", "", "Hayata", "umbrella tree", "Araliaceae", "semi-ripe, leaf bud", "spring to summer",
     DaysMeaning::Usual, practice(21, 42), unknown, practice(1000, 3000), WaterCulture::Unknown, ""},
    {"Hibiscus rosa-sinensis", "", "L.", "Chinese hibiscus", "Malvaceae", "stem tip, semi-ripe", "spring to summer",
     DaysMeaning::Usual, practice(28, 42), read(91, 100, "HIB_C HIB_A"), read(150, 8000, "HIB_C HIB_A"),
     WaterCulture::WellByPractice, ""},
    {"Hoya carnosa", "", "(L.f.) R.Br.", "wax plant", "Apocynaceae", "nodal, stem tip", "spring to summer",
     DaysMeaning::Usual, practice(21, 42), unknown, practice(0, 1000), WaterCulture::WellByPractice, ""},
    {"Monstera deliciosa", "", "Liebm.", "Swiss cheese plant", "Araceae", "nodal", "spring to summer",
     DaysMeaning::Usual, practice(21, 56), unknown, practice(0, 1000), WaterCulture::WellByPractice, ""},
    {"Peperomia obtusifolia", "", "(L.) A.Dietr.", "baby rubber plant", "Piperaceae", "stem tip, leaf", "all year",
     DaysMeaning::Usual, practice(21, 42), unknown, practice(0, 1000), WaterCulture::WellByPractice, ""},
    {"Philodendron hederaceum", "", "(Jacq.) Schott", "heartleaf philodendron", "Araceae", "nodal, stem tip",
     "spring to summer", DaysMeaning::Usual, read(10, 42, "ISU UNR"), unknown, read(0, 1000, "ISU UNR"),
     WaterCulture::Rooted, "ISU UNR"},
    {"Schlumbergera truncata", "", "(Haw.) Moran", "Thanksgiving cactus", "Cactaceae", "stem segment", "spring",
     DaysMeaning::Usual, practice(21, 42), unknown, practice(0, 0), WaterCulture::PoorlyByPractice, ""},
    {"Streptocarpus ionanthus", "", "(H.Wendl.) Christenh.", "African violet", "Gesneriaceae", "leaf with its stalk",
     "all year", DaysMeaning::Usual, read(21, 35, "NGA_AV"), unknown, practice(0, 1000), WaterCulture::WellByPractice,
     ""},
    {"Syngonium podophyllum", "", "Schott", "arrowhead vine", "Araceae", "nodal, stem tip", "spring to summer",
     DaysMeaning::Usual, practice(14, 28), unknown, practice(0, 1000), WaterCulture::WellByPractice, ""},
    {"Tradescantia zebrina", "", "Bosse", "inch plant", "Commelinaceae", "nodal, stem tip", "all year",
     DaysMeaning::Usual, practice(7, 14), unknown, practice(0, 0), WaterCulture::WellByPractice, ""},
    {"Zamioculcas zamiifolia", "", "(Lodd.) Engl.", "ZZ plant", "Araceae", "leaflet", "spring to summer",
     DaysMeaning::Usual, practice(60, 180), unknown, practice(0, 1000), WaterCulture::WellByPractice, ""},
};

}  // namespace

std::span<const PlantReference> houseplants() {
    return houseplantsRows;
}

}  // namespace core::reference
