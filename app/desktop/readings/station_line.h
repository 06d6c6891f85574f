// SPDX-License-Identifier: MIT
// One station's line in the round of readings: its name, its figures in their own order, and beside them what was done to it. Enter goes
// from field to field; after the last figure, in the care or in the note it ends the line. Several figures typed into one field, "1.2 6.1
// 21", go to it and the fields behind it.
#pragma once

#include <QWidget>
#include <map>
#include <vector>

#include "app/desktop/readings/reading_field.h"
#include "core/records.h"
#include "db/actions/station_actions.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QToolButton;

namespace desktop {

class FaultLabel;
class WrappingRow;

/// What was read last at one station.
using LastReadings = std::map<core::Quantity, double>;

/// The same in words, with its age; empty where nothing was.
[[nodiscard]] QString lastInWords(const std::vector<core::Reading>& newest, core::StationId station,
                                  const core::DisplayUnits& units, core::Moment now);

class StationLine : public QWidget {
    Q_OBJECT

  public:
    StationLine(const core::Station& station, const std::vector<core::Quantity>& quantities, const LastReadings& last,
                const ReadingManner& manner, QWidget* parent = nullptr);

    [[nodiscard]] core::StationId station() const { return station_.id; }
    void begin();  // puts the focus on the first figure
    void setLast(const QString& words);
    [[nodiscard]] bool isBlank() const;
    /// True when all of it can be kept; else the first field in doubt has the focus and its sentence is shown.
    [[nodiscard]] bool confirm();
    /// What stands here as of `at`. Contract: confirm().
    [[nodiscard]] db::StationVisit visit(core::Moment at) const;
    void showFault(const QString& sentence);
    /// The line is in the logbook: it is blank again and says so.
    void setSaved(const QString& sentence);

  signals:
    void ended();

  protected:
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    void build();
    void addField(core::Quantity quantity);
    void addOffer();
    void fillOffer();
    void addCare();
    void goOn(QObject* from);
    /// Figures typed into one field go where they belong; 0 where there are more of them than fields.
    std::size_t spread(std::size_t from);
    bool confirm(ReadingField& field);

    core::Station station_;
    LastReadings last_;
    ReadingManner manner_;
    WrappingRow* row_{};
    std::vector<ReadingField*> fields_;
    QToolButton* more_{};
    QComboBox* care_{};
    QLineEdit* note_{};
    FaultLabel* fault_{};
    QLabel* saved_{};
    QLabel* lastWords_{};
};

/// What a station's line asks for: what was read there before, else what is usual for its method.
[[nodiscard]] std::vector<core::Quantity> quantitiesAt(const core::Station& station, const LastReadings& last,
                                                       const core::Shelves& shelves);

}  // namespace desktop
