// SPDX-License-Identifier: MIT
// All figures of a pair as a table, as high as its rows. Enter, a double-click or the menu of a row says how its figure is worked out.
#pragma once

#include <QTableView>
#include <vector>

#include "app/desktop/head_to_head/pair_figures.h"

namespace desktop {

class FigureTableModel;

class PairTable : public QTableView {
    Q_OBJECT

  public:
    explicit PairTable(QWidget* parent = nullptr);

    void show(PairFigures figures, std::vector<report::MethodNote> notes);
    using QTableView::show;

  signals:
    void said(const QString& sentence);

  protected:
    void contextMenuEvent(QContextMenuEvent* event) override;

  private:
    void explain(const QModelIndex& row);

    FigureTableModel* model_;
    QStringList pages_;
    std::vector<report::MethodNote> notes_;
};

/// As high as its rows and its heading, so that the page scrolls and not the table.
void fitToRows(QTableView& table);

}  // namespace desktop
