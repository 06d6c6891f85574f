// SPDX-License-Identifier: MIT
#include "app/desktop/positions/position_map_model.h"

#include <algorithm>

#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

PositionMapModel::PositionMapModel(const Workspace& workspace, QObject* parent)
    : QAbstractTableModel(parent), workspace_(workspace) {}

void PositionMapModel::show(const core::Station& station, const std::vector<core::BatchRecord>& records,
                            core::BatchId focus, const std::set<core::Position>& marked) {
    const bool isSameLayout = station.rows == map_.station.rows && station.columns == map_.station.columns;
    if (!isSameLayout) beginResetModel();
    map_ = plot::stationMap(station, records, focus, workspace_.shelves(), marked);
    if (!isSameLayout) return endResetModel();
    if (!map_.contents.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

QString PositionMapModel::stateWords(const PlaceContent& content) const {
    if (!content.batch.isSet()) return content.isBlocked ? tr("blocked") : tr("free");
    if (!content.finding) return tr("undecided");
    switch (content.finding->outcome) {
        case core::Outcome::Rooted:
            return tr("rooted");
        case core::Outcome::Withdrawn:
            return tr("withdrawn");
        case core::Outcome::Lost:
            break;
    }
    const core::LossCause* cause = core::find(workspace_.shelves().lossCauses, content.finding->cause);
    return cause == nullptr ? tr("lost, cause not known")
                            : tr("lost (%1)", "cause").arg(QString::fromStdString(cause->name));
}

QString PositionMapModel::accessibleText(core::Position position) const {
    const PlaceContent& content = at(position);
    const QString name = QString::fromStdString(core::nameOf(position));
    if (content.isOther)
        return tr("%1, %2, of %3", "position, state, batch").arg(name, stateWords(content), content.code);
    return tr("%1, %2", "position, state").arg(name, stateWords(content));
}

QString PositionMapModel::wordsFor(core::Position position) const {
    const PlaceContent& content = at(position);
    const QString name = QString::fromStdString(core::nameOf(position)), state = stateWords(content);
    if (!content.batch.isSet()) return tr("%1, %2.", "position, state").arg(name, state);
    const QString age = plot::dayText(core::daysBetween(content.stuckOn, workspace_.today()));
    const QString whose = tr("%1, %2, %3.", "batch, plant, day n").arg(content.code, content.plant, age);
    if (!content.finding) return tr("%1, %2. %3", "position, state, sentence").arg(name, state, whose);
    if (content.isMarked) return tr("%1, %2, marked now. %3", "position, state, sentence").arg(name, state, whose);
    const QString found =
        tr("%1 (%2)", "day n, date")
            .arg(plot::dayText(core::daysBetween(content.stuckOn, content.foundOn)), plot::dateText(content.foundOn));
    return tr("%1, %2 on %3. %4", "position, state, day, sentence").arg(name, state, found, whose);
}

int PositionMapModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : map_.station.rows;
}

int PositionMapModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : map_.station.columns;
}

QVariant PositionMapModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const core::Position position = positionOf(index);
    if (role == Qt::DisplayRole) return placeAt(position).letter;
    if (role == Qt::AccessibleTextRole) return accessibleText(position);
    if (role == Qt::ToolTipRole || role == Qt::AccessibleDescriptionRole) return wordsFor(position);
    return {};
}

QVariant PositionMapModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role == Qt::DisplayRole)
        return orientation == Qt::Vertical ? plot::rowLetter(section) : plot::columnNumber(section);
    if (role == Qt::AccessibleTextRole)
        return orientation == Qt::Vertical ? tr("Row %1").arg(plot::rowLetter(section))
                                           : tr("Column %1").arg(plot::columnNumber(section));
    return {};
}

std::vector<core::BatchRecord> openBatchesAt(Workspace& workspace, core::StationId station, core::BatchId also) {
    std::vector<core::BatchRecord> records;
    workspace.attempt([&](db::Logbook& logbook) {
        for (const core::BatchLine& line : workspace.batchLines()) {
            const bool isOpenHere = line.batch.station == station && !core::isClosed(line.batch, line.tally);
            if (!isOpenHere && line.batch.id != also) continue;
            if (auto record = logbook.batch(line.batch.id)) records.push_back(std::move(*record));
        }
    });
    return records;
}

}  // namespace desktop
