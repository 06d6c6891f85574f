// SPDX-License-Identifier: MIT
// One of the short lists that batches refer to, described: what it is called, which columns it has, and what can be done to a thing on it.
// The page, its table and the merge dialog work on this and know no kind of thing; the list of all of them is shelf_list.h.
#pragma once

#include <QString>
#include <cstdint>
#include <functional>
#include <optional>
#include <unordered_map>
#include <vector>

#include "app/desktop/place.h"
#include "core/records.h"
#include "core/result.h"
#include "db/logbook.h"

class QDialog;
class QWidget;

namespace desktop {

class Workspace;
struct PageContext;

enum class ShelfKind {
    Plants,
    StockPlants,
    Methods,
    Stations,
    Media,
    Treatments,
    CuttingKinds,
    LossCauses,
    Trials,
    CheckSchedules,
    Prices,
    Lots
};

struct ShelfCell {
    QString text;
    std::optional<double> figure{};  // what a column of numbers sorts by
};

enum class ShelfLook { Words, PlantName, Figure };

struct ShelfColumn {
    QString title;
    ShelfLook look{ShelfLook::Words};
};

/// One thing on the shelf, ready to show.
struct ShelfItem {
    std::int64_t id{};
    QString name;                  // as sentences call it
    std::vector<ShelfCell> cells;  // one for each column of the shelf
    bool isRetired{};
    QString state{};  // instead of "in use" or "retired"
};

struct ShelfUse {
    int batches{};
    std::optional<core::Date> lastDay{};  // the last on which one of them was stuck or looked at
};
using ShelfUses = std::unordered_map<std::int64_t, ShelfUse>;

/// What stands under the table about the thing of its current row.
class ShelfDetails {
  public:
    virtual ~ShelfDetails() = default;
    /// An unset id: nothing is chosen.
    virtual void showThing(std::int64_t id) = 0;
    [[nodiscard]] virtual QWidget* widgetOfDetails() = 0;
};

/// A dialog that a shelf offers beside its form, and the button that opens it.
struct ShelfOffer {
    QString text;
    QString tip{};
    std::function<QDialog*(const PageContext&, std::int64_t id, QWidget* parent)> dialog;  // not opened yet
};

struct Shelf {
    using Edit = std::function<core::Result<db::Changes>(db::Logbook&, std::int64_t id)>;
    using Merge = std::function<core::Result<db::Changes>(db::Logbook&, std::int64_t goes, std::int64_t stays)>;

    ShelfKind kind{};
    QString word;     // "plants": settings are kept under it
    QString title;    // "Plants"
    QString newText;  // "New plant"
    QString purpose;  // what the empty shelf says
    std::vector<ShelfColumn> columns;
    int sortedBy{};                  // the column, at first
    std::optional<int> stretched{};  // the column that takes what is left; nothing: the last of words
    std::function<std::vector<ShelfItem>(const core::Shelves&, core::Date today)> items;
    std::function<ShelfUses(const Workspace&)> uses;  // empty: batches don't name such things
    Edit retire{};                                    // empty: such things are not retired
    Edit takeBack{};                                  // into use again
    Edit remove{};
    Merge merge{};         // empty: no two of these are one
    QString comesAlong{};  // what else a merge moves, as a sentence; may be empty
    /// An unset id: a new one. Not opened yet.
    std::function<QDialog*(const PageContext&, std::int64_t id, QWidget* parent)> form;
    std::optional<ShelfOffer> another{};                         // a new one out of the row in front
    std::optional<ShelfOffer> start{};                           // many at once while the shelf is empty
    std::optional<Place::Kind> place{};                          // when such a thing can be gone to
    std::function<ShelfDetails*(const PageContext&)> details{};  // empty: none
};

}  // namespace desktop
