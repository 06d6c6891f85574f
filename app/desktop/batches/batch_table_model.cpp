// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_table_model.h"

#include <algorithm>
#include <unordered_set>

#include "app/desktop/find/search_text.h"
#include "app/plot/number_text.h"

namespace desktop {

namespace {

template <class Thing, class ThingId>
QString nameOf(const std::vector<Thing>& things, ThingId id) {
    const Thing* thing = core::find(things, id);
    return thing == nullptr ? QString() : QString::fromStdString(thing->name);
}

bool isNumber(BatchColumn column) {
    return column >= BatchColumn::Stuck && column <= BatchColumn::Interval;
}

}  // namespace

void BatchTableModel::show(std::vector<core::BatchLine> lines, const core::Shelves& shelves) {
    beginResetModel();
    shelves_ = shelves;
    rows_.clear();
    rows_.reserve(lines.size());
    for (core::BatchLine& line : lines) rows_.push_back(rowFor(std::move(line)));
    chooseShown();
    endResetModel();
}

void BatchTableModel::refresh(const std::vector<core::BatchId>& touched, std::vector<core::BatchLine> lines) {
    beginResetModel();
    const std::unordered_set<core::BatchId> old(touched.begin(), touched.end());
    std::erase_if(rows_, [&](const Row& row) { return old.contains(row.line.batch.id); });
    for (core::BatchLine& line : lines) rows_.push_back(rowFor(std::move(line)));
    chooseShown();
    endResetModel();
}

void BatchTableModel::setFilter(const QString& words) {
    const QStringList wanted = searchWords(words);
    if (wanted == words_) return;
    beginResetModel();
    words_ = wanted;
    chooseShown();
    endResetModel();
}

void BatchTableModel::setOnly(const Place& whose) {
    if (whose == only_) return;
    beginResetModel();
    only_ = whose;
    chooseShown();
    endResetModel();
}

int BatchTableModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

int BatchTableModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : batchColumns;
}

QVariant BatchTableModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const auto column = static_cast<BatchColumn>(index.column());
    switch (role) {
        case Qt::DisplayRole:
            return textOf(at(index.row()), column);
        case Qt::ToolTipRole:
            return textOf(at(index.row()), column);
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(Qt::Alignment(isNumber(column) ? Qt::AlignRight : Qt::AlignLeft) |
                                       Qt::AlignVCenter);
        default:
            return {};
    }
}

QVariant BatchTableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= batchColumns) return {};
    const auto column = static_cast<BatchColumn>(section);
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment(isNumber(column) ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (column) {
        case BatchColumn::Code:
            return tr("Batch");
        case BatchColumn::Day:
            return tr("Stuck on");
        case BatchColumn::Plant:
            return tr("Plant");
        case BatchColumn::Method:
            return tr("Method");
        case BatchColumn::Station:
            return tr("Station");
        case BatchColumn::Stuck:
            return tr("Stuck");
        case BatchColumn::Rooted:
            return tr("Rooted");
        case BatchColumn::Lost:
            return tr("Lost");
        case BatchColumn::Withdrawn:
            return tr("Withdrawn");
        case BatchColumn::Undecided:
            return tr("Undecided");
        case BatchColumn::StrikeRate:
            return tr("Strike rate");
        case BatchColumn::Interval:
            return tr("%1 interval", "95 % interval").arg(plot::levelText(shelves_.facts.level));
        case BatchColumn::State:
            return tr("State");
    }
    return {};
}

void BatchTableModel::sort(int column, Qt::SortOrder order) {
    if (column < 0 || column >= batchColumns) return;
    sortedBy_ = static_cast<BatchColumn>(column);
    order_ = order;
    emit layoutAboutToBeChanged({}, QAbstractItemModel::VerticalSortHint);
    const QModelIndexList before = persistentIndexList();
    std::vector<core::BatchId> batches;
    for (const QModelIndex& index : before) batches.push_back(batchAt(index.row()));
    chooseShown();
    QModelIndexList after;
    for (int i = 0; i < before.size(); ++i)
        after.append(index(rowOf(batches[static_cast<std::size_t>(i)]), before[i].column()));
    changePersistentIndexList(before, after);
    emit layoutChanged({}, QAbstractItemModel::VerticalSortHint);
}

core::BatchId BatchTableModel::batchAt(int row) const {
    return row < 0 || row >= rowCount() ? core::BatchId{} : at(row).line.batch.id;
}

int BatchTableModel::rowOf(core::BatchId batch) const {
    const auto found =
        std::find_if(shown_.begin(), shown_.end(), [&](std::size_t i) { return rows_[i].line.batch.id == batch; });
    return found == shown_.end() ? -1 : static_cast<int>(found - shown_.begin());
}

BatchTableModel::Row BatchTableModel::rowFor(core::BatchLine line) const {
    Row row;
    const core::Batch& batch = line.batch;
    row.code = QString::fromStdString(batch.code);
    const core::Plant* plant = core::find(shelves_.plants, batch.plant);
    row.plant = plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant));
    row.method = nameOf(shelves_.methods, batch.method);
    row.station = nameOf(shelves_.stations, batch.station);
    row.isClosed = core::isClosed(batch, line.tally);
    const QString common = plant == nullptr ? QString() : QString::fromStdString(plant->commonName);
    row.searched = searchText(
        QStringList{row.code, row.plant, common, row.method, row.station, textOf(row, BatchColumn::State)}.join(u' '));
    row.interval =
        core::rateLimits(core::intervalOf(shelves_.facts), line.tally.rooted, line.tally.stuck, shelves_.facts.level);
    row.line = std::move(line);
    return row;
}

QString BatchTableModel::textOf(const Row& row, BatchColumn column) {
    switch (column) {
        case BatchColumn::Code:
            return row.code;
        case BatchColumn::Day:
            return plot::shortDateText(row.line.batch.stuckOn);
        case BatchColumn::Plant:
            return row.plant;
        case BatchColumn::Method:
            return row.method;
        case BatchColumn::Station:
            return row.station;
        case BatchColumn::StrikeRate:
            return plot::percentText(row.line.tally.rooted, row.line.tally.stuck);
        case BatchColumn::Interval:
            return plot::limitsText(row.interval);
        case BatchColumn::State:
            // A batch still running has rooted less than it will.
            return row.isClosed ? tr("closed") : tr("open: so far");
        case BatchColumn::Stuck:
        case BatchColumn::Rooted:
        case BatchColumn::Lost:
        case BatchColumn::Withdrawn:
        case BatchColumn::Undecided:
            break;
    }
    return plot::countText(count(row, column));
}

int BatchTableModel::count(const Row& row, BatchColumn column) {
    const core::Tally& tally = row.line.tally;
    if (column == BatchColumn::Rooted) return tally.rooted;
    if (column == BatchColumn::Lost) return tally.lost;
    if (column == BatchColumn::Withdrawn) return tally.withdrawn;
    if (column == BatchColumn::Undecided) return tally.undecided();
    return tally.stuck;
}

bool BatchTableModel::isBefore(const Row& one, const Row& other) const {
    switch (sortedBy_) {
        case BatchColumn::Code:
            return one.code < other.code;
        case BatchColumn::Day:
            return one.line.batch.stuckOn < other.line.batch.stuckOn;
        case BatchColumn::Plant:
            return one.plant.compare(other.plant, Qt::CaseInsensitive) < 0;
        case BatchColumn::Method:
            return one.method.compare(other.method, Qt::CaseInsensitive) < 0;
        case BatchColumn::Station:
            return one.station.compare(other.station, Qt::CaseInsensitive) < 0;
        case BatchColumn::StrikeRate:
            return qint64{one.line.tally.rooted} * other.line.tally.stuck <
                   qint64{other.line.tally.rooted} * one.line.tally.stuck;
        case BatchColumn::Interval:
            return one.interval.low < other.interval.low;
        case BatchColumn::State:
            return one.isClosed < other.isClosed;
        case BatchColumn::Stuck:
        case BatchColumn::Rooted:
        case BatchColumn::Lost:
        case BatchColumn::Withdrawn:
        case BatchColumn::Undecided:
            break;
    }
    return count(one, sortedBy_) < count(other, sortedBy_);
}

bool BatchTableModel::isOneOfOnly(const core::Batch& batch) const {
    switch (only_.kind) {
        case Place::Kind::Plant:
            return batch.plant.value == only_.id;
        case Place::Kind::StockPlant:
            return batch.stockPlant.value == only_.id;
        case Place::Kind::Station:
            return batch.station.value == only_.id;
        case Place::Kind::Page:
        case Place::Kind::Batch:
        case Place::Kind::Shelf:
            break;
    }
    return true;
}

bool BatchTableModel::isWanted(const Row& row) const {
    return isOneOfOnly(row.line.batch) &&
           std::all_of(words_.begin(), words_.end(), [&](const QString& word) { return row.searched.contains(word); });
}

void BatchTableModel::chooseShown() {
    shown_.clear();
    for (std::size_t i = 0; i < rows_.size(); ++i)
        if (isWanted(rows_[i])) shown_.push_back(i);
    const bool isRising = order_ == Qt::AscendingOrder;
    std::sort(shown_.begin(), shown_.end(), [&](std::size_t i, std::size_t j) {
        const Row& one = isRising ? rows_[i] : rows_[j];
        const Row& other = isRising ? rows_[j] : rows_[i];
        if (isBefore(one, other)) return true;
        if (isBefore(other, one)) return false;
        return one.code < other.code;
    });
}

}  // namespace desktop
