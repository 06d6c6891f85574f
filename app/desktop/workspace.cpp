// SPDX-License-Identifier: MIT
#include "app/desktop/workspace.h"

#include <QDateTime>
#include <algorithm>
#include <cassert>
#include <iterator>
#include <unordered_set>
#include <utility>

namespace desktop {

Workspace::Workspace(db::Clock clock, std::string author, QObject* parent)
    : QObject(parent), clock_(std::move(clock)), author_(std::move(author)) {
    dayLastSeen_ = today();
}

Workspace::~Workspace() = default;

bool Workspace::open(const std::filesystem::path& file) {
    return take([&] { return db::Logbook::open(file, {.clock = clock_, .author = author_, .asWindow = true}); });
}

bool Workspace::create(const std::filesystem::path& file, const core::LogbookFacts& facts) {
    return take(
        [&] { return db::Logbook::create(file, facts, {.clock = clock_, .author = author_, .asWindow = true}); });
}

void Workspace::use(db::Logbook logbook) {
    logbook_.emplace(std::move(logbook));
    forgetWhatWasRead();
    emit logbookReplaced();
}

void Workspace::close() {
    logbook_.reset();
    forgetWhatWasRead();
    emit logbookReplaced();
}

void Workspace::forgetWhatWasRead() {
    shelves_.reset();
    lines_.forget();
}

bool Workspace::take(const std::function<db::Logbook()>& opening) {
    std::optional<db::Logbook> opened;
    openingFault_ = guarded([&] { opened.emplace(opening()); });
    if (!opened) return false;
    use(std::move(*opened));
    return true;
}

db::Logbook& Workspace::logbook() {
    assert(logbook_);
    return *logbook_;
}

const db::Logbook& Workspace::logbook() const {
    assert(logbook_);
    return *logbook_;
}

bool Workspace::isReadOnly() const {
    return !logbook_ || logbook_->isReadOnly();
}

const core::Shelves& Workspace::shelves() const {
    if (!shelves_) shelves_ = logbook().shelves();
    return *shelves_;
}

const std::vector<core::BatchLine>& Workspace::batchLines() const {
    return lines_.of(logbook());
}

std::vector<core::BatchLine> Workspace::batchLinesOf(const std::vector<core::BatchId>& batches) const {
    const std::unordered_set<core::BatchId> wanted(batches.begin(), batches.end());
    std::vector<core::BatchLine> found;
    std::ranges::copy_if(batchLines(), std::back_inserter(found),
                         [&](const core::BatchLine& line) { return wanted.contains(line.batch.id); });
    return found;
}

core::Date Workspace::today() const {
    const QDate day = QDateTime::fromSecsSinceEpoch(clock_().time_since_epoch().count()).date();
    return core::Date{std::chrono::year{day.year()}, std::chrono::month{static_cast<unsigned>(day.month())},
                      std::chrono::day{static_cast<unsigned>(day.day())}};
}

Outcome Workspace::run(const Edit& edit) {
    Outcome outcome;
    const bool worldHeld = attempt([&](db::Logbook& logbook) {
        core::Result<db::Changes> result = edit(logbook);
        outcome.isDone = result.has_value();
        if (result)
            outcome.changes = *result;
        else
            outcome.refusals = result.error();
    });
    outcome.isDone = outcome.isDone && worldHeld;
    if (outcome.isDone) report(outcome.changes);
    return outcome;
}

bool Workspace::attempt(const std::function<void(db::Logbook&)>& work) {
    return attemptWithout([&] { work(logbook()); });
}

bool Workspace::attemptWithout(const std::function<void()>& work) {
    const QString fault = guarded(work);
    if (fault.isEmpty()) return true;
    emit failed(fault);
    return false;
}

QString Workspace::guarded(const std::function<void()>& work) {
    try {
        work();
    } catch (const db::LogbookError& error) {
        return QString::fromUtf8(error.what());
    }
    return {};
}

bool Workspace::undo() {
    const QString words = wordsToUndo();
    std::optional<db::Changes> changes;
    if (!attempt([&](db::Logbook& logbook) { changes = logbook.undo(); }) || !changes) return false;
    report(*changes);
    emit takenBack(words);
    return true;
}

bool Workspace::redo() {
    const QString words = wordsToRedo();
    std::optional<db::Changes> changes;
    if (!attempt([&](db::Logbook& logbook) { changes = logbook.redo(); }) || !changes) return false;
    report(*changes);
    emit doneAgain(words);
    return true;
}

QString Workspace::wordsToUndo() const {
    return logbook_ ? QString::fromStdString(logbook_->wordsToUndo().value_or("")) : QString();
}

QString Workspace::wordsToRedo() const {
    return logbook_ ? QString::fromStdString(logbook_->wordsToRedo().value_or("")) : QString();
}

void Workspace::lookOutside() {
    if (!logbook_) return;
    bool changedOutside = false;
    attempt([&](db::Logbook& logbook) { changedOutside = logbook.hasChangedOutside(); });
    const bool isNewDay = std::exchange(dayLastSeen_, today()) != today();
    if (!changedOutside && !isNewDay) return;
    forgetWhatWasRead();
    emit logbookReplaced();
    if (changedOutside) emit changedOutsideSeen();
}

void Workspace::report(const db::Changes& changes) {
    if (changes.historyNumber == 0) return;
    shelves_.reset();
    lines_.touch(changes.batches);
    emit logbookChanged(changes);
}

}  // namespace desktop
