// SPDX-License-Identifier: MIT
// Ornamentals that are not woody: strike of 100, days to root, auxin in mg/L. What stands without a source is common practice.
#include "core/plants/reference/reference_rows.h"

namespace core::reference {
namespace {

constexpr PlantReference herbaceousOrnamentalsRows[] = {
    {"Amsonia tabernaemontana", "", "Walter", "bluestar", "Apocynaceae", "stem tip", "late spring", DaysMeaning::Usual,
     practice(21, 42), unknown, unknown, WaterCulture::Better, "BUR2021 BUR2022"},
    {"Baptisia australis × alba", "", "", "false indigo hybrid", "Fabaceae", "stem tip", "late spring",
     DaysMeaning::Usual, practice(28, 56), unknown, unknown, WaterCulture::Worse, "BUR2022"},
    {"Chrysanthemum × morifolium", "", "(Ramat.) Hemsl.", "florist's chrysanthemum", "Asteraceae", "stem tip",
     "from short stock shoots, all year", DaysMeaning::Seen, read(8, 21, "SOFFER_A SOFFER_J NHUT HK"), unknown,
     partlyRead(500, 1500, "SOFFER_A SOFFER_J NHUT HK"), WaterCulture::Better, "SOFFER_A SOFFER_J NHUT HK"},
    {"Coleus scutellarioides", "", "(L.) Benth.", "coleus", "Lamiaceae", "stem tip, nodal", "all year",
     DaysMeaning::Usual, practice(10, 21), unknown, practice(0, 0), WaterCulture::Better, "PET2018"},
    {"Coreopsis verticillata", "", "L.", "threadleaf coreopsis", "Asteraceae", "stem tip", "late spring",
     DaysMeaning::Usual, practice(21, 42), unknown, unknown, WaterCulture::Worse, "BUR2022"},
    {"Dianthus caryophyllus", "", "L.", "carnation", "Caryophyllaceae", "stem tip", "spring to autumn",
     DaysMeaning::Seen, read(19, 28, "CARN_IN CHEEVER1967"), read(59, 85, "CARN_IN CHEEVER1967"),
     read(500, 1000, "CARN_IN CHEEVER1967"), WaterCulture::Unknown, ""},
    {"Euphorbia pulcherrima", "", "Willd. ex Klotzsch", "poinsettia", "Euphorbiaceae", "stem tip", "summer",
     DaysMeaning::Usual, practice(21, 28), unknown, read(2000, 2500, "RUNKLE_POIN"), WaterCulture::Unknown, ""},
    {"Fuchsia", "hybrids", "", "fuchsia", "Onagraceae", "stem tip", "spring, late summer", DaysMeaning::Usual,
     practice(14, 28), unknown, practice(0, 1000), WaterCulture::WellByPractice, ""},
    {"Impatiens hawkeri", "", "W.Bull", "New Guinea impatiens", "Balsaminaceae", "stem tip", "late winter to spring",
     DaysMeaning::Scored, read(14, 21, "CURREY2015"), unknown, practice(0, 1000), WaterCulture::Unknown, ""},
    {"Lantana camara", "", "L.", "lantana", "Verbenaceae", "stem tip, semi-ripe", "autumn to spring",
     DaysMeaning::Usual, practice(21, 42), unknown, read(0, 5000, "LANT"), WaterCulture::Unknown, ""},
    {"Osteospermum ecklonis", "", "(DC.) Norl.", "African daisy", "Asteraceae", "stem tip", "late winter",
     DaysMeaning::Usual, practice(21, 28), read(95, 96, "UFECON CURREY2012"), practice(1000, 2500),
     WaterCulture::Unknown, ""},
    {"Pelargonium × hortorum", "", "L.H.Bailey", "zonal geranium", "Geraniaceae", "stem tip", "late winter to spring",
     DaysMeaning::Scored, read(14, 21, "CURREY2015 UFECON OWEN"), unknown, practice(0, 1500),
     WaterCulture::PoorlyByPractice, ""},
    {"Petunia × atkinsiana", "", "(Sweet) D.Don ex W.H.Baxter", "petunia", "Solanaceae", "stem tip",
     "late winter to spring", DaysMeaning::Scored, read(14, 21, "CURREY2015 LOPEZRUNKLE"), unknown, practice(0, 1500),
     WaterCulture::Unknown, ""},
    {"Salvia nemorosa", "", "L.", "woodland sage", "Lamiaceae", "stem tip", "spring", DaysMeaning::Seen,
     read(10, 21, "OWENLOPEZ2019"), unknown, practice(0, 1500), WaterCulture::Unknown, ""},
    {"Scaevola aemula", "", "R.Br.", "fan flower", "Goodeniaceae", "stem tip", "late winter", DaysMeaning::Usual,
     practice(21, 28), read(95, 96, "UFECON OWEN"), practice(1000, 2500), WaterCulture::Unknown, ""},
    {"Xerochrysum bracteatum", "", "(Vent.) Tzvelev", "strawflower", "Asteraceae", "stem tip", "late winter",
     DaysMeaning::Usual, practice(21, 28), read(95, 96, "UFECON OWEN"), practice(1000, 2500), WaterCulture::Unknown,
     ""},
};

}  // namespace

std::span<const PlantReference> herbaceousOrnamentals() {
    return herbaceousOrnamentalsRows;
}

}  // namespace core::reference
