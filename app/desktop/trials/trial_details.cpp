// SPDX-License-Identifier: MIT
#include "app/desktop/trials/trial_details.h"

#include <QHeaderView>
#include <QLabel>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/figures/figure_table_model.h"
#include "app/desktop/head_to_head/pair_table.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/trials/trial_map_panel.h"
#include "app/desktop/trials/trials_model.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/workspace.h"
#include "app/plot/difference_figure.h"
#include "app/plot/strike_rate_figure.h"
#include "app/report/methods/notes.h"
#include "app/report/trial_words.h"

namespace desktop {

namespace {

QLabel* plainWords(const QString& name) {
    auto* label = new QLabel;
    label->setObjectName(name);
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

/// Block and arm in one column, so that only figures stand at the right.
void joinFirstTwo(QStringList& row) {
    const QString first = row.takeFirst();
    row.front() = TrialDetails::tr("%1: %2", "block, arm").arg(first, row.front());
}

QString linesOf(const std::vector<std::string>& sentences) {
    QStringList lines;
    for (const std::string& sentence : sentences) lines << QString::fromStdString(sentence);
    return lines.join(u'\n');
}

}  // namespace

TrialDetails::TrialDetails(const TrialsModel& model, const PageContext& context, QWidget* parent)
    : QScrollArea(parent), model_(model), context_(context) {
    setObjectName(QStringLiteral("trialDetails"));
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    build();
}

void TrialDetails::build() {
    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(0, 0, fontMetrics().height() / 2, 0);
    layout->setSpacing(fontMetrics().height() / 2);
    layout->addWidget(title_ = largeLabel(QStringLiteral("trialTitle"), 1.3));
    layout->addWidget(question_ = plainWords(QStringLiteral("trialAsks")));
    layout->addWidget(inWords_ = answerLabel(QStringLiteral("trialInWords")));
    layout->addWidget(howFar_ = plainWords(QStringLiteral("trialHowFar")));
    layout->addWidget(cautions_ = cautionLabel(QStringLiteral("trialCautions")));
    for (FigurePanel** panel : {&rates_, &difference_}) {
        *panel = new FigurePanel(panel == &rates_ ? QStringLiteral("trialRates") : QStringLiteral("trialDifference"),
                                 context_);
        layout->addWidget(*panel);
        connect(*panel, &FigurePanel::said, this, &TrialDetails::said);
    }
    countsHeading_ = addHeading(*layout, tr("Counts so far"));
    layout->addWidget(blinded_ = quietLabelSaying(tr("Arms go by letters until the horizon, in an order by chance.")));
    arms_ = addCounts(*layout, "trialArmCounts", tr("Counts by arm"));
    blocks_ = addCounts(*layout, "trialBlockCounts", tr("Counts by block and arm"));
    addHeading(*layout, tr("How it was planned"));
    layout->addWidget(design_ = plainWords(QStringLiteral("trialDesign")));
    addHeading(*layout, tr("Which cutting goes where"));
    layout->addWidget(map_ = new TrialMapPanel(context_));
    connect(map_, &TrialMapPanel::said, this, &TrialDetails::said);
    addHeading(*layout, tr("Changed after somebody had looked"));
    layout->addWidget(changes_ = plainWords(QStringLiteral("trialChanges")));
    addHeading(*layout, tr("What it does not show"));
    layout->addWidget(notShown_ = plainWords(QStringLiteral("trialNotShown")));
    addHeading(*layout, tr("What to try next"));
    layout->addWidget(next_ = plainWords(QStringLiteral("trialNext")));
    layout->addStretch();
    setWidget(content);
}

QLabel* TrialDetails::addHeading(QVBoxLayout& layout, const QString& text) {
    QLabel* heading = largeLabel({}, 1.1);
    heading->setText(text);
    heading->setTextInteractionFlags(Qt::NoTextInteraction);
    layout.addWidget(heading);
    return heading;
}

TrialDetails::Counts TrialDetails::addCounts(QVBoxLayout& layout, const char* name, const QString& accessibleName) {
    Counts counts{.rows = new FigureTableModel(this), .table = new QTableView};
    counts.table->setObjectName(QString::fromLatin1(name));
    counts.table->setAccessibleName(accessibleName);
    counts.table->setModel(counts.rows);
    giveTableManners(*counts.table);
    counts.table->horizontalHeader()->setStretchLastSection(false);
    counts.table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    copyOnRequest(*counts.table, [this](const QString& sentence) { emit said(sentence); });
    layout.addWidget(counts.table);
    return counts;
}

void TrialDetails::show() {
    const TrialRow* row = model_.chosen();
    widget()->setVisible(row != nullptr);
    if (row == nullptr) return;
    title_->setText(tr("%1: %2", "trial, its state")
                        .arg(QString::fromStdString(row->trial.name), report::stageWords(row->progress.stage)));
    question_->setText(QString::fromStdString(row->trial.question));
    question_->setVisible(!row->trial.question.empty());
    showResult();
    showCounts();
    showDesign();
    showLessons();
}

void TrialDetails::showResult() {
    const TrialRow& row = *model_.chosen();
    const core::Comparison* result = model_.result();
    const bool isDue = row.progress.stage == core::TrialStage::Decided;
    if (result != nullptr)
        inWords_->setText(QString::fromStdString(result->inWords));
    else if (isDue)
        inWords_->setText(model_.fault().isEmpty() ? tr("Working out the result \u2026") : model_.fault());
    else
        inWords_->setText(tr("Result: %1").arg(report::notBeforeWords(row.progress)));
    howFar_->setText(QString::fromStdString(row.progress.inWords));
    showCautions(*cautions_, result == nullptr ? std::vector<std::string>() : result->cautions);
    const bool hasFigures = result != nullptr && result->arms.size() > 1;
    rates_->setVisible(hasFigures);
    difference_->setVisible(hasFigures && !result->pairs.empty());
    if (!hasFigures) return;
    rates_->setFigure(plot::strikeRateFigure(*result), report::notesOnRates(*result));
    if (!result->pairs.empty())
        difference_->setFigure(plot::differenceFigure(*result, 0), report::notesOnDifference(*result, 0));
}

void TrialDetails::showCounts() {
    const core::TrialProgress& progress = model_.chosen()->progress;
    const auto fill = [](const Counts& counts, const std::vector<core::ArmCounts>& arms, bool isByBlock) {
        report::Table table = report::countsTable(arms, isByBlock);
        if (isByBlock) {
            joinFirstTwo(table.headings);
            for (QStringList& row : table.rows) joinFirstTwo(row);
        }
        counts.rows->show({.title = {}, .headings = table.headings, .rows = table.rows});
        counts.table->setVisible(!arms.empty());
        if (!arms.empty()) fitToRows(*counts.table);
        counts.table->resizeColumnsToContents();
    };
    fill(arms_, progress.arms, false);
    fill(blocks_, progress.armsByBlock, true);
    countsHeading_->setVisible(!progress.arms.empty());
    blinded_->setVisible(!progress.isTold);
}

void TrialDetails::showDesign() {
    const TrialRow& row = *model_.chosen();
    QStringList lines;
    for (const report::Fact& fact : report::designFacts(row.trial, context_.workspace.shelves()))
        lines << tr("%1: %2", "what, value").arg(fact.label, fact.value);
    design_->setText(lines.isEmpty() ? tr("It was not planned here: batches bear its name.") : lines.join(u'\n'));
    map_->show(row.trial, row.progress.isTold,
               row.trial.batches.empty() ? tr("Nothing is dealt.")
                                         : tr("Everything is stuck; arms are not told before the horizon."));
}

void TrialDetails::showLessons() {
    const TrialRow& row = *model_.chosen();
    QStringList changes;
    for (const core::TrialChange& change : row.trial.changes) changes << report::changeWords(change);
    changes_->setText(changes.isEmpty() ? tr("Nothing.") : changes.join(u'\n'));
    notShown_->setText(linesOf(core::notShownBy(row.trial, row.progress, model_.result())));
    next_->setText(linesOf(core::whatNext(row.trial, row.progress, model_.result())));
}

}  // namespace desktop
