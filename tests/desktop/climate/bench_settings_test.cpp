// SPDX-License-Identifier: MIT
#include <gmock/gmock.h>

#include <QLineEdit>
#include <QTest>

#include "app/desktop/settings/logbook_settings.h"
#include "app/desktop/widgets/fault_label.h"
#include "db/actions/shelf_actions.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;
using testing::HasSubstr;

class BenchSettings : public pages::Desk {
  protected:
    BenchSettings() {
        fill(support::recordsOf({}));
        settings_ = std::make_unique<desktop::LogbookSettings>(context());
        pages::show(*settings_);
    }
    void put(const char* name, const char* text) {
        auto& edit = named<QLineEdit>(*settings_, name);
        edit.selectAll();
        QTest::keyClicks(&edit, QString::fromLatin1(text));
        settings_->finishTyping();
    }
    const core::LogbookFacts& facts() { return workspace_.shelves().facts; }
    std::string faults() {
        QStringList all;
        for (const auto* label : settings_->findChildren<desktop::FaultLabel*>())
            if (!label->fault().isEmpty()) all << label->fault();
        return all.join(u'\n').toStdString();
    }

    std::unique_ptr<desktop::LogbookSettings> settings_;
};

TEST_F(BenchSettings, KeepHeightBaseAndRateEachAsOneStep) {
    put("settingsAltitude", "640");
    EXPECT_EQ(facts().altitudeMetres, 640);
    put("settingsDegreeDayBase", "8,5");
    EXPECT_EQ(facts().degreeDayBase, 8.5);
    put("settingsFalseAlarms", "200");
    EXPECT_EQ(facts().falseAlarmRate, 0.005);
    EXPECT_EQ(faults(), "");
    workspace_.undo();
    EXPECT_EQ(facts().falseAlarmRate, 0.01);
    EXPECT_EQ(named<QLineEdit>(*settings_, "settingsFalseAlarms").text(), QStringLiteral("100"));
}

TEST_F(BenchSettings, MarkWhatCannotBeAndKeepTheFigureBefore) {
    put("settingsAltitude", "9000");
    EXPECT_THAT(faults(), HasSubstr("The height of the bench is “9000”; a number from −430 to 6000 is allowed."));
    EXPECT_EQ(facts().altitudeMetres, 0);
    put("settingsFalseAlarms", "1");
    EXPECT_THAT(faults(), HasSubstr("from 2 to 10000"));
    EXPECT_EQ(named<QLineEdit>(*settings_, "settingsFalseAlarms").text(), QStringLiteral("1"));
}

TEST_F(BenchSettings, TakeTheBaseInTheGrowersUnit) {
    core::LogbookFacts american = facts();
    american.units.temperature = core::TemperatureUnit::Fahrenheit;
    ASSERT_TRUE(workspace_.run([&](db::Logbook& logbook) { return db::keep(logbook, american); }).isDone);
    EXPECT_EQ(named<QLineEdit>(*settings_, "settingsDegreeDayBase").text(), QStringLiteral("50"));
    put("settingsDegreeDayBase", "41");
    EXPECT_NEAR(facts().degreeDayBase, 5, 1e-9);
}

}  // namespace
