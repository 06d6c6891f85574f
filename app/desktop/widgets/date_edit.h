// SPDX-License-Identifier: MIT
// A field for a day: type 14, 14.3, -3, t or 2026-03-14 (date_entry.h); what was understood is written back on leaving
// the field. With setDayZero() it says "Day 21" behind itself. Down and Up arrows step one day.
#pragma once

#include <QLineEdit>
#include <optional>

#include "app/desktop/widgets/date_entry.h"
#include "core/units/days.h"

class QAction;
class QLabel;

namespace desktop {

class DateEdit : public QWidget {
    Q_OBJECT

  public:
    explicit DateEdit(core::Date today, QWidget* parent = nullptr);

    void setDate(std::optional<core::Date> date);
    /// Nothing while what stands there can't be understood or is blank.
    [[nodiscard]] std::optional<core::Date> date() const;
    /// A sentence when date() is empty, else an empty text.
    [[nodiscard]] QString fault() const;
    void setDayZero(std::optional<core::Date> stuckOn);
    /// For days to come: 14 is the next 14th, +21 is in 21 days.
    void lookAhead();
    [[nodiscard]] QLineEdit* line() const { return line_; }  // the buddy of labels, and what tests type into

  signals:
    void dateChanged();

  protected:
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void showDay();
    void writeBack();

    [[nodiscard]] QString allowed() const;

    core::Date today_;
    DayLean lean_{DayLean::Back};
    std::optional<core::Date> dayZero_;
    QLineEdit* line_;
    QLabel* day_;
};

}  // namespace desktop
