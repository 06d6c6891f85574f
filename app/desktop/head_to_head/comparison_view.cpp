// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/comparison_view.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>
#include <initializer_list>

#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/head_to_head/arm_table_model.h"
#include "app/desktop/head_to_head/head_to_head_model.h"
#include "app/desktop/head_to_head/pair_figures.h"
#include "app/desktop/head_to_head/pair_table.h"
#include "app/desktop/head_to_head/records_parts.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/plot/difference_figure.h"
#include "app/plot/forest_figure.h"
#include "app/plot/number_text.h"
#include "app/plot/rooted_by_day_figure.h"
#include "app/plot/speed_figure.h"
#include "app/plot/strike_rate_figure.h"
#include "app/report/methods/notes.h"
#include "app/report/several_arms_words.h"

namespace desktop {

ComparisonView::ComparisonView(HeadToHeadModel& model, const PageContext& context, QWidget* parent)
    : QStackedWidget(parent), model_(model), arms_(new ArmTableModel(this)) {
    addWidget(makeAnswer(context));
    addWidget(makeEmpty());
    connect(&model_, &HeadToHeadModel::viewChanged, this, &ComparisonView::showView);
    showView();
}

QWidget* ComparisonView::makeAnswer(const PageContext& context) {
    inWords_ = answerLabel(QStringLiteral("comparisonInWords"));
    cautions_ = cautionLabel(QStringLiteral("comparisonCautions"));
    armTable_ = makeTable(QStringLiteral("armTable"), tr("The arms and their figures"));
    armTable_->setModel(arms_);
    several_ = new QLabel;
    several_->setObjectName(QStringLiteral("severalArms"));
    several_->setWordWrap(true);
    rates_ = makeFigure(QStringLiteral("ratesFigure"), context);
    difference_ = makeFigure(QStringLiteral("differenceFigure"), context);
    curves_ = makeFigure(QStringLiteral("curvesFigure"), context);
    speed_ = makeFigure(QStringLiteral("speedFigure"), context);
    forest_ = makeFigure(QStringLiteral("forestFigure"), context);
    records_ = new RecordsParts(context);
    connect(records_, &RecordsParts::said, this, &ComparisonView::said);

    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(0, 0, fontMetrics().height() / 2, 0);
    layout->setSpacing(fontMetrics().height() * 2 / 3);
    layout->addWidget(inWords_);
    layout->addWidget(cautions_);
    layout->addWidget(armTable_);
    layout->addWidget(several_);
    layout->addWidget(rates_);
    addPairChooser(*layout);
    for (QWidget* part : std::initializer_list<QWidget*>{difference_, curves_, speed_, forest_, records_})
        layout->addWidget(part);
    addAllFigures(*layout);
    layout->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setObjectName(QStringLiteral("answerScroll"));
    scroll->setAccessibleName(tr("The answer, in words and figures"));
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(content);
    return scroll;
}

QWidget* ComparisonView::makeEmpty() {
    auto* empty = new QWidget;
    emptyTitle_ = largeLabel(QStringLiteral("comparisonEmptyTitle"), 1.3);
    emptyTitle_->setAlignment(Qt::AlignCenter);
    emptyTitle_->setWordWrap(true);
    emptyTitle_->setTextInteractionFlags(Qt::NoTextInteraction);  // words to read, nothing to stop at
    emptyText_ = new QLabel;
    emptyText_->setAlignment(Qt::AlignCenter);
    emptyText_->setWordWrap(true);
    emptyButton_ = new QPushButton(tr("New session"));
    connect(emptyButton_, &QPushButton::clicked, this, &ComparisonView::sessionWanted);
    auto* layout = new QVBoxLayout(empty);
    layout->addStretch(2);
    layout->addWidget(emptyTitle_);
    layout->addWidget(emptyText_);
    layout->addSpacing(fontMetrics().height() / 2);
    layout->addWidget(emptyButton_, 0, Qt::AlignHCenter);
    layout->addStretch(3);
    return empty;
}

QTableView* ComparisonView::makeTable(const QString& name, const QString& accessibleName) {
    auto* table = new QTableView;
    table->setObjectName(name);
    table->setAccessibleName(accessibleName);
    giveTableManners(*table);
    table->horizontalHeader()->setStretchLastSection(false);
    table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    copyOnRequest(*table, [this](const QString& sentence) { emit said(sentence); });
    return table;
}

void ComparisonView::addAllFigures(QVBoxLayout& layout) {
    pairTable_ = new PairTable;
    pairTable_->setObjectName(QStringLiteral("pairTable"));
    pairTable_->setAccessibleName(tr("All figures of this comparison"));
    connect(pairTable_, &PairTable::said, this, &ComparisonView::said);
    auto* how = quietLabel(QStringLiteral("pairTableHow"));
    how->setText(tr("Enter or a double-click on a row shows how its figure is worked out."));
    allFigures_ = new QPushButton(tr("Show &all figures"));
    allFigures_->setObjectName(QStringLiteral("allFigures"));
    allFigures_->setCheckable(true);
    connect(allFigures_, &QPushButton::toggled, this, [this, how](bool on) {
        allFigures_->setText(on ? tr("Hide &all figures") : tr("Show &all figures"));
        how->setVisible(on);
        pairTable_->setVisible(on);
        fitToRows(*pairTable_);
    });
    how->hide();
    pairTable_->hide();
    layout.addWidget(allFigures_, 0, Qt::AlignLeft);
    layout.addWidget(how);
    layout.addWidget(pairTable_);
}

FigurePanel* ComparisonView::makeFigure(const QString& name, const PageContext& context) {
    auto* panel = new FigurePanel(name, context);
    connect(panel, &FigurePanel::said, this, &ComparisonView::said);
    return panel;
}

void ComparisonView::addPairChooser(QVBoxLayout& layout) {
    pair_ = new QComboBox;
    pair_->setObjectName(QStringLiteral("pair"));
    pair_->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    connect(pair_, &QComboBox::currentIndexChanged, this, &ComparisonView::showPair);
    auto* caption = new QLabel(tr("&Show"));
    caption->setBuddy(pair_);
    pairRow_ = new QWidget;
    auto* row = new QHBoxLayout(pairRow_);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(caption);
    row->addWidget(pair_);
    row->addStretch();
    layout.addWidget(pairRow_);
}

void ComparisonView::showView() {
    const HeadToHeadView& view = model_.view();
    if (view.comparison == nullptr && view.fault.isEmpty() && (view.isWorking || view.isStopped)) {
        shown_.reset();
        return showEmpty(view.isStopped   ? tr("Stopped")
                         : view.isReading ? tr("Reading the records \u2026")
                                          : QString(),
                         {}, false);
    }
    if (view.isWorking || (view.comparison != nullptr && view.comparison == shown_)) return;  // what stood there stays
    shown_ = view.comparison;
    if (!view.fault.isEmpty()) return showEmpty(tr("This can't be compared"), view.fault, false);
    if (shown_ == nullptr || shown_->arms.empty())
        return showEmpty(
            tr("Nothing to compare yet"),
            tr("Once batches of two methods, treatments, media or kinds of cutting are in the logbook, this page says "
               "which roots better, by how much, and how sure that is."),
            true);
    if (shown_->arms.size() < 2)
        return showEmpty(
            tr("Only one arm: %1").arg(QString::fromStdString(shown_->arms.front().name)),
            tr("A comparison takes two. Choose another plant, trial or factor above, or stick a batch and split it by "
               "chance over two stations."),
            true);
    showAnswer(*shown_);
}

void ComparisonView::showEmpty(const QString& title, const QString& text, bool offersSession) {
    emptyTitle_->setText(title);
    emptyText_->setText(text);
    emptyButton_->setVisible(offersSession);
    setCurrentIndex(1);
}

void ComparisonView::showAnswer(const core::Comparison& comparison) {
    setCurrentIndex(0);
    inWords_->setText(QString::fromStdString(comparison.inWords));
    showCautions(*cautions_, comparison.cautions);
    arms_->show(comparison.arms, comparison.interval);
    fitToRows(*armTable_);
    several_->setText(comparison.severalArms ? report::severalArmsText(*comparison.severalArms) : QString());
    several_->setVisible(comparison.severalArms.has_value());
    rates_->setFigure(plot::strikeRateFigure(comparison), report::notesOnRates(comparison));
    speed_->setFigure(plot::speedFigure(comparison), report::notesOnDays(comparison));
    records_->show(comparison);
    fillPairs(comparison);
    showPair();
}

void ComparisonView::fillPairs(const core::Comparison& comparison) {
    const QSignalBlocker quiet(pair_);
    const QString before = pair_->currentText();
    pair_->clear();
    for (int pair = 0; pair < static_cast<int>(comparison.pairs.size()); ++pair)
        pair_->addItem(pairName(comparison, pair));
    pair_->setCurrentIndex(std::max(0, pair_->findText(before)));
    pairRow_->setVisible(comparison.pairs.size() > 1);
}

void ComparisonView::showPair() {
    const int pair = pair_->currentIndex();
    if (shown_ == nullptr || pair < 0) return;
    difference_->setFigure(plot::differenceFigure(*shown_, pair), report::notesOnDifference(*shown_, pair));
    curves_->setFigure(plot::rootedByDayFigure(*shown_), report::notesOnDays(*shown_, pair));
    forest_->setFigure(plot::forestFigure(*shown_, pair), report::notesOnPlants(*shown_, pair));
    pairTable_->show(pairFigures(*shown_, pair), notesOnPair(*shown_, pair));
}

}  // namespace desktop
