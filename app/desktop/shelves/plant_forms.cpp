// SPDX-License-Identifier: MIT
// The forms of plants and stock plants.
#include <QCheckBox>
#include <QLabel>
#include <QPushButton>

#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/shelves/form_parts.h"
#include "app/desktop/shelves/plant_offer.h"
#include "app/desktop/shelves/shelf_forms.h"
#include "app/desktop/widgets/caution_strip.h"
#include "app/desktop/widgets/count_edit.h"
#include "core/mixing/cautions_in_place.h"
#include "core/plants/botanical_name.h"

namespace desktop {

namespace {

constexpr int longestRooting = 3650;  // days
constexpr const char* rootingField = "Usual days to root";

struct PlantFields {
    QLineEdit *botanical, *cultivar, *common;
    QLabel *shown, *read;
    QPushButton* offer;
    QCheckBox *isProtected, *isEdible;
    CautionStrip* cautions;
    CountEdit* days;
    QComboBox* schedule;
    QPlainTextEdit* note;
};

PlantFields addPlantFields(ThingForm& form, const core::Plant& plant, const core::Shelves& shelves) {
    PlantFields fields{};
    fields.botanical = form.addLine(
        {FormWords::tr("&Botanical name"), "Botanical name", "plantBotanical", FormWords::tr("without author")},
        plant.botanicalName);
    fields.cultivar = form.addLine(
        {FormWords::tr("C&ultivar"), "Cultivar", "plantCultivar", FormWords::tr("without quotes")}, plant.cultivar);
    fields.shown = form.addWords("plantShown");
    fields.shown->setTextFormat(Qt::RichText);
    fields.read = form.addWords("plantRead");
    fields.offer = form.addButton("plantOffer");
    fields.common = form.addLine({FormWords::tr("&Common name"), "Common name", "plantCommon"}, plant.commonName);
    fields.isProtected = form.addTick(FormWords::tr("&Protected by breeders\u2019 rights or a licence"),
                                      "plantProtected", plant.isProtected);
    fields.isEdible = form.addTick(FormWords::tr("&Eaten: it, or its fruit"), "plantEaten", plant.isEdible);
    fields.cautions = form.addCautions();
    fields.days = form.addCount({FormWords::tr("Usually rooted by &day"), rootingField, "plantDays",
                                 FormWords::tr("after sticking: when comparisons of it are decided; may be blank")},
                                plant.usualRootingDaysHigh, 1, longestRooting);
    fields.schedule = form.addChoice({FormWords::tr("&Looked at"), "Check schedule", "plantSchedule"});
    fillChoice(*fields.schedule, shelves.checkSchedules, plant.checkSchedule,
               FormWords::tr("as its method or the logbook says"));
    fields.note = form.addNote({FormWords::tr("&Note"), "Note", "plantNote"}, plant.note);
    return fields;
}

core::Plant plantIn(const PlantFields& fields, core::Plant plant) {
    plant.botanicalName = lineIn(*fields.botanical);
    plant.cultivar = lineIn(*fields.cultivar);
    plant.commonName = lineIn(*fields.common);
    plant.isProtected = fields.isProtected->isChecked();
    plant.isEdible = fields.isEdible->isChecked();
    plant.usualRootingDaysHigh = fields.days->count();
    plant.checkSchedule = {chosenIn(*fields.schedule)};
    plant.note = noteIn(*fields.note);
    return plant;
}

/// "Read as: genus Salvia, species rosmarinus."
QString readText(const core::Plant& plant) {
    const auto name = core::botanicalNameFrom(plant.botanicalName);
    if (name) return FormWords::tr("Read as: %1.").arg(QString::fromStdString(core::inWords(*name)));
    return FormWords::tr("Kept as you typed it; it doesn\u2019t read as a botanical name.");
}

void showPlant(const PlantFields& fields, const core::Plant& now) {
    const bool isBlank = now.botanicalName.empty();
    const QString name = plantNameAsHtml(QString::fromStdString(core::fullName(now)));
    fields.shown->setText(isBlank ? FormWords::tr("Genus and species, such as Hebe albicans.")
                                  : FormWords::tr("Written as: %1").arg(name));
    fields.read->setVisible(!isBlank);
    fields.read->setText(readText(now));
    const PlantOffer offer = offerFor(now);
    fields.offer->setVisible(!offer.isEmpty());
    fields.offer->setText(offer.words());
    fields.cautions->mind(core::cautionsOnPlant(now));
}

/// Fills what is blank and leaves alone what is not.
void takeOffer(const PlantFields& fields, const core::Plant& now) {
    const PlantOffer offer = offerFor(now);
    if (!offer.commonName.isEmpty()) fields.common->setText(offer.commonName);
    if (offer.days) fields.days->setCount(offer.days);
    fields.common->setFocus(Qt::OtherFocusReason);
}

}  // namespace

QDialog* plantForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    const auto plant = thingOf(context, &core::Shelves::plants, id);
    auto* form = new ThingForm(&context.prompts, formTitle(plant, FormWords::tr("New plant")), parent);
    form->setObjectName("plantForm");
    const PlantFields fields = addPlantFields(*form, plant, context.workspace.shelves());
    const auto show = [fields, plant] { showPlant(fields, plantIn(fields, plant)); };
    for (QLineEdit* edit :
         std::initializer_list<QLineEdit*>{fields.botanical, fields.cultivar, fields.common, fields.days})
        QObject::connect(edit, &QLineEdit::textChanged, form, show);
    for (const QCheckBox* box : {fields.isProtected, fields.isEdible})
        QObject::connect(box, &QCheckBox::toggled, form, show);
    const auto take = [fields, plant, form] {
        takeOffer(fields, plantIn(fields, plant));
        form->touch({});
    };
    QObject::connect(fields.offer, &QPushButton::clicked, form, take);
    onEnter(*fields.botanical, [fields, plant, take] {
        const bool isOffered = !offerFor(plantIn(fields, plant)).isEmpty();
        if (isOffered) take();
        return isOffered;
    });
    show();
    finishForm<core::Plant>(*form, context, [fields, plant] {
        return ThingRead<core::Plant>{plantIn(fields, plant), faultsInOptionalCount(*fields.days, rootingField)};
    });
    return form;
}

QDialog* stockPlantForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    const auto stock = thingOf(context, &core::Shelves::stockPlants, id);
    auto* form = new ThingForm(&context.prompts, formTitle(stock, FormWords::tr("New stock plant")), parent);
    form->setObjectName("stockPlantForm");
    QComboBox* plant = form->addChoice({FormWords::tr("&Plant"), "Plant", "stockPlantOf"});
    fillChoice(*plant, context.workspace.shelves().plants, stock.plant, {});
    QLineEdit* label = form->addLine(
        {FormWords::tr("&Label"), "Label", "stockPlantLabel", FormWords::tr("as it stands on the plant")}, stock.label);
    QPlainTextEdit* note = form->addNote({FormWords::tr("&Note"), "Note", "stockPlantNote"}, stock.note);
    form->addCautions()->mind(core::cautionsOnStockPlant());
    finishForm<core::StockPlant>(*form, context, [=] {
        core::StockPlant now = stock;
        now.plant = {chosenIn(*plant)};
        now.label = lineIn(*label);
        now.note = noteIn(*note);
        return ThingRead<core::StockPlant>{now, {}};
    });
    return form;
}

}  // namespace desktop
