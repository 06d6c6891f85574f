// SPDX-License-Identifier: MIT
#include "app/report/trial_report.h"

#include <QCoreApplication>

#include "app/plot/number_text.h"
#include "app/report/sheet_words.h"
#include "app/report/trial_map.h"
#include "app/report/trial_words.h"

namespace report {

namespace {

class TrialReportMaker {
    Q_DECLARE_TR_FUNCTIONS(TrialReport)

  public:
    TrialReportMaker(const core::Trial& trial, const core::TrialProgress& progress, const core::Comparison* result,
                     const core::Shelves& shelves)
        : trial_(trial), progress_(progress), result_(result), shelves_(shelves) {}

    Sheet make(const QDateTime& printedAt) {
        sheet_ = sheetFor(shelves_.facts, printedAt);
        sheet_.fitsOnePage = true;
        sheet_.title = tr("Trial: %1").arg(QString::fromStdString(trial_.name));
        sheet_.subtitle = stageWords(progress_.stage);
        if (!trial_.question.empty())
            sheet_.blocks.emplace_back(Paragraph{QString::fromStdString(trial_.question), Tone::Answer});
        addResult();
        addDesign();
        addCounts();
        addChanges();
        addSentences(tr("What it does not show"), core::notShownBy(trial_, progress_, result_));
        addSentences(tr("What to try next"), core::whatNext(trial_, progress_, result_));
        addDealt();
        return std::move(sheet_);
    }

  private:
    void addHeading(const QString& text) { sheet_.blocks.emplace_back(Heading{text}); }
    void addText(const QString& text, Tone tone = Tone::Plain) { sheet_.blocks.emplace_back(Paragraph{text, tone}); }

    void addDesign() {
        addHeading(tr("How it was planned"));
        sheet_.blocks.emplace_back(Facts{designFacts(trial_, shelves_)});
    }

    void addResult() {
        addHeading(tr("Result"));
        if (result_ == nullptr) {
            addText(notBeforeWords(progress_), Tone::Answer);
            return addText(QString::fromStdString(progress_.inWords));
        }
        addText(QString::fromStdString(result_->inWords), Tone::Answer);
        addText(tr("Decided at day %1; intervals at %2.")
                    .arg(plot::countText(result_->horizonDay), plot::levelText(result_->level)),
                Tone::Quiet);
        for (const QString& caution : cautionsToPrint(result_->cautions, shelves_.facts))
            addText(caution, Tone::Caution);
        sheet_.blocks.emplace_back(rateTable());
        addDifferences();
        if (progress_.batchesLookedAtAtHorizon < progress_.batchesStuck)
            addText(QString::fromStdString(progress_.inWords), Tone::Caution);
    }

    Table rateTable() const {
        Table table;
        table.headings = {tr("Arm"),    tr("batches"),   tr("stuck"),      tr("assessed"),
                          tr("rooted"), tr("undecided"), tr("as counted"), tr("with spread between batches")};
        table.aligned.assign(static_cast<std::size_t>(table.headings.size()), Align::Right);
        table.aligned.front() = Align::Left;
        for (const core::Arm& arm : result_->arms)
            table.rows.push_back(
                {QString::fromStdString(arm.name), plot::countText(arm.batches), plot::countText(arm.stuck),
                 plot::countText(arm.assessed),
                 arm.rate ? plot::percentText(*arm.rate, arm.rooted, arm.assessed) : QStringLiteral("\u2013"),
                 plot::countText(arm.undecided),
                 arm.asCounted ? plot::limitsText(*arm.asCounted) : QStringLiteral("\u2013"),
                 arm.withSpread ? plot::limitsText(*arm.withSpread) : tr("one batch: not known")});
        return table;
    }

    void addDifferences() {
        for (const core::Pair& pair : result_->pairs) {
            if (!pair.difference) continue;
            const auto name = [this](int arm) {
                return QString::fromStdString(result_->arms[static_cast<std::size_t>(arm)].name);
            };
            const QString counted = plot::pointsText(pair.difference->value, pair.difference->miettinenNurminen);
            const QString spread =
                pair.difference->withSpread
                    ? plot::pointsText(pair.difference->valueWithSpread(), *pair.difference->withSpread)
                    : tr("not known, since batches are too few or do not differ");
            addText(tr("%1 less %2, of 100: %3 as counted; allowing for the spread between batches: %4.",
                       "two arms, figures")
                        .arg(name(pair.first), name(pair.second), counted, spread));
        }
    }

    void addCounts() {
        if (progress_.arms.empty()) return;
        addHeading(tr("Counts so far"));
        if (!progress_.isTold) addText(tr("Arms go by letters until the horizon, in an order by chance."), Tone::Quiet);
        if (result_ == nullptr || progress_.armsByBlock.empty())
            sheet_.blocks.emplace_back(countsTable(progress_.arms, false));
        if (!progress_.armsByBlock.empty()) sheet_.blocks.emplace_back(countsTable(progress_.armsByBlock, true));
    }

    void addChanges() {
        addHeading(tr("Changed after somebody had looked"));
        if (trial_.changes.empty()) return addText(tr("Nothing."));
        for (const core::TrialChange& change : trial_.changes) addText(changeWords(change));
    }

    void addSentences(const QString& heading, const std::vector<std::string>& sentences) {
        if (sentences.empty()) return;
        addHeading(heading);
        for (const std::string& sentence : sentences) addText(QString::fromStdString(sentence));
    }

    void addDealt() {
        if (trial_.batches.empty()) return;
        addHeading(tr("What chance dealt"));
        sheet_.blocks.emplace_back(dealtTable(trial_, progress_.isTold, shelves_));
    }

    const core::Trial& trial_;
    const core::TrialProgress& progress_;
    const core::Comparison* result_;
    const core::Shelves& shelves_;
    Sheet sheet_;
};

}  // namespace

Sheet trialReport(const core::Trial& trial, const core::TrialProgress& progress, const core::Comparison* result,
                  const core::Shelves& shelves, const QDateTime& printedAt) {
    return TrialReportMaker(trial, progress, result, shelves).make(printedAt);
}

}  // namespace report
