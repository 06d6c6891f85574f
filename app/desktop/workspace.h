// SPDX-License-Identifier: MIT
// The logbook that the windows work on, and the one way in which they change it. A page reads through logbook(), edits
// through run(), and refreshes from logbookChanged(); nobody patches two places by hand.
//
//   const Outcome outcome = workspace.run([&](db::Logbook& logbook) { return db::changeBatch(logbook, draft,
//   workspace.today()); }); if (!outcome.isDone) marks.show(outcome.refusals);      // empty when the world failed: the
//   bar at the foot has said so already
//
// Here is one of the program's two catch sites of db::LogbookError: guarded().
#pragma once

#include <QObject>
#include <QString>
#include <filesystem>
#include <functional>
#include <optional>

#include "app/desktop/kept_lines.h"
#include "core/result.h"
#include "db/logbook.h"

namespace desktop {

/// What came of an edit: done; or refused, with every reason; or the world failed (no reasons, failed() was emitted).
struct [[nodiscard]] Outcome {
    bool isDone{};
    core::Refusals refusals;
    db::Changes changes;
};

class Workspace : public QObject {
    Q_OBJECT

  public:
    using Edit = std::function<core::Result<db::Changes>(db::Logbook&)>;

    /// `clock` says what time it is, in UTC; tests turn it. `author` goes into the history.
    explicit Workspace(db::Clock clock, std::string author = {}, QObject* parent = nullptr);
    ~Workspace() override;

    /// True when it is open afterwards. When not, openingFault() says why in a sentence and what was open before stays
    /// open.
    bool open(const std::filesystem::path& file);
    bool create(const std::filesystem::path& file, const core::LogbookFacts& facts);
    /// Takes over a logbook that is already open: tests and previews.
    void use(db::Logbook logbook);
    void close();
    [[nodiscard]] QString openingFault() const { return openingFault_; }

    [[nodiscard]] bool hasLogbook() const { return logbook_.has_value(); }
    /// Contract: hasLogbook().
    [[nodiscard]] db::Logbook& logbook();
    [[nodiscard]] const db::Logbook& logbook() const;
    [[nodiscard]] bool isReadOnly() const;
    /// The short lists, read once and kept until something changes. Contract: hasLogbook().
    [[nodiscard]] const core::Shelves& shelves() const;
    /// All batches with their counts, by date then code; read once, then kept up to date. Contract: hasLogbook().
    [[nodiscard]] const std::vector<core::BatchLine>& batchLines() const;
    /// Those of `batches` that there are, in the same order: what a page reads after logbookChanged().
    [[nodiscard]] std::vector<core::BatchLine> batchLinesOf(const std::vector<core::BatchId>& batches) const;

    [[nodiscard]] core::Date today() const;  // the local day
    [[nodiscard]] const db::Clock& clock() const { return clock_; }

    /// Runs an edit. Emits logbookChanged() when it was done and changed something.
    Outcome run(const Edit& edit);
    /// Runs anything else that the world can make fail (reading, export, backup): false when it did, and failed() was
    /// emitted.
    bool attempt(const std::function<void(db::Logbook&)>& work);
    bool attemptWithout(const std::function<void()>& work);  // the same with no logbook needed

    /// Everything that shows figures writes them anew: dates and numbers are written another way from now on.
    void showAnew() { emit logbookReplaced(); }

    bool undo();
    bool redo();
    [[nodiscard]] QString wordsToUndo() const;  // empty: nothing to undo
    [[nodiscard]] QString wordsToRedo() const;
    /// Call when a window gets the focus: emits logbookReplaced() when another process has changed the file,
    /// or when it is another day than at the last look.
    void lookOutside();

  signals:
    /// An action, undo or redo of ours was done. `changes.tables` and `changes.batches` say what to read again.
    void logbookChanged(const db::Changes& changes);
    /// After logbookChanged(), when it came from undo() or redo().
    void takenBack(const QString& words);
    void doneAgain(const QString& words);
    /// Another logbook, or none, or changes from outside: read everything again.
    void logbookReplaced();
    /// The world failed; the sentence is ready to show. The main window shows it in the bar at the foot.
    void failed(const QString& sentence);
    /// After logbookReplaced(), when that came from another process.
    void changedOutsideSeen();

  private:
    bool take(const std::function<db::Logbook()>& opening);
    void forgetWhatWasRead();
    void report(const db::Changes& changes);
    /// The catch site: an empty text, or what went wrong.
    static QString guarded(const std::function<void()>& work);

    db::Clock clock_;
    std::string author_;
    std::optional<db::Logbook> logbook_;
    mutable std::optional<core::Shelves> shelves_;
    mutable KeptLines lines_;
    QString openingFault_;
    core::Date dayLastSeen_{};
};

}  // namespace desktop
