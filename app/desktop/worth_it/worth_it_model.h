// SPDX-License-Identifier: MIT
// Is the dearer method worth it: what is asked, and the answer. Records, costs and sums come in the background; a newer question stops the
// older. No widgets.
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <optional>
#include <vector>

#include "app/desktop/background/latest_answer.h"
#include "app/desktop/background/read_beside.h"
#include "app/desktop/widgets/choice_box.h"
#include "core/money/pay_off.h"
#include "core/money/worth_it.h"

namespace report {
struct Sheet;
}

namespace desktop {

class Workspace;

struct WorthItState {
    std::vector<Choice<core::PlantId>> plants;    // those with batches, without "all plants"
    std::vector<Choice<core::MethodId>> methods;  // of the answer
    std::vector<int> years;                       // in which something was stuck, newest first
    std::shared_ptr<const core::Worth> worth;     // of the question that stands now, or the one before while isWorking
    int pair{-1};                                 // which of its pairs is shown; -1: it has none
    std::shared_ptr<const std::vector<core::ChanceAfter>> payOff;  // of the pair; nothing while it is worked out
    std::optional<double> priceOfADay;                             // of a day sooner, among the prices, today
    bool hasBatches{};
    bool isAnythingPriced{};
    bool isWorking{};
    bool isReading{};  // isWorking, and the records aren't there yet
    bool isStopped{};  // the question that stands has no answer, since somebody stopped the work
    QString horizon;   // "Decided at day 42: the largest usual limit of these plants."
    QString fault;     // why there is no answer
};

class WorthItModel : public QObject {
    Q_OBJECT

  public:
    explicit WorthItModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] const WorthItState& state() const { return state_; }
    [[nodiscard]] const core::WorthQuestion& question() const { return question_; }
    /// 0: any.
    [[nodiscard]] int year() const { return year_; }
    [[nodiscard]] bool hasLogbook() const;
    /// Contract: hasLogbook().
    [[nodiscard]] const core::Shelves& shelves() const;
    /// Contract: state().pair >= 0.
    [[nodiscard]] const core::WorthOfPair& pair() const;

    // Each asks again.
    void choosePlant(core::PlantId plant);
    void chooseYear(int year);
    void setWorthOfADay(std::optional<double> amount);

    /// Which two are held against each other; the answer has all of them already. The other one steps aside where both would be the same.
    void chooseFirst(core::MethodId method);
    void chooseSecond(core::MethodId method);
    [[nodiscard]] core::MethodId first() const { return first_; }
    [[nodiscard]] core::MethodId second() const { return second_; }

    /// Nobody looks: changes of the logbook wait until somebody does.
    void setWatched(bool isWatched);
    /// Gives up the work on the question that stands; what was shown before stays.
    void stop();
    /// Takes it up again.
    void workItOut();
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

  signals:
    void stateChanged();

  private:
    struct WhatIsRead {
        std::vector<core::BatchRecord> records;
        std::vector<core::Potting> pottings;
        core::CostsOfBatches costs;
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
    void tell(const core::Result<core::Worth>& answer);
    void findPair();
    void askForPayOff();

    Workspace& workspace_;
    WorthItState state_;
    core::WorthQuestion question_;
    int year_{};
    core::MethodId first_{}, second_{};
    std::shared_ptr<const Copies> copies_;  // read once, until something changes
    bool isWatched_{};
    bool isStale_{true};
    ReadBeside<WhatIsRead> reading_{workspace_, this};
    LatestAnswer<core::Result<core::Worth>> sums_{this};
    LatestAnswer<std::vector<core::ChanceAfter>> payingOff_{this};
};

}  // namespace desktop
