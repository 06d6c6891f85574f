// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/shelf_list.h"

#include <QCoreApplication>

#include "app/desktop/shelves/described_shelf.h"
#include "app/desktop/shelves/money_shelves.h"
#include "app/desktop/shelves/plant_facts_panel.h"
#include "app/desktop/shelves/shelf_forms.h"
#include "app/desktop/shelves/shelf_uses.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "db/actions/merge_actions.h"

namespace desktop {

namespace {

struct ShelfWords {
    Q_DECLARE_TR_FUNCTIONS(desktop::Shelf)
};

ShelfCell words(const std::string& text) {
    return {.text = QString::fromStdString(text)};
}

ShelfCell figure(std::optional<int> number) {
    if (!number) return {};
    return {.text = plot::countText(*number), .figure = *number};
}

template <class Thing, class ThingId>
ShelfCell nameIn(const std::vector<Thing>& things, ThingId id) {
    const Thing* thing = core::find(things, id);
    return thing ? ShelfCell{.text = shelfNameOf(*thing)} : ShelfCell{};
}

template <class Thing>
ColumnOf<Thing> column(const QString& title, std::string Thing::*text) {
    return {title, ShelfLook::Words, [text](const Thing& thing, const core::Shelves&) { return words(thing.*text); }};
}

template <class Thing>
ColumnOf<Thing> column(const QString& title, std::function<ShelfCell(const Thing&)> cell,
                       ShelfLook look = ShelfLook::Words) {
    return {title, look, [cell = std::move(cell)](const Thing& thing, const core::Shelves&) { return cell(thing); }};
}

template <class Thing>
ColumnOf<Thing> scheduleColumn() {
    return {ShelfWords::tr("Looked at"), ShelfLook::Words, [](const Thing& thing, const core::Shelves& shelves) {
                return nameIn(shelves.checkSchedules, thing.checkSchedule);
            }};
}

template <class ThingId>
auto usesBy(ThingId core::Batch::*which) {
    return [which](const Workspace& workspace) { return usesOf(workspace.batchLines(), which); };
}

/// "protected, eaten"
QString marksOf(const core::Plant& plant) {
    QStringList marks;
    if (plant.isProtected) marks << ShelfWords::tr("protected");
    if (plant.isEdible) marks << ShelfWords::tr("eaten");
    return marks.join(ShelfWords::tr(", ", "between marks of a plant"));
}

Shelf plants() {
    using core::Plant;
    Shelf shelf = describedShelf<Plant>(
        ShelfKind::Plants, QStringLiteral("plants"), &core::Shelves::plants,
        {{ShelfWords::tr("Plant"), ShelfLook::PlantName,
          [](const Plant& plant, const core::Shelves&) { return ShelfCell{.text = shelfNameOf(plant)}; }},
         column<Plant>(ShelfWords::tr("Common name"), &Plant::commonName),
         column<Plant>(
             ShelfWords::tr("Days to root"), [](const Plant& plant) { return figure(plant.usualRootingDaysHigh); },
             ShelfLook::Figure),
         column<Plant>(ShelfWords::tr("Marks"), [](const Plant& plant) { return ShelfCell{.text = marksOf(plant)}; }),
         scheduleColumn<Plant>(),
         column<Plant>(ShelfWords::tr("Note"), &Plant::note)});
    shelf.title = ShelfWords::tr("Plants");
    shelf.newText = ShelfWords::tr("New &plant");
    shelf.purpose = ShelfWords::tr(
        "What you propagate: botanical name, cultivar, common name, and the day by which it has usually rooted. A "
        "session makes new plants as you type their names.");
    shelf.uses = usesBy(&core::Batch::plant);
    shelf.merge = mergeBy<core::PlantId>(db::mergePlants);
    shelf.comesAlong = ShelfWords::tr("Its stock plants come along; two with one label become one.");
    shelf.form = plantForm;
    shelf.details = [](const PageContext& context) { return new PlantFactsPanel(context); };
    shelf.place = Place::Kind::Plant;
    return shelf;
}

Shelf stockPlants() {
    using core::StockPlant;
    Shelf shelf = describedShelf<StockPlant>(
        ShelfKind::StockPlants, QStringLiteral("stock_plants"), &core::Shelves::stockPlants,
        {column<StockPlant>(ShelfWords::tr("Label"), &StockPlant::label),
         {ShelfWords::tr("Plant"), ShelfLook::PlantName,
          [](const StockPlant& stock, const core::Shelves& shelves) { return nameIn(shelves.plants, stock.plant); }},
         column<StockPlant>(ShelfWords::tr("Note"), &StockPlant::note)});
    shelf.title = ShelfWords::tr("Stock plants");
    shelf.newText = ShelfWords::tr("New stock &plant");
    shelf.purpose = ShelfWords::tr("The mother plants that you take cuttings from, each by the label that it carries.");
    shelf.uses = usesBy(&core::Batch::stockPlant);
    shelf.merge = mergeBy<core::StockPlantId>(db::mergeStockPlants);
    shelf.form = stockPlantForm;
    shelf.place = Place::Kind::StockPlant;
    return shelf;
}

Shelf methods() {
    using core::Method;
    Shelf shelf =
        describedShelf<Method>(ShelfKind::Methods, QStringLiteral("methods"), &core::Shelves::methods,
                               {column<Method>(ShelfWords::tr("Method"), &Method::name), scheduleColumn<Method>()});
    shelf.title = ShelfWords::tr("Methods");
    shelf.newText = ShelfWords::tr("New &method");
    shelf.purpose = ShelfWords::tr("Ways to root, such as aerated water or a media tray. Head to head compares them.");
    shelf.uses = usesBy(&core::Batch::method);
    shelf.form = methodForm;
    return shelf;
}

QString layoutText(const core::Station& station) {
    if (!station.hasLayout()) return {};
    return ShelfWords::tr("%1 × %2", "rows × columns of a tray")
        .arg(plot::countText(station.rows), plot::countText(station.columns));
}

Shelf stations() {
    using core::Station;
    Shelf shelf = describedShelf<Station>(
        ShelfKind::Stations, QStringLiteral("stations"), &core::Shelves::stations,
        {column<Station>(ShelfWords::tr("Station"), &Station::name),
         {ShelfWords::tr("Method"), ShelfLook::Words,
          [](const Station& station, const core::Shelves& shelves) { return nameIn(shelves.methods, station.method); }},
         column<Station>(ShelfWords::tr("Layout"),
                         [](const Station& station) { return ShelfCell{.text = layoutText(station)}; }),
         column<Station>(
             ShelfWords::tr("Positions"),
             [](const Station& station) {
                 return figure(station.hasLayout() ? std::optional(station.positions()) : std::nullopt);
             },
             ShelfLook::Figure),
         column<Station>(
             ShelfWords::tr("Place in the walk"), [](const Station& station) { return figure(station.walkingOrder); },
             ShelfLook::Figure),
         column<Station>(ShelfWords::tr("Note"), &Station::note)});
    shelf.title = ShelfWords::tr("Stations");
    shelf.newText = ShelfWords::tr("New &station");
    shelf.purpose = ShelfWords::tr("Tubs, trays and bench sections: what stands where, and how many positions it has.");
    shelf.uses = usesBy(&core::Batch::station);
    shelf.merge = mergeBy<core::StationId>(db::mergeStations);
    shelf.comesAlong = ShelfWords::tr("Its readings and care come along.");
    shelf.form = stationForm;
    shelf.place = Place::Kind::Station;
    return shelf;
}

Shelf media() {
    using core::Medium;
    Shelf shelf =
        describedShelf<Medium>(ShelfKind::Media, QStringLiteral("media"), &core::Shelves::media,
                               {column<Medium>(ShelfWords::tr("Medium"), &Medium::name),
                                column<Medium>(ShelfWords::tr("Parts by volume"),
                                               [](const Medium& medium) { return words(core::recipe(medium)); }),
                                column<Medium>(ShelfWords::tr("Note"), &Medium::note)});
    shelf.title = ShelfWords::tr("Media");
    shelf.newText = ShelfWords::tr("New &medium");
    shelf.purpose = ShelfWords::tr("What you stick cuttings into: its components and their parts by volume.");
    shelf.uses = usesBy(&core::Batch::medium);
    shelf.merge = mergeBy<core::MediumId>(db::mergeMedia);
    shelf.form = mediumForm;
    return shelf;
}

Shelf treatments() {
    using core::Treatment;
    Shelf shelf = describedShelf<Treatment>(
        ShelfKind::Treatments, QStringLiteral("treatments"), &core::Shelves::treatments,
        {column<Treatment>(ShelfWords::tr("Treatment"), &Treatment::name),
         column<Treatment>(ShelfWords::tr("What is done"),
                           [](const Treatment& treatment) { return words(core::description(treatment)); }),
         column<Treatment>(ShelfWords::tr("Note"), &Treatment::note)});
    shelf.title = ShelfWords::tr("Treatments");
    shelf.newText = ShelfWords::tr("New &treatment");
    shelf.purpose = ShelfWords::tr("What is done to the cut ends: auxins and their doses, carrier, seconds, wounding.");
    shelf.uses = usesBy(&core::Batch::treatment);
    shelf.merge = mergeBy<core::TreatmentId>(db::mergeTreatments);
    shelf.form = treatmentForm;
    return shelf;
}

Shelf cuttingKinds() {
    using core::CuttingKind;
    Shelf shelf = describedShelf<CuttingKind>(
        ShelfKind::CuttingKinds, QStringLiteral("cutting_kinds"), &core::Shelves::cuttingKinds,
        {column<CuttingKind>(ShelfWords::tr("Kind of cutting"), &CuttingKind::name)});
    shelf.title = ShelfWords::tr("Kinds of cutting");
    shelf.newText = ShelfWords::tr("New &kind of cutting");
    shelf.purpose = ShelfWords::tr("Stem tip, nodal, heel, root and whatever else you cut.");
    shelf.uses = usesBy(&core::Batch::cuttingKind);
    shelf.merge = mergeBy<core::CuttingKindId>(db::mergeCuttingKinds);
    shelf.form = cuttingKindForm;
    return shelf;
}

Shelf lossCauses() {
    using core::LossCause;
    Shelf shelf = describedShelf<LossCause>(
        ShelfKind::LossCauses, QStringLiteral("loss_causes"), &core::Shelves::lossCauses,
        {column<LossCause>(ShelfWords::tr("Cause of loss"), &LossCause::name),
         column<LossCause>(ShelfWords::tr("Key"), [](const LossCause& cause) {
             return ShelfCell{.text = cause.key == '\0' ? QString() : QString(QLatin1Char(cause.key))};
         })});
    shelf.title = ShelfWords::tr("Causes of loss");
    shelf.newText = ShelfWords::tr("New &cause of loss");
    shelf.purpose = ShelfWords::tr("Why cuttings are lost. The key is the letter that picks the cause in a round.");
    shelf.uses = usesOfLossCauses;
    shelf.merge = mergeBy<core::LossCauseId>(db::mergeLossCauses);
    shelf.form = lossCauseForm;
    return shelf;
}

Shelf trials() {
    using core::Trial;
    Shelf shelf = describedShelf<Trial>(
        ShelfKind::Trials, QStringLiteral("trials"), &core::Shelves::trials,
        {column<Trial>(ShelfWords::tr("Trial"), &Trial::name),
         column<Trial>(
             ShelfWords::tr("Horizon day"), [](const Trial& trial) { return figure(trial.horizonDay); },
             ShelfLook::Figure),
         column<Trial>(ShelfWords::tr("Dealt"),
                       [](const Trial& trial) {
                           return ShelfCell{.text = trial.allocationSeed ? ShelfWords::tr("by chance") : QString()};
                       }),
         column<Trial>(ShelfWords::tr("Note"), &Trial::note)});
    shelf.title = ShelfWords::tr("Trials");
    shelf.newText = ShelfWords::tr("New &trial");
    shelf.purpose = ShelfWords::tr(
        "Planned comparisons with the day on which they are decided. Splitting a batch in a session makes one too.");
    shelf.uses = usesBy(&core::Batch::trial);
    shelf.form = trialForm;
    return shelf;
}

Shelf checkSchedules() {
    using core::CheckSchedule;
    Shelf shelf = describedShelf<CheckSchedule>(
        ShelfKind::CheckSchedules, QStringLiteral("check_schedules"), &core::Shelves::checkSchedules,
        {column<CheckSchedule>(ShelfWords::tr("Check schedule"), &CheckSchedule::name),
         column<CheckSchedule>(
             ShelfWords::tr("First look after days"),
             [](const CheckSchedule& schedule) { return figure(schedule.firstAfterDays); }, ShelfLook::Figure),
         column<CheckSchedule>(
             ShelfWords::tr("Then every days"),
             [](const CheckSchedule& schedule) { return figure(schedule.everyDays); }, ShelfLook::Figure)});
    shelf.title = ShelfWords::tr("Check schedules");
    shelf.newText = ShelfWords::tr("New check &schedule");
    shelf.purpose = ShelfWords::tr(
        "How often batches want a look. Give one to a plant or a method that wants another than the logbook's.");
    shelf.uses = usesOfCheckSchedules;
    shelf.form = checkScheduleForm;
    return shelf;
}

}  // namespace

std::vector<Shelf> allShelves() {
    return {plants(),       stockPlants(), methods(), stations(),       media(),       treatments(),
            cuttingKinds(), lossCauses(),  trials(),  checkSchedules(), pricesShelf(), lotsShelf()};
}

}  // namespace desktop
