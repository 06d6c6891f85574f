// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_dialog.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

#include "app/desktop/widgets/caution_strip.h"
#include "app/desktop/widgets/count_edit.h"
#include "core/mixing/cautions_in_place.h"

namespace desktop {

namespace {

constexpr int mostStuck = 100'000;

QString labelOf(const core::Plant& plant) {
    return QString::fromStdString(core::fullName(plant));
}
QString labelOf(const core::StockPlant& stock) {
    return QString::fromStdString(stock.label);
}

template <class Thing>
QString labelOf(const Thing& thing) {
    return QString::fromStdString(thing.name);
}

/// What may be chosen: everything in use, and what the batch has already even if it was retired since.
template <class Thing, class ThingId>
void fill(QComboBox& box, const std::vector<Thing>& things, ThingId current, const QString& none) {
    box.clear();
    if (!none.isEmpty()) box.addItem(none, QVariant::fromValue<qlonglong>(0));
    for (const Thing& thing : things)
        if (!thing.isRetired || thing.id == current)
            box.addItem(labelOf(thing), QVariant::fromValue<qlonglong>(thing.id.value));
    box.setCurrentIndex(std::max(0, box.findData(QVariant::fromValue<qlonglong>(current.value))));
}

template <class ThingId>
ThingId chosen(const QComboBox& box) {
    return {box.currentData().toLongLong()};
}

}  // namespace

BatchDialog::BatchDialog(const core::Batch& batch, const core::Shelves& shelves, Keep keep, QWidget* parent)
    : QDialog(parent),
      batch_(batch),
      shelves_(shelves),
      keep_(std::move(keep)),
      code_(new QLineEdit(QString::fromStdString(batch.code))),
      plant_(new QComboBox),
      stockPlant_(new QComboBox),
      kind_(new QComboBox),
      treatment_(new QComboBox),
      station_(new QComboBox),
      medium_(new QComboBox),
      stuck_(new CountEdit(1, mostStuck)),
      note_(new QLineEdit(QString::fromStdString(batch.note))),
      licence_(new QLineEdit(QString::fromStdString(batch.licence))),
      cautions_(new CautionStrip) {
    setObjectName(QStringLiteral("batchDialog"));
    setWindowTitle(tr("Batch %1").arg(QString::fromStdString(batch.code)));
    build();
}

void BatchDialog::build() {
    const QString none = tr("not recorded");
    fill(*plant_, shelves_.plants, batch_.plant, {});
    fill(*kind_, shelves_.cuttingKinds, batch_.cuttingKind, none);
    fill(*treatment_, shelves_.treatments, batch_.treatment, none);
    fill(*station_, shelves_.stations, batch_.station, batch_.station.isSet() ? QString() : none);
    fill(*medium_, shelves_.media, batch_.medium, none);
    fillStockPlants();
    connect(plant_, &QComboBox::currentIndexChanged, this, &BatchDialog::fillStockPlants);
    stuck_->setCount(batch_.stuck);
    stuck_->setObjectName(QStringLiteral("batchStuck"));
    code_->setObjectName(QStringLiteral("batchCode"));
    note_->setObjectName(QStringLiteral("batchNote"));
    licence_->setObjectName(QStringLiteral("batchLicence"));
    licence_->setToolTip(tr("Under which licence or permission a protected plant was stuck; may be left empty"));
    note_->setMinimumWidth(fontMetrics().averageCharWidth() * 44);

    auto* form = new QFormLayout(this);
    addField(*form, tr("&Code"), QStringLiteral("Code"), code_);
    addField(*form, tr("&Plant"), QStringLiteral("Plant"), plant_);
    addField(*form, tr("Stoc&k plant"), QStringLiteral("Stock plant"), stockPlant_);
    addField(*form, tr("K&ind of cutting"), QStringLiteral("Kind of cutting"), kind_);
    addField(*form, tr("&Treatment"), QStringLiteral("Treatment"), treatment_);
    addField(*form, tr("&Station"), QStringLiteral("Station"), station_);
    addField(*form, tr("&Medium"), QStringLiteral("Medium"), medium_);
    addField(*form, tr("St&uck"), QStringLiteral("Stuck"), stuck_);
    addField(*form, tr("N&ote"), QStringLiteral("Note"), note_);
    addField(*form, tr("&Licence"), QStringLiteral("Licence"), licence_);
    form->addRow(cautions_);
    for (const QComboBox* box : {plant_, treatment_})
        connect(box, &QComboBox::currentIndexChanged, this, &BatchDialog::mind);
    mind();
    rest_ = new FaultLabel;
    marks_.setRest(rest_);
    form->addRow(rest_);

    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons->addButton(tr("Save batch"), QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("saveBatch"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &BatchDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    form->addRow(buttons);
}

void BatchDialog::addField(QFormLayout& form, const QString& caption, const QString& field, QWidget* editor) {
    form.addRow(caption, editor);
    auto* fault = new FaultLabel;
    form.addRow(QString(), fault);
    marks_.add(field, editor, fault);
    if (editor == stuck_) stuckFault_ = fault;
}

void BatchDialog::fillStockPlants() {
    const auto plant = chosen<core::PlantId>(*plant_);
    std::vector<core::StockPlant> own;
    for (const core::StockPlant& stock : shelves_.stockPlants)
        if (stock.plant == plant) own.push_back(stock);
    fill(*stockPlant_, own, batch_.stockPlant, tr("not recorded"));
}

void BatchDialog::mind() {
    const core::Batch now = result();
    cautions_->mind(core::cautionsOnSticking({&now, 1}, shelves_));
}

core::Batch BatchDialog::result() const {
    core::Batch batch = batch_;
    batch.code = code_->text().trimmed().toStdString();
    batch.plant = chosen<core::PlantId>(*plant_);
    batch.stockPlant = chosen<core::StockPlantId>(*stockPlant_);
    batch.cuttingKind = chosen<core::CuttingKindId>(*kind_);
    batch.treatment = chosen<core::TreatmentId>(*treatment_);
    batch.station = chosen<core::StationId>(*station_);
    batch.medium = chosen<core::MediumId>(*medium_);
    batch.stuck = stuck_->count().value_or(0);
    batch.note = note_->text().trimmed().toStdString();
    batch.licence = licence_->text().simplified().toStdString();
    // The method is the station's on the day of sticking; only another station changes it.
    const core::Station* station = core::find(shelves_.stations, batch.station);
    if (batch.station != batch_.station && station != nullptr) batch.method = station->method;
    return batch;
}

void BatchDialog::agree() {
    marks_.clear();
    if (!stuck_->count()) {
        stuckFault_->setFault(stuck_->fault(tr("Stuck")));
        return stuck_->setFocus();
    }
    const Outcome outcome = keep_(result());
    if (outcome.isDone) return accept();
    marks_.show(outcome.refusals);
}

}  // namespace desktop
