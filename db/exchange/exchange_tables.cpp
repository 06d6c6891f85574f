// SPDX-License-Identifier: MIT
#include "db/exchange/exchange_tables.h"

#include <cassert>

#include "db/exchange/event_columns.h"
#include "db/exchange/money_columns.h"

namespace db {

namespace {

using Columns = ExchangeColumn[];

constexpr Columns logbookColumns = {
    {"name", CellKind::Text, true, "what the logbook is called"},
    {"grower", CellKind::Text, false, "whose logbook it is"},
    {"root_length_mm", CellKind::Count, false,
     "a cutting counts as rooted from this length of root on, in millimetres"},
    {"check_every_days", CellKind::Count, false, "a batch is due when nobody has looked at it for so many days"},
    {"first_check_after_days", CellKind::Count, false, "days from sticking to the first look"},
    {"horizon_day", CellKind::Count, false, "day at which comparisons are decided where nothing else sets one"},
    {"level", CellKind::Figure, false, "of every interval, between 0 and 1"},
    {"paper", CellKind::Text, false, "A4 or Letter"},
    {"is_invented", CellKind::Truth, false, "true: a demo, and every print says so"},
    {"citation", CellKind::Text, false, "where published records come from"},
    {"interval", CellKind::Text, false,
     "of a strike rate: wilson, wilson_continuity, clopper_pearson, jeffreys, agresti_coull or mid_p"},
    {"temperature_unit", CellKind::Text, false, "that the grower reads: C or F; the tables have C"},
    {"ec_unit", CellKind::Text, false,
     "that the grower reads: mS/cm, uS/cm, ppm500, ppm640 or ppm700; the tables have mS/cm"},
    {"volume_unit", CellKind::Text, false, "that the grower reads: L or gal (US)"},
    {"length_unit", CellKind::Text, false, "that the grower reads: mm or in"},
    {"currency", CellKind::Text, false, "of expenses: three letters of ISO 4217"},
    {"altitude_m", CellKind::Figure, false, "of the bench above the sea, in metres"},
    {"degree_day_base", CellKind::Figure, false, "in C; warmth below it doesn't count in degree-days"},
    {"false_alarm_rate", CellKind::Figure, false,
     "how often a batch may be pointed out by mere chance, 0.0001 to 0.5"}};

constexpr Columns scheduleColumns = {
    {"check_schedule", CellKind::Text, true, "how often batches want a look"},
    {"first_check_after_days", CellKind::Count, true, "days from sticking to the first look"},
    {"check_every_days", CellKind::Count, true, "days from look to look"},
    {"is_retired", CellKind::Truth, false, ""}};

constexpr Columns plantColumns = {
    {"species", CellKind::Text, true, "botanical name, without author"},
    {"cultivar", CellKind::Text, false, "without quotes; empty where there is none"},
    {"common_name", CellKind::Text, false, ""},
    {"is_protected", CellKind::Truth, false, "true: breeders' rights or a licence"},
    {"usual_rooting_days_high", CellKind::Count, false, "usual upper limit of days to root"},
    {"note", CellKind::Text, false, ""},
    {"is_retired", CellKind::Truth, false, "true: no longer offered for new batches"},
    {"check_schedule", CellKind::Text, false, "empty: the method's, else the logbook's"},
    {"is_edible", CellKind::Truth, false, "true: it or its fruit is eaten"}};

constexpr Columns stockPlantColumns = {
    {"species", CellKind::Text, true, "of the plant"},
    {"cultivar", CellKind::Text, false, "of the plant"},
    {"stock_plant", CellKind::Text, true, "label of the mother plant, unique within its plant"},
    {"note", CellKind::Text, false, ""},
    {"is_retired", CellKind::Truth, false, ""}};

constexpr Columns methodColumns = {{"method", CellKind::Text, true, "a way to root"},
                                   {"is_retired", CellKind::Truth, false, ""},
                                   {"check_schedule", CellKind::Text, false, "empty: the logbook's"}};

constexpr Columns stationColumns = {
    {"station", CellKind::Text, true, "one physical tub, tray or bench section"},
    {"method", CellKind::Text, true, ""},
    {"rows", CellKind::Count, false, "of positions; 0: not described"},
    {"columns", CellKind::Count, false, "of positions; 0: not described"},
    {"walking_order", CellKind::Count, false, "in a round of checks"},
    {"note", CellKind::Text, false, ""},
    {"is_retired", CellKind::Truth, false, ""},
    {"is_staggered", CellKind::Truth, false, "true: every second row stands half a step to the right"},
    {"blocked", CellKind::Text, false,
     "positions that hold no cutting, such as A1-A3, B2: rows have letters, columns "
     "numbers"}};

constexpr Columns mediumColumns = {{"medium", CellKind::Text, true, "what cuttings are stuck in"},
                                   {"note", CellKind::Text, false, ""},
                                   {"is_retired", CellKind::Truth, false, ""}};

constexpr Columns componentColumns = {{"medium", CellKind::Text, true, ""},
                                      {"component", CellKind::Text, true, "in the order of the recipe"},
                                      {"parts", CellKind::Figure, true, "by volume, above 0"}};

constexpr Columns treatmentColumns = {
    {"treatment", CellKind::Text, true, "what was done to the cut ends before sticking"},
    {"carrier", CellKind::Text, false, "none, gel, powder or liquid dip"},
    {"seconds", CellKind::Count, false, "of dipping; 0: not timed"},
    {"is_wounded", CellKind::Truth, false, ""},
    {"note", CellKind::Text, false, ""},
    {"is_retired", CellKind::Truth, false, ""}};

constexpr Columns auxinColumns = {{"treatment", CellKind::Text, true, ""},
                                  {"auxin", CellKind::Text, true, "such as IBA or NAA"},
                                  {"form", CellKind::Text, false, "acid or salt"},
                                  {"mg_per_l", CellKind::Figure, true, "dose in mg/L; of a powder in mg/kg"}};

constexpr Columns cuttingKindColumns = {{"cutting_kind", CellKind::Text, true, "such as stem tip or heel"},
                                        {"is_retired", CellKind::Truth, false, ""}};

constexpr Columns lossCauseColumns = {
    {"cause", CellKind::Text, true, "why a cutting was lost"},
    {"key", CellKind::Text, false, "the letter that picks it in a round of checks: a to z but w"},
    {"is_retired", CellKind::Truth, false, ""}};

constexpr Columns trialColumns = {
    {"trial", CellKind::Text, true, "a planned comparison"},
    {"horizon_day", CellKind::Count, false, "set before looking"},
    {"allocation_seed", CellKind::Count, false, "present where chance decided"},
    {"note", CellKind::Text, false, ""},
    {"question", CellKind::Text, false, "in the grower's words"},
    {"factor", CellKind::Text, false, "method, treatment, medium or cutting; empty: a trial that is only named"},
    {"blocked_by", CellKind::Text, false, "nothing, plant, stock plant, session or station side"},
    {"measure", CellKind::Text, false, "more rooted or as good as"},
    {"margin", CellKind::Figure, false, "difference in share rooted that would matter, between 0 and 1"},
    {"per_arm", CellKind::Count, false, "cuttings"},
    {"is_blinded", CellKind::Truth, false, "true: arms are not named before the horizon"},
    {"is_crossed_over", CellKind::Truth, false, "true: each station has each method in turn, session by session"},
    {"set_on", CellKind::Date, false, "when question, horizon and measure were set"}};

constexpr Columns trialArmColumns = {
    {"trial", CellKind::Text, true, ""},
    {"arm", CellKind::Text, true, "the method, treatment, medium or kind of cutting; in the order of the arms"}};

constexpr Columns trialBatchColumns = {
    {"trial", CellKind::Text, true, ""},
    {"number", CellKind::Count, true, "of the batch to be stuck, each once within a trial"},
    {"session_number", CellKind::Count, true, "of the trial, from 1"},
    {"station", CellKind::Text, true, "where it is to stand"},
    {"block", CellKind::Text, false, "of the trial"},
    {"species", CellKind::Text, false, "of the plant; empty: not settled beforehand"},
    {"cultivar", CellKind::Text, false, "of the plant"},
    {"stock_plant", CellKind::Text, false, "label of the mother plant"},
    {"arm", CellKind::Text, true, "one of the trial's in trial_arms.csv"},
    {"stuck", CellKind::Count, true, "cuttings"},
    {"positions", CellKind::Text, false, "that chance dealt, such as A1-A6, B2"},
    {"batch", CellKind::Text, false, "the code of the batch that was stuck from it; empty: none yet"}};

constexpr Columns trialChangeColumns = {
    {"trial", CellKind::Text, true, ""},
    {"changed_on", CellKind::Date, true, "the day, after the trial's first check"},
    {"what", CellKind::Text, true, "horizon day, measure, margin, factor, arms or blinding"},
    {"was", CellKind::Text, false, ""},
    {"became", CellKind::Text, false, ""},
    {"reason", CellKind::Text, true, ""}};

constexpr Columns planColumns = {{"species", CellKind::Text, true, "botanical name, without author"},
                                 {"cultivar", CellKind::Text, false, "without quotes"},
                                 {"method", CellKind::Text, false, "empty: not decided"},
                                 {"wanted", CellKind::Count, true, "plants that are to be there in the end"},
                                 {"assurance", CellKind::Figure, true, "chance of having enough, between 0 and 1"},
                                 {"need_by", CellKind::Date, false, "the day; empty: none"},
                                 {"potted_live_percent", CellKind::Figure, true, "of 100 potted on, how many live"},
                                 {"hardening_days", CellKind::Count, false, "between rooting and potting on"},
                                 {"potting_days", CellKind::Count, false, "of growing on after that"},
                                 {"note", CellKind::Text, false, ""}};

constexpr Columns sessionColumns = {{"session", CellKind::Text, true, "a label that batches.csv refers to"},
                                    {"held_on", CellKind::Date, true, "the day"},
                                    {"worker", CellKind::Text, false, "who did it"},
                                    {"note", CellKind::Text, false, ""}};

constexpr Columns batchTableColumns = {
    {"batch", CellKind::Text, true, "the batch's code"},
    {"stuck_on", CellKind::Date, true, "the day of sticking"},
    {"species", CellKind::Text, true, "botanical name, without author"},
    {"cultivar", CellKind::Text, false, "without quotes"},
    {"stock_plant", CellKind::Text, false, "label of the mother plant"},
    {"method", CellKind::Text, true, "a way to root"},
    {"station", CellKind::Text, false, "one physical tub, tray or bench section"},
    {"medium", CellKind::Text, false, ""},
    {"treatment", CellKind::Text, false, "empty: named after the auxin, or not recorded"},
    {"auxin", CellKind::Text, false, "such as IBA; several with \" + \" between"},
    {"auxin_mg_per_l", CellKind::Text, false, "dose in mg/L; several with \" + \" between, in the order of auxin"},
    {"cutting_kind", CellKind::Text, false, ""},
    {"stuck", CellKind::Count, true, "cuttings"},
    {"trial", CellKind::Text, false, ""},
    {"block", CellKind::Text, false, "of the trial"},
    {"note", CellKind::Text, false, ""},
    {"session", CellKind::Text, false, "its label in sessions.csv; empty: all that was stuck that day is one session"},
    {"closed_on", CellKind::Date, false, "closed by hand on this day"},
    {"close_reason", CellKind::Text, false, ""},
    {"positions", CellKind::Text, false, "of its station where it stands, such as A1-A6, B2; empty: not recorded"},
    {"licence", CellKind::Text, false, "or permission under which a protected plant was stuck"}};

constexpr Columns checkColumns = {{"batch", CellKind::Text, true, "the batch's code"},
                                  {"checked_on", CellKind::Date, true, "the day of the look"},
                                  {"rooted", CellKind::Count, true, "newly, since the check before"},
                                  {"lost", CellKind::Count, false, "newly, to this row's cause"},
                                  {"withdrawn", CellKind::Count, false, "newly taken away alive and unrooted"},
                                  {"cause", CellKind::Text, false, "of the loss; empty: not known"},
                                  {"note", CellKind::Text, false, ""}};

using References = ExchangeReference[];
constexpr References plantReferences = {{"check_schedule", "check_schedules", "check_schedule"}};
constexpr References stockPlantReferences = {{"species cultivar", "plants", "species cultivar"}};
constexpr References stationReferences = {{"method", "methods", "method"}};
constexpr References componentReferences = {{"medium", "media", "medium"}};
constexpr References auxinReferences = {{"treatment", "treatments", "treatment"}};
constexpr References batchReferences = {{"species cultivar", "plants", "species cultivar"},
                                        {"method", "methods", "method"},
                                        {"station", "stations", "station"},
                                        {"medium", "media", "medium"},
                                        {"treatment", "treatments", "treatment"},
                                        {"cutting_kind", "cutting_kinds", "cutting_kind"},
                                        {"trial", "trials", "trial"},
                                        {"session", "sessions", "session"}};
constexpr References checkReferences = {{"batch", "batches", "batch"}, {"cause", "loss_causes", "cause"}};
constexpr References trialArmReferences = {{"trial", "trials", "trial"}};
constexpr References trialBatchReferences = {
    {"trial", "trials", "trial"}, {"station", "stations", "station"}, {"batch", "batches", "batch"}};
constexpr References planReferences = {{"species cultivar", "plants", "species cultivar"},
                                       {"method", "methods", "method"}};
constexpr References ofAStation = {{"station", "stations", "station"}};
constexpr References ofABatch = {{"batch", "batches", "batch"}};
constexpr References priceReferences = {{"method", "methods", "method"},
                                        {"station", "stations", "station"},
                                        {"medium", "media", "medium"},
                                        {"treatment", "treatments", "treatment"}};
constexpr References lotReferences = {{"treatment", "treatments", "treatment"}, {"medium", "media", "medium"}};
constexpr References expenseReferences = {{"batch", "batches", "batch"}, {"session", "sessions", "session"}};
constexpr References mixReferences = {{"session", "sessions", "session"}, {"care", "care", "care"}};
constexpr References bandReferences = {{"species cultivar", "plants", "species cultivar"}};

constexpr ExchangeTable allTables[] = {
    {"logbook", "What the logbook says of itself: one row", false, "", logbookColumns, {}},
    {"check_schedules", "How often batches want a look", false, "check_schedule", scheduleColumns, {}},
    {"plants", "What is propagated", false, "", plantColumns, plantReferences},
    {"stock_plants", "The mother plants", false, "", stockPlantColumns, stockPlantReferences},
    {"methods", "Ways to root", false, "method", methodColumns, plantReferences},
    {"stations", "Tubs, trays and bench sections", false, "station", stationColumns, stationReferences},
    {"media", "What cuttings are stuck in", false, "medium", mediumColumns, {}},
    {"medium_components", "What media are mixed from", false, "", componentColumns, componentReferences},
    {"treatments", "What was done to the cut ends", false, "treatment", treatmentColumns, {}},
    {"treatment_auxins", "The auxins of treatments", false, "", auxinColumns, auxinReferences},
    {"cutting_kinds", "Kinds of cutting", false, "cutting_kind", cuttingKindColumns, {}},
    {"loss_causes", "Causes of loss", false, "cause", lossCauseColumns, {}},
    {"trials", "Planned comparisons", false, "trial", trialColumns, {}},
    {"sessions", "Days of cutting work", false, "session", sessionColumns, {}},
    {"batches", "Like cuttings stuck together", true, "batch", batchTableColumns, batchReferences},
    {"checks", "One look at one batch on one day; several rows a day where causes of loss differ", true, "",
     checkColumns, checkReferences},
    {"findings", "Of the counts of checks, those whose position is known", false, "batch checked_on position",
     findingColumns, checkReferences},
    {"trial_arms", "What trials compare", false, "", trialArmColumns, trialArmReferences},
    {"trial_batches", "What chance dealt to the arms of trials", false, "trial number", trialBatchColumns,
     trialBatchReferences},
    {"trial_changes", "How trials are judged, changed after their first check", false, "", trialChangeColumns,
     trialArmReferences},
    {"plans", "How many plants are wanted, and by when", false, "", planColumns, planReferences},
    {"readings", "What was measured at stations", false, "", readingTableColumns, ofAStation},
    {"care", "What was done to stations", false, "", careTableColumns, ofAStation},
    {"prices", "What things cost, from a day on", false, "", priceColumns, priceReferences},
    {"lots", "Bottles and bags of hormone and medium, from a day on", false, "", lotColumns, lotReferences},
    {"pottings", "What became of the rooted after they were potted on", false, "", pottingColumns, ofABatch},
    {"expenses", "Money and time that went into single batches and sessions", false, "", expenseTableColumns,
     expenseReferences},
    {"photos", "Pictures of batches, in the folder photos", false, "file", photoTableColumns, ofABatch},
    {"mixes", "Recipes as they were mixed, kept with a session or with care", false, "", mixColumns, mixReferences},
    {"own_bands", "The grower's own bands", false, "", ownBandColumns, bandReferences},
    {"logger", "What loggers recorded", false, "station quantity at", loggerColumns, ofAStation},
    {"logger_formats", "How the columns of logger files are read", false, "name", loggerFormatColumns, {}}};

}  // namespace

std::span<const ExchangeTable> exchangeTables() {
    return allTables;
}

const ExchangeTable& exchangeTable(std::string_view name) {
    for (const ExchangeTable& table : allTables)
        if (table.name == name) return table;
    assert(false);
    return allTables[0];
}

}  // namespace db
