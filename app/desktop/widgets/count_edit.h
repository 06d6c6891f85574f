// SPDX-License-Identifier: MIT
// A field for a whole number of cuttings: right-aligned, read by core's own rules (never by the locale), nothing typed
// is thrown away.
#pragma once

#include <QLineEdit>
#include <optional>

namespace desktop {

class CountEdit : public QLineEdit {
    Q_OBJECT

  public:
    explicit CountEdit(int least, int most, QWidget* parent = nullptr);

    void setRange(int least, int most);
    void setCount(std::optional<int> count);
    /// Nothing while it is blank, no whole number or out of range.
    [[nodiscard]] std::optional<int> count() const;
    /// A sentence when count() is empty, else an empty text; `field` names it as the label does.
    [[nodiscard]] QString fault(const QString& field) const;

  private:
    int least_;
    int most_;
};

}  // namespace desktop
