// SPDX-License-Identifier: MIT
// Herbs: strike of 100, days to root, auxin in mg/L. What stands without a source is common practice.
#include "core/plants/reference/reference_rows.h"

namespace core::reference {
namespace {

constexpr PlantReference herbsRows[] = {
    {"Aloysia citrodora", "", "Palau", "lemon verbena", "Verbenaceae", "semi-ripe", "late spring to summer",
     DaysMeaning::Usual, practice(21, 42), read(12, none, "MAP_PT"), practice(1000, 3000),
     WaterCulture::PoorlyByPractice, ""},
    {"Artemisia abrotanum", "", "L.", "southernwood", "Asteraceae", "stem tip", "spring to summer", DaysMeaning::Seen,
     read(25, 25, "KSU1996"), unknown, read(0, 1000, "KSU1996"), WaterCulture::Unknown, ""},
    {"Hyssopus officinalis", "", "L.", "hyssop", "Lamiaceae", "stem tip", "spring", DaysMeaning::Seen,
     read(30, 30, "KSU1996"), unknown, read(0, 1000, "KSU1996"), WaterCulture::Unknown, ""},
    {"Laurus nobilis", "", "L.", "bay laurel", "Lauraceae", "semi-ripe", "late summer, autumn", DaysMeaning::Usual,
     recalled(60, 180, "DIRR"), unknown, recalled(3000, 8000, "DIRR"), WaterCulture::PoorlyByPractice, ""},
    {"Lavandula angustifolia", "", "Mill.", "true lavender", "Lamiaceae", "softwood, semi-ripe", "spring, late summer",
     DaysMeaning::Usual, practice(21, 42), read(80, 90, "KREM"), read(400, 2500, "KREM"),
     WaterCulture::PoorlyByPractice, ""},
    {"Lavandula dentata", "", "L.", "French lavender", "Lamiaceae", "stem tip", "spring to summer", DaysMeaning::Scored,
     read(60, 60, "BONA2010 BONA2012 MAP_PT"), read(94, 98, "BONA2010 BONA2012 MAP_PT"),
     read(0, 3000, "BONA2010 BONA2012 MAP_PT"), WaterCulture::Unknown, ""},
    {"Lavandula stoechas", "", "L.", "Spanish lavender", "Lamiaceae", "stem tip, semi-ripe", "spring, autumn",
     DaysMeaning::Usual, practice(28, 60), read(none, 70, "STOECH"), read(1000, 4000, "STOECH"), WaterCulture::Unknown,
     ""},
    {"Lavandula × intermedia", "", "Emeric ex Loisel.", "lavandin", "Lamiaceae", "softwood tip", "spring",
     DaysMeaning::Usual, practice(21, 42), read(32, 99, "REED2021 MAP_PT"), read(500, 1000, "REED2021 MAP_PT"),
     WaterCulture::PoorlyByPractice, ""},
    {"Melissa officinalis", "", "L.", "lemon balm", "Lamiaceae", "stem tip", "spring to autumn", DaysMeaning::Seen,
     read(14, 30, "KSU1996 KURIS1980"), read(95, 100, "KSU1996 KURIS1980"), read(0, 1000, "KSU1996 KURIS1980"),
     WaterCulture::WellByPractice, ""},
    {"Mentha cervina", "", "L.", "hart's pennyroyal", "Lamiaceae", "stem tip", "spring", DaysMeaning::Usual,
     practice(21, 60), read(95, 95, "MAP_PT"), unknown, WaterCulture::Unknown, ""},
    {"Mentha spicata", "", "L.", "spearmint", "Lamiaceae", "stem tip, nodal, stolon", "spring to autumn",
     DaysMeaning::Usual, practice(7, 14), unknown, read(0, 1000, "MINT1"), WaterCulture::WellByPractice, ""},
    {"Mentha suaveolens", "", "Ehrh.", "apple mint", "Lamiaceae", "stem tip", "spring to autumn", DaysMeaning::Seen,
     read(14, 30, "KSU1996"), unknown, read(0, 1000, "KSU1996"), WaterCulture::WellByPractice, ""},
    {"Mentha suaveolens", "Variegata", "", "pineapple mint", "Lamiaceae", "stem tip", "spring to autumn",
     DaysMeaning::Seen, read(30, 30, "KSU1996"), unknown, read(0, 1000, "KSU1996"), WaterCulture::WellByPractice, ""},
    {"Mentha × piperita", "", "L.", "peppermint", "Lamiaceae", "stem tip, nodal, stolon", "spring to autumn",
     DaysMeaning::Usual, practice(7, 14), read(95, 100, "KURIS1980 MINT1"), read(0, 1000, "KURIS1980 MINT1"),
     WaterCulture::WellByPractice, ""},
    {"Nepeta × faassenii", "", "Bergmans ex Stearn", "garden catmint", "Lamiaceae", "stem tip", "spring to summer",
     DaysMeaning::Seen, read(14, 30, "KSU1996 BUR2021"), unknown, read(0, 1000, "KSU1996 BUR2021"),
     WaterCulture::Better, "KSU1996 BUR2021"},
    {"Ocimum basilicum", "", "L.", "sweet basil", "Lamiaceae", "stem tip, nodal", "all year under light",
     DaysMeaning::Usual, practice(7, 14), unknown, practice(0, 0), WaterCulture::WellByPractice, ""},
    {"Origanum vulgare", "", "L.", "oregano", "Lamiaceae", "stem tip", "spring to autumn", DaysMeaning::Seen,
     read(7, 7, "KSU1996 KURIS1980"), read(95, 100, "KSU1996 KURIS1980"), read(0, 1000, "KSU1996 KURIS1980"),
     WaterCulture::WellByPractice, ""},
    {"Pelargonium graveolens", "", "L'Her.", "rose geranium", "Geraniaceae", "stem tip", "spring to autumn",
     DaysMeaning::Usual, practice(14, 28), unknown, practice(0, 1000), WaterCulture::PoorlyByPractice, ""},
    {"Salvia officinalis", "", "L.", "common sage", "Lamiaceae", "stem tip", "autumn, spring", DaysMeaning::Scored,
     read(42, 42, "SALVIA5 MAP_PT GUDEVA"), read(65, 65, "SALVIA5 MAP_PT GUDEVA"),
     read(1500, 5000, "SALVIA5 MAP_PT GUDEVA"), WaterCulture::Unknown, ""},
    {"Salvia rosmarinus", "", "Spenn.", "rosemary", "Lamiaceae", "stem tip, semi-ripe", "spring to early autumn",
     DaysMeaning::Usual, practice(21, 42), read(48, 100, "ELHAAK BIDAR MAP_PT GUDEVA LYKO"),
     partlyRead(0, 3000, "ELHAAK BIDAR MAP_PT GUDEVA LYKO"), WaterCulture::Rooted, "ELHAAK BIDAR MAP_PT GUDEVA LYKO"},
    {"Stevia rebaudiana", "", "(Bertoni) Bertoni", "stevia", "Asteraceae", "stem tip", "spring to summer",
     DaysMeaning::Scored, read(21, 21, "STEVIA_I STEVIA_E"), unknown, read(40, 2000, "STEVIA_I STEVIA_E"),
     WaterCulture::Unknown, ""},
    {"Thymus herba-barona", "", "Loisel.", "caraway thyme", "Lamiaceae", "stem tip", "spring", DaysMeaning::Seen,
     read(25, 25, "KSU1996"), unknown, read(0, 1000, "KSU1996"), WaterCulture::Unknown, ""},
    {"Thymus vulgaris", "", "L.", "common thyme", "Lamiaceae", "stem tip, semi-ripe with a heel",
     "late spring, late summer", DaysMeaning::Usual, practice(14, 28), read(4, none, "MAP_PT"), practice(0, 2000),
     WaterCulture::Unknown, ""},
    {"Thymus × citriodorus", "", "(Pers.) Schreb.", "lemon thyme", "Lamiaceae", "stem tip", "spring, late summer",
     DaysMeaning::Seen, read(14, 14, "KSU1996"), unknown, read(0, 1000, "KSU1996"), WaterCulture::Unknown, ""},
};

}  // namespace

std::span<const PlantReference> herbs() {
    return herbsRows;
}

}  // namespace core::reference
