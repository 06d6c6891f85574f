// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_events.h"

#include <QCoreApplication>
#include <QStringList>
#include <algorithm>
#include <tuple>

#include "app/desktop/batches/minutes_entry.h"
#include "app/plot/local_time.h"
#include "app/plot/money_text.h"
#include "app/plot/number_text.h"
#include "app/plot/quantity_text.h"
#include "app/plot/readings_text.h"

namespace desktop {

namespace {

struct EventWords {
    Q_DECLARE_TR_FUNCTIONS(BatchEvents)
};

QString lostText(const core::Check& check, const core::Shelves& shelves) {
    QStringList parts;
    for (const core::Loss& loss : check.losses) {
        const core::LossCause* cause = core::find(shelves.lossCauses, loss.cause);
        const QString name = cause == nullptr ? EventWords::tr("cause not known") : QString::fromStdString(cause->name);
        parts << EventWords::tr("+%1 lost (%2)", "2, rot").arg(plot::countText(loss.count), name);
    }
    return parts.join(EventWords::tr(", "));
}

QString foundText(const core::Check& check, const core::Shelves& shelves) {
    QStringList parts;
    if (check.rooted > 0) parts << EventWords::tr("+%1 rooted").arg(plot::countText(check.rooted));
    if (!check.losses.empty()) parts << lostText(check, shelves);
    if (check.withdrawn > 0) parts << EventWords::tr("+%1 withdrawn").arg(plot::countText(check.withdrawn));
    if (parts.isEmpty()) parts << EventWords::tr("nothing new");
    if (!check.findings.empty()) parts << EventWords::tr("looked at hole by hole");
    return parts.join(EventWords::tr(", "));
}

/// "9 potted on, 1 lost after potting; 8 usable so far"
QString pottedText(const core::Potting& potting, const core::PottedTally& soFar) {
    QStringList parts;
    if (potting.potted > 0) parts << EventWords::tr("+%1 potted on").arg(plot::countText(potting.potted));
    if (potting.lost > 0) parts << EventWords::tr("+%1 lost after potting").arg(plot::countText(potting.lost));
    return EventWords::tr("%1; usable %2", "+9 potted on; usable 89 % (8 of 9)")
        .arg(parts.join(EventWords::tr(", ")), plot::percentText(soFar.usable(), soFar.potted));
}

class EventMaker {
  public:
    EventMaker(const core::BatchRecord& record, const plot::BatchLife& life, const std::vector<core::KeptMix>& mixes,
               const core::Shelves& shelves, std::optional<EventKind> only)
        : record_(record), life_(life), mixes_(mixes), shelves_(shelves), only_(only) {}

    std::vector<BatchEvent> make(const core::Session& session) {
        if (wants(EventKind::Stuck)) addStuck(session);
        if (wants(EventKind::Check)) addChecks();
        if (only_ == EventKind::Readings)
            addReadingsOneByOne();
        else if (wants(EventKind::Readings))
            addReadingsByDay();
        if (wants(EventKind::Care)) addCare();
        if (wants(EventKind::Mix)) addMixes();
        if (wants(EventKind::Photo)) addPhotos();
        if (wants(EventKind::Expense)) addExpenses();
        if (wants(EventKind::Potted)) addPottings();
        if (wants(EventKind::Closed)) addClosed();
        std::stable_sort(events_.begin(), events_.end(), [](const BatchEvent& one, const BatchEvent& other) {
            return std::tie(one.day, one.kind) < std::tie(other.day, other.kind);
        });
        return std::move(events_);
    }

  private:
    bool wants(EventKind kind) const { return !only_ || *only_ == kind; }

    BatchEvent& add(EventKind kind, core::Date day, const QString& what, const std::string& note, std::int64_t id) {
        BatchEvent event;
        event.kind = kind;
        event.day = day;
        event.what = what;
        event.note = QString::fromStdString(note).simplified();
        event.id = id;
        return events_.emplace_back(std::move(event));
    }

    void addStuck(const core::Session& session) {
        const core::Batch& batch = record_.batch;
        add(EventKind::Stuck, batch.stuckOn,
            life_.station.isEmpty() ? plot::cuttingsText(batch.stuck)
                                    : EventWords::tr("%1 at %2", "24 cuttings, a station")
                                          .arg(plot::cuttingsText(batch.stuck), life_.station),
            session.note, batch.session.value);
    }

    void addChecks() {
        for (const core::Check& check : record_.checks)
            add(EventKind::Check, check.checkedOn, foundText(check, shelves_), check.note, check.id.value).after =
                core::tallyOf(record_.batch, record_.checks, check.checkedOn);
    }

    void addReadingsByDay() {
        std::size_t first = 0;
        while (first < life_.readings.size()) {
            const core::Date day = plot::localDay(life_.readings[first].readAt);
            std::size_t end = first;
            while (end < life_.readings.size() && plot::localDay(life_.readings[end].readAt) == day) ++end;
            addReadings({life_.readings.begin() + static_cast<std::ptrdiff_t>(first),
                         life_.readings.begin() + static_cast<std::ptrdiff_t>(end)},
                        day);
            first = end;
        }
    }

    void addReadingsOneByOne() {
        for (const core::Reading& reading : life_.readings) addReadings({reading}, plot::localDay(reading.readAt));
    }

    void addReadings(std::vector<core::Reading> readings, core::Date day) {
        QStringList notes;
        for (const core::Reading& reading : readings) {
            const QString note = QString::fromStdString(reading.note).simplified();
            if (!note.isEmpty() && !notes.contains(note)) notes << note;
        }
        BatchEvent& event = add(EventKind::Readings, day, plot::readingsInWords(readings, shelves_.facts.units), {},
                                readings.front().id.value);
        event.note = notes.join(EventWords::tr("; "));
        if (readings.front().readAt == readings.back().readAt) event.time = plot::timeText(readings.front().readAt);
        event.readings = std::move(readings);
    }

    void addCare() {
        for (const core::Care& care : life_.care)
            add(EventKind::Care, plot::localDay(care.doneAt), plot::careWithVolume(care, shelves_.facts.units),
                care.note, care.id.value)
                .time = plot::timeText(care.doneAt);
    }

    void addMixes() {
        for (const core::KeptMix& mix : mixes_)
            add(EventKind::Mix, plot::localDay(mix.madeAt), QString::fromStdString(mix.title), {}, mix.id.value).time =
                plot::timeText(mix.madeAt);
    }

    void addPhotos() {
        for (const core::Photo& photo : life_.photos)
            add(EventKind::Photo, photo.takenOn,
                photo.caption.empty() ? EventWords::tr("photo without caption") : QString::fromStdString(photo.caption),
                {}, photo.id.value);
    }

    void addExpenses() {
        const std::string& currency = shelves_.facts.currency;
        for (const core::Expense& expense : life_.expenses)
            add(EventKind::Expense, expense.spentOn, spentText(expense, currency), {}, expense.id.value);
        for (const core::Expense& expense : life_.sharedExpenses)
            add(EventKind::Expense, expense.spentOn,
                EventWords::tr("%1 (shared by its session)", "an expense").arg(spentText(expense, currency)), {},
                expense.id.value);
    }

    void addPottings() {
        std::vector<core::Potting> soFar;
        for (const core::Potting& potting : life_.pottings) {
            soFar.push_back(potting);
            add(EventKind::Potted, potting.countedOn, pottedText(potting, core::pottedTallyOf(soFar)), potting.note,
                potting.id.value);
        }
    }

    void addClosed() {
        const core::Batch& batch = record_.batch;
        if (batch.closedOn) {
            add(EventKind::Closed, *batch.closedOn, QString::fromStdString(batch.closeReason), {}, batch.id.value);
            return;
        }
        const core::Tally tally = core::tallyOf(batch, record_.checks);
        if (tally.undecided() == 0 && !record_.checks.empty())
            add(EventKind::Closed, record_.checks.back().checkedOn, EventWords::tr("nothing undecided"), {}, 0);
    }

    const core::BatchRecord& record_;
    const plot::BatchLife& life_;
    const std::vector<core::KeptMix>& mixes_;
    const core::Shelves& shelves_;
    std::optional<EventKind> only_;
    std::vector<BatchEvent> events_;
};

}  // namespace

bool BatchEvent::isSameAs(const BatchEvent& other) const {
    return kind == other.kind && (kind == EventKind::Readings ? day == other.day : id == other.id);
}

QString spentText(const core::Expense& expense, const std::string& currency) {
    QStringList parts;
    if (expense.hundredths > 0 || !expense.minutes) parts << plot::moneyText(expense.hundredths, currency);
    if (expense.minutes) parts << EventWords::tr("%1 min", "minutes of work").arg(minutesShown(expense.minutes));
    return EventWords::tr("%1: %2", "what for, how much")
        .arg(QString::fromStdString(expense.what), parts.join(EventWords::tr(", ")));
}

QString nameOf(EventKind kind) {
    switch (kind) {
        case EventKind::Stuck:
            return EventWords::tr("stuck");
        case EventKind::Check:
            return EventWords::tr("check");
        case EventKind::Readings:
            return EventWords::tr("readings");
        case EventKind::Care:
            return EventWords::tr("care");
        case EventKind::Mix:
            return EventWords::tr("mix");
        case EventKind::Photo:
            return EventWords::tr("photo");
        case EventKind::Expense:
            return EventWords::tr("expense");
        case EventKind::Potted:
            return EventWords::tr("potted on");
        case EventKind::Closed:
            return EventWords::tr("closed");
    }
    return {};
}

std::vector<BatchEvent> eventsOf(const core::BatchRecord& record, const core::Session& session,
                                 const plot::BatchLife& life, const std::vector<core::KeptMix>& mixes,
                                 const core::Shelves& shelves, std::optional<EventKind> only) {
    return EventMaker(record, life, mixes, shelves, only).make(session);
}

}  // namespace desktop
