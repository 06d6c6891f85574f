// SPDX-License-Identifier: MIT
#include "app/desktop/batches/copied_rows.h"

#include <QClipboard>
#include <QCoreApplication>
#include <QGuiApplication>
#include <QItemSelectionModel>
#include <QKeyEvent>
#include <QStringList>
#include <QTableView>
#include <set>

namespace desktop {

namespace {

QString asOneCell(const QVariant& value) {
    return value.toString().replace(QLatin1Char('\t'), QLatin1Char(' ')).replace(QLatin1Char('\n'), QLatin1Char(' '));
}

/// A table copies one cell on Ctrl+C by itself; we want rows, so we are there first.
class CopyKey : public QObject {
  public:
    CopyKey(QTableView& table, std::function<void(const QString&)> say)
        : QObject(&table), table_(table), say_(std::move(say)) {}

    bool eventFilter(QObject* watched, QEvent* event) override {
        const bool isPress = event->type() == QEvent::KeyPress;
        if (!isPress || !static_cast<QKeyEvent*>(event)->matches(QKeySequence::Copy))
            return QObject::eventFilter(watched, event);
        say_(QCoreApplication::translate("CopiedRows", "Rows copied with their headings: %1.").arg(copyRows(table_)));
        return true;
    }

  private:
    QTableView& table_;
    std::function<void(const QString&)> say_;
};

}  // namespace

int copyRows(const QTableView& table) {
    const QAbstractItemModel& model = *table.model();
    std::set<int> rows;
    for (const QModelIndex& index : table.selectionModel()->selectedIndexes()) rows.insert(index.row());
    if (rows.empty())
        for (int row = 0; row < model.rowCount(); ++row) rows.insert(row);
    QString text;
    const auto addLine = [&](const auto& cellOf) {
        QStringList cells;
        for (int column = 0; column < model.columnCount(); ++column)
            if (!table.isColumnHidden(column)) cells.append(asOneCell(cellOf(column)));
        text += cells.join(QLatin1Char('\t')) + QLatin1Char('\n');
    };
    addLine([&](int column) { return model.headerData(column, Qt::Horizontal, Qt::DisplayRole); });
    for (const int row : rows) addLine([&](int column) { return model.index(row, column).data(); });
    QGuiApplication::clipboard()->setText(text);
    return static_cast<int>(rows.size());
}

void copyOnRequest(QTableView& table, std::function<void(const QString&)> say) {
    table.installEventFilter(new CopyKey(table, std::move(say)));
}

}  // namespace desktop
