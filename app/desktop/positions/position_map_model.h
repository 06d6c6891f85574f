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
#include "app/plot/position_map.h"
#include "core/batch/position_rules.h"
#include "core/records.h"

namespace desktop {

class Workspace;

/// What is known of one position.
struct PlaceContent {
    bool isBlocked{};
    core::BatchId batch{};  // unset: free
    QString code{};
    QString plant{};
    core::Date stuckOn{};
    std::optional<core::Finding> finding{};
    core::Date foundOn{};
    bool isOther{};   // not of the batch in focus
    bool isMarked{};  // by the look in progress
};

class PositionMapModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    explicit PositionMapModel(const Workspace& workspace, QObject* parent = nullptr);

    /// `focus` unset: all batches alike. `marked` are positions that a look in progress has decided; they carry no day. The focus' cuttings
    /// come first where several batches have had a position, then those that still stand there; who stands there no more is left out.
    void show(const core::Station& station, const std::vector<core::BatchRecord>& records, core::BatchId focus,
              const std::set<core::Position>& marked = {});

    [[nodiscard]] const core::Station& station() const { return station_; }
    [[nodiscard]] const PlaceContent& at(core::Position position) const;
    [[nodiscard]] plot::MapPlace placeAt(core::Position position) const;
    [[nodiscard]] bool isRound() const { return isRound_; }
    [[nodiscard]] const std::vector<MarkKey>& keys() const { return keys_; }
    /// "A2, rooted on day 14 (16 March 2026). B260047K, Hebe albicans, day 120."
    [[nodiscard]] QString wordsFor(core::Position position) const;
    /// What positionMapFigure() paints.
    [[nodiscard]] plot::PositionMap picture() const;

    [[nodiscard]] QModelIndex indexOf(core::Position position) const { return index(position.row, position.column); }
    [[nodiscard]] static core::Position positionOf(const QModelIndex& index) { return {index.row(), index.column()}; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation,
                                      int role = Qt::DisplayRole) const override;

  private:
    enum class Whose { OfFocus, Standing, Gone };

    void place(const core::BatchRecord& record, core::BatchId focus, Whose whose,
               const std::set<core::Position>& marked);
    [[nodiscard]] PlaceContent* contentAt(core::Position position);
    [[nodiscard]] QString stateWords(const PlaceContent& content) const;
    [[nodiscard]] QString accessibleText(core::Position position) const;

    const Workspace& workspace_;
    core::Station station_;
    bool isRound_{true};
    std::vector<MarkKey> keys_;
    std::vector<PlaceContent> contents_;  // row by row
};

/// The open batches of a station with all their checks, and `also` when it is one that has been closed.
[[nodiscard]] std::vector<core::BatchRecord> openBatchesAt(Workspace& workspace, core::StationId station,
                                                           core::BatchId also = {});

}  // namespace desktop
