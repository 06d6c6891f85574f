// SPDX-License-Identifier: MIT
#include "app/desktop/positions/position_look_dialog.h"

#include <QCheckBox>
#include <QComboBox>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalBlocker>
#include <QStackedWidget>
#include <algorithm>

#include "app/desktop/positions/mark_buttons.h"
#include "app/desktop/positions/place_batch_dialog.h"
#include "app/desktop/positions/position_look_model.h"
#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/positions/position_mark_view.h"
#include "app/desktop/printing/map_preview.h"
#include "app/desktop/stations/station_dialog.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "core/due/due_today.h"

namespace desktop {

namespace {

core::StationId stationOf(const Workspace& workspace, core::BatchId batch) {
    for (const core::BatchLine& line : workspace.batchLines())
        if (line.batch.id == batch) return line.batch.station;
    return {};
}

bool isOpenAt(const core::BatchLine& line, core::StationId station) {
    return line.batch.station == station && !core::isClosed(line.batch, line.tally);
}

std::vector<core::Station> inWalkingOrder(const Workspace& workspace) {
    std::vector<core::Station> stations = workspace.shelves().stations;
    std::ranges::stable_sort(stations, {}, &core::Station::walkingOrder);
    return stations;
}

/// Where the batch that has waited longest for a look says where it stands; else the first station with such a batch; else with any.
core::StationId whereToBegin(const Workspace& workspace) {
    std::vector<core::DueBatch> due = core::dueOn(workspace.today(), workspace.batchLines(), workspace.shelves());
    std::erase_if(due, [](const core::DueBatch& each) { return each.line.batch.positions.empty(); });
    const auto longest = std::ranges::max_element(due, {}, &core::DueBatch::daysOverdue);
    if (longest != due.end()) return longest->line.batch.station;
    core::StationId first{}, used{};
    for (const core::Station& station : inWalkingOrder(workspace)) {
        if (!first.isSet()) first = station.id;
        for (const core::BatchLine& line : workspace.batchLines()) {
            if (!isOpenAt(line, station.id)) continue;
            if (!line.batch.positions.empty()) return station.id;
            if (!used.isSet()) used = station.id;
        }
    }
    return used.isSet() ? used : first;
}

/// The open batch whose page is in front in this window; unset where there is none.
core::BatchId batchInFront(const Workspace& workspace, const QWidget* window) {
    if (window == nullptr) return {};
    for (const Page* page : window->findChildren<Page*>()) {
        const Place place = page->isVisible() ? page->place() : Place{};
        if (place.kind != Place::Kind::Batch) continue;
        for (const core::BatchLine& line : workspace.batchLines())
            if (line.batch.id.value == place.id && isOpenAt(line, line.batch.station)) return line.batch.id;
    }
    return {};
}

}  // namespace

PositionLookDialog::PositionLookDialog(const PageContext& context, QWidget* parent)
    : QDialog(parent), context_(context), model_(new PositionLookModel(context.workspace, this)) {
    const core::BatchId inFront = batchInFront(context.workspace, parent);
    begin(inFront.isSet() ? stationOf(context.workspace, inFront) : whereToBegin(context.workspace), inFront);
}

PositionLookDialog::PositionLookDialog(const PageContext& context, core::BatchId batch, QWidget* parent)
    : QDialog(parent), context_(context), model_(new PositionLookModel(context.workspace, this)) {
    begin(stationOf(context.workspace, batch), batch);
}

PositionLookDialog::PositionLookDialog(const PageContext& context, core::StationId station, QWidget* parent)
    : QDialog(parent), context_(context), model_(new PositionLookModel(context.workspace, this)) {
    begin(station, {});
}

void PositionLookDialog::begin(core::StationId station, core::BatchId batch) {
    build();
    connectParts();
    fillStations(station);
    fillBatches(batch);
    look();
}

void PositionLookDialog::connectParts() {
    connect(stations_, &QComboBox::currentIndexChanged, this, [this] {
        fillBatches({});
        look();
    });
    connect(batches_, &QComboBox::currentIndexChanged, this, &PositionLookDialog::look);
    connect(day_, &DateEdit::dateChanged, this, [this] {
        if (const auto day = day_->date()) model_->setDay(*day);
        dayFault_->setFault(day_->fault());
    });
    connect(model_, &PositionLookModel::viewChanged, this, &PositionLookDialog::showView);
    // After the view, whose sentence it takes the place of until the next mark.
    connect(model_, &PositionLookModel::refused, fault_, &FaultLabel::setFault);
    connect(view_, &PositionMarkView::finished, this, &PositionLookDialog::save);
    connect(view_, &PositionMarkView::jumpWanted, this, [this] {
        jump_->setFocus(Qt::ShortcutFocusReason);
        jump_->selectAll();
    });
    jump_->installEventFilter(this);
    connect(buttons_, &MarkButtons::pressed, view_, &PositionMarkView::apply);
    connect(wasCounted_, &QCheckBox::toggled, model_, &PositionLookModel::setWasCounted);
    connect(looksAtAll_, &QCheckBox::toggled, model_, &PositionLookModel::setLooksAtAll);
    connect(note_, &QLineEdit::textEdited, model_, &PositionLookModel::setNote);
    connect(place_, &QPushButton::clicked, this, &PositionLookDialog::place);
    connect(describe_, &QPushButton::clicked, this, &PositionLookDialog::describeLayout);
    connect(takeBack_, &QPushButton::clicked, model_, &PositionLookModel::takeBack);
    connect(save_, &QPushButton::clicked, this, &PositionLookDialog::save);
}

void PositionLookDialog::fillStations(core::StationId chosen) {
    const QSignalBlocker quiet(stations_);
    for (const core::Station& station : inWalkingOrder(context_.workspace)) {
        const auto& lines = context_.workspace.batchLines();
        const bool isUsed = std::ranges::any_of(lines, [&](const auto& line) { return isOpenAt(line, station.id); });
        if (!isUsed && station.id != chosen) continue;
        stations_->addItem(QString::fromStdString(station.name), QVariant::fromValue(station.id.value));
        if (station.id == chosen) stations_->setCurrentIndex(stations_->count() - 1);
    }
}

void PositionLookDialog::fillBatches(core::BatchId chosen) {
    const QSignalBlocker quiet(batches_);
    const core::StationId station{stations_->currentData().toLongLong()};
    batches_->clear();
    batches_->addItem(tr("all that stand there"), QVariant::fromValue(std::int64_t{}));
    for (const core::BatchLine& line : context_.workspace.batchLines()) {
        if (!isOpenAt(line, station) && line.batch.id != chosen) continue;
        const core::Plant* plant = core::find(context_.workspace.shelves().plants, line.batch.plant);
        batches_->addItem(tr("%1, %2", "batch, plant")
                              .arg(QString::fromStdString(line.batch.code),
                                   plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant))),
                          QVariant::fromValue(line.batch.id.value));
        if (line.batch.id == chosen) batches_->setCurrentIndex(batches_->count() - 1);
    }
}

void PositionLookDialog::look() {
    model_->lookAt({stations_->currentData().toLongLong()}, {batches_->currentData().toLongLong()});
    buttons_->setRound(model_->map().isRound());
    note_->setText(QString::fromStdString(model_->look().noteKept()));
    view_->goToStart();
    if (isVisible()) view_->setFocus();
}

void PositionLookDialog::showView() {
    const PositionLookView& now = model_->view();
    const bool hasMap = now.why.isEmpty();
    pages_->setCurrentIndex(hasMap ? 0 : 1);
    why_->setText(now.why);
    place_->setVisible(now.canBePlaced);
    describe_->setVisible(now.lacksLayout);
    leftovers_->setVisible(hasMap && now.hasLeftovers);
    reminder_->setText(now.reminder);
    reminder_->setVisible(!now.reminder.isEmpty());
    wasCounted_->setVisible(hasMap && now.hasUnplaced);
    if (!now.hasUnplaced) wasCounted_->setChecked(false);
    looksAtAll_->setVisible(hasMap && now.isWholeStation);
    counts_->setText(now.counts);
    fault_->setFault(now.fault);
    takeBack_->setEnabled(model_->canTakeBack());
    print_->setEnabled(hasMap);
    save_->setEnabled(hasMap);
}

bool PositionLookDialog::eventFilter(QObject* watched, QEvent* event) {
    if (watched != jump_ || event->type() != QEvent::KeyPress) return QDialog::eventFilter(watched, event);
    // Enter and Esc belong to the field here: neither may save or leave the look.
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Return || key == Qt::Key_Enter)
        jump();
    else if (key == Qt::Key_Escape)
        view_->setFocus();
    else
        return QDialog::eventFilter(watched, event);
    return true;
}

void PositionLookDialog::jump() {
    const core::Station& station = model_->map().station();
    const auto position = core::positionNamed(jump_->text().trimmed().toStdString());
    const bool isThere = position && position->row < station.rows && position->column < station.columns;
    const core::Position last{station.rows - 1, station.columns - 1};
    jumpFault_->setFault(isThere ? QString()
                                 : tr("Position is \u201c%1\u201d; A1 to %2 is allowed.")
                                       .arg(jump_->text(), QString::fromStdString(core::nameOf(last))));
    if (!isThere) return jump_->selectAll();
    jump_->clear();
    view_->goTo(*position);
    view_->setFocus();
}

void PositionLookDialog::beginWithPlaces() {
    if (model_->view().canBePlaced)
        place();
    else if (model_->view().lacksLayout)
        describeLayout();
}

void PositionLookDialog::place() {
    auto* dialog = new PlaceBatchDialog(context_, model_->batch(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, &PositionLookDialog::look);
    dialog->open();
}

void PositionLookDialog::describeLayout() {
    auto* dialog = StationDialog::keeping(context_.workspace, model_->station(), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this] {
        look();
        if (model_->view().canBePlaced) place();
    });
    dialog->open();
}

void PositionLookDialog::printMap() {
    showMapPreview(model_->station(), model_->batch(), context_, this);
}

void PositionLookDialog::save() {
    if (!save_->isEnabled()) return;
    if (!day_->date()) {
        dayFault_->setFault(day_->fault());
        return day_->line()->setFocus();
    }
    if (!model_->view().fault.isEmpty())
        return fault_->setFault(tr("Nothing is saved yet. %1").arg(model_->view().fault));
    const Outcome outcome = model_->save();
    if (outcome.isDone) return accept();
    fault_->setFault(outcome.refusals.empty() ? tr("Nothing is saved: see the message at the foot of the window.")
                                              : QString::fromStdString(outcome.refusals.front().sentence));
}

void lookHoleByHole(const PageContext& context, core::BatchId batch, QWidget* parent) {
    auto* dialog = new PositionLookDialog(context, batch, parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
    dialog->beginWithPlaces();
}

void lookHoleByHole(const PageContext& context, core::StationId station, QWidget* parent) {
    auto* dialog = new PositionLookDialog(context, station, parent);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

}  // namespace desktop
