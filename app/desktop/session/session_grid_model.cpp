// SPDX-License-Identifier: MIT
#include "app/desktop/session/session_grid_model.h"

#include <algorithm>

#include "app/desktop/session/arm_letter.h"

namespace desktop {

namespace {

SessionColumn columnOf(const QModelIndex& index) {
    return static_cast<SessionColumn>(index.column());
}

bool isFilled(const SessionRow& row, SessionColumn column) {
    return column == SessionColumn::Positions && row.at(column).trimmed().isEmpty();
}

}  // namespace

SessionGridModel::SessionGridModel(SessionSheet& sheet, QObject* parent) : QAbstractTableModel(parent), sheet_(sheet) {
    keepOneRow();
}

int SessionGridModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(sheet_.rows.size());
}

int SessionGridModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : sessionColumns;
}

QVariant SessionGridModel::data(const QModelIndex& index, int role) const {
    if (!hasCell(index)) return {};
    const SessionRow& cells = row(index.row());
    const SessionColumn column = columnOf(index);
    const bool isMethod = column == SessionColumn::Method;
    switch (role) {
        case Qt::DisplayRole:
        case Qt::EditRole:
            if (isMethod) return lookup_.methodOf ? lookup_.methodOf(cells.at(SessionColumn::Station)) : QString();
            if (isFilled(cells, column)) return cells.filled;
            return cells.at(column);
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(Qt::Alignment(column == SessionColumn::Count ? Qt::AlignRight : Qt::AlignLeft) |
                                       Qt::AlignVCenter);
        case Qt::ToolTipRole: {
            const QString fault = faultAt(index);
            return fault.isEmpty() ? data(index, Qt::DisplayRole) : fault;
        }
        case Qt::AccessibleDescriptionRole:
        case FaultRole:
            return faultAt(index);
        case IsOfferedRole:
            return cells.isOffered;
        case IsLockedRole:
            return isLocked(cells, column);
        case IsFilledRole:
            return isMethod || isFilled(cells, column);
        case IsPlantNameRole:
            return column == SessionColumn::Plant;
        default:
            return {};
    }
}

QVariant SessionGridModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical && role == Qt::DisplayRole && section < rowCount()) return rowLabel(section);
    if (orientation != Qt::Horizontal || section < 0 || section >= sessionColumns) return {};
    if (role == Qt::DisplayRole) return headingOf(static_cast<SessionColumn>(section));
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::Alignment(static_cast<SessionColumn>(section) == SessionColumn::Count
                                                     ? Qt::AlignRight
                                                     : Qt::AlignLeft) |
                                   Qt::AlignVCenter);
    return {};
}

Qt::ItemFlags SessionGridModel::flags(const QModelIndex& index) const {
    // A cell's editor may outlive its row: what it holds then has no place any more.
    if (!hasCell(index)) return Qt::NoItemFlags;
    const Qt::ItemFlags seen = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    return isLocked(row(index.row()), columnOf(index)) ? seen : seen | Qt::ItemIsEditable;
}

bool SessionGridModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || (flags(index) & Qt::ItemIsEditable) == 0) return false;
    SessionRow& cells = sheet_.rows[static_cast<std::size_t>(index.row())];
    const QString text = value.toString();
    const QString typed = lookup_.understood ? lookup_.understood(columnOf(index), text) : text;
    if (columnOf(index) == SessionColumn::Station && lookup_.usualMediumOf) {
        QString& medium = cells.at(SessionColumn::Medium);
        const bool isOurs = medium.isEmpty() || medium == lookup_.usualMediumOf(cells.at(SessionColumn::Station));
        if (isOurs && typed != cells.at(SessionColumn::Station)) medium = lookup_.usualMediumOf(typed);
    }
    if (columnOf(index) == SessionColumn::Plant && typed != cells.at(SessionColumn::Plant) && lookup_.stockPlantFor) {
        QString& mother = cells.at(SessionColumn::StockPlant);
        mother = lookup_.stockPlantFor(cells.at(SessionColumn::Plant), typed, mother);
    }
    // Enter through positions that filled themselves leaves them to do so.
    cells.at(columnOf(index)) = isFilled(cells, columnOf(index)) && typed == cells.filled ? QString() : typed;
    cells.isOffered = false;
    tellRow(index.row());
    emit edited();
    return true;
}

void SessionGridModel::setLookup(SessionLookup lookup) {
    lookup_ = std::move(lookup);
    if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, sessionColumns - 1));
}

void SessionGridModel::accept(int row) {
    SessionRow& cells = sheet_.rows[static_cast<std::size_t>(row)];
    if (!cells.isOffered) return;
    cells.isOffered = false;
    tellRow(row);
    emit edited();
}

void SessionGridModel::acceptAll() {
    for (SessionRow& row : sheet_.rows) row.isOffered = false;
    emit dataChanged(index(0, 0), index(rowCount() - 1, sessionColumns - 1));
    emit headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
    emit edited();
}

int SessionGridModel::offeredRows() const {
    return static_cast<int>(std::ranges::count_if(sheet_.rows, &SessionRow::isOffered));
}

void SessionGridModel::offer(std::vector<SessionRow> rows) {
    beginResetModel();
    sheet_.rows = std::move(rows);
    keepOneRow();
    endResetModel();
    emit edited();
}

void SessionGridModel::offerRow() {
    SessionRow copy = sheet_.rows.back();
    if (copy.split >= 0) copy = sheet_.splits[static_cast<std::size_t>(copy.split)].whole;
    copy.at(SessionColumn::Note).clear();
    copy.at(SessionColumn::Positions).clear();
    copy.filled.clear();
    copy.isOffered = !copy.isBlank();
    copy.split = -1;
    beginInsertRows({}, rowCount(), rowCount());
    sheet_.rows.push_back(std::move(copy));
    endInsertRows();
    emit edited();
}

bool SessionGridModel::copyFromAbove(const QModelIndex& index) {
    if (index.row() < 1) return false;
    return setData(index, row(index.row() - 1).at(columnOf(index)));
}

void SessionGridModel::remove(int row) {
    if (this->row(row).split >= 0) return join(this->row(row).split);
    beginRemoveRows({}, row, row);
    sheet_.rows.erase(sheet_.rows.begin() + row);
    endRemoveRows();
    if (sheet_.rows.empty()) {
        beginInsertRows({}, 0, 0);
        keepOneRow();
        endInsertRows();
    }
    emit edited();
}

void SessionGridModel::split(int row, SplitByChance split) {
    const int number = static_cast<int>(sheet_.splits.size());
    beginResetModel();
    split.whole = this->row(row);
    split.whole.isOffered = false;
    std::vector<SessionRow> arms;
    for (std::size_t arm = 0; arm < split.arms.size(); ++arm) {
        SessionRow cells = split.whole;
        const QString before = cells.at(split.factor);
        cells.at(split.factor) = split.arms[arm];
        cells.at(SessionColumn::Count) = QString::number(split.allocation.perArm[arm]);
        if (split.factor == SessionColumn::Station && split.arms[arm] != before && lookup_.usualMediumOf)
            cells.at(SessionColumn::Medium) = lookup_.usualMediumOf(split.arms[arm]);
        cells.at(SessionColumn::Positions).clear();
        cells.split = number;
        arms.push_back(std::move(cells));
    }
    const auto place = sheet_.rows.erase(sheet_.rows.begin() + row);
    sheet_.rows.insert(place, arms.begin(), arms.end());
    sheet_.splits.push_back(std::move(split));
    endResetModel();
    emit edited();
}

void SessionGridModel::join(int split) {
    SplitByChance& taken = sheet_.splits[static_cast<std::size_t>(split)];
    const auto isArm = [split](const SessionRow& row) { return row.split == split; };
    const auto first = std::find_if(sheet_.rows.begin(), sheet_.rows.end(), isArm);
    if (taken.isJoined || first == sheet_.rows.end()) return;
    beginResetModel();
    sheet_.rows.insert(first, taken.whole);
    std::erase_if(sheet_.rows, isArm);
    taken.isJoined = true;
    endResetModel();
    emit edited();
}

void SessionGridModel::startAfresh() {
    beginResetModel();
    sheet_.rows.clear();
    sheet_.splits.clear();
    sheet_.made = {};
    sheet_.note.clear();
    faults_.clear();
    keepOneRow();
    endResetModel();
    emit edited();
}

void SessionGridModel::setFilled(const std::vector<QString>& filled) {
    for (int row = 0; row < rowCount() && row < static_cast<int>(filled.size()); ++row) {
        QString& own = sheet_.rows[static_cast<std::size_t>(row)].filled;
        const QString& text = filled[static_cast<std::size_t>(row)];
        if (own == text) continue;
        own = text;
        const QModelIndex cell = index(row, static_cast<int>(SessionColumn::Positions));
        emit dataChanged(cell, cell);
    }
}

void SessionGridModel::setFaults(std::vector<CellFault> faults) {
    if (faults == faults_) return;
    faults_ = std::move(faults);
    if (rowCount() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, sessionColumns - 1));
}

QString SessionGridModel::rowLabel(int row) const {
    const SessionRow& cells = this->row(row);
    if (cells.isOffered) return QStringLiteral("+");
    if (cells.split < 0) return QString::number(row + 1);
    int arm = 0;
    for (int above = 0; above < row; ++above) arm += this->row(above).split == cells.split ? 1 : 0;
    return tr("%1 %2", "number of a row, letter of its arm").arg(row + 1).arg(armLetter(arm));
}

bool SessionGridModel::isLocked(const SessionRow& row, SessionColumn column) const {
    if (column == SessionColumn::Method) return true;
    return row.split >= 0 && column != SessionColumn::Medium && column != SessionColumn::Positions &&
           column != SessionColumn::Note;
}

QString SessionGridModel::faultAt(const QModelIndex& index) const {
    for (const CellFault& fault : faults_)
        if (fault.row == index.row() && fault.column == columnOf(index)) return fault.sentence;
    return {};
}

const SessionRow& SessionGridModel::row(int row) const {
    static const SessionRow blank;
    return row >= 0 && row < rowCount() ? sheet_.rows[static_cast<std::size_t>(row)] : blank;
}

bool SessionGridModel::hasCell(const QModelIndex& index) const {
    return index.isValid() && index.row() < rowCount();
}

void SessionGridModel::keepOneRow() {
    if (sheet_.rows.empty()) sheet_.rows.emplace_back();
}

void SessionGridModel::tellRow(int row) {
    emit dataChanged(index(row, 0), index(row, sessionColumns - 1));
}

}  // namespace desktop
