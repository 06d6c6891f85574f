// SPDX-License-Identifier: MIT
// The forms of plants and stock plants.
#include <QCheckBox>
#include <QLabel>

#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/shelves/form_parts.h"
#include "app/desktop/shelves/shelf_forms.h"
#include "app/desktop/widgets/count_edit.h"

namespace desktop {

namespace {

constexpr int longestRooting = 3650;  // days
constexpr const char* rootingField = "Usual days to root";

struct PlantFields {
    QLineEdit *botanical, *cultivar, *common;
    QLabel* shown;
    QCheckBox* isProtected;
    QLabel* caution;
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
    fields.common = form.addLine({FormWords::tr("&Common name"), "Common name", "plantCommon"}, plant.commonName);
    fields.isProtected = form.addTick(FormWords::tr("&Protected by breeders\u2019 rights or a licence"),
                                      "plantProtected", plant.isProtected);
    fields.caution = form.addWords("plantCaution");
    fields.caution->setText(FormWords::tr(
        "Propagating it may need a licence. Every report about it says so, and so does the page of each batch."));
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
    plant.usualRootingDaysHigh = fields.days->count();
    plant.checkSchedule = {chosenIn(*fields.schedule)};
    plant.note = noteIn(*fields.note);
    return plant;
}

}  // namespace

QDialog* plantForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    const auto plant = thingOf(context, &core::Shelves::plants, id);
    auto* form = new ThingForm(&context.prompts, formTitle(plant, FormWords::tr("New plant")), parent);
    form->setObjectName("plantForm");
    const PlantFields fields = addPlantFields(*form, plant, context.workspace.shelves());
    const auto showName = [fields, plant] {
        const core::Plant now = plantIn(fields, plant);
        const QString name = plantNameAsHtml(QString::fromStdString(core::fullName(now)));
        fields.shown->setText(now.botanicalName.empty() ? FormWords::tr("Genus and species, such as Hebe albicans.")
                                                        : FormWords::tr("Written as: %1").arg(name));
    };
    for (QLineEdit* edit : {fields.botanical, fields.cultivar})
        QObject::connect(edit, &QLineEdit::textChanged, form, showName);
    showName();
    fields.caution->setVisible(plant.isProtected);
    QObject::connect(fields.isProtected, &QCheckBox::toggled, fields.caution, &QLabel::setVisible);
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
