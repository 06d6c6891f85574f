// SPDX-License-Identifier: MIT
// A field for a length in the grower's unit; kept in millimetres. Nothing typed is thrown away.
#pragma once

#include <QLineEdit>
#include <optional>

#include "core/units/display_units.h"

namespace desktop {

class LengthEdit : public QLineEdit {
    Q_OBJECT

  public:
    explicit LengthEdit(core::LengthUnit unit, QWidget* parent = nullptr);

    void setMillimetres(double millimetres);
    /// Nothing while it is blank or no number.
    [[nodiscard]] std::optional<double> millimetres() const;
    /// A sentence when millimetres() is empty, else an empty text; `field` names it as the label does.
    [[nodiscard]] QString fault(const QString& field) const;

  private:
    core::LengthUnit unit_;
};

}  // namespace desktop
