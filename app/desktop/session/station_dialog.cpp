// SPDX-License-Identifier: MIT
#include "app/desktop/session/station_dialog.h"

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

namespace desktop {

namespace {

constexpr int mostRows = 26;
constexpr int mostColumns = 200;

}  // namespace

StationDialog::StationDialog(SessionModel& model, const QString& name, QWidget* parent)
    : QDialog(parent),
      model_(model),
      name_(new QLineEdit(name)),
      method_(new QComboBox),
      rows_(new CountEdit(0, mostRows)),
      columns_(new CountEdit(0, mostColumns)),
      fault_(new FaultLabel) {
    setObjectName(QStringLiteral("stationDialog"));
    setWindowTitle(tr("New station"));
    build();
}

void StationDialog::build() {
    name_->setObjectName(QStringLiteral("stationName"));
    name_->setMaxLength(200);
    method_->setObjectName(QStringLiteral("stationMethod"));
    method_->setEditable(true);
    method_->addItems(model_.names().methods());
    rows_->setObjectName(QStringLiteral("stationRows"));
    columns_->setObjectName(QStringLiteral("stationColumns"));
    rows_->setAccessibleName(tr("Rows of positions"));
    columns_->setAccessibleName(tr("Positions in a row"));
    rows_->setCount(0);
    columns_->setCount(0);
    auto* positions = new QHBoxLayout;
    positions->addWidget(rows_);
    positions->addWidget(new QLabel(tr("rows of")));
    positions->addWidget(columns_);
    positions->addWidget(new QLabel(tr("positions; 0 if it has none")), 1);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agree = buttons->addButton(tr("Use this station"), QDialogButtonBox::AcceptRole);
    agree->setObjectName(QStringLiteral("describeStation"));
    agree->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &StationDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);

    auto* form = new QFormLayout(this);
    form->addRow(tr("&Name"), name_);
    form->addRow(tr("&Method"), method_);
    auto* caption = new QLabel(tr("&Positions"));
    caption->setBuddy(rows_);
    form->addRow(caption, positions);
    form->addRow(fault_);
    form->addRow(buttons);
}

void StationDialog::agree() {
    QString fault = rows_->fault(tr("Rows"));
    if (fault.isEmpty()) fault = columns_->fault(tr("Positions in a row"));
    if (fault.isEmpty()) {
        core::Station station;
        station.name = name_->text().toStdString();
        station.rows = *rows_->count();
        station.columns = *columns_->count();
        fault = model_.describe(std::move(station), method_->currentText());
    }
    fault_->setFault(fault);
    if (!fault.isEmpty()) return;
    emit described(name_->text().simplified());
    accept();
}

}  // namespace desktop
