// SPDX-License-Identifier: MIT
#include "app/desktop/stations/layout_edit.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/positions/position_map_model.h"
#include "app/desktop/positions/position_map_panel.h"
#include "app/desktop/positions/position_paint_view.h"
#include "app/desktop/widgets/count_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "core/batch/position_rules.h"
#include "core/shelf_rules.h"

namespace desktop {

namespace {

core::Refusal countFault(const CountEdit& edit, const std::string& field) {
    const std::string sentence = edit.fault(QString::fromStdString(field)).toStdString();
    return {.field = field, .value = edit.text().toStdString(), .allowed = "a whole number", .sentence = sentence};
}

/// The rest of a station is its form's to ask for.
bool isOfLayout(const core::Refusal& fault) {
    return fault.field == "Rows" || fault.field == "Columns" || fault.field == "Blocked positions";
}

}  // namespace

LayoutEdit::LayoutEdit(const Workspace& workspace, std::vector<core::BatchRecord> standing, QWidget* parent)
    : QWidget(parent),
      workspace_(workspace),
      map_(new PositionMapModel(workspace, this)),
      standing_(std::move(standing)) {
    setObjectName(QStringLiteral("layoutEdit"));
    makeFields();
    build();
    connectParts();
    showLayout({});
}

void LayoutEdit::makeFields() {
    rows_ = new CountEdit(0, core::mostRows, this);
    rows_->setObjectName(QStringLiteral("stationRows"));
    rows_->setAccessibleName(tr("Rows of positions"));
    columns_ = new CountEdit(0, core::mostColumns, this);
    columns_->setObjectName(QStringLiteral("stationColumns"));
    columns_->setAccessibleName(tr("Positions in a row"));
    isStaggered_ = new QCheckBox(tr("Sta&ggered"), this);
    isStaggered_->setObjectName(QStringLiteral("stationStaggered"));
    isStaggered_->setToolTip(tr("Every second row stands half a step to the right."));
    blocked_ = new QLineEdit(this);
    blocked_->setObjectName(QStringLiteral("stationBlocked"));
    blocked_->setToolTip(tr("Positions that hold no cutting, such as an air line or a broken cell: A1, B2-B3."));
}

void LayoutEdit::build() {
    auto* blockedLabel = new QLabel(tr("&Blocked"), this);
    blockedLabel->setBuddy(blocked_);
    view_ = new PositionPaintView(*map_, this);
    auto* panel = new PositionMapPanel(view_, this);
    panel->setLegendShown(false);
    panel_ = panel;
    sum_ = quietLabel(QStringLiteral("stationSum"));
    sum_->setWordWrap(true);
    fault_ = new FaultLabel(this);
    fault_->setObjectName(QStringLiteral("layoutFault"));

    auto* counts = new QHBoxLayout;
    counts->addWidget(rows_);
    counts->addWidget(new QLabel(tr("rows of"), this));
    counts->addWidget(columns_);
    counts->addWidget(new QLabel(tr("positions; 0 if it has none"), this));
    counts->addWidget(isStaggered_);
    counts->addStretch();
    auto* blocks = new QHBoxLayout;
    blocks->addWidget(blockedLabel);
    blocks->addWidget(blocked_, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(counts);
    layout->addLayout(blocks);
    layout->addWidget(fault_);
    layout->addWidget(panel, 1);
    layout->addWidget(sum_);
}

void LayoutEdit::connectParts() {
    for (QLineEdit* line : {static_cast<QLineEdit*>(rows_), static_cast<QLineEdit*>(columns_), blocked_})
        connect(line, &QLineEdit::textEdited, this, &LayoutEdit::judge);
    connect(isStaggered_, &QCheckBox::toggled, this, &LayoutEdit::judge);
    connect(view_, &PositionPaintView::strokeBegun, this, [this](core::Position position) {
        blocks_ = !map_->at(position).isBlocked;
        paint({position});
    });
    connect(view_, &PositionPaintView::strokeWentOver, this, [this](core::Position position) { paint({position}); });
    connect(view_, &PositionPaintView::spacePressed, this, [this] {
        blocks_ = !map_->at(view_->current()).isBlocked;
        paint(view_->selected());
    });
}

QWidget* LayoutEdit::firstField() const {
    return rows_;
}

void LayoutEdit::showLayout(const core::Station& station) {
    station_ = station;
    rows_->setCount(station.rows);
    columns_->setCount(station.columns);
    isStaggered_->setChecked(station.isStaggered);
    blocked_->setText(QString::fromStdString(station.blocked));
    judge();
}

void LayoutEdit::setMethod(core::MethodId method) {
    station_.method = method;
    judge();
}

void LayoutEdit::readInto(core::Station& station) const {
    station.rows = rows_->count().value_or(station.rows);
    station.columns = columns_->count().value_or(station.columns);
    station.isStaggered = isStaggered_->isChecked();
    station.blocked = core::tidyPositions(blocked_->text().toStdString());
}

core::Refusals LayoutEdit::faults() const {
    core::Refusals faults;
    if (!rows_->count()) faults.push_back(countFault(*rows_, "Rows"));
    if (!columns_->count()) faults.push_back(countFault(*columns_, "Columns"));
    core::Station station = station_;
    readInto(station);
    for (core::Refusal& fault : core::faultsIn(station, workspace_.shelves()))
        if (isOfLayout(fault)) faults.push_back(std::move(fault));
    if (faults.empty()) faults = core::faultsInLayout(station, standing_);
    return faults;
}

void LayoutEdit::paint(const std::vector<core::Position>& positions) {
    const auto known = core::positionsFrom(blocked_->text().toStdString());
    if (!known) return;  // what can't be read is not thrown away
    std::vector<core::Position> now = *known;
    for (const core::Position position : positions) {
        if (blocks_)
            now.push_back(position);
        else
            std::erase(now, position);
    }
    blocked_->setText(QString::fromStdString(core::textOf(std::move(now))));
    judge();
}

void LayoutEdit::judge() {
    const core::Refusals found = faults();
    fault_->setFault(found.empty() ? QString() : QString::fromStdString(found.front().sentence));
    readInto(station_);
    map_->show(station_, standing_, {});
    panel_->setVisible(station_.hasLayout());
    sum_->setText(
        station_.hasLayout()
            ? tr("Room for %1. Click or press Space to block a position; rows are lettered from the back, columns "
                 "numbered from the left.")
                  .arg(plot::cuttingsText(station_.positions()))
            : tr("Without rows and columns the station has no map: cuttings are counted, not placed."));
    emit changed();
}

}  // namespace desktop
