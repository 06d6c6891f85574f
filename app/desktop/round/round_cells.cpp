// SPDX-License-Identifier: MIT
// The round as a table: what stands in each cell.
#include <QGuiApplication>
#include <QPalette>

#include "app/desktop/look/look.h"
#include "app/desktop/round/round_model.h"
#include "app/desktop/round/round_words.h"
#include "app/desktop/round/unfinished_round.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

namespace {

bool isRoundFigure(int column) {
    return column >= RoundModel::Day && column <= RoundModel::Undecided;
}

}  // namespace

int RoundModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int RoundModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QString RoundModel::textAt(const Row& row, int column) const {
    const core::Batch& batch = row.due.line.batch;
    const core::Shelves& shelves = workspace_.shelves();
    const core::CheckEntry entry = row.shown.value_or(core::CheckEntry{});
    switch (column) {
        case Code:
            return QString::fromStdString(batch.code);
        case Plant: {
            const core::Plant* plant = core::find(shelves.plants, batch.plant);
            return plant ? QString::fromStdString(core::fullName(*plant)) : QString();
        }
        case Station: {
            const core::Station* station = core::find(shelves.stations, batch.station);
            return station ? QString::fromStdString(station->name) : QString();
        }
        case Day:
            return plot::countText(core::daysBetween(batch.stuckOn, checkedOn_));
        case Rooted:
            return countCell(before(row).rooted, entry.rooted, kept_.plain);
        case Lost:
            return countCell(before(row).lost, entry.lost(), kept_.plain);
        case Withdrawn:
            return countCell(before(row).withdrawn, entry.withdrawn, kept_.plain);
        case Undecided:
            return tr("%1 of %2", "cuttings undecided, of those stuck")
                .arg(plot::countText(before(row).undecided() - entry.rooted - entry.lost() - entry.withdrawn),
                     plot::countText(batch.stuck));
        case Entry:
            return row.typed;
        case Meaning:
            return row.meaning;
        default:
            return {};
    }
}

QVariant RoundModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    const int column = index.column();
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
        case Qt::ToolTipRole:
            return textAt(row, column);
        case isFaultRole:
            return row.isFault;
        case Qt::AccessibleDescriptionRole:
            return column == Entry ? row.meaning : QString();
        case Qt::ForegroundRole:
            if (column == Meaning && row.isFault) return faultColour(QGuiApplication::palette());
            return {};
        case Qt::DecorationRole:
            if (column == Meaning && row.isFault) return icon("fault");
            if (column == Meaning && row.entry) return icon("done");
            return {};
        case Qt::TextAlignmentRole:
            if (isRoundFigure(column)) return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
            return {};
        default:
            return {};
    }
}

bool RoundModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    return role == Qt::EditRole && index.column() == Entry && enter(index.row(), value.toString());
}

Qt::ItemFlags RoundModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags flags = QAbstractTableModel::flags(index);
    return index.column() == Entry ? flags | Qt::ItemIsEditable : flags;
}

QVariant RoundModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Horizontal && role == Qt::TextAlignmentRole && isRoundFigure(section))
        return QVariant::fromValue(Qt::Alignment(Qt::AlignRight | Qt::AlignVCenter));
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
        case Code:
            return tr("Batch");
        case Plant:
            return tr("Plant");
        case Station:
            return tr("Station");
        case Day:
            return tr("Day");
        case Rooted:
            return tr("Rooted");
        case Lost:
            return tr("Lost");
        case Withdrawn:
            return tr("Withdrawn");
        case Undecided:
            return tr("Undecided");
        case Entry:
            return tr("Entry");
        case Meaning:
            return tr("What it means");
        default:
            return {};
    }
}

}  // namespace desktop
