// SPDX-License-Identifier: MIT
// The map of a look hole by hole. One key marks what is selected and steps on to the next cutting that can be marked, in the order in which
// a hand goes: row by row, or back and forth. Space marks as before. Clicking goes from undecided to rooted to lost and round again.
#pragma once

#include "app/desktop/positions/mark_keys.h"
#include "app/desktop/positions/position_paint_view.h"

namespace desktop {

class PositionLookModel;

class PositionMarkView : public PositionPaintView {
    Q_OBJECT

  public:
    explicit PositionMarkView(PositionLookModel& model, QWidget* parent = nullptr);

    /// Every second row from right to left.
    void setSnake(bool isSnake) { isSnake_ = isSnake; }
    /// Marks what is selected and steps on.
    void apply(const Mark& mark);
    /// To the first cutting that can be marked.
    void goToStart();

  signals:
    /// Enter.
    void finished();
    /// The slash: a position is about to be typed.
    void jumpWanted();

  protected:
    bool event(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override;

  private:
    enum class Way { Left, Right, Up, Down };

    bool goToUndecided(Way way);
    void stepOn();
    [[nodiscard]] std::vector<core::Position> walk() const;
    void cycle(core::Position position);
    void popUp(const QPoint& globalPlace, const std::vector<core::Position>& positions);

    PositionLookModel& model_;
    Mark last_{.outcome = core::Outcome::Rooted, .cause = {}};
    bool isSnake_{};
};

}  // namespace desktop
