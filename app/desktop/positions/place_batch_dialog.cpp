// SPDX-License-Identifier: MIT
#include "app/desktop/positions/place_batch_dialog.h"

#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/positions/position_map_panel.h"
#include "app/desktop/positions/position_paint_view.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "db/actions/session_actions.h"

namespace desktop {

PlaceBatchDialog::PlaceBatchDialog(const PageContext& context, core::BatchId batch, QWidget* parent)
    : QDialog(parent), context_(context), map_(new PositionMapModel(context.workspace, this)) {
    setObjectName(QStringLiteral("placeBatchDialog"));
    context_.workspace.attempt(
        [&](db::Logbook& logbook) { record_ = logbook.batch(batch).value_or(core::BatchRecord{}); });
    if (const auto* station = core::find(context_.workspace.shelves().stations, record_.batch.station))
        station_ = *station;
    for (core::BatchRecord& record : openBatchesAt(context_.workspace, station_.id)) {
        if (record.batch.id == batch) continue;
        for (core::HeldPosition& held : core::heldPositions(record)) held_.push_back(std::move(held));
        others_.push_back(std::move(record));
    }
    setWindowTitle(tr("Positions of %1").arg(QString::fromStdString(record_.batch.code)));
    build();
    connectParts();
    if (record_.batch.positions.empty())
        propose();
    else
        typed_->setText(QString::fromStdString(record_.batch.positions));
    showPlaces();
}

void PlaceBatchDialog::build() {
    typed_ = new QLineEdit(this);
    typed_->setObjectName(QStringLiteral("placeTyped"));
    auto* label = new QLabel(tr("&Positions"), this);
    label->setBuddy(typed_);
    auto* next = new QPushButton(tr("&Next free ones"), this);
    next->setObjectName(QStringLiteral("placeNextFree"));
    next->setAutoDefault(false);
    next->setToolTip(tr("The first free positions, row by row"));
    view_ = new PositionPaintView(*map_, this);
    auto* panel = new PositionMapPanel(view_, this);
    panel->setLegendShown(false);
    auto* how = quietLabel(QStringLiteral("placeHow"));
    how->setWordWrap(true);
    how->setText(
        tr("Type them as A1-B6, or choose on the map: click, press and draw, or Space on what is selected. Rings are "
           "the cuttings of this batch, small ones those of others."));
    count_ = answerLabel(QStringLiteral("placeCount"));
    fault_ = new FaultLabel(this);
    fault_->setObjectName(QStringLiteral("placeFault"));
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons->addButton(tr("Keep positions"), QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("placeKeep"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &PlaceBatchDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(next, &QPushButton::clicked, this, &PlaceBatchDialog::propose);

    auto* top = new QHBoxLayout;
    top->addWidget(label);
    top->addWidget(typed_, 1);
    top->addWidget(next);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(top);
    layout->addWidget(fault_);
    layout->addWidget(panel, 1);
    layout->addWidget(how);
    layout->addWidget(count_);
    layout->addWidget(buttons);
    typed_->setFocus();
}

void PlaceBatchDialog::connectParts() {
    connect(typed_, &QLineEdit::textEdited, this, &PlaceBatchDialog::showPlaces);
    connect(view_, &PositionPaintView::strokeBegun, this, [this](core::Position position) {
        takes_ = map_->at(position).batch != record_.batch.id;
        paint({position});
    });
    connect(view_, &PositionPaintView::strokeWentOver, this, [this](core::Position position) { paint({position}); });
    connect(view_, &PositionPaintView::spacePressed, this, [this] {
        takes_ = map_->at(view_->current()).batch != record_.batch.id;
        paint(view_->selected());
    });
}

void PlaceBatchDialog::propose() {
    typed_->setText(QString::fromStdString(core::textOf(core::freePositions(station_, held_, record_.batch.stuck))));
    typed_->selectAll();
    showPlaces();
}

core::Batch PlaceBatchDialog::placed() const {
    core::Batch batch = record_.batch;
    batch.positions = core::tidyPositions(typed_->text().toStdString());
    return batch;
}

void PlaceBatchDialog::paint(const std::vector<core::Position>& positions) {
    const auto known = core::positionsFrom(typed_->text().toStdString());
    if (!known) return;  // what can't be read is not thrown away
    std::vector<core::Position> now = *known;
    for (const core::Position position : positions) {
        const PlaceContent& content = map_->at(position);
        if (!takes_)
            std::erase(now, position);
        else if (!content.isBlocked && !content.isOther)
            now.push_back(position);
    }
    typed_->setText(QString::fromStdString(core::textOf(std::move(now))));
    showPlaces();
}

void PlaceBatchDialog::showPlaces() {
    core::BatchRecord shown = record_;
    shown.batch = placed();
    const auto positions = core::positionsFrom(shown.batch.positions);
    std::vector<core::BatchRecord> records = others_;
    records.push_back(shown);
    map_->show(station_, records, record_.batch.id);
    count_->setText(tr("%1 of %2 chosen", "positions; cuttings")
                        .arg(plot::countText(positions ? static_cast<int>(positions->size()) : 0),
                             plot::cuttingsText(record_.batch.stuck)));
    const core::Refusals faults =
        core::faultsInPositions(shown.batch, record_.checks, context_.workspace.shelves(), held_);
    fault_->setFault(faults.empty() ? QString() : QString::fromStdString(faults.front().sentence));
}

void PlaceBatchDialog::agree() {
    showPlaces();
    if (!fault_->fault().isEmpty()) return typed_->setFocus();
    const core::Date today = context_.workspace.today();
    const Outcome outcome =
        context_.workspace.run([&](db::Logbook& logbook) { return db::changeBatch(logbook, placed(), today); });
    if (outcome.isDone) return accept();
    fault_->setFault(outcome.refusals.empty() ? tr("Nothing is saved: see the message at the foot of the window.")
                                              : sentencesOf(outcome.refusals));
}

}  // namespace desktop
