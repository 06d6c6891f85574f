// SPDX-License-Identifier: MIT
// The window in a language that nobody speaks: what is still English misses tr(), what is clipped was measured for English.
#include "tests/desktop/whole/pseudo_language.h"

#include <QLocale>
#include <QMap>
#include <algorithm>

#include "core/mixing/elements.h"
#include "core/mixing/feeding_bands.h"
#include "core/mixing/reagent.h"
#include "tests/desktop/whole/scenes.h"
#include "tests/desktop/whole/shown_texts.h"

namespace {

TEST(PseudoLanguage, KeepsWhatTranslatorsHaveToKeep) {
    EXPECT_EQ(whole::inPseudo("&Save %1 of %n").toStdString(), "&Šáṽé %1 öƒ %n ¤¤¤¤¤");
    EXPECT_EQ(whole::inPseudo("<b>Tub</b>").toStdString(), "<b>Ţüƀ</b>¤¤¤¤");
    EXPECT_EQ(whole::plainWords("Šáṽé Tub, pH 7 of B260047K"), QStringList({"Tub", "pH", "of"}));
}

/// core speaks English whatever the window speaks: verdicts, cautions, refusals and reasons are its sentences. By the widgets that show them;
/// with the one that names the file, and the one that names time zones.
bool isSaidByCore(const whole::ShownText& shown) {
    static const QStringList places{
        "batchCautions",    "batchInWords",        "comparisonCautions", "comparisonInWords", "doseFigure1Words",
        "doseFigure2Words", "goesWithFigureWords", "horizonReason",      "roundFault",        "powerAnswer",
        "powerRestsOn",     "powerCurveView",      "trialHowFar",        "trialNext",         "trialNotShown",
        "trialAsks",        "mixCautions",         "mixRemarks",         "mixWorkings",       "mixTable",
        "worthInWords",     "worthCautions",       "worthHorizon",       "missingSentence",   "batchCosts",
        "lossesInWords",    "lossChartWords",      "lossGoesWithWords",  "suspectsAgainst",   "suspectsInWords",
        "suspectsNextTime", "suspectsWarning",     "logbookPlace",       "loggerZone",        "cautionStrip",
        "plantRead",        "plantFactsPlannedBy"};
    return std::ranges::any_of(shown.within, [](const QString& name) { return places.contains(name); });
}

/// The same in every language, or QLocale's to translate: units, substances and carriers, months, keys, paper, the file's own name.
QStringList sameEverywhere() {
    QStringList words{"mS/cm",
                      "µS/cm",
                      "mg/L",
                      "mm",
                      "mL",
                      "meq/L",
                      "kg/L",
                      "CaCO3",
                      "Letter",
                      "coir",  // typed
                      "perlite",
                      "IBA",
                      "NAA",
                      "IAA",
                      "gel",
                      "Alt",
                      "Ctrl",
                      "Shift",
                      "Left",
                      "Right",
                      "Willow Lane.strikebook",
                      "Timestamp",  // columns of a logger's file
                      "Temperature (°C)",
                      "Humidity (%)",
                      "Dew point (°C)"};
    for (int month = 1; month <= 12; ++month)
        words << QLocale().monthName(month) << QLocale().monthName(month, QLocale::ShortFormat);
    return words;
}

/// Names of core in the middle of what the window says.
QStringList namesOfCore() {
    QStringList names;
    const auto add = [&names](std::string_view name) { names << QString::fromUtf8(name); };
    for (const core::FeedingBand& band : core::feedingBands()) add(band.stage);
    for (const core::ReagentFacts& reagent : core::allReagents()) add(reagent.name);
    for (const core::KnownSolution& solution : core::knownSolutions()) add(solution.name), add(solution.source);
    return names;
}

struct Abroad {
    whole::PseudoLanguage language;
    whole::AgreeingPrompts agreeing;
};

class InPseudo : private Abroad, public whole::Window {
  protected:
    InPseudo() : Window(&agreeing) {}

    void look(const QString& name, QWidget& top) {
        QStringList known = workspace_.hasLogbook() ? whole::namesIn(workspace_.logbook().records()) : QStringList();
        known << workspace_.wordsToUndo() << workspace_.wordsToRedo() << sameEverywhere() << namesOfCore();
        known.removeAll(QString());
        for (const whole::ShownText& shown : whole::shownTexts(top)) {
            if (isSaidByCore(shown)) continue;
            const QStringList words = whole::plainWords(whole::without(shown.text, known));
            if (!words.isEmpty())
                untranslated_.insert(shown.where + ": " + shown.text + " [" + words.join(" ") + "]", name);
        }
        for (const QString& clipped : whole::clippedTexts(top)) clipped_.insert(clipped, name);
    }

    QMap<QString, QString> untranslated_, clipped_;  // with the scene that had it last
};

std::string listed(const QMap<QString, QString>& found) {
    QString lines;
    for (auto each = found.begin(); each != found.end(); ++each) lines += each.value() + ": " + each.key() + '\n';
    return lines.toStdString();
}

TEST_F(InPseudo, NothingThatIsShownMissedTheTranslatorOrIsClipped) {
    const auto visit = [this](const QString& name, QWidget& top) { look(name, top); };
    whole::visitPages(*window_, visit);
    whole::visitDialogs(*window_, visit);
    whole::visitBeginnings(*window_, visit);
    EXPECT_EQ(listed(untranslated_), "");
    EXPECT_EQ(listed(clipped_), "");
}

}  // namespace
