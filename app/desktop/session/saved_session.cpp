// SPDX-License-Identifier: MIT
#include "app/desktop/session/saved_session.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

#include "app/desktop/look/look.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/printing/label_preview.h"
#include "app/desktop/printing/session_papers.h"
#include "app/desktop/widgets/headline.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

namespace {

enum SavedColumn { SavedCode, SavedPlant, SavedStation, SavedStuck, SavedPositions, savedColumns };

}  // namespace

SavedSession::SavedSession(const PageContext& context, QWidget* parent) : QWidget(parent), context_(context) {
    setObjectName(QStringLiteral("savedSession"));
    heading_ = new QLabel(this);
    heading_->setObjectName(QStringLiteral("savedHeading"));
    heading_->setTextFormat(Qt::PlainText);
    heading_->setWordWrap(true);
    QFont large = heading_->font();
    large.setPointSizeF(large.pointSizeF() * 1.3);
    large.setBold(true);
    heading_->setFont(large);
    table_ = new QTableWidget(0, savedColumns, this);
    table_->setObjectName(QStringLiteral("savedBatches"));
    table_->setAccessibleName(tr("Batches with the codes that were given"));
    table_->setHorizontalHeaderLabels({tr("Batch"), tr("Plant"), tr("Station"), tr("Stuck"), tr("Positions")});
    giveTableManners(*table_);
    table_->setItemDelegateForColumn(SavedPlant, new PlantNameDelegate(table_));

    const auto makeButton = [this](const QString& text, const QString& name) {
        auto* button = new QPushButton(text, this);
        button->setObjectName(name);
        button->setAutoDefault(true);
        return button;
    };
    auto* labels = makeButton(tr("Print &labels\u2026"), QStringLiteral("printLabels"));
    auto* sheet = makeButton(tr("Print session &sheet\u2026"), QStringLiteral("printSessionSheet"));
    close_ = makeButton(tr("&Close"), QStringLiteral("closeSaved"));
    connect(labels, &QPushButton::clicked, this, &SavedSession::printLabels);
    connect(sheet, &QPushButton::clicked, this, &SavedSession::printSheet);
    connect(close_, &QPushButton::clicked, this, &SavedSession::closeWanted);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(labels);
    buttons->addWidget(sheet);
    buttons->addStretch();
    buttons->addWidget(close_);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(heading_);
    layout->addWidget(table_, 1);
    layout->addLayout(buttons);
}

void SavedSession::show(const SessionSaved& saved) {
    saved_ = saved;
    heading_->setText(
        tr("%1 stuck and saved.", "12 batches").arg(plot::batchesText(static_cast<int>(saved.batches.size()))));
    fill();
    close_->setFocus(Qt::OtherFocusReason);
}

void SavedSession::fill() {
    const core::Shelves& shelves = context_.workspace.shelves();
    table_->setRowCount(static_cast<int>(saved_.batches.size()));
    for (int row = 0; row < table_->rowCount(); ++row) {
        const core::Batch& batch = saved_.batches[static_cast<std::size_t>(row)];
        const core::Plant* plant = core::find(shelves.plants, batch.plant);
        const core::Station* station = core::find(shelves.stations, batch.station);
        const auto set = [&](int column, const QString& text) {
            auto* item = new QTableWidgetItem(text);
            item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable);
            if (column == SavedStuck) item->setTextAlignment(Qt::AlignRight | Qt::AlignVCenter);
            table_->setItem(row, column, item);
        };
        set(SavedCode, QString::fromStdString(batch.code));
        set(SavedPlant, plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant)));
        set(SavedStation, station == nullptr ? QString() : QString::fromStdString(station->name));
        set(SavedStuck, plot::countText(batch.stuck));
        set(SavedPositions, QString::fromStdString(batch.positions));
    }
    table_->resizeColumnsToContents();
}

void SavedSession::printLabels() {
    showLabelPreview(saved_.batches, context_, this);
}

void SavedSession::printSheet() {
    showSessionSheet(saved_.session, context_, this);
}

}  // namespace desktop
