// SPDX-License-Identifier: MIT
// A field for the length from which a root counts, in the grower's unit; kept in whole millimetres.
#pragma once

#include <QLineEdit>
#include <optional>

#include "core/units/display_units.h"

namespace desktop {

class RootLengthEdit : public QLineEdit {
    Q_OBJECT

  public:
    explicit RootLengthEdit(QWidget* parent = nullptr);

    void setLength(int millimetres, core::LengthUnit unit);
    /// Nothing while it is blank, no number or out of range.
    [[nodiscard]] std::optional<int> millimetres() const;
    /// A sentence when millimetres() is empty, else an empty text.
    [[nodiscard]] QString fault() const;

  private:
    core::LengthUnit unit_{};
};

}  // namespace desktop
