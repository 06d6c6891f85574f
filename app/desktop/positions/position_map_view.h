// SPDX-License-Identifier: MIT
// A lid or tray on the screen: arrows move, Shift and arrows take a block, Home and End go to the ends of the row. Cells grow with the room
// that there is and never fall below what a finger hits; then the map scrolls. It stays left to right in every language, since it is a
// picture of a thing. Looks only: PositionMarkView marks.
#pragma once

#include <QTableView>
#include <vector>

#include "core/station/position.h"

class QPainter;

namespace desktop {

class PositionMapModel;

class PositionMapView : public QTableView {
    Q_OBJECT

  public:
    explicit PositionMapView(PositionMapModel& model, QWidget* parent = nullptr);

    [[nodiscard]] PositionMapModel& map() const { return map_; }
    void goTo(core::Position position);
    /// Contract: the map has positions.
    [[nodiscard]] core::Position current() const;
    [[nodiscard]] std::vector<core::Position> selected() const;
    [[nodiscard]] int cellSize() const;

    [[nodiscard]] QRect visualRect(const QModelIndex& index) const override;
    [[nodiscard]] QModelIndex indexAt(const QPoint& point) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

  protected:
    /// From where the cursor stood to `position`; a block when `extends`.
    void move(core::Position position, bool extends);

    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void updateGeometries() override;
    void keyboardSearch(const QString& search) override;

  private:
    void fit();
    [[nodiscard]] int leastCell() const;
    [[nodiscard]] QSize bodySize(int cell) const;
    [[nodiscard]] int frontHeight() const;
    void paintCell(QPainter& painter, const QRect& cell, core::Position position) const;

    PositionMapModel& map_;
    core::Position anchor_{};
    bool isFitting_{};
};

}  // namespace desktop
