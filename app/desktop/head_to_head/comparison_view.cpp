// SPDX-License-Identifier: MIT
#include "app/desktop/head_to_head/comparison_view.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QTableView>
#include <QVBoxLayout>

#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/figures/figure_table_model.h"
#include "app/desktop/head_to_head/arm_table_model.h"
#include "app/desktop/head_to_head/head_to_head_model.h"
#include "app/desktop/head_to_head/pair_figures.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/plot/difference_figure.h"
#include "app/plot/forest_figure.h"
#include "app/plot/rooted_by_day_figure.h"

namespace desktop {

namespace {

void fitToRows(QTableView& table) {
    int height = table.horizontalHeader()->sizeHint().height() + 2 * table.frameWidth();
    for (int row = 0; row < table.model()->rowCount(); ++row) height += table.rowHeight(row);
    table.resizeColumnsToContents();
    int width = 0;
    for (int column = 0; column < table.model()->columnCount(); ++column) width += table.columnWidth(column);
    if (width > table.viewport()->width()) height += table.horizontalScrollBar()->sizeHint().height();
    table.setFixedHeight(height);
}

}  // namespace

ComparisonView::ComparisonView(HeadToHeadModel& model, const PageContext& context, QWidget* parent)
    : QStackedWidget(parent), model_(model), arms_(new ArmTableModel(this)), figures_(new FigureTableModel(this)) {
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
    difference_ = makeFigure(QStringLiteral("differenceFigure"), context);
    curves_ = makeFigure(QStringLiteral("curvesFigure"), context);
    forest_ = makeFigure(QStringLiteral("forestFigure"), context);
    figureTable_ = makeTable(QStringLiteral("pairTable"), tr("All figures of this comparison"));
    figureTable_->setModel(figures_);
    figureTable_->hide();
    allFigures_ = new QPushButton(tr("Show &all figures"));
    allFigures_->setObjectName(QStringLiteral("allFigures"));
    allFigures_->setCheckable(true);
    connect(allFigures_, &QPushButton::toggled, this, [this](bool on) {
        allFigures_->setText(on ? tr("Hide &all figures") : tr("Show &all figures"));
        figureTable_->setVisible(on);
        fitToRows(*figureTable_);
    });

    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(0, 0, fontMetrics().height() / 2, 0);
    layout->setSpacing(fontMetrics().height() * 2 / 3);
    layout->addWidget(inWords_);
    layout->addWidget(cautions_);
    layout->addWidget(armTable_);
    addPairChooser(*layout);
    layout->addWidget(difference_);
    layout->addWidget(curves_);
    layout->addWidget(forest_);
    layout->addWidget(allFigures_, 0, Qt::AlignLeft);
    layout->addWidget(figureTable_);
    layout->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setObjectName(QStringLiteral("answerScroll"));
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

FigurePanel* ComparisonView::makeFigure(const QString& name, const PageContext& context) {
    auto* panel = new FigurePanel(name, context);
    connect(panel, &FigurePanel::said, this, &ComparisonView::said);
    return panel;
}

void ComparisonView::addPairChooser(QVBoxLayout& layout) {
    pair_ = new QComboBox;
    pair_->setObjectName(QStringLiteral("pair"));
    connect(pair_, &QComboBox::currentIndexChanged, this, &ComparisonView::showPair);
    auto* caption = new QLabel(tr("S&how"));
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
    if (view.isWorking && shown_ == nullptr && view.fault.isEmpty()) return showEmpty({}, {}, false);
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
    arms_->show(comparison.arms);
    fitToRows(*armTable_);
    curves_->setFigure(plot::rootedByDayFigure(comparison));
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
    difference_->setFigure(plot::differenceFigure(*shown_, pair));
    forest_->setFigure(plot::forestFigure(*shown_, pair));
    figures_->show(pairFigures(*shown_, pair));
    fitToRows(*figureTable_);
}

}  // namespace desktop
