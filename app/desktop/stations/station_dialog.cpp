// SPDX-License-Identifier: MIT
#include "app/desktop/stations/station_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <algorithm>

#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/stations/layout_edit.h"
#include "app/desktop/template/drilling_dialog.h"
#include "app/desktop/widgets/button_order.h"
#include "app/desktop/widgets/caution_strip.h"
#include "app/desktop/widgets/count_edit.h"
#include "core/mixing/cautions_in_place.h"
#include "db/actions/shelf_actions.h"

namespace desktop {

namespace {

constexpr int lastPlace = 1'000'000;

core::Station newStation(const core::Shelves& shelves) {
    core::Station station;
    for (const core::Station& other : shelves.stations)
        station.walkingOrder = std::max(station.walkingOrder, other.walkingOrder + 1);
    return station;
}

core::MethodId methodNamed(const core::Shelves& shelves, const QString& name) {
    for (const core::Method& method : shelves.methods)
        if (QString::fromStdString(method.name) == name) return method.id;
    return {};
}

}  // namespace

StationDialog::StationDialog(Workspace& workspace, const Start& start, Keep keep, QWidget* parent)
    : QDialog(parent), workspace_(workspace), station_(start.station), keep_(std::move(keep)) {
    setObjectName(QStringLiteral("stationDialog"));
    const bool isNew = !station_.id.isSet();
    setWindowTitle(isNew ? tr("New station") : tr("Station %1").arg(QString::fromStdString(station_.name)));
    if (isNew && station_.walkingOrder == 0) station_.walkingOrder = newStation(workspace.shelves()).walkingOrder;
    makeFields(start);
    build(start.verb);
    atFirst_ = typed();
}

StationDialog* StationDialog::keeping(Workspace& workspace, core::StationId station, QWidget* parent) {
    const core::Shelves& shelves = workspace.shelves();
    Start start{.verb = station.isSet() ? tr("Keep changes") : tr("Add station")};
    if (const core::Station* known = core::find(shelves.stations, station)) start.station = *known;
    for (const core::Method& method : shelves.methods) {
        const QString name = QString::fromStdString(method.name);
        if (!method.isRetired || method.id == start.station.method) start.methods << name;
        if (method.id == start.station.method) start.method = name;
    }
    return new StationDialog(
        workspace, start,
        [&workspace](core::Station described, const QString& method) {
            described.method = methodNamed(workspace.shelves(), method);
            return workspace.run([&](db::Logbook& logbook) { return db::keep(logbook, described); });
        },
        parent);
}

StationDialog* StationDialog::keeping(const PageContext& context, core::StationId station, QWidget* parent) {
    StationDialog* dialog = keeping(context.workspace, station, parent);
    dialog->offerTemplate(context);
    return dialog;
}

void StationDialog::offerTemplate(const PageContext& context) {
    QPushButton* drilling = buttons_->addButton(tr("&Drilling template…"), QDialogButtonBox::ActionRole);
    drilling->setObjectName(QStringLiteral("stationTemplate"));
    drilling->setToolTip(tr("How many holes its lid holds, and where to drill them"));
    drilling->setAutoDefault(false);
    tabThrough(*note_, *buttons_);
    connect(drilling, &QPushButton::clicked, this, [this, context] {
        auto* dialog = new DrillingDialog(context, this);
        dialog->setAttribute(Qt::WA_DeleteOnClose);
        dialog->offerToTake(name_->text().simplified());
        connect(dialog, &DrillingDialog::layoutTaken, this, [this](const core::LidLayout& layout) {
            core::Station station = station_;
            core::describeAs(layout, station);
            layout_->showLayout(station);
        });
        dialog->open();
    });
}

void StationDialog::makeFields(const Start& start) {
    name_ = new QLineEdit(QString::fromStdString(station_.name), this);
    name_->setObjectName(QStringLiteral("stationName"));
    name_->setMaxLength(200);
    method_ = new QComboBox(this);
    method_->setObjectName(QStringLiteral("stationMethod"));
    method_->setEditable(start.mayNameMethods);
    method_->addItems(start.methods);
    if (!start.method.isEmpty()) method_->setCurrentText(start.method);
    layout_ = new LayoutEdit(
        workspace_, station_.id.isSet() ? openBatchesAt(workspace_, station_.id) : std::vector<core::BatchRecord>(),
        this);
    layout_->showLayout(station_);
    walk_ = new CountEdit(0, lastPlace, this);
    walk_->setObjectName(QStringLiteral("stationWalk"));
    walk_->setCount(station_.walkingOrder);
    note_ = new QLineEdit(QString::fromStdString(station_.note), this);
    note_->setObjectName(QStringLiteral("stationNote"));
}

void StationDialog::build(const QString& verb) {
    auto* form = new QFormLayout(this);
    const auto add = [&](const QString& label, const std::vector<QString>& fields, QWidget* editor) {
        auto* fault = new FaultLabel(this);
        form->addRow(label, editor);
        form->addRow(fault);
        for (const QString& field : fields) marks_.add(field, editor, fault);
    };
    add(tr("&Name"), {QStringLiteral("Name")}, name_);
    add(tr("&Method"), {QStringLiteral("Method")}, method_);
    auto* caption = new QLabel(tr("&Positions"), this);
    caption->setBuddy(layout_->firstField());
    form->addRow(caption, layout_);
    auto* layoutFault = new FaultLabel(this);
    form->addRow(layoutFault);
    for (const char* field : {"Rows", "Columns", "Blocked positions", "Positions"})
        marks_.add(QString::fromLatin1(field), layout_->firstField(), layoutFault);
    add(tr("Place in the &walk"), {QStringLiteral("Place in the walk")}, walk_);
    add(tr("No&te"), {QStringLiteral("Note")}, note_);
    form->addRow(cautions_ = new CautionStrip(this));
    const auto mind = [this] { cautions_->mind(core::cautionsOnStation(method_->currentText().toStdString())); };
    connect(method_, &QComboBox::currentTextChanged, this, mind);
    mind();
    rest_ = new FaultLabel(this);
    rest_->setObjectName(QStringLiteral("stationFault"));
    marks_.setRest(rest_);
    form->addRow(rest_);
    buttons_ = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons_->addButton(verb, QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("describeStation"));
    agreed->setDefault(true);
    form->addRow(buttons_);
    connect(buttons_, &QDialogButtonBox::accepted, this, &StationDialog::agree);
    connect(buttons_, &QDialogButtonBox::rejected, this, &StationDialog::reject);
}

QStringList StationDialog::typed() const {
    QStringList texts;
    for (const QLineEdit* line : findChildren<QLineEdit*>()) texts << line->text();
    for (const QComboBox* box : findChildren<QComboBox*>()) texts << box->currentText();
    for (const QCheckBox* box : findChildren<QCheckBox*>()) texts << (box->isChecked() ? box->objectName() : QString());
    return texts;
}

void StationDialog::reject() {
    if (hasWarned_ || typed() == atFirst_) return QDialog::reject();
    hasWarned_ = true;
    rest_->setFault(tr("What you typed here is not kept yet. Esc or Cancel again throws it away."));
}

void StationDialog::agree() {
    core::Refusals faults = layout_->faults();
    if (!faults.empty()) return layout_->firstField()->setFocus();  // said in place already
    if (const QString fault = walk_->fault(tr("Place in the walk")); !fault.isEmpty()) {
        marks_.show({{.field = "Place in the walk", .value = {}, .allowed = {}, .sentence = fault.toStdString()}});
        return;
    }
    core::Station station = station_;
    station.name = name_->text().simplified().toStdString();
    station.walkingOrder = *walk_->count();
    station.note = note_->text().trimmed().toStdString();
    layout_->readInto(station);
    const Outcome outcome = keep_(station, method_->currentText());
    if (!outcome.isDone) {
        marks_.show(outcome.refusals);
        return;
    }
    emit described(QString::fromStdString(station.name));
    accept();
}

}  // namespace desktop
