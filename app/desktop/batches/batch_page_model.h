// SPDX-License-Identifier: MIT
// One batch: what the logbook has of it, what the records say of it, and the edits that a person can make. No widgets.
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/background/latest_answer.h"
#include "app/desktop/background/read_beside.h"
#include "app/desktop/batches/plant_records.h"
#include "app/desktop/workspace.h"
#include "app/plot/batch_life.h"
#include "app/report/batch_costs.h"
#include "core/comparison/batch_summary.h"
#include "core/records.h"
#include "db/actions/station_actions.h"

namespace report {
struct BatchEvents;
struct Sheet;
}  // namespace report

namespace desktop {

struct NamedText {
    QString name;
    QString text;
};

struct BatchView {
    core::BatchRecord record;
    core::Session session;
    plot::BatchLife life;
    std::vector<core::KeptMix> mixes;  // of its session and of its station while it stood there, by time
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
    // Known later still: all batches share in what they have in common.
    std::optional<report::WholeCost> cost;
    bool isCostKnown{};
    QString costs;
    QString costParts;  // and, as sentences, what is not in it
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
    [[nodiscard]] core::Moment now() const { return workspace_.clock()(); }
    /// Empty while the sums are still running, those of the costs too.
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

    // Edits of the batch that is shown.
    Outcome record(const core::Check& check);
    Outcome change(const core::Check& check);
    Outcome remove(core::CheckId check);
    Outcome change(const core::Batch& batch);
    Outcome change(const core::Session& session);
    /// With the minutes that it took: an expense of its own, which goes where it has none.
    Outcome change(const core::Session& session, const core::Expense& work);
    Outcome close(core::Date on, const QString& reason);
    Outcome reopen();
    Outcome remove();
    Outcome keepNote(const QString& note);
    Outcome keep(const db::StationVisit& visit);
    Outcome remove(const core::Care& care);
    Outcome remove(core::KeptMixId mix);
    Outcome keep(const core::Expense& expense);
    Outcome remove(const core::Expense& expense);
    Outcome keep(const core::Potting& potting);
    Outcome remove(const core::Potting& potting);
    /// Of whichever batch each names: another may be shown by the time that its picture is ready.
    Outcome add(std::vector<core::PhotoRecord> photos);
    Outcome change(const core::Photo& photo);
    Outcome remove(const core::Photo& photo);
    [[nodiscard]] core::ImageBytes imageOf(core::PhotoId photo) const;
    /// How many batches the session has, this one included.
    [[nodiscard]] int batchesOfSession() const;

  signals:
    void viewChanged();
    void summaryChanged();
    /// The batch is gone from the logbook.
    void gone();

  private:
    void refresh();
    [[nodiscard]] std::vector<core::KeptMix> mixesOf(const core::Batch& batch, core::Date until) const;
    void describe();
    [[nodiscard]] const report::BatchEvents& printedEvents() const;
    void addFact(const QString& name, const QString& text);
    void askForSummary();
    void tellSummary(std::shared_ptr<const core::BatchSummary> summary);
    void askForCost();
    void tellCost(std::optional<report::WholeCost> cost);
    void describeCost();

    Workspace& workspace_;
    core::BatchId batch_;
    std::optional<BatchView> view_;
    mutable std::shared_ptr<const report::BatchEvents> printed_;
    PlantRecords past_{workspace_};
    LatestAnswer<std::shared_ptr<const core::BatchSummary>> sums_{this};
    ReadBeside<std::optional<report::WholeCost>> costs_{workspace_, this};
};

}  // namespace desktop
