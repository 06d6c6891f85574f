// SPDX-License-Identifier: MIT
// What was lost over which span, of which plant by which method, and what is out of the ordinary. Read and worked out in the background; a
// newer question stops the older. No widgets.
#pragma once

#include <QObject>
#include <QString>
#include <memory>
#include <vector>

#include "app/desktop/background/latest_answer.h"
#include "app/desktop/background/read_beside.h"
#include "app/desktop/losses/losses_choices.h"
#include "app/report/losses_records.h"

namespace report {
struct Sheet;
}

namespace desktop {

class Workspace;

struct LossesView {
    std::vector<LossesSpanChoice> spans;
    std::vector<LossesPlantChoice> plants;
    std::vector<LossesMethodChoice> methods;
    int span{};  // the chosen one of each, by its place in the list
    int plant{};
    int method{};
    std::shared_ptr<const report::LossesAnswer>
        answer;   // of the question that stands, or the one before while isWorking
    int chart{};  // of the answer's charts
    std::shared_ptr<const report::BatchChart> strikeChart;
    bool isWorking{};
    bool isCharting{};
    QString fault;
};

class LossesModel : public QObject {
    Q_OBJECT

  public:
    explicit LossesModel(Workspace& workspace, QObject* parent = nullptr);

    [[nodiscard]] const LossesView& view() const { return view_; }
    void chooseSpan(int place);
    void choosePlant(int place);
    void chooseMethod(int place);
    void chooseChart(int place);
    /// Nobody looks: changes of the logbook wait until somebody does.
    void setWatched(bool isWatched);
    [[nodiscard]] std::shared_ptr<const report::Sheet> sheet() const;

  signals:
    void choicesChanged();
    void viewChanged();
    void chartChanged();

  private:
    using Records = std::shared_ptr<const report::LossesRecords>;
    using Answer = std::shared_ptr<const report::LossesAnswer>;
    using Chart = std::shared_ptr<const report::BatchChart>;

    void forget();
    void startAfresh();
    void readChoices();
    void keepChosen(core::PlantId plant, core::MethodId method);
    [[nodiscard]] core::LossQuestion question() const;
    void ask();
    void workOut();
    void tell(const Answer& answer);
    void drawChart();
    void fail();

    Workspace& workspace_;
    LossesView view_;
    Records records_;  // read once, until something changes
    bool isWatched_{};
    bool isStale_{true};
    ReadBeside<Records> reading_{workspace_, this};
    LatestAnswer<Answer> sums_{this};
    LatestAnswer<Chart> charting_{this};
};

}  // namespace desktop
