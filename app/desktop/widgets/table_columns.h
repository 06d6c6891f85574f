// SPDX-License-Identifier: MIT
// Which columns a table shows, in which order and how wide, as a person left them: remembered by name from one start to the next. A menu
// changes all of it, by a click on the headings with the other button or with Shift+F10 in the table; dragging works too. Widths are kept
// in proportion to the text size. One column takes what room is left until somebody gives it a width.
#pragma once

#include <QObject>
#include <vector>

class QPoint;
class QTableView;

namespace desktop {

class Memory;

class TableColumns : public QObject {
    Q_OBJECT

  public:
    /// `widths` in pixels at the table's text size, as at first. The first column can't be hidden. `memory` may be nullptr.
    TableColumns(QTableView& table, const std::vector<int>& widths, int stretched, Memory* memory, QString name);

    /// Other widths as at first, in pixels; columns that a person gave a width keep it.
    void startWith(const std::vector<int>& widths);
    /// For the current column; no column is current in an empty table.
    void showMenu(const QPoint& globalPlace);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    struct Column {
        double ems{};  // times the height of the text; 0: what is left
        bool isHidden{};
    };

    void showMenuFor(int column, const QPoint& globalPlace);
    void connectHeader();
    void reset();
    void recall();
    void remember();
    void lay();
    void fitStretched();
    void resize(int column, double times);
    void move(int column, int places);
    void setHidden(int column, bool isHidden);
    [[nodiscard]] QString titleOf(int column) const;
    [[nodiscard]] int em() const;

    QTableView& table_;
    std::vector<double> startEms_;
    int stretched_;
    Memory* memory_;
    QString name_;
    std::vector<Column> columns_;
    bool isLaying_{};
};

}  // namespace desktop
