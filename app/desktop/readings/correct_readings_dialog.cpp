// SPDX-License-Identifier: MIT
#include "app/desktop/readings/correct_readings_dialog.h"

#include <QCheckBox>
#include <QDialogButtonBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/readings/reading_field.h"
#include "app/desktop/readings/time_entry.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/plot/local_time.h"
#include "app/plot/number_text.h"
#include "app/plot/quantity_text.h"

namespace desktop {

CorrectReadingsDialog::CorrectReadingsDialog(std::vector<core::Reading> readings, const QString& station,
                                             const ReadingManner& manner, Keep keep, QWidget* parent)
    : QDialog(parent), keep_(std::move(keep)), fault_(new FaultLabel) {
    setObjectName(QStringLiteral("correctReadingsDialog"));
    setWindowTitle(
        tr("Readings at %1, %2", "station, day").arg(station, plot::dateText(plot::localDay(readings.front().readAt))));
    auto* content = new QWidget;
    auto* grid = new QGridLayout(content);
    for (const core::Reading& reading : readings) addRow(*grid, reading, manner);
    grid->setColumnStretch(3, 1);
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(content);
    scroll->setMinimumWidth(content->sizeHint().width() + fontMetrics().height() * 2);
    scroll->setMinimumHeight(std::min(content->sizeHint().height(), fontMetrics().height() * 22));
    // Before the buttons are made: else Tab leaves out the first of them.
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(scroll, 1);
    layout->addWidget(fault_);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    auto* agreed = buttons->addButton(tr("Save readings"), QDialogButtonBox::AcceptRole);
    agreed->setObjectName(QStringLiteral("saveReadings"));
    agreed->setDefault(true);
    connect(buttons, &QDialogButtonBox::accepted, this, &CorrectReadingsDialog::agree);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    layout->addWidget(buttons);
    rows_.front().field->line()->setFocus();
    rows_.front().field->line()->selectAll();
}

void CorrectReadingsDialog::addRow(QGridLayout& grid, const core::Reading& reading, const ReadingManner& manner) {
    const auto place = static_cast<int>(rows_.size());
    const QString name = plot::quantityName(reading.quantity);
    auto* hour = new QLineEdit(hourText(plot::localMinute(reading.readAt)));
    hour->setObjectName(QStringLiteral("hour%1").arg(place));
    hour->setAccessibleName(tr("Hour of %1").arg(name));
    hour->setMaxLength(5);
    hour->setFixedWidth(fontMetrics().horizontalAdvance(QStringLiteral("00:00")) + 2 * fontMetrics().height());
    auto* field = new ReadingField(reading.quantity, manner, {}, name);
    field->setStored(reading.value);
    field->line()->setObjectName(QStringLiteral("figure%1").arg(place));
    auto* isGone = new QCheckBox(tr("delete"));
    isGone->setObjectName(QStringLiteral("gone%1").arg(place));
    isGone->setAccessibleName(tr("Delete %1").arg(name));
    connect(isGone, &QCheckBox::toggled, field, &QWidget::setDisabled);
    connect(isGone, &QCheckBox::toggled, hour, &QWidget::setDisabled);
    grid.addWidget(hour, place, 0);
    grid.addWidget(field, place, 1, Qt::AlignRight);
    grid.addWidget(isGone, place, 2);
    rows_.push_back({reading, hour, field, isGone, hour->text(), field->line()->text()});
}

bool CorrectReadingsDialog::take(Row& row, db::StationVisit& visit) {
    if (row.isGone->isChecked()) {
        visit.gone.push_back(row.reading);
        return true;
    }
    core::Reading changed = row.reading;
    if (row.hour->text() != row.startHour) {
        const std::optional<int> minute = minuteFrom(row.hour->text());
        if (!minute) {
            fault_->setFault(tr("The hour is “%1”; 0:00 to 23:59 is allowed.").arg(row.hour->text()));
            row.hour->setFocus();
            return false;
        }
        changed.readAt = plot::momentOf(plot::localDay(row.reading.readAt), *minute);
    }
    if (row.field->line()->text() != row.startFigure) {
        if (row.field->isBlank())
            fault_->setFault(
                tr("%1 is blank; type a figure or choose “delete”.").arg(plot::quantityName(row.reading.quantity)));
        else if (!row.field->confirm())
            fault_->setFault(row.field->sentence());
        if (!fault_->fault().isEmpty()) {
            row.field->line()->setFocus();
            return false;
        }
        changed.value = *row.field->stored();
    }
    if (changed != row.reading) visit.readings.push_back(changed);
    return true;
}

void CorrectReadingsDialog::agree() {
    fault_->setFault({});
    db::StationVisit visit{.station = rows_.front().reading.station, .readings = {}, .care = {}, .gone = {}};
    for (Row& row : rows_)
        if (!take(row, visit)) return;
    if (visit.readings.empty() && visit.gone.empty()) return accept();
    const Outcome outcome = keep_(visit);
    if (outcome.isDone) return accept();
    fault_->setFault(sentencesOf(outcome.refusals));
}

}  // namespace desktop
