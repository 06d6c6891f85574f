// SPDX-License-Identifier: MIT
// A field for one reading: the figure in the grower's unit, the unit behind it. What looks like a slip is asked about once and kept when
// it is confirmed; what no meter shows is refused.
#pragma once

#include <QWidget>
#include <map>

#include "core/climate/reading_entry.h"
#include "core/records.h"

class QLabel;
class QLineEdit;

namespace desktop {

/// In which units readings are typed in this logbook, and where cuttings do well: what lies outside is asked about.
struct ReadingManner {
    explicit ReadingManner(const core::Shelves& shelves);

    core::DisplayUnits units;
    std::map<core::Quantity, std::optional<core::Band>> bands;
};

class ReadingField : public QWidget {
    Q_OBJECT

  public:
    /// `last` is what was read there before. `label` says what is typed here: a name, or a time and a name.
    ReadingField(core::Quantity quantity, const ReadingManner& manner, std::optional<double> last, const QString& label,
                 QWidget* parent = nullptr);

    [[nodiscard]] core::Quantity quantity() const { return quantity_; }
    [[nodiscard]] QLineEdit* line() const { return line_; }
    [[nodiscard]] bool isBlank() const;
    [[nodiscard]] std::optional<double> stored() const;
    /// Enter was pressed: true when it can be kept as it stands. False asks; the second time the answer stands.
    [[nodiscard]] bool confirm();
    /// Why confirm() said no; empty when it said yes.
    [[nodiscard]] QString sentence() const { return sentence_; }
    void setStored(double value);
    void clear();

  private:
    [[nodiscard]] core::ReadingEntry entry() const;

    core::Quantity quantity_;
    core::DisplayUnits units_;
    std::optional<core::Band> band_;
    std::optional<double> last_;
    QLineEdit* line_;
    QString askedAbout_;
    QString sentence_;
};

}  // namespace desktop
