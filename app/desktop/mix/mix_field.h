// SPDX-License-Identifier: MIT
// A field for one figure of a mix in the grower's unit; kept in the one that core sums in. Nothing typed is thrown away.
#pragma once

#include <QLineEdit>
#include <optional>

#include "core/units/display_units.h"

namespace desktop {

class MixField : public QLineEdit {
    Q_OBJECT

  public:
    /// Auxin is typed in mg/L, or in per cent with the sign behind it. Count is a whole number.
    enum class Kind { Figure, Count, Volume, PerVolume, Ec, Length, Auxin };

    MixField(Kind kind, const core::DisplayUnits& units, QWidget* parent = nullptr);

    [[nodiscard]] bool isBlank() const { return text().trimmed().isEmpty(); }
    /// Nothing while it is blank or can't be read.
    [[nodiscard]] std::optional<double> stored() const;
    void setStored(double value);
    /// A sentence when it can't be read, else an empty text; `field` names it as the label does.
    [[nodiscard]] QString fault(const QString& field) const;
    /// The unit that stands behind it: "L"; empty where it has none of its own.
    [[nodiscard]] QString unit() const;

    /// As it can be set again whatever the units are then.
    [[nodiscard]] QString kept() const;
    void restore(const QString& kept);

  private:
    Kind kind_;
    core::DisplayUnits units_;
};

/// As few digits as give the figure, with the decimal sign that people here write.
[[nodiscard]] QString typedText(double figure);

}  // namespace desktop
