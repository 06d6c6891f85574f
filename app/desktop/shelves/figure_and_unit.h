// SPDX-License-Identifier: MIT
// A figure and what it counts, side by side as one field of a form: "200 cuttings", "5 years", "20 minutes for each session".
#pragma once

#include <QWidget>
#include <vector>

class QComboBox;
class QLineEdit;

namespace desktop {

class FigureAndUnit : public QWidget {
    Q_OBJECT

  public:
    struct Unit {
        QString text;
        int value{};
    };

    /// `name` is what a screen reader says of the figure; of the unit it says "Lasts: of what".
    FigureAndUnit(const QString& name, const QString& objectName, const std::vector<Unit>& units,
                  QWidget* parent = nullptr);

    void set(const QString& figure, int unit);
    [[nodiscard]] QString figure() const;
    [[nodiscard]] int unit() const;
    [[nodiscard]] QLineEdit* line() const { return line_; }

  signals:
    void edited();

  private:
    QLineEdit* line_;
    QComboBox* unit_;
};

}  // namespace desktop
