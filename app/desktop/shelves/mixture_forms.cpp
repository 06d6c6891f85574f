// SPDX-License-Identifier: MIT
// The forms of media and treatments.
#include "app/desktop/names/text_labels.h"
#include "app/desktop/shelves/form_parts.h"
#include "app/desktop/shelves/rows_edit.h"
#include "app/desktop/shelves/shelf_forms.h"
#include "app/desktop/shelves/treatment_fields.h"
#include "app/desktop/widgets/caution_strip.h"
#include "app/plot/number_text.h"
#include "core/mixing/cautions_in_place.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

constexpr const char* componentsField = "Components";

RowsEdit* addComponents(ThingForm& form, const core::Medium& medium) {
    auto* components =
        new RowsEdit({{.title = FormWords::tr("Component"),
                       .objectName = "component",
                       .kind = RowsEdit::Kind::Text,
                       .offers = {FormWords::tr("coir"), FormWords::tr("perlite"), FormWords::tr("vermiculite"),
                                  FormWords::tr("peat"), FormWords::tr("sand"), FormWords::tr("bark")}},
                      {.title = FormWords::tr("Parts"),
                       .objectName = "parts",
                       .kind = RowsEdit::Kind::Number,
                       .offers = {},
                       .unit = FormWords::tr("by volume")}},
                     FormWords::tr("Add a &component"), FormWords::tr("Component"));
    std::vector<QStringList> lines;
    for (const core::MediumComponent& component : medium.components)
        lines.push_back({QString::fromStdString(component.name), plot::amountText(component.parts)});
    // First its place, then its lines: their order for Tab is lost when they move to another window.
    form.addEditor({FormWords::tr("Components"), componentsField, "components"}, components);
    components->setLines(lines);
    QObject::connect(components, &RowsEdit::changed, &form, [&form] { form.touch(componentsField); });
    return components;
}

void readComponents(const RowsEdit& components, ThingRead<core::Medium>& read) {
    for (const QStringList& line : components.lines()) {
        const auto parts = core::numberFrom(line[1].toStdString());
        if (!parts)
            read.faults.push_back({componentsField,
                                   line[1].toStdString(),
                                   {},
                                   FormWords::tr("The parts of \u201c%1\u201d are \u201c%2\u201d; a number above 0 is "
                                                 "allowed, such as 3 or 0.5.")
                                       .arg(line[0], line[1])
                                       .toStdString()});
        read.thing.components.push_back({.name = line[0].toStdString(), .parts = parts.value_or(1)});
    }
}

/// The rules speak of one component; the form has one field for all.
core::Refusals underComponents(core::Refusals refusals) {
    for (core::Refusal& refusal : refusals)
        if (refusal.field == "Component" || refusal.field.starts_with("Parts of ")) refusal.field = componentsField;
    return refusals;
}

}  // namespace

QDialog* mediumForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    const auto medium = thingOf(context, &core::Shelves::media, id);
    auto* form = new ThingForm(&context.prompts, formTitle(medium, FormWords::tr("New medium")), parent);
    form->setObjectName("mediumForm");
    QLineEdit* name = form->addLine({FormWords::tr("&Name"), "Name", "mediumName"}, medium.name);
    RowsEdit* components = addComponents(*form, medium);
    QLabel* recipe = form->addWords("mediumRecipe");
    QPlainTextEdit* note = form->addNote({FormWords::tr("No&te"), "Note", "mediumNote"}, medium.note);
    form->addCautions()->mind(core::cautionsOnMedium());
    const auto read = [=] {
        ThingRead<core::Medium> now{medium, {}};
        now.thing.name = lineIn(*name);
        now.thing.components.clear();
        readComponents(*components, now);
        now.thing.note = noteIn(*note);
        return now;
    };
    const auto showRecipe = [=] {
        const core::Medium now = read().thing;
        recipe->setText(now.components.empty() ? FormWords::tr("No components: plain water, or not described.")
                                               : QString::fromStdString(core::recipe(now)));
    };
    QObject::connect(components, &RowsEdit::changed, form, showRecipe);
    showRecipe();
    finishForm<core::Medium>(*form, context, read, underComponents);
    return form;
}

QDialog* treatmentForm(const PageContext& context, std::int64_t id, QWidget* parent) {
    const auto treatment = thingOf(context, &core::Shelves::treatments, id);
    auto* form = new ThingForm(&context.prompts, formTitle(treatment, FormWords::tr("New treatment")), parent);
    form->setObjectName("treatmentForm");
    const auto fields = addTreatmentFields(*form, treatment);
    const auto read = [fields] {
        TreatmentRead now = fields();
        return ThingRead<core::Treatment>{std::move(now.treatment), std::move(now.faults)};
    };
    finishForm<core::Treatment>(*form, context, read, underAuxins);
    return form;
}

}  // namespace desktop
