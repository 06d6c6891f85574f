// SPDX-License-Identifier: MIT
// The bands of every stage and quantity, for plants in general or for one: what holds and where it comes from, and the grower's own to type
// beside it. Each figure that can be kept is kept at once, as one step to undo; one that can't stays as typed, with the reason.
#pragma once

#include <QAbstractTableModel>
#include <map>
#include <optional>
#include <vector>

#include "core/climate/stage_bands.h"

namespace desktop {

class Workspace;

class OwnBandsModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    enum Column { StageName, QuantityName, Good, Owner, Low, High, Note, Source, Columns };

    explicit OwnBandsModel(Workspace& workspace, QObject* parent = nullptr);

    /// Unset: plants in general.
    void choosePlant(core::PlantId plant);
    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role = Qt::EditRole) override;
    /// Why what was typed there is not kept; empty where it is.
    [[nodiscard]] QString faultAt(const QModelIndex& index) const;
    /// Takes the grower's own band of this row away.
    bool removeOwn(int row);

  signals:
    /// The newest reason, or empty when what was typed was kept.
    void judged(const QString& sentence);

  private:
    struct Row {
        core::Stage stage{};
        core::BandQuantity quantity{};
    };
    struct Typed {
        QString text;
        QString fault;
    };
    using Cell = std::pair<int, int>;

    void refresh();
    [[nodiscard]] const core::OwnBand* ownOf(const Row& row) const;
    [[nodiscard]] QString textAt(int row, int column) const;
    [[nodiscard]] QString ownText(const Row& row, int column) const;
    /// The figure as stored, nothing for a blank, or a reason.
    struct End {
        std::optional<double> stored;
        QString fault;
    };
    [[nodiscard]] End endFrom(const QString& text, const Row& row, int column) const;
    bool keep(int row);
    void mark(int row, int column, const QString& fault);

    Workspace& workspace_;
    core::PlantId plant_{};
    std::vector<Row> rows_;
    std::map<Cell, Typed> typed_;  // what could not be kept yet
};

}  // namespace desktop
