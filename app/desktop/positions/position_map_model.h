// SPDX-License-Identifier: MIT
// The positions of one station as a table: what stands at each, whose it is and what was found there. Tells screen readers and tooltips in
// words what the map draws. It shows records and changes none: a look in progress is shown by handing over records as they would be.
//
//   auto* model = new PositionMapModel(workspace, this);
//   auto* map = new PositionMapPanel(*model, this);                 // position_map_panel.h: with legend and the words below
//   model->show(station, openBatchesAt(workspace, station.id), batch);
#pragma once

#include <QAbstractTableModel>
#include <set>
#include <vector>

#include "app/desktop/positions/mark_keys.h"
#include "app/plot/station_map.h"
#include "core/batch/position_rules.h"
#include "core/records.h"

namespace desktop {

class Workspace;

using plot::PlaceContent;

class PositionMapModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    explicit PositionMapModel(const Workspace& workspace, QObject* parent = nullptr);

    /// As plot::stationMap().
    void show(const core::Station& station, const std::vector<core::BatchRecord>& records, core::BatchId focus,
              const std::set<core::Position>& marked = {});

    [[nodiscard]] const core::Station& station() const { return map_.station; }
    [[nodiscard]] const PlaceContent& at(core::Position position) const { return map_.at(position); }
    [[nodiscard]] plot::MapPlace placeAt(core::Position position) const { return map_.placeAt(position); }
    [[nodiscard]] bool isRound() const { return map_.isRound; }
    [[nodiscard]] const std::vector<MarkKey>& keys() const { return map_.keys; }
    /// "A2, rooted on day 14 (16 March 2026). B260047K, Hebe albicans, day 120."
    [[nodiscard]] QString wordsFor(core::Position position) const;
    /// What positionMapFigure() paints.
    [[nodiscard]] plot::PositionMap picture() const { return map_.picture(); }

    [[nodiscard]] QModelIndex indexOf(core::Position position) const { return index(position.row, position.column); }
    [[nodiscard]] static core::Position positionOf(const QModelIndex& index) { return {index.row(), index.column()}; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

  private:
    [[nodiscard]] QString stateWords(const PlaceContent& content) const;
    [[nodiscard]] QString accessibleText(core::Position position) const;

    const Workspace& workspace_;
    plot::StationMap map_;
};

/// The open batches of a station with all their checks, and `also` when it is one that has been closed.
[[nodiscard]] std::vector<core::BatchRecord> openBatchesAt(Workspace& workspace, core::StationId station,
                                                           core::BatchId also = {});

}  // namespace desktop
