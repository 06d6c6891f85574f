// SPDX-License-Identifier: MIT
// A field for a day and one for the hour. What nobody touched stays the moment that it was, to the second.
#pragma once

#include <QWidget>
#include <optional>

#include "core/units/days.h"
#include "core/units/moment.h"

class QLineEdit;

namespace desktop {

class DateEdit;

class MomentEdit : public QWidget {
    Q_OBJECT

  public:
    MomentEdit(core::Date today, core::Moment moment, QWidget* parent = nullptr);

    [[nodiscard]] bool isTouched() const;
    /// Nothing while one of them can't be understood.
    [[nodiscard]] std::optional<core::Moment> moment() const;
    /// A sentence when moment() is empty, else an empty text.
    [[nodiscard]] QString fault() const;
    [[nodiscard]] DateEdit* day() const { return day_; }
    [[nodiscard]] QLineEdit* hour() const { return hour_; }

  private:
    core::Moment start_;
    DateEdit* day_;
    QLineEdit* hour_;
    QString startDay_, startHour_;
};

}  // namespace desktop
