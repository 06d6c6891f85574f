// SPDX-License-Identifier: MIT
#include "app/desktop/readings/reading_dialog.h"

#include <QApplication>
#include <QDialogButtonBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScreen>
#include <QScrollArea>
#include <QVBoxLayout>
#include <algorithm>
#include <map>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/readings/moment_edit.h"
#include "app/desktop/readings/station_line.h"
#include "app/desktop/widgets/date_edit.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/plot/local_time.h"
#include "app/plot/readings_text.h"
#include "core/climate/band_warning.h"

namespace desktop {

namespace {

std::vector<core::Station> stationsInUse(const core::Shelves& shelves) {
    std::vector<core::Station> stations;
    std::ranges::copy_if(shelves.stations, std::back_inserter(stations),
                         [](const core::Station& station) { return !station.isRetired; });
    std::ranges::stable_sort(stations, {}, &core::Station::walkingOrder);
    return stations;
}

std::vector<core::Station> onlyStation(const core::Shelves& shelves, core::StationId id) {
    const core::Station* station = core::find(shelves.stations, id);
    return station == nullptr ? std::vector<core::Station>() : std::vector<core::Station>{*station};
}

/// "10:42: EC 0.60 mS/cm, pH 6.0; topped up"
QString savedText(const db::StationVisit& visit, core::Moment at, const core::DisplayUnits& units) {
    QStringList parts;
    if (!visit.readings.empty()) parts << plot::readingsInWords(visit.readings, units);
    for (const core::Care& care : visit.care) parts << plot::careText(care.kind);
    return ReadingDialog::tr("Saved, %1: %2", "hour, what").arg(plot::timeText(at), parts.join(QStringLiteral("; ")));
}

}  // namespace

ReadingDialog::ReadingDialog(const PageContext& context, QWidget* parent) : QDialog(parent), context_(context) {
    build(stationsInUse(context.workspace.shelves()));
}

ReadingDialog::ReadingDialog(const PageContext& context, core::StationId station, QWidget* parent)
    : QDialog(parent), context_(context) {
    build(onlyStation(context.workspace.shelves(), station));
}

void ReadingDialog::build(const std::vector<core::Station>& stations) {
    setObjectName(QStringLiteral("readingDialog"));
    setWindowTitle(tr("New reading"));
    at_ = new MomentEdit(context_.workspace.today(), context_.workspace.clock()());
    auto* atLabel = new QLabel(tr("Read &at"));
    atLabel->setBuddy(at_->day()->line());
    atFault_ = new FaultLabel;
    auto* hint = quietLabel(QStringLiteral("readingHint"));
    hint->setText(stations.empty()
                      ? tr("There are no stations yet: the first session makes one.")
                      : tr("Enter goes from figure to figure and, after a line's last one, keeps the line and goes on. "
                           "Leave blank what was not read."));
    unsaved_ = new FaultLabel;
    auto* buttons = new QDialogButtonBox(this);
    done_ = buttons->addButton(tr("&Done"), QDialogButtonBox::AcceptRole);
    done_->setObjectName(QStringLiteral("readingsDone"));
    done_->setAutoDefault(false);
    connect(buttons, &QDialogButtonBox::accepted, this, &ReadingDialog::saveAll);
    auto* times = new QHBoxLayout;
    times->addWidget(atLabel);
    times->addWidget(at_, 1);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(hint);
    layout->addLayout(times);
    layout->addWidget(atFault_);
    layout->addWidget(makeLines(stations), 1);
    layout->addWidget(unsaved_);
    layout->addWidget(buttons);
    if (lines_.empty())
        done_->setFocus();
    else
        lines_.front()->begin();
}

QWidget* ReadingDialog::makeLines(const std::vector<core::Station>& stations) {
    std::map<std::int64_t, LastReadings> last;
    std::vector<core::Reading> newest;
    context_.workspace.attempt([&](db::Logbook& logbook) {
        newest = core::newestOf(logbook.newestReadings(), logbook.newestLoggerValues());
        for (const core::Reading& reading : newest) last[reading.station.value][reading.quantity] = reading.value;
    });
    const core::Shelves& shelves = context_.workspace.shelves();
    const ReadingManner manner(shelves);
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(0, 0, 0, 0);
    for (const core::Station& station : stations) {
        const LastReadings& before = last[station.id.value];
        auto* line = new StationLine(station, quantitiesAt(station, before, shelves), before, manner);
        line->setLast(lastInWords(newest, station.id, manner.units, context_.workspace.clock()()));
        connect(line, &StationLine::ended, this, [this, line] { end(*line); });
        layout->addWidget(line);
        lines_.push_back(line);
    }
    layout->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setWidget(content);
    // All of a line side by side where the screen has the room; else it goes on below.
    const QSize room = screen()->availableSize() * 9 / 10;
    const int wide = std::min(room.width(), content->sizeHint().width() + fontMetrics().height() * 2);
    const int wanted = content->layout()->heightForWidth(wide) + fontMetrics().height();
    scroll->setMinimumSize(wide, std::min({wanted, room.height() / 2, fontMetrics().height() * 26}));
    // Enter moves the focus past the edge of what is seen, which the area follows by itself for Tab only.
    connect(qApp, &QApplication::focusChanged, scroll, [scroll](QWidget*, QWidget* now) {
        if (now != nullptr && scroll->isAncestorOf(now)) scroll->ensureWidgetVisible(now);
    });
    return scroll;
}

void ReadingDialog::end(StationLine& line) {
    if (!line.isBlank() && !save(line)) return;
    goOnAfter(line);
}

bool ReadingDialog::save(StationLine& line) {
    atFault_->setFault({});
    if (!line.confirm()) return false;
    // Untouched, the moment is now: a round takes its time.
    const core::Moment now = context_.workspace.clock()();
    const std::optional<core::Moment> at = at_->isTouched() ? at_->moment() : now;
    if (!at) {
        atFault_->setFault(at_->fault());
        at_->day()->line()->setFocus();
        return false;
    }
    const db::StationVisit visit = line.visit(*at);
    const Outcome outcome =
        context_.workspace.run([&](db::Logbook& logbook) { return db::keepVisit(logbook, visit, now); });
    if (!outcome.isDone) {
        if (!outcome.refusals.empty()) line.showFault(sentencesOf(outcome.refusals));
        return false;
    }
    line.setSaved(savedText(visit, *at, context_.workspace.shelves().facts.units));
    unsaved_->setFault({});
    hasWarned_ = false;
    return true;
}

void ReadingDialog::goOnAfter(const StationLine& line) {
    const auto found = std::ranges::find(lines_, &line);
    if (found == lines_.end() || std::next(found) == lines_.end()) return done_->setFocus(Qt::TabFocusReason);
    (*std::next(found))->begin();
}

void ReadingDialog::saveAll() {
    for (StationLine* line : lines_)
        if (!line->isBlank() && !save(*line)) return;
    accept();
}

void ReadingDialog::reject() {
    const bool isAllKept = std::ranges::all_of(lines_, [](const StationLine* line) { return line->isBlank(); });
    if (isAllKept || hasWarned_) return QDialog::reject();
    hasWarned_ = true;
    unsaved_->setFault(tr("What is typed is not kept yet. Enter or Done keeps it; Esc again drops it."));
}

}  // namespace desktop
