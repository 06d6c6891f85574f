// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/treatment_fields.h"

#include <QCheckBox>
#include <algorithm>
#include <array>

#include "app/desktop/shelves/form_parts.h"
#include "app/desktop/shelves/rows_edit.h"
#include "app/desktop/widgets/caution_strip.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/plot/number_text.h"
#include "core/mixing/cautions_in_place.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

constexpr int longestDip = 604'800;  // seconds; long soaks last a day or two
constexpr const char* auxinField = "Auxins";

constexpr std::array everyCarrier{core::Carrier::None, core::Carrier::Gel, core::Carrier::Powder,
                                  core::Carrier::LiquidDip};

QString carrierText(core::Carrier carrier) {
    switch (carrier) {
        case core::Carrier::None:
            return FormWords::tr("none");
        case core::Carrier::Gel:
            return FormWords::tr("gel");
        case core::Carrier::Powder:
            return FormWords::tr("powder");
        case core::Carrier::LiquidDip:
            return FormWords::tr("liquid dip");
    }
    return {};
}

QStringList auxinForms() {
    return {FormWords::tr("acid"), FormWords::tr("salt")};
}

RowsEdit* addAuxins(ThingForm& form, const core::Treatment& treatment) {
    auto* auxins = new RowsEdit({{.title = FormWords::tr("Auxin"),
                                  .objectName = "auxin",
                                  .kind = RowsEdit::Kind::Text,
                                  .offers = {"IBA", "NAA", "IAA"}},
                                 {.title = FormWords::tr("Form"),
                                  .objectName = "auxinForm",
                                  .kind = RowsEdit::Kind::Choice,
                                  .offers = auxinForms()},
                                 {.title = FormWords::tr("Dose"),
                                  .objectName = "dose",
                                  .kind = RowsEdit::Kind::Number,
                                  .offers = {},
                                  .unit = FormWords::tr("mg/L (powder: mg/kg)")}},
                                FormWords::tr("Add an au&xin"), FormWords::tr("Auxin"));
    std::vector<QStringList> lines;
    for (const core::Auxin& auxin : treatment.auxins)
        lines.push_back({QString::fromStdString(auxin.name), auxinForms()[auxin.form == core::AuxinForm::Salt ? 1 : 0],
                         plot::amountText(auxin.milligramsPerLitre)});
    // First its place, then its lines: their order for Tab is lost when they move to another window.
    form.addEditor({FormWords::tr("Auxins"), auxinField, "auxins"}, auxins);
    auxins->setLines(lines);
    QObject::connect(auxins, &RowsEdit::changed, &form, [&form] { form.touch(auxinField); });
    return auxins;
}

void readAuxins(const RowsEdit& auxins, TreatmentRead& read) {
    for (const QStringList& line : auxins.lines()) {
        const auto dose = core::numberFrom(line[2].toStdString());
        if (!dose) {
            const QString sentence =
                line[2].isEmpty()
                    ? FormWords::tr("%1 has no dose; a number of mg/L is allowed, 0 for none.").arg(line[0])
                    : FormWords::tr("The dose of %1 is \u201c%2\u201d; a number of mg/L is allowed.")
                          .arg(line[0], line[2]);
            read.faults.push_back({auxinField, line[2].toStdString(), {}, sentence.toStdString()});
        }
        read.treatment.auxins.push_back(
            {.name = line[0].toStdString(),
             .form = line[1] == auxinForms()[1] ? core::AuxinForm::Salt : core::AuxinForm::Acid,
             .milligramsPerLitre = dose.value_or(0)});
    }
}

}  // namespace

std::function<TreatmentRead()> addTreatmentFields(ThingForm& form, const core::Treatment& treatment) {
    QLineEdit* name = form.addLine({FormWords::tr("&Name"), "Name", "treatmentName"}, treatment.name);
    RowsEdit* auxins = addAuxins(form, treatment);
    QComboBox* carrier = form.addChoice({FormWords::tr("&Carrier"), "Carrier", "carrier"});
    for (const core::Carrier each : everyCarrier) carrier->addItem(carrierText(each), static_cast<int>(each));
    carrier->setCurrentIndex(carrier->findData(static_cast<int>(treatment.carrier)));
    CountEdit* seconds =
        form.addCount({FormWords::tr("D&ipped for"), "Seconds", "seconds", FormWords::tr("seconds; 0 if not timed")},
                      treatment.seconds, 0, longestDip);
    QCheckBox* wounded = form.addTick(FormWords::tr("&Wounded"), "wounded", treatment.isWounded);
    QPlainTextEdit* note = form.addNote({FormWords::tr("No&te"), "Note", "treatmentNote"}, treatment.note);
    CautionStrip* cautions = form.addCautions();
    const std::function<TreatmentRead()> readForm = [=] {
        TreatmentRead read{.treatment = treatment, .faults = {}};
        read.treatment.name = lineIn(*name);
        read.treatment.auxins.clear();
        readAuxins(*auxins, read);
        read.treatment.carrier = static_cast<core::Carrier>(carrier->currentData().toInt());
        read.treatment.seconds = seconds->count().value_or(0);
        if (!seconds->count())
            read.faults.push_back({"Seconds",
                                   seconds->text().toStdString(),
                                   {},
                                   seconds->fault(FormWords::tr("Dipped for")).toStdString()});
        read.treatment.isWounded = wounded->isChecked();
        read.treatment.note = noteIn(*note);
        return read;
    };
    const auto mind = [=] { cautions->mind(core::cautionsOnTreatment(readForm().treatment)); };
    QObject::connect(auxins, &RowsEdit::changed, cautions, mind);
    mind();
    return readForm;
}

core::Refusals underAuxins(core::Refusals refusals) {
    for (core::Refusal& refusal : refusals)
        if (refusal.field == "Auxin" || refusal.field.starts_with("Dose of ")) refusal.field = auxinField;
    return refusals;
}

}  // namespace desktop
