// SPDX-License-Identifier: MIT
// The trials of the logbook: how far each is, and of the chosen one the answer as soon as it is due. The sums run on copies in the
// background. No widgets.
#pragma once

#include <QObject>
#include <memory>
#include <vector>

#include "app/desktop/background/latest_answer.h"
#include "app/desktop/background/read_beside.h"
#include "app/desktop/workspace.h"
#include "core/result.h"
#include "core/trial/trial_progress.h"

namespace report {
struct Sheet;
}

namespace desktop {

class TrialRecords;

struct TrialRow {
    core::Trial trial;
    core::TrialProgress progress;
};

class TrialsModel : public QObject {
    Q_OBJECT

  public:
    explicit TrialsModel(Workspace& workspace, QObject* parent = nullptr);

    /// Under way first, then those to come, then those that are over; each by name.
    [[nodiscard]] const std::vector<TrialRow>& rows() const { return rows_; }
    void choose(core::TrialId trial);
    /// nullptr: none is chosen.
    [[nodiscard]] const TrialRow* chosen() const;
    /// Of the chosen one, once it is due and worked out.
    [[nodiscard]] const core::Comparison* result() const { return result_.get(); }
    [[nodiscard]] bool isWorking() const { return isReading_ || sums_.isWorking(); }
    /// Why there is no result though it is due; empty otherwise.
    [[nodiscard]] QString fault() const { return fault_; }

    /// Nobody looks: changes of the logbook wait until somebody does.
    void setWatched(bool isWatched);

    Outcome remove(core::TrialId trial);

    /// Of the chosen trial; nullptr where none is, or its result is still being worked out.
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;
    [[nodiscard]] std::shared_ptr<const report::Sheet> mapSheet() const;

  signals:
    void rowsChanged();
    /// What is shown of the chosen one: another, or it has changed, or its result has come.
    void chosenChanged();

  private:
    void forget();
    void readAgain();
    void askForResult();
    void workOut(const core::Trial& trial);
    void tell(const core::Result<core::Comparison>& answer);

    Workspace& workspace_;
    std::vector<TrialRow> rows_;
    core::TrialId chosen_{};
    std::shared_ptr<const TrialRecords> records_;  // read when a result is due, until something changes
    std::shared_ptr<const core::Comparison> result_;
    QString fault_;
    bool isWatched_{};
    bool isStale_{true};
    bool isReading_{};
    ReadBeside<std::shared_ptr<const TrialRecords>> reading_{workspace_, this};
    LatestAnswer<core::Result<core::Comparison>> sums_{this};
};

}  // namespace desktop
