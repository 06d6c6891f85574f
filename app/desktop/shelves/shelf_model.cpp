// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/shelf_model.h"

#include <QGuiApplication>
#include <algorithm>

#include "app/desktop/find/search_text.h"
#include "app/desktop/look/look.h"
#include "app/plot/number_text.h"

namespace desktop {

ShelfModel::ShelfModel(std::vector<ShelfColumn> columns, QObject* parent, bool countsUses)
    : QAbstractTableModel(parent), columns_(std::move(columns)), countsUses_(countsUses) {}

int ShelfModel::tailOf(int column) const {
    const int place = column - static_cast<int>(columns_.size());
    return place < 0 || countsUses_ ? place : place + State;
}

void ShelfModel::show(std::vector<ShelfItem> items, ShelfUses uses) {
    beginResetModel();
    items_ = std::move(items);
    uses_ = std::move(uses);
    chooseShown();
    endResetModel();
}

void ShelfModel::setFilter(const QString& words) {
    beginResetModel();
    words_ = searchWords(words);
    chooseShown();
    endResetModel();
}

void ShelfModel::chooseShown() {
    shown_.clear();
    for (std::size_t number = 0; number < items_.size(); ++number) {
        QStringList texts;
        for (int column = 0; column < columnCount(); ++column) texts << textOf(items_[number], column);
        const QString searched = searchText(texts.join(u' '));
        if (std::ranges::all_of(words_, [&](const QString& word) { return searched.contains(word); }))
            shown_.push_back(number);
    }
    std::ranges::stable_sort(
        shown_, [this](std::size_t one, std::size_t other) { return isBefore(items_[one], items_[other]); });
}

int ShelfModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(shown_.size());
}

int ShelfModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(columns_.size()) + (countsUses_ ? int{TailCount} : 1);
}

QString ShelfModel::textOf(const ShelfItem& item, int column) const {
    if (tailOf(column) < 0) return item.cells[static_cast<std::size_t>(column)].text.simplified();
    const ShelfUse use = useOf(item.id);
    switch (tailOf(column)) {
        case Batches:
            return plot::countText(use.batches);
        case LastDay:
            return use.lastDay ? plot::shortDateText(*use.lastDay) : QString();
        default:
            if (!countsUses_ || !item.state.isEmpty()) return item.state;
            if (item.isRetired) return tr("retired");
            return use.batches > 0 ? tr("in use") : tr("no batches");
    }
}

bool ShelfModel::isFigure(int column) const {
    if (tailOf(column) >= 0) return tailOf(column) != State;
    return columns_[static_cast<std::size_t>(column)].look == ShelfLook::Figure;
}

QVariant ShelfModel::data(const QModelIndex& index, int role) const {
    const ShelfItem* item = index.isValid() ? itemAt(index.row()) : nullptr;
    if (item == nullptr) return {};
    switch (role) {
        case Qt::DisplayRole:
        case Qt::ToolTipRole:
            return textOf(*item, index.column());
        case Qt::TextAlignmentRole:
            return QVariant::fromValue(Qt::Alignment(isFigure(index.column()) ? Qt::AlignRight | Qt::AlignVCenter
                                                                              : Qt::AlignLeft | Qt::AlignVCenter));
        case Qt::ForegroundRole:
            return item->isRetired ? QVariant(quietColour(QGuiApplication::palette())) : QVariant();
        default:
            return {};
    }
}

QVariant ShelfModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(
            Qt::Alignment(isFigure(section) ? Qt::AlignRight | Qt::AlignVCenter : Qt::AlignLeft | Qt::AlignVCenter));
    if (role != Qt::DisplayRole) return {};
    switch (tailOf(section)) {
        case Batches:
            return tr("Batches");
        case LastDay:
            return tr("Last day");
        case State:
            return tr("State");
        default:
            return columns_[static_cast<std::size_t>(section)].title;
    }
}

void ShelfModel::sort(int column, Qt::SortOrder order) {
    if (column < 0 || column >= columnCount()) return;
    beginResetModel();
    sortedBy_ = column;
    order_ = order;
    chooseShown();
    endResetModel();
}

double ShelfModel::figureOf(const ShelfItem& item, int column) const {
    constexpr double none = -1;  // blanks come before all figures
    const ShelfUse use = useOf(item.id);
    if (tailOf(column) == Batches) return use.batches;
    if (tailOf(column) == LastDay)
        return use.lastDay ? static_cast<double>(std::chrono::sys_days{*use.lastDay}.time_since_epoch().count()) + 1e6
                           : none;
    return item.cells[static_cast<std::size_t>(column)].figure.value_or(none);
}

bool ShelfModel::isBefore(const ShelfItem& one, const ShelfItem& other) const {
    const ShelfItem& first = order_ == Qt::AscendingOrder ? one : other;
    const ShelfItem& second = order_ == Qt::AscendingOrder ? other : one;
    if (isFigure(sortedBy_)) return figureOf(first, sortedBy_) < figureOf(second, sortedBy_);
    return QString::localeAwareCompare(searchText(textOf(first, sortedBy_)), searchText(textOf(second, sortedBy_))) < 0;
}

ShelfUse ShelfModel::useOf(std::int64_t id) const {
    const auto found = uses_.find(id);
    return found == uses_.end() ? ShelfUse{} : found->second;
}

const ShelfItem* ShelfModel::itemAt(int row) const {
    return row < 0 || row >= rowCount() ? nullptr : &items_[shown_[static_cast<std::size_t>(row)]];
}

int ShelfModel::rowOf(std::int64_t id) const {
    const auto found = std::ranges::find_if(shown_, [&](std::size_t number) { return items_[number].id == id; });
    return found == shown_.end() ? -1 : static_cast<int>(found - shown_.begin());
}

}  // namespace desktop
