// SPDX-License-Identifier: MIT
// One batch: what the logbook has of it, what the records say of it, and the edits that a person can make. No widgets.
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/background/latest_answer.h"
#include "app/desktop/workspace.h"
#include "core/comparison/batch_summary.h"
#include "core/records.h"

namespace report {
struct Sheet;
}

namespace desktop {

struct NamedText {
    QString name;
    QString text;
};

struct BatchView {
    core::BatchRecord record;
    core::Session session;
    QString code;
    QString plant;  // full name
    QString state;  // "open", "closed on 14 March 2026: ..."
    bool isClosedByHand{};
    bool hasUndecided{};
    std::vector<NamedText> facts;
    // Known a moment later than the rest: the sums run in the background.
    std::shared_ptr<const core::BatchSummary> summary;
    QString strikeRate;
    QString past;
    QString losses;
};

class BatchPageModel : public QObject {
    Q_OBJECT

  public:
    explicit BatchPageModel(Workspace& workspace, QObject* parent = nullptr);

    /// False when there is no such batch.
    bool show(core::BatchId batch);
    void clear();
    [[nodiscard]] bool hasBatch() const { return view_.has_value(); }
    /// Contract: hasBatch().
    [[nodiscard]] const BatchView& view() const { return *view_; }
    [[nodiscard]] const core::Shelves& shelves() const { return workspace_.shelves(); }
    [[nodiscard]] core::Date today() const { return workspace_.today(); }
    /// Empty while the sums are still running.
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

    // Edits of the batch that is shown.
    Outcome record(const core::Check& check);
    Outcome change(const core::Check& check);
    Outcome remove(core::CheckId check);
    Outcome change(const core::Batch& batch);
    Outcome change(const core::Session& session);
    Outcome close(core::Date on, const QString& reason);
    Outcome reopen();
    Outcome remove();
    /// How many batches the session has, this one included.
    [[nodiscard]] int batchesOfSession() const;

  signals:
    void viewChanged();
    void summaryChanged();
    /// The batch is gone from the logbook.
    void gone();

  private:
    void refresh();
    void describe();
    void addFact(const QString& name, const QString& text);
    void askForSummary();
    void tellSummary(std::shared_ptr<const core::BatchSummary> summary);

    Workspace& workspace_;
    core::BatchId batch_;
    std::optional<BatchView> view_;
    LatestAnswer<std::shared_ptr<const core::BatchSummary>> sums_{this};
};

}  // namespace desktop
