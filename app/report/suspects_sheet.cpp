// SPDX-License-Identifier: MIT
#include "app/report/suspects_sheet.h"

#include <QCoreApplication>
#include <algorithm>

#include "app/report/losses_words.h"
#include "app/report/sheet_words.h"

namespace report {
namespace {

constexpr std::size_t mostInFull = 12;

class SuspectsSheetMaker {
    Q_DECLARE_TR_FUNCTIONS(SuspectsSheet)

  public:
    explicit SuspectsSheetMaker(const core::Suspects& suspects) : suspects_(suspects) {}

    void addTo(Sheet& sheet) {
        sheet_ = &sheet;
        say(suspects_.inWords, Tone::Answer);
        say(suspects_.warning, Tone::Caution);
        say(againstText(suspects_), Tone::Plain);
        const std::size_t full = std::min(mostInFull, suspects_.suspects.size());
        for (std::size_t i = 0; i < full; ++i) addSuspect(static_cast<int>(i) + 1, suspects_.suspects[i]);
        if (full < suspects_.suspects.size()) addOthers(full);
        if (suspects_.recordNextTime.empty()) return;
        sheet.blocks.emplace_back(Heading{tr("Write down next time")});
        for (const std::string& sentence : suspects_.recordNextTime) say(sentence, Tone::Plain);
    }

  private:
    void say(const QString& text, Tone tone) {
        if (!text.isEmpty()) sheet_->blocks.emplace_back(Paragraph{text, tone});
    }
    void say(const std::string& text, Tone tone) { say(QString::fromStdString(text), tone); }

    /// "For: ... Against: ..." a paragraph each.
    void sayAll(const QString& caption, const std::vector<std::string>& sentences) {
        QStringList all;
        for (const std::string& sentence : sentences)
            if (!sentence.empty()) all << QString::fromStdString(sentence);
        if (!all.isEmpty()) say(tr("%1: %2", "caption, sentences").arg(caption, all.join(u' ')), Tone::Plain);
    }

    void addSuspect(int number, const core::Suspect& suspect) {
        sheet_->blocks.emplace_back(
            Heading{tr("%1. %2 (%3)", "number, suspect, kind")
                        .arg(QString::number(number), QString::fromStdString(suspect.name), kindText(suspect.kind))});
        say(suspect.oddsInWords, Tone::Plain);
        say(sharedText(suspect), Tone::Plain);
        sayAll(tr("For it"), suspect.speaksFor);
        sayAll(tr("Against it"), suspect.speaksAgainst);
        QStringList together;
        for (const std::string& name : suspect.togetherWith) together << QString::fromStdString(name);
        if (!together.isEmpty())
            say(tr("Can't be told apart from: %1.").arg(together.join(QStringLiteral("; "))), Tone::Plain);
        sayAll(tr("Change next time"), {suspect.changeNextTime});
        if (suspect.trial) sayAll(tr("To find out"), {suspect.trial->inWords});
        sayAll(tr("Check"), {suspect.checkInstead});
    }

    void addOthers(std::size_t from) {
        QStringList names;
        for (std::size_t i = from; i < suspects_.suspects.size(); ++i)
            names << QString::fromStdString(suspects_.suspects[i].name);
        say(tr("Looked at as well, and less likely: %1.").arg(names.join(QStringLiteral("; "))), Tone::Quiet);
    }

    const core::Suspects& suspects_;
    Sheet* sheet_{};
};

struct SuspectsSheetWords {
    Q_DECLARE_TR_FUNCTIONS(SuspectsSheet)
};

}  // namespace

Sheet suspectsSheet(const core::Suspects& suspects, const QString& plant, const core::Shelves& shelves,
                    const QDateTime& printedAt) {
    Sheet sheet = sheetFor(shelves.facts, printedAt);
    sheet.title =
        SuspectsSheetWords::tr("What may have gone wrong: %1", "batch code").arg(QString::fromStdString(suspects.code));
    sheet.subtitle = plant;
    SuspectsSheetMaker(suspects).addTo(sheet);
    return sheet;
}

}  // namespace report
