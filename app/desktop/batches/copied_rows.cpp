// SPDX-License-Identifier: MIT
#include "app/desktop/batches/copied_rows.h"

#include <QAbstractItemModel>
#include <QClipboard>
#include <QGuiApplication>
#include <QItemSelectionModel>
#include <QStringList>
#include <QTableView>
#include <set>

namespace desktop {

namespace {

QString asOneCell(const QVariant& value) {
    return value.toString().replace(QLatin1Char('\t'), QLatin1Char(' ')).replace(QLatin1Char('\n'), QLatin1Char(' '));
}

}  // namespace

int copyRows(const QAbstractItemView& view) {
    const QAbstractItemModel& model = *view.model();
    const auto* table = qobject_cast<const QTableView*>(&view);
    std::set<int> rows;
    for (const QModelIndex& index : view.selectionModel()->selectedIndexes()) rows.insert(index.row());
    if (rows.empty())
        for (int row = 0; row < model.rowCount(); ++row) rows.insert(row);
    QString text;
    const auto addLine = [&](const auto& cellOf) {
        QStringList cells;
        for (int column = 0; column < model.columnCount(); ++column)
            if (table == nullptr || !table->isColumnHidden(column)) cells.append(asOneCell(cellOf(column)));
        text += cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
    };
    addLine([&](int column) { return model.headerData(column, Qt::Horizontal, Qt::DisplayRole); });
    for (const int row : rows) addLine([&](int column) { return model.index(row, column).data(); });
    QGuiApplication::clipboard()->setText(text);
    return static_cast<int>(rows.size());
}

}  // namespace desktop
