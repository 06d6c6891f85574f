// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>

#include <QLabel>
#include <QTableView>

#include "app/desktop/batches/batch_conditions.h"
#include "app/desktop/batches/batch_page_model.h"
#include "app/plot/local_time.h"
#include "app/report/plain_text.h"
#include "app/report/sheet.h"
#include "db/actions/event_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using namespace std::chrono_literals;
using pages::named;
using testing::HasSubstr;

class BatchConditionsPart : public pages::Desk {
  protected:
    void open(const std::vector<double>& temperatures) {
        fill(support::recordsOf({support::aBatch().code("B260001A")}));
        std::vector<core::Reading> readings;
        for (std::size_t day = 0; day < temperatures.size(); ++day)
            readings.push_back(
                {.station = support::tubNorth,
                 .quantity = core::Quantity::SolutionTemperature,
                 .readAt = plot::momentOf(core::addDays(support::stickingDay(), static_cast<int>(day)), 0),
                 .value = temperatures[day]});
        EXPECT_TRUE(readings.empty() || db::recordReadings(logbook(), readings, workspace_.clock()()));
        model_.show(logbook().batchWithCode("B260001A"));
        conditions_ = std::make_unique<desktop::BatchConditions>(model_, context());
        pages::show(*conditions_);
    }
    QStringList row(int number) {
        const QAbstractItemModel* model = named<QTableView>(*conditions_, "conditionsTable").model();
        QStringList cells;
        for (int column = 0; column < model->columnCount(); ++column)
            cells << model->index(number, column).data().toString();
        return cells;
    }

    desktop::BatchPageModel model_{workspace_};
    std::unique_ptr<desktop::BatchConditions> conditions_;
};

TEST_F(BatchConditionsPart, SayMeansExtremesAndHoursOutsideWithTheirN) {
    open({20, 22, 24, 26, 26, 26, 26, 26});
    const QStringList cells = row(0);
    EXPECT_EQ(cells[0], QStringLiteral("solution temperature, °C"));
    EXPECT_EQ(cells[1], QStringLiteral("23.0"));  // of the first 3 days: 20 to 26 on a straight line
    EXPECT_EQ(cells[2], QStringLiteral("24.7"));
    EXPECT_EQ(cells[5], QStringLiteral("20.0 to 26.0"));
    EXPECT_EQ(cells[6], QStringLiteral("120 h of 168 h"));  // above 24 from day 2 on
    EXPECT_EQ(cells[8], QStringLiteral("8"));
}

TEST_F(BatchConditionsPart, StandOnTheBatchsPrintToo) {
    open({20, 22, 24, 26, 26, 26, 26, 26});
    ASSERT_TRUE(pages::comesTrue([this] { return model_.view().summary != nullptr; }));
    const std::string text = report::plainText(*model_.sheet()).toStdString();
    EXPECT_THAT(text, HasSubstr("WHAT IT LIVED THROUGH AT TUB NORTH"));
    EXPECT_THAT(text, HasSubstr("120 h of 168 h"));
    EXPECT_THAT(text, HasSubstr("nothing is filled in for gaps"));
}

TEST_F(BatchConditionsPart, SaySoWhereNothingWasRead) {
    open({});
    EXPECT_THAT(named<QLabel>(*conditions_, "conditionsWords").text().toStdString(),
                HasSubstr("Nothing was read at Tub north"));
}

}  // namespace
