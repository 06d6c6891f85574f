// SPDX-License-Identifier: MIT
#include "app/desktop/find/find_model.h"

#include "app/desktop/look/look.h"

namespace desktop {

namespace {

QString wordFor(FindKind kind) {
    switch (kind) {
        case FindKind::Plant:
            return FindModel::tr("plant");
        case FindKind::StockPlant:
            return FindModel::tr("stock plant");
        case FindKind::Station:
            return FindModel::tr("station");
        case FindKind::Page:
            return FindModel::tr("page");
        case FindKind::Task:
            return FindModel::tr("to do", "something that can be started");
        case FindKind::Batch:
            return FindModel::tr("batch");
    }
    return {};
}

}  // namespace

void FindModel::show(FindAnswer answer) {
    beginResetModel();
    answer_ = std::move(answer);
    endResetModel();
}

const FoundThing* FindModel::at(int row) const {
    return row < 0 || row >= rowCount() ? nullptr : &answer_.shown[static_cast<std::size_t>(row)];
}

QString FindModel::inWords(const FoundThing& thing) {
    QStringList words{wordFor(thing.kind), thing.title};
    if (thing.plant != thing.title) words.append(thing.plant);
    words.append(thing.detail);
    words.removeAll(QString());
    return words.join(QStringLiteral(", "));
}

int FindModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(answer_.shown.size());
}

QVariant FindModel::data(const QModelIndex& index, int role) const {
    const FoundThing* thing = at(index.row());
    if (!thing) return {};
    switch (role) {
        case Qt::DisplayRole:
            return thing->title;
        case Qt::DecorationRole:
            return icon(thing->icon);
        case Qt::ToolTipRole:
        case Qt::AccessibleTextRole:
            return inWords(*thing);
        case PlantRole:
            return thing->plant;
        case DetailRole:
            return thing->detail;
        case KindRole:
            return wordFor(thing->kind);
        case StartsKindRole:
            return index.row() > 0 && at(index.row() - 1)->kind != thing->kind;
        default:
            return {};
    }
}

}  // namespace desktop
