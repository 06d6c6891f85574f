// SPDX-License-Identifier: MIT
#include "app/desktop/session/treatment_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/session/session_model.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

constexpr double highestDose = 100'000;  // mg/L
constexpr int longestDip = 86'400;       // seconds

QWidget* withUnit(QWidget* field, const QString& unit) {
    auto* both = new QWidget;
    auto* row = new QHBoxLayout(both);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(field);
    row->addWidget(new QLabel(unit), 1);
    both->setFocusProxy(field);
    return both;
}

}  // namespace

TreatmentDialog::TreatmentDialog(SessionModel& model, const QString& name, QWidget* parent)
    : QDialog(parent),
      model_(model),
      name_(new QLineEdit(name)),
      auxin_(new QComboBox),
      form_(new QComboBox),
      dose_(new QLineEdit),
      carrier_(new QComboBox),
      seconds_(new CountEdit(0, longestDip)),
      wounded_(new QCheckBox(tr("&Wounded"))),
      fault_(new FaultLabel) {
    setObjectName(QStringLiteral("treatmentDialog"));
    setWindowTitle(tr("New treatment"));
    build();
}

void TreatmentDialog::build() {
    name_->setObjectName(QStringLiteral("treatmentName"));
    name_->setMaxLength(200);
    auxin_->setObjectName(QStringLiteral("auxin"));
    auxin_->setEditable(true);
    auxin_->addItems({QString(), QStringLiteral("IBA"), QStringLiteral("NAA"), QStringLiteral("IAA")});
    form_->addItem(tr("acid"), static_cast<int>(core::AuxinForm::Acid));
    form_->addItem(tr("salt"), static_cast<int>(core::AuxinForm::Salt));
    dose_->setObjectName(QStringLiteral("dose"));
    dose_->setAlignment(Qt::AlignRight);
    carrier_->addItem(tr("none"), static_cast<int>(core::Carrier::None));
    carrier_->addItem(tr("gel"), static_cast<int>(core::Carrier::Gel));
    carrier_->addItem(tr("powder"), static_cast<int>(core::Carrier::Powder));
    carrier_->addItem(tr("liquid dip"), static_cast<int>(core::Carrier::LiquidDip));
    seconds_->setCount(0);
    auto* form = new QFormLayout(this);
    addRows(*form);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agree = buttons->addButton(tr("Use this treatment"), QDialogButtonBox::AcceptRole);
    agree->setObjectName(QStringLiteral("describeTreatment"));
    agree->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &TreatmentDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    form->addRow(fault_);
    form->addRow(buttons);
}

void TreatmentDialog::addRows(QFormLayout& form) {
    const auto addRow = [&form](const QString& caption, QWidget* field, const QString& unit) {
        auto* label = new QLabel(caption);
        label->setBuddy(field);
        form.addRow(label, withUnit(field, unit));
    };
    form.addRow(tr("&Name"), name_);
    form.addRow(tr("Au&xin"), auxin_);
    form.addRow(tr("&Form"), form_);
    addRow(tr("&Dose"), dose_, tr("mg/L (powder: mg/kg)"));
    form.addRow(tr("&Carrier"), carrier_);
    addRow(tr("D&ipped for"), seconds_, tr("seconds; 0 if not timed"));
    form.addRow(QString(), wounded_);
}

QString TreatmentDialog::read(core::Treatment& treatment) const {
    const QString auxin = auxin_->currentText().simplified();
    const auto dose = core::numberFrom(dose_->text().toStdString());
    if (!auxin.isEmpty() && (!dose || *dose < 0 || *dose > highestDose))
        return tr("Dose is \u201c%1\u201d: it has to be a number from 0 to 100\u202f000 mg/L.")
            .arg(dose_->text().trimmed());
    if (auxin.isEmpty() && !dose_->text().trimmed().isEmpty())
        return tr("There is a dose of %1 mg/L but no auxin: choose the auxin, or clear the dose.")
            .arg(dose_->text().trimmed());
    const QString fault = seconds_->fault(tr("Dipped for"));
    if (!fault.isEmpty()) return fault;
    if (!auxin.isEmpty())
        treatment.auxins.push_back({.name = auxin.toStdString(),
                                    .form = static_cast<core::AuxinForm>(form_->currentData().toInt()),
                                    .milligramsPerLitre = *dose});
    treatment.name = name_->text().toStdString();
    treatment.carrier = static_cast<core::Carrier>(carrier_->currentData().toInt());
    treatment.seconds = *seconds_->count();
    treatment.isWounded = wounded_->isChecked();
    return {};
}

void TreatmentDialog::agree() {
    core::Treatment treatment;
    QString fault = read(treatment);
    if (fault.isEmpty()) fault = model_.describe(std::move(treatment));
    fault_->setFault(fault);
    if (!fault.isEmpty()) return;
    emit described(name_->text().simplified());
    accept();
}

}  // namespace desktop
