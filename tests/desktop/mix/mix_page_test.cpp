// SPDX-License-Identifier: MIT
#include "app/desktop/mix/mix_page.h"

#include <gmock/gmock.h>

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProcess>
#include <QPushButton>
#include <QSignalSpy>

#include "app/desktop/printing/print_preview.h"
#include "app/report/pdf.h"
#include "app/report/plain_text.h"
#include "core/mixing/trade_cautions.h"
#include "tests/desktop/mix/mix_desk.h"

namespace {

using testing::AllOf;
using testing::ElementsAre;
using testing::HasSubstr;

constexpr core::DisplayUnits american{.temperature = core::TemperatureUnit::Fahrenheit,
                                      .ec = core::EcUnit::Ppm500,
                                      .volume = core::VolumeUnit::UsGallons,
                                      .length = core::LengthUnit::Inches};

class Mixing : public mixing::MixDesk {
  protected:
    void mixTwentyLitres() {
        ask("nutrient");
        fill("volume", "20");
        fill("target", "1");
        fillFeed();
    }
    std::vector<std::string> faultSentences() {
        std::vector<std::string> all;
        for (const QString& fault : faults()) all.push_back(fault.toStdString());
        return all;
    }
};

TEST_F(Mixing, SaysWhatIsStillToFillIn) {
    ask("nutrient");
    EXPECT_THAT(words("mixHint"), AllOf(HasSubstr("Volume"), HasSubstr("EC wanted"), HasSubstr("Parts")));
    EXPECT_EQ(page_->sheet(), nullptr);
    fill("volume", "20");
    EXPECT_THAT(words("mixHint"), testing::Not(HasSubstr("Volume")));
    EXPECT_TRUE(faults().isEmpty()) << "what isn't filled in yet is no fault";
}

TEST_F(Mixing, MarksWhatCanNotBeWhereItStandsAndLosesNothing) {
    mixTwentyLitres();
    fill("volume", "twenty");
    fill("target", "99");
    EXPECT_EQ(field("volume").text(), "twenty");
    EXPECT_EQ(taken(0), "nothing");
    EXPECT_THAT(faultSentences(), ElementsAre("Volume is \u201ctwenty\u201d; a number in L is allowed, such as 1.2.",
                                              "EC wanted is 99; 0 to 20 mS/cm is allowed."));
    fill("volume", "20");
    fill("target", "1,0");  // either sign is the decimal sign
    EXPECT_TRUE(faults().isEmpty());
    EXPECT_EQ(taken(0), "7.0 g");
    fillCells({{"mixDose2", "1.2.3"}});
    EXPECT_THAT(faultSentences(), ElementsAre(HasSubstr("Part 2, full dose, is \u201c1.2.3\u201d")));
    fillCells({{"mixDose2", "0"}});
    EXPECT_THAT(faultSentences(), ElementsAre(HasSubstr("is 0; more than 0 and up to 1000 g/L is allowed.")));
}

TEST_F(Mixing, RefusesInTheGrowersUnits) {
    useUnits(american);
    ask("dilute");
    fill("volume", "5");
    fill("now", "700");
    fill("target", "800");
    fill("water", "100");
    EXPECT_THAT(faultSentences(),
                ElementsAre("EC wanted is 800 ppm (500 scale); more than the 100 of the water and less "
                            "than the 700 of the tub is allowed."));
    fill("target", "500");
    EXPECT_EQ(taken(0), "2.5 gal");
    fill("volume", "x");
    EXPECT_THAT(faultSentences(), ElementsAre(HasSubstr("a number in gal is allowed")));
}

TEST_F(Mixing, StaysTheSameMixWhenTheUnitsChange) {
    mixTwentyLitres();
    fill("scale", "x");
    useUnits(american);
    EXPECT_EQ(field("volume").text(), "5.283441047");
    EXPECT_EQ(field("target").text(), "500");
    EXPECT_EQ(field("scale").text(), "x") << "what can't be read stays";
    EXPECT_EQ(pages::named<QLineEdit>(view(), "mixDose2").text(), "4.542494141");
    fill("scale", "0.1");
    EXPECT_EQ(taken(0), "7.0 g");
    EXPECT_EQ(taken(1), "7.0 g");
    EXPECT_THAT(words("mixSumsIn"), HasSubstr("1 gal is 3.785 L"));
    useUnits({});
    EXPECT_EQ(field("volume").text(), "20");
    EXPECT_EQ(taken(1), "7.0 g");
}

TEST_F(Mixing, TakesOnlyWhatHasChangedOnAnotherDay) {
    mixTwentyLitres();
    openPage();
    EXPECT_EQ(taken(0), "7.0 g") << "as it was left";
    // The page's own key came first; then a new volume and a new strength.
    int keys = 1;
    for (const QString& text : {QStringLiteral("15"), QStringLiteral("0.6")}) {
        pages::type(text);
        keys += static_cast<int>(text.size());
        if (text == QStringLiteral("15")) {
            pages::press(Qt::Key_Tab);
            ++keys;
        }
    }
    EXPECT_LE(keys, 10);
    EXPECT_EQ(words("mixTitle"), "Nutrient for 15 L at EC 0.6 mS/cm");
    EXPECT_EQ(taken(0), "2.3 g");  // 1.2 g/L x 15 L x 0.3 / 2.4 = 2.25 g, halves away from nothing
}

TEST_F(Mixing, RemembersTheWaterAndTheFeedForEveryQuestionAndUnit) {
    mixTwentyLitres();
    ask("topup");
    EXPECT_EQ(field("water").text(), "0.3");
    EXPECT_EQ(pages::named<QLineEdit>(view(), "mixPart2").text(), "B");
    useUnits(american);
    openPage();
    ask("topup");
    EXPECT_EQ(field("water").text(), "150");
    EXPECT_EQ(pages::named<QLineEdit>(view(), "mixDose1").text(), "4.542494141");
}

TEST_F(Mixing, CautionsAreInSightBesideTheAmountsAndOnTheCard) {
    mixTwentyLitres();
    const auto& cautions = pages::named<QLabel>(view(), "mixCautions");
    ASSERT_TRUE(cautions.isVisible());
    EXPECT_FALSE(cautions.visibleRegion().isEmpty()) << "without scrolling";
    QString onScreen = cautions.text();
    const std::string file = folder_.filePath("card.pdf").toStdString();
    report::writePdf(*page_->sheet(), QString::fromStdString(file), report::Paper::A4);
    QProcess reader;
    reader.start("pdftotext", {"-layout", QString::fromStdString(file), "-"});
    ASSERT_TRUE(reader.waitForFinished());
    // Compatibility form: a font's ligatures are read as the letters that they stand for.
    QString onPaper = QString::fromUtf8(reader.readAllStandardOutput()).normalized(QString::NormalizationForm_KC);
    onPaper.remove(QRegularExpression("\\s"));
    onScreen.remove(QRegularExpression("\\s"));
    for (const core::CautionTopic topic :
         {core::CautionTopic::Concentrates, core::CautionTopic::Oxidisers, core::CautionTopic::Advice}) {
        QString text = QString::fromUtf8(core::tradeCaution(topic).text);
        text.remove(QRegularExpression("\\s"));
        EXPECT_TRUE(onScreen.contains(text)) << text.toStdString();
        EXPECT_TRUE(onPaper.contains(text)) << text.toStdString();
    }
}

TEST_F(Mixing, EveryAnswerHasItsCautionsInSight) {
    for (const desktop::MixQuestion& question : desktop::mixQuestions()) {
        ask(question.word);
        EXPECT_EQ(view().answer().has_value(), !words("mixCautions").empty()) << question.word.toStdString();
    }
}

TEST_F(Mixing, PrintsWhatThePageShows) {
    QSignalSpy changed(page_.get(), &desktop::Page::sheetChanged);
    mixTwentyLitres();
    EXPECT_FALSE(changed.empty());
    ASSERT_NE(page_->sheet(), nullptr);
    const std::string card = report::plainText(*page_->sheet()).toStdString();
    EXPECT_THAT(card, AllOf(HasSubstr("Nutrient for 20 L at EC 1 mS/cm"), HasSubstr("7.0 g"),
                            HasSubstr("Mixing card, 30 June 2026")));
    pages::named<QPushButton>(view(), "mixPrint").click();
    EXPECT_NE(pages::opened<desktop::PrintPreview>(*page_), nullptr);
}

TEST_F(Mixing, ComesBackToTheQuestionOfTheLastTime) {
    ask("dip");
    openPage();
    EXPECT_EQ(view().objectName(), "mixView_dip");
    EXPECT_TRUE(field("cuttings").hasFocus());
}

}  // namespace
