// SPDX-License-Identifier: MIT
#include "app/desktop/positions/position_map_model.h"

#include <algorithm>

#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "core/plants/plant.h"

namespace desktop {

namespace {

/// Cuttings in a medium stand in cells, those in water hang in holes. Only the picture depends on it.
bool hangsInHoles(const core::Station& station, const std::vector<core::BatchRecord>& records,
                  const core::Shelves& shelves) {
    for (const core::BatchRecord& record : records)
        if (const core::Medium* medium = core::find(shelves.media, record.batch.medium))
            if (!medium->components.empty()) return false;
    const core::Method* method = core::find(shelves.methods, station.method);
    return method == nullptr || !QString::fromStdString(method->name).contains(QStringLiteral("tray"));
}

}  // namespace

PositionMapModel::PositionMapModel(const Workspace& workspace, QObject* parent)
    : QAbstractTableModel(parent), workspace_(workspace) {}

void PositionMapModel::show(const core::Station& station, const std::vector<core::BatchRecord>& records,
                            core::BatchId focus, const std::set<core::Position>& marked) {
    const core::Shelves& shelves = workspace_.shelves();
    const bool isSameLayout = station.rows == station_.rows && station.columns == station_.columns;
    if (!isSameLayout) beginResetModel();
    station_ = station;
    keys_ = markKeysFor(shelves.lossCauses);
    isRound_ = hangsInHoles(station, records, shelves);
    contents_.assign(static_cast<std::size_t>(station.rows * station.columns), {});
    for (const core::Position position : core::positionsFrom(station.blocked).value_or(std::vector<core::Position>()))
        if (PlaceContent* content = contentAt(position)) content->isBlocked = true;
    for (const Whose whose : {Whose::OfFocus, Whose::Standing, Whose::Gone})
        for (const core::BatchRecord& record : records) place(record, focus, whose, marked);
    if (!isSameLayout) return endResetModel();
    if (!contents_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

void PositionMapModel::place(const core::BatchRecord& record, core::BatchId focus, Whose whose,
                             const std::set<core::Position>& marked) {
    const bool isOfFocus = record.batch.id == focus, isOther = focus.isSet() && !isOfFocus;
    if (isOfFocus != (whose == Whose::OfFocus) || (!isOfFocus && record.batch.station != station_.id)) return;
    if (isOther && whose == Whose::Gone) return;
    const bool isClosed = core::isClosed(record.batch, core::tallyOf(record.batch, record.checks));
    const core::Plant* plant = core::find(workspace_.shelves().plants, record.batch.plant);
    for (const core::PositionState& state : core::positionStates(record)) {
        PlaceContent* content = contentAt(state.position);
        if (content == nullptr || content->batch.isSet()) continue;
        // What was lost or taken away stands there no more; neither does a batch that was potted on.
        const bool isGone = isClosed || (state.finding && state.finding->outcome != core::Outcome::Rooted);
        if (whose == Whose::Standing && isGone) continue;
        *content = {.isBlocked = content->isBlocked,
                    .batch = record.batch.id,
                    .code = QString::fromStdString(record.batch.code),
                    .plant = plant == nullptr ? QString() : QString::fromStdString(core::fullName(*plant)),
                    .stuckOn = record.batch.stuckOn,
                    .finding = state.finding,
                    .foundOn = state.foundOn,
                    .isOther = isOther,
                    .isMarked = marked.contains(state.position)};
    }
}

PlaceContent* PositionMapModel::contentAt(core::Position position) {
    if (position.row < 0 || position.row >= station_.rows || position.column < 0 || position.column >= station_.columns)
        return nullptr;
    return &contents_[static_cast<std::size_t>(position.row * station_.columns + position.column)];
}

const PlaceContent& PositionMapModel::at(core::Position position) const {
    return contents_[static_cast<std::size_t>(position.row * station_.columns + position.column)];
}

plot::MapPlace PositionMapModel::placeAt(core::Position position) const {
    const PlaceContent& content = at(position);
    plot::MapPlace place{.isDimmed = content.isOther};
    if (!content.batch.isSet()) {
        place.state = content.isBlocked ? plot::PlaceState::Blocked : plot::PlaceState::Free;
        return place;
    }
    place.state = plot::PlaceState::Undecided;
    if (!content.finding) return place;
    switch (content.finding->outcome) {
        case core::Outcome::Rooted:
            place.state = plot::PlaceState::Rooted;
            break;
        case core::Outcome::Lost:
            place.state = plot::PlaceState::Lost;
            break;
        case core::Outcome::Withdrawn:
            place.state = plot::PlaceState::Withdrawn;
            break;
    }
    place.letter = letterFor(keys_, {.outcome = content.finding->outcome, .cause = content.finding->cause});
    if (!content.isMarked) place.day = plot::countText(core::daysBetween(content.stuckOn, content.foundOn));
    return place;
}

plot::PositionMap PositionMapModel::picture() const {
    plot::PositionMap map{.rows = station_.rows,
                          .columns = station_.columns,
                          .isStaggered = station_.isStaggered,
                          .isRound = isRound_,
                          .places = {}};
    for (int row = 0; row < station_.rows; ++row)
        for (int column = 0; column < station_.columns; ++column) map.places.push_back(placeAt({row, column}));
    return map;
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
    return parent.isValid() ? 0 : station_.rows;
}

int PositionMapModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : station_.columns;
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
