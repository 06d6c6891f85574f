// SPDX-License-Identifier: MIT
#include "app/desktop/settings/settings_dialog.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QPushButton>
#include <QSlider>
#include <QTabWidget>
#include <QTemporaryDir>

#include "app/desktop/batches/batch_table_model.h"
#include "app/desktop/look/appearance.h"
#include "app/desktop/memory.h"
#include "app/desktop/methods/method_dialog.h"
#include "app/desktop/settings/facts_by_locale.h"
#include "app/desktop/settings/interval_words.h"
#include "app/desktop/settings/number_format.h"
#include "app/plot/unit_text.h"
#include "tests/desktop/pages/desk.h"

namespace {

using pages::named;
using pages::press;

class Settings : public pages::Desk {
  protected:
    Settings()
        : memory_({folder_.filePath("settings.ini"), folder_.filePath("window.ini")}),
          system_(desktop::paletteFor(desktop::Theme::Light)),
          appearance_(*qApp, memory_, system_) {
        open();
    }
    ~Settings() override {
        QLocale::setDefault(before_);
        appearance_.resetText();
        appearance_.wear(desktop::Theme::Light);
    }

    void open() {
        dialog_ = std::make_unique<desktop::SettingsDialog>(desktop::PageContext{workspace_, prompts_, &memory_},
                                                            appearance_);
        pages::show(*dialog_);
    }
    const core::LogbookFacts& facts() { return workspace_.shelves().facts; }
    QComboBox& box(const char* name) { return named<QComboBox>(*dialog_, name); }
    QLineEdit& line(const char* name) { return named<QLineEdit>(*dialog_, name); }
    QString words(const char* name) { return named<QLabel>(*dialog_, name).text(); }
    void choose(const char* name, const QString& text) {
        const int number = box(name).findText(text, Qt::MatchContains);
        ASSERT_GE(number, 0) << text.toStdString();
        box(name).setCurrentIndex(number);
    }
    void type(const char* name, const QString& text) {
        line(name).setFocus();
        line(name).selectAll();
        QTest::keyClick(&line(name), Qt::Key_Delete);
        QTest::keyClicks(&line(name), text);
        QTest::keyClick(&line(name), Qt::Key_Tab);
    }
    QString faultOf(const char* name) { return line(name).accessibleDescription(); }

    const QLocale before_;
    QTemporaryDir folder_;
    desktop::Memory memory_;
    desktop::SystemTheme system_;
    desktop::Appearance appearance_;
    std::unique_ptr<desktop::SettingsDialog> dialog_;
};

TEST_F(Settings, ChangeEachUnitInOneStepThatUndoTakesBack) {
    choose("settingsTemperature", "Fahrenheit");
    EXPECT_EQ(facts().units.temperature, core::TemperatureUnit::Fahrenheit);
    choose("settingsEc", "700");
    EXPECT_EQ(facts().units.ec, core::EcUnit::Ppm700);
    choose("settingsVolume", "gal");
    choose("settingsLength", "inches");
    EXPECT_EQ(facts().units.volume, core::VolumeUnit::UsGallons);
    EXPECT_EQ(facts().units.length, core::LengthUnit::Inches);
    EXPECT_EQ(plot::rootLengthText(facts()), "0.394 in");
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(facts().units.length, core::LengthUnit::Millimetres);
    EXPECT_EQ(facts().units.volume, core::VolumeUnit::UsGallons) << "one setting is one step";
    EXPECT_TRUE(box("settingsLength").currentText().startsWith("mm")) << "the dialog shows what holds";
}

TEST_F(Settings, ChangeTheIntervalAndLevelThatTablesShow) {
    fill(support::recordsOf({support::aBatch().looked(14, {.rooted = 18})}));
    desktop::BatchTableModel table;
    const auto shown = [&] {
        table.show(workspace_.batchLines(), workspace_.shelves());
        const int column = static_cast<int>(desktop::BatchColumn::Interval);
        return table.headerData(column, Qt::Horizontal, Qt::DisplayRole).toString() + ": " +
               table.index(0, column).data().toString();
    };
    const QString wilson = shown();
    choose("settingsInterval", "Clopper");
    EXPECT_EQ(facts().interval, "clopper_pearson");
    EXPECT_NE(shown(), wilson);
    EXPECT_TRUE(words("settingsIntervalWords").startsWith(desktop::intervalWords(core::RateInterval::ClopperPearson)));
    type("settingsLevel", "80");
    EXPECT_EQ(facts().level, 0.8);
    EXPECT_TRUE(shown().startsWith("80")) << shown().toStdString();
    EXPECT_TRUE(words("settingsLevelWords").contains("about 80"));
    ASSERT_TRUE(workspace_.undo());
    ASSERT_TRUE(workspace_.undo());
    EXPECT_EQ(shown(), wilson);
}

TEST_F(Settings, ExplainHowTheChosenIntervalIsWorkedOut) {
    for (const core::RateInterval interval : core::everyRateInterval) {
        box("settingsInterval").setCurrentIndex(box("settingsInterval").findData(static_cast<int>(interval)));
        named<QPushButton>(*dialog_, "settingsIntervalHow").click();
        auto* method = pages::opened<desktop::MethodDialog>(*dialog_);
        ASSERT_NE(method, nullptr);
        EXPECT_TRUE(method->shownText().contains("18"));
        EXPECT_FALSE(method->shownText().contains(pages::aBrace()));
        delete method;
    }
}

TEST_F(Settings, MarkABadFigureWhereItStandsAndKeepTheOneBefore) {
    type("settingsLevel", "120");
    EXPECT_TRUE(faultOf("settingsLevel").contains("50 to 99.9"));
    EXPECT_EQ(line("settingsLevel").text(), "120") << "nothing typed is lost";
    EXPECT_EQ(facts().level, 0.95);
    type("settingsCurrency", "EU");
    EXPECT_TRUE(faultOf("settingsCurrency").contains("three capital letters"));
    choose("settingsPaper", "Letter");
    EXPECT_EQ(facts().paper, "Letter");
    EXPECT_EQ(line("settingsLevel").text(), "120") << "another setting takes nothing away";
    EXPECT_TRUE(faultOf("settingsLevel").contains("50 to 99.9"));
    type("settingsLevel", "90");
    EXPECT_EQ(faultOf("settingsLevel"), QString());
    EXPECT_EQ(facts().level, 0.9);
    type("settingsCheckEvery", "never");
    EXPECT_FALSE(faultOf("settingsCheckEvery").isEmpty());
    type("settingsName", " ");
    EXPECT_FALSE(faultOf("settingsName").isEmpty());
    EXPECT_FALSE(facts().name.empty());
}

TEST_F(Settings, TakeDaysGrowerAndCurrency) {
    type("settingsGrower", "Ada");
    type("settingsCurrency", "chf");
    type("settingsFirstCheck", "10");
    type("settingsCheckEvery", "5");
    type("settingsHorizon", "42");
    EXPECT_EQ(facts().grower, "Ada");
    EXPECT_EQ(facts().currency, "CHF");
    EXPECT_EQ(facts().firstCheckAfterDays, 10);
    EXPECT_EQ(facts().checkEveryDays, 5);
    EXPECT_EQ(facts().horizonDay, 42);
}

TEST_F(Settings, ReadTheRootLengthInTheUnitThatIsChosen) {
    choose("settingsLength", "inches");
    EXPECT_EQ(line("settingsRootLength").text(), "0.394");
    type("settingsRootLength", "0,5");
    EXPECT_EQ(facts().rootLengthMillimetres, 13);
    type("settingsRootLength", "50");
    EXPECT_TRUE(faultOf("settingsRootLength").contains("0.0394"));
    EXPECT_EQ(facts().rootLengthMillimetres, 13);
}

TEST_F(Settings, TakeWhatIsStillTypedWhenTheyClose) {
    line("settingsGrower").setFocus();
    line("settingsGrower").selectAll();
    QTest::keyClicks(&line("settingsGrower"), "Grace");
    press(Qt::Key_Escape);
    EXPECT_FALSE(dialog_->isVisible());
    EXPECT_EQ(facts().grower, "Grace");
}

TEST_F(Settings, OfTheLookActAtOnceAndSurviveARestart) {
    named<QTabWidget>(*dialog_, "settingsTabs").setCurrentIndex(1);
    choose("settingsTheme", "high contrast");
    EXPECT_TRUE(desktop::isHighContrast(QApplication::palette()));
    const double before = QApplication::font().pointSizeF();
    named<QSlider>(*dialog_, "settingsText").setValue(15);
    EXPECT_NEAR(QApplication::font().pointSizeF(), before * 1.5, 0.01);
    EXPECT_TRUE(words("settingsTextPercent").startsWith("150"));
    const desktop::Memory again({folder_.filePath("settings.ini"), folder_.filePath("window.ini")});
    EXPECT_EQ(again.theme(), desktop::Theme::HighContrast);
    EXPECT_EQ(again.textPercent(), 150);
}

TEST_F(Settings, OfNumbersShowALiveExampleAndSurviveARestart) {
    named<QTabWidget>(*dialog_, "settingsTabs").setCurrentIndex(1);
    const QString english = words("settingsNumbersExample");
    choose("settingsNumbers", "German (Germany)");
    EXPECT_TRUE(words("settingsNumbersExample").contains("14.03.2026"))
        << words("settingsNumbersExample").toStdString();
    EXPECT_TRUE(words("settingsNumbersExample").contains("1234,5"));
    EXPECT_NE(words("settingsNumbersExample"), english);
    QLocale::setDefault(QLocale::c());
    const desktop::Memory again({folder_.filePath("settings.ini"), folder_.filePath("window.ini")});
    desktop::wearNumberFormat(again.numberFormat());
    EXPECT_EQ(QLocale().name(), "de_DE");
}

TEST_F(Settings, OfTheRoundAreThoseThatTheRoundReads) {
    choose("settingsRound", "newly rooted");
    EXPECT_EQ(memory_.choice(desktop::choice::plainNumber), "new");
    open();
    EXPECT_TRUE(box("settingsRound").currentText().startsWith("newly"));
}

TEST_F(Settings, OfTheLogbookRestWhileNoneIsOpen) {
    workspace_.close();
    open();
    EXPECT_EQ(named<QTabWidget>(*dialog_, "settingsTabs").currentIndex(), 1);
    EXPECT_FALSE(line("settingsName").isEnabled());
    EXPECT_TRUE(box("settingsTheme").isEnabled());
}

TEST_F(Settings, AreTakenBackWithinTheDialog) {
    choose("settingsPaper", "Letter");
    box("settingsPaper").setFocus();
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(facts().paper, "A4");
    EXPECT_EQ(box("settingsPaper").currentText(), "A4");
}

TEST(FactsByLocale, FollowThePlace) {
    const core::LogbookFacts german = desktop::factsByLocale(QLocale("de_DE"));
    EXPECT_EQ(german.paper, "A4");
    EXPECT_EQ(german.currency, "EUR");
    EXPECT_EQ(german.units, core::DisplayUnits{});
    const core::LogbookFacts american = desktop::factsByLocale(QLocale("en_US"));
    EXPECT_EQ(american.paper, "Letter");
    EXPECT_EQ(american.currency, "USD");
    EXPECT_EQ(american.units.temperature, core::TemperatureUnit::Fahrenheit);
    EXPECT_EQ(american.units.length, core::LengthUnit::Inches);
    EXPECT_EQ(desktop::factsByLocale(QLocale::c()).currency, "EUR") << "no country, no currency";
}

TEST(IntervalWords, SayOneSentenceEach) {
    QStringList all;
    for (const core::RateInterval interval : core::everyRateInterval) {
        EXPECT_EQ(desktop::intervalWords(interval).count('.'), 1);
        all << desktop::intervalWords(interval);
    }
    EXPECT_EQ(all.removeDuplicates(), 0);
    EXPECT_TRUE(desktop::levelWords(0.95).contains("Of 100 such intervals about 95"));
    EXPECT_TRUE(desktop::levelWords(0.999).contains("Of 1000 such intervals about 999"));
}

}  // namespace
