// SPDX-License-Identifier: MIT
// What to compare, and the answer. The records are read and the sums run in the background; a newer question stops the older. No widgets.
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/background/latest_answer.h"
#include "app/desktop/background/read_beside.h"
#include "app/desktop/widgets/choice_box.h"
#include "core/comparison/comparison.h"

namespace report {
struct Sheet;
}

namespace desktop {

class Workspace;

struct HeadToHeadView {
    std::vector<Choice<core::PlantId>> plants;  // those with batches, without "all plants"
    std::vector<Choice<core::TrialId>> trials;
    std::shared_ptr<const core::Comparison>
        comparison;  // of the question that stands now, or the one before while isWorking
    bool isWorking{};
    bool isReading{};  // isWorking, and the records aren't there yet
    bool isStopped{};  // the question that stands has no answer, since somebody stopped the work
    QString horizon;   // "Decided at day 42: the largest usual limit of these plants."
    QString fault;     // why there is no answer
};

class HeadToHeadModel : public QObject {
    Q_OBJECT

  public:
    explicit HeadToHeadModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] const HeadToHeadView& view() const { return view_; }
    [[nodiscard]] const core::ComparisonQuestion& question() const { return question_; }

    // Each asks again.
    void chooseFactor(core::Factor factor);
    void choosePlant(core::PlantId plant);
    void chooseTrial(core::TrialId trial);
    void setHorizon(std::optional<int> day);
    void setLevel(std::optional<double> level);
    void setInterval(std::optional<core::RateInterval> interval);
    /// "As good as, within": a share between 0 and 1, or not asked.
    void setMargin(std::optional<double> margin);

    /// Nobody looks: changes of the logbook wait until somebody does.
    void setWatched(bool isWatched);
    /// Gives up the work on the question that stands; what was shown before stays.
    void stop();
    /// Takes it up again.
    void workItOut();
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

  signals:
    void viewChanged();

  private:
    struct WhatIsRead {
        std::vector<core::BatchRecord> records;
        core::ConditionsOnRecord conditions;
    };
    struct Copies {
        core::Shelves shelves;
        WhatIsRead read;
    };

    void forget();
    void startAfresh();
    void readChoices();
    void ask();
    void readRecords();
    void takeRecords(WhatIsRead read);
    void workOut();
    void fail();
    void tell(const core::Result<core::Comparison>& answer);

    Workspace& workspace_;
    HeadToHeadView view_;
    core::ComparisonQuestion question_;
    std::shared_ptr<const Copies> copies_;  // read once, until something changes
    bool isWatched_{};
    bool isStale_{true};
    ReadBeside<WhatIsRead> reading_{workspace_, this};
    LatestAnswer<core::Result<core::Comparison>> sums_{this};
};

}  // namespace desktop
