// SPDX-License-Identifier: MIT
// Where the figures of the reference table come from, in order of key.
#include <algorithm>

#include "core/plants/plant_reference.h"

namespace core {
namespace {

constexpr ReferenceSource sourceRows[] = {
    {"AWC", "Rooting Atlantic white cedar outdoors. HortScience 32:315 (1997)"},
    {"BARTLETT",
     "Bartlett MS (1935) Contingency table interactions. Suppl. J. Roy. Stat. Soc. 2:248-252; data from Hoblyn TN, "
     "Palmer RC (1934) J. Pomol. Hort. Sci. 12:36-56"},
    {"BEG", "Begonia Rex leaf cuttings x growth regulator 250-400 ppm (factorial CRD, 3 reps)"},
    {"BIDAR", "Bidarnamani F et al. (2017) Cutting type and media for rosemary. Flower and Ornamental Plants 2:45-51"},
    {"BLACK_1N", "Propagation of thornless blackberries by one-node cuttings (HortScience)"},
    {"BLACK_HW", "Hardwood blackberry cuttings in an enclosed system. HortTechnology 21:236 (2011)"},
    {"BLACK_RC", "Blackberry root cuttings by diameter and length (Iran, 2016; CRD, 7 reps)"},
    {"BLACK_RF", "Rubus fruticosus stem and root cuttings x IBA, 60 days. Rev. Ceres"},
    {"BLUE_KR", "Highbush blueberry hardwood cuttings, six cultivars x IBA 0-3000 ppm, 90 days"},
    {"BLUE_XK", "Braha S, Rama P, Zajmi A (2020) 'Bluecrop' hardwood cuttings. J. Agricultural Studies"},
    {"BONA2010", "Bona CM et al. (2010) Auxin-treated Lavandula dentata cuttings. Ciencia Rural"},
    {"BONA2012", "Bona CM et al. (2012) Cutting type and size, Lavandula dentata. Rev. Bras. Plantas Med."},
    {"BOUG", "Bougainvillea hardwood cuttings x medium x IBA. J. Tekirdag Agric. Fac. 22:18-34 (2025)"},
    {"BUCKEYE", "Bir RE, Barnes HW, Stem cuttings of bottlebrush buckeye. Proc. IPPS 44:499-502"},
    {"BUR2021",
     "Burnett SE, Peterson BJ, Peronto M (2021) Five species in a commercial-scale submist system. HortTechnology "
     "31:274-279"},
    {"BUR2022",
     "Burnett SE, Peterson BJ (2022) Herbaceous and woody perennials in submist and overhead mist. J. Environ. Hort. "
     "40:164-169"},
    {"BUXUS_S", "American boxwood society question page: usually two to three months, cuttings July to December"},
    {"BUXUS_TR", "Guney D et al. (2023) Boxwood rooting. Baltic Forestry 29:12-19"},
    {"CAM_IMP",
     "Tran Van Do et al. (2020) Rooting medium and hormone on Camellia impressinervis cuttings. J. Applied "
     "Horticulture 22:159-163"},
    {"CAM_J", "Hou P-C et al. (2019) Biostimulators on Camellia japonica cuttings. J. Applied Horticulture 21:111-115"},
    {"CARN_IN", "Influence of auxins on rooting of carnation. J. Hort. Sciences (India) 9(2), 187"},
    {"CEPH", "Southworth AL, Dirr MA (1996) Cephalotaxus harringtonia. HortScience 31:222-223"},
    {"CHEEVER1967", "Cheever DW (1967) Rooting of carnation cuttings. Thesis, Colorado State University"},
    {"CURREY2012",
     "Currey CJ, Hutchinson VA, Lopez RG (2012) DLI during root development of herbaceous annual cuttings. HortScience "
     "47:25-30"},
    {"CURREY2015",
     "Currey CJ, Lopez RG (2015) Biomass, photosynthesis and carbohydrate of New Guinea impatiens, geranium and "
     "petunia cuttings under different DLI during root development. J. Amer. Soc. Hort. Sci. 140"},
    {"DARRIS", "Darris DC, Brown J, Williams D: rooting of fifteen native shrubs from hardwood cuttings (USDA)"},
    {"DIRR", "Dirr MA, Heuser CW, The Reference Manual of Woody Plant Propagation"},
    {"DRAC", "Does anatomical structure of stem cuttings affect root formation? (Dracaena and Cordyline)"},
    {"DURANTA", "Shiri M et al. (2019) Duranta erecta tip cuttings. African J. Plant Science"},
    {"ELDER_BL", "Blue elderberry propagation. Native Plants Journal 19(2):80"},
    {"ELDER_MO", "American elderberry one- and two-node hardwood cuttings. Thesis, Missouri State Univ. 2025"},
    {"ELHAAK", "Elhaak MA, Matter MZ, Zayed MA, Gad DA: IBA for rooting rosemary. Journal of Horticulture"},
    {"FICB", "Rooting of Ficus benjamina: Cairo Univ. trial 1998-2000; Rasht trial of IBA 0-6000 ppm"},
    {"FICB2", "Ficus benjamina cuttings in solution and solid media. Sumarski list 2016(1-2)"},
    {"FICE", "Ghasemi Ghehsareh M, Khosh-Khui M: Ficus elastica leaf-bud cuttings. Advances in Hort. Science"},
    {"FIG_BR", "Chalfun NNJ et al. (2003) Rooting of fig cuttings: time and IBA. Acta Hort. 605:137-140"},
    {"FIG_SO", "Sousa CM et al. (2013) Auxin and misting on fig cuttings. Rev. Cienc. Agron. 44:334-338"},
    {"GARD", "Farah A: Gardenia jasminoides softwood cuttings, thesis summary, Damascus"},
    {"GRAPE_IQ", "Rooting of six grape cultivars with IBA 0-2000 mg/L, Univ. of Mosul 2019 (RCBD, 3 reps x 10)"},
    {"GUDEVA",
     "Koleva Gudeva L, Trajkova F, Troicki J: auxins on rosemary and sage cuttings (Yearbook, Goce Delcev Univ.)"},
    {"HEPTA", "Propagation of Heptacodium jasminoides. J. Environ. Hort. 8:121"},
    {"HIB_A", "Auxin duration and concentration and medium temperature on hibiscus cuttings (HortScience)"},
    {"HIB_C", "Yang Cui-qin et al. (2012) Substrates and auxins on Hibiscus rosa-sinensis"},
    {"HK", "Hartmann HT, Kester DE, Davies FT, Geneve RL, Plant Propagation: Principles and Practices"},
    {"HOLLY", "Winter cuttings of Ilex crenata 'Helleri' with and without auxin (HortTechnology)"},
    {"ISU", "Iowa State University Extension, yard-and-garden column on houseplant propagation"},
    {"JOYNER", "Joyner, Gangstad, Seale (1951) Vegetative propagation of Sansevieria. Agronomy Journal 43(3)"},
    {"JUNIP", "Chilling units and rooting of junipers. J. Environ. Hort. 8:32"},
    {"KREM", "Kremenchuk RI (2017) Lavandula angustifolia softwood cuttings. Sadivnytstvo 72:172-178"},
    {"KSU1996",
     "Kansas State Univ. (1996) Propagation of selected culinary and ornamental herbs. HortScience 31:633 (abstract)"},
    {"KURIS1980",
     "Kuris A, Altman A, Putievsky E (1980) Rooting of oregano, peppermint and balm cuttings. Scientia Hort. 13"},
    {"LANT",
     "Image analysis of root quality in Lantana and Abelia cuttings under IBA 0-5000 mg/L. Plants 11:290 (2022)"},
    {"LEBUDE2005",
     "LeBude AV, Goldfarb B, Blazich FA, Frampton J, Wise FC (2005) Mist level, VPD and rooting of loblolly pine "
     "cuttings. HortScience 40:1448-1456"},
    {"LILAC_PL", "Bojarczuk K, Jankiewicz LS (1975) Rooting of Syringa vulgaris. Acta Agrobotanica"},
    {"LOPEZRUNKLE", "Lopez R, Runkle E, Managing light during propagation (trade magazine)"},
    {"LOWBUSH", "Lowbush blueberry softwood cuttings. Proc. Amer. Soc. Hort. Sci. 86:301-306"},
    {"LYKO", "Lykokanellos G et al. (2025) Rosemary cuttings in mist, float and aeroponic systems. Plants 14:2210"},
    {"MAP_PT",
     "Aromatic and medicinal plants: vegetative propagation with reduced-cost facilities (Alentejo, Portugal, 2015 "
     "trials; 4 reps of 10 cuttings)"},
    {"MINT1", "Single-node cuttings as a method of mint propagation (Mentha spp.)"},
    {"MIRTILO", "Data set 'mirtilo' (blueberry cuttings) in R package AgroR"},
    {"NGA_AV",
     "Gardening Q&A repeating African violet society advice: about a month to root, another month to plantlets"},
    {"NHUT", "Duong Tan Nhut et al. (2005) Microponic and hydroponic chrysanthemum. J. Applied Horticulture 7:67-71"},
    {"OLIVE_IQ", "Olive cultivars x date x IBA 0/3000/5000, Univ. of Mosul 2022"},
    {"OLIVE_PK", "Olive 'Arbequina' semi-hardwood with IBA mixtures. Sarhad J. Agric. 38(5)"},
    {"OLIVE_TX", "Olive terminology entry quoting extension text: roots at 6-8 weeks, pot at 10-12 weeks"},
    {"OSMAN", "Osmanthus fragrans semi-hardwood and hardwood cuttings, assessed after 14 weeks"},
    {"OWEN",
     "Owen WG, Michigan State University Extension, article on moisture management during vegetative cutting "
     "propagation"},
    {"OWENLOPEZ2019",
     "Owen WG, Lopez RG (2019) Sole-source and supplemental light on callus and first roots of Gaura and Salvia. "
     "HortScience 54:684"},
    {"PET2018",
     "Peterson BJ, Sanchez O, Burnett SE, Hayes DJ (2018) Four systems for propagation of coleus. HortTechnology "
     "28:143"},
    {"PET2020",
     "Peterson BJ et al. (2020) Manchurian lilac in overhead mist, submist and combination systems. HortScience 55:78"},
    {"PET_INK",
     "Peterson BJ, Burnett SE, Sanchez O: Submist is effective for propagation of Korean lilac and inkberry by stem "
     "cuttings"},
    {"QPF", "Hardwood cuttings of quince, pomegranate and fig with straight or slant cuts (preprint)"},
    {"RASP", "Raspberry cultivars from leafy cuttings, autumn and winter, 90 days (SciELO)"},
    {"REED2021",
     "Reed D, Montague T, Simpson C (2021) Adventitious rooting of Lavandula x intermedia. J. Environ. Hort. "
     "39:150-159"},
    {"RHODMIC", "Propagation of Rhododendron micranthum. Horticulturae 9:101 (2023)"},
    {"ROSE_BR", "Pirola K et al.: IBA on mini-cuttings of rose. Ornamental Horticulture (Brazil)"},
    {"ROSE_KZ", "IBA on rooting of Kazanlik rose softwood cuttings. Fiziologiya na Rasteniyata 11(3):38-45"},
    {"ROSE_SA", "Rose cuttings x IBA form x length (SABRAO Journal)"},
    {"RUNKLE_POIN", "Runkle E (Michigan State Univ.), trade article on propagating poinsettias"},
    {"SALVIA5", "Five Mediterranean Salvia species, preprint 202508.1298 (2025)"},
    {"SHRUB3", "Shoot growth and rooting in Syringa, Cotinus and Forsythia (J. Hort. Sci. & Biotech.)"},
    {"SOFFER_A",
     "Soffer H, Burger DW (1988) Studies on plant propagation using the aero-hydroponic method. Acta Hort. "
     "230:261-270"},
    {"SOFFER_J",
     "Soffer H, Burger DW (1988) Effects of dissolved oxygen concentrations in aero-hydroponics on adventitious roots. "
     "J. Amer. Soc. Hort. Sci. 113:218-221"},
    {"STEVIA_E",
     "Kassahun BM, Mekonnen SA (2012) Cutting position and hormone on stevia. African J. Plant Sci. Biotech."},
    {"STEVIA_I", "Stevia stem cuttings under IAA 0-60 mg/L, assessed in week 3"},
    {"STOECH", "Rooting of Lavandula stoechas cuttings. Turkish J. Agric. For. 24(5)"},
    {"SWEETP", "Sweetpotato DiagNotes, planting material preparation"},
    {"SWEETP_G", "One gardener's note: first roots in water on day 3, 6 of 7 alive at day 17"},
    {"SWEETP_R", "Pardales JR, Esquibel CB: root development in sweetpotato cuttings. Annals of Tropical Research"},
    {"UFECON",
     "Fisher P et al., University of Florida, trade articles comparing unrooted, callused and rooted starter material"},
    {"UNH2022",
     "University of New Hampshire Extension, question-and-answer on propagating trees and shrubs in winter (2022)"},
    {"UNR", "University of Nevada Reno Extension, houseplant propagation"},
    {"WILLOW_G", "Tree grower's page on willow and poplar: September 5-10 %, March-April 90-100 %"},
};

}  // namespace

std::span<const ReferenceSource> referenceSources() {
    return sourceRows;
}

const ReferenceSource* referenceSource(std::string_view key) {
    const auto* found = std::ranges::lower_bound(sourceRows, key, {}, &ReferenceSource::key);
    return found != std::end(sourceRows) && found->key == key ? found : nullptr;
}

}  // namespace core
