// SPDX-License-Identifier: MIT
#include "app/desktop/worth_it/worth_it_view.h"

#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QTableView>
#include <QVBoxLayout>
#include <initializer_list>

#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/figures/figure_table_model.h"
#include "app/desktop/head_to_head/pair_table.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/worth_it/missing_prices.h"
#include "app/desktop/worth_it/worth_it_model.h"
#include "app/plot/chance_figure.h"
#include "app/plot/cost_parts_figure.h"
#include "app/plot/cost_text.h"
#include "app/plot/strike_plane_figure.h"
#include "app/report/methods/notes.h"
#include "app/report/worth_words.h"

namespace desktop {

WorthItView::WorthItView(WorthItModel& model, const PageContext& context, QWidget* parent)
    : QStackedWidget(parent), model_(model) {
    addWidget(makeAnswer(context));
    addWidget(makeEmpty());
    connect(&model_, &WorthItModel::stateChanged, this, &WorthItView::showState);
    showState();
}

QWidget* WorthItView::makeAnswer(const PageContext& context) {
    headline_ = largeLabel(QStringLiteral("worthHeadline"), 1.3);
    headline_->setWordWrap(true);
    headline_->setTextInteractionFlags(Qt::NoTextInteraction);  // the sentence below can be copied
    inWords_ = answerLabel(QStringLiteral("worthInWords"));
    cautions_ = cautionLabel(QStringLiteral("worthCautions"));
    missing_ = new MissingPrices;
    connect(missing_, &MissingPrices::pricesWanted, this, &WorthItView::pricesWanted);
    methods_ = makeTable(QStringLiteral("worthMethods"), tr("What a plant costs by each method"));
    parts_ = makeFigure(QStringLiteral("costPartsFigure"), context);
    plane_ = makeFigure(QStringLiteral("strikePlaneFigure"), context);
    payOff_ = makeFigure(QStringLiteral("payOffFigure"), context);
    plantParts_ = makeFigure(QStringLiteral("plantCostPartsFigure"), context);

    auto* content = new QWidget;
    auto* layout = new QVBoxLayout(content);
    layout->setContentsMargins(0, 0, fontMetrics().height() / 2, 0);
    layout->setSpacing(fontMetrics().height() * 2 / 3);
    for (QWidget* part : std::initializer_list<QWidget*>{headline_, inWords_, cautions_, missing_, methods_.view,
                                                         parts_, plane_, payOff_})
        layout->addWidget(part);
    addRest(*layout);
    layout->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setObjectName(QStringLiteral("worthScroll"));
    scroll->setAccessibleName(tr("The answer, in words and figures"));
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(content);
    return scroll;
}

void WorthItView::addRest(QVBoxLayout& layout) {
    plantHeading_ = makeWords(QStringLiteral("worthByPlant"));
    plantHeading_->setText(tr("By plant: each method with each plant, on its own records."));
    byPlant_ = makeTable(QStringLiteral("worthPlants"), tr("What a plant costs, by plant and method"));
    byPlant_.view->setItemDelegateForColumn(0, new PlantNameDelegate(byPlant_.view));
    stoodEmptyHeading_ = makeWords(QStringLiteral("worthStoodEmpty"));
    stoodEmpty_ = makeTable(QStringLiteral("stoodEmptyTable"), tr("What stood empty and what it cost"));
    for (QWidget* part : std::initializer_list<QWidget*>{plantHeading_, byPlant_.view, plantParts_, stoodEmptyHeading_,
                                                         stoodEmpty_.view})
        layout.addWidget(part);
}

QWidget* WorthItView::makeEmpty() {
    auto* empty = new QWidget;
    emptyTitle_ = largeLabel(QStringLiteral("worthEmptyTitle"), 1.3);
    emptyTitle_->setAlignment(Qt::AlignCenter);
    emptyTitle_->setWordWrap(true);
    emptyTitle_->setTextInteractionFlags(Qt::NoTextInteraction);  // words to read, nothing to stop at
    emptyText_ = new QLabel;
    emptyText_->setObjectName(QStringLiteral("worthEmptyText"));
    emptyText_->setAlignment(Qt::AlignCenter);
    emptyText_->setWordWrap(true);
    session_ = new QPushButton(tr("New session"));
    prices_ = new QPushButton(tr("Write down prices"));
    prices_->setObjectName(QStringLiteral("worthEmptyPrices"));
    connect(session_, &QPushButton::clicked, this, &WorthItView::sessionWanted);
    connect(prices_, &QPushButton::clicked, this, &WorthItView::pricesWanted);
    auto* layout = new QVBoxLayout(empty);
    layout->addStretch(2);
    layout->addWidget(emptyTitle_);
    layout->addWidget(emptyText_);
    layout->addSpacing(fontMetrics().height() / 2);
    layout->addWidget(session_, 0, Qt::AlignHCenter);
    layout->addWidget(prices_, 0, Qt::AlignHCenter);
    layout->addStretch(3);
    return empty;
}

WorthItView::WorthTable WorthItView::makeTable(const QString& name, const QString& accessibleName) {
    auto* table = new QTableView;
    table->setObjectName(name);
    table->setAccessibleName(accessibleName);
    auto* model = new FigureTableModel(table);
    table->setModel(model);
    giveTableManners(*table);
    table->horizontalHeader()->setStretchLastSection(false);
    table->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    copyOnRequest(*table, [this](const QString& sentence) { emit said(sentence); });
    return {table, model};
}

FigurePanel* WorthItView::makeFigure(const QString& name, const PageContext& context) {
    auto* panel = new FigurePanel(name, context);
    connect(panel, &FigurePanel::said, this, &WorthItView::said);
    return panel;
}

QLabel* WorthItView::makeWords(const QString& name) {
    auto* words = new QLabel;
    words->setObjectName(name);
    words->setTextFormat(Qt::PlainText);
    words->setWordWrap(true);
    words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return words;
}

void WorthItView::fill(const WorthTable& table, plot::FigureTable figures, int columnsOfWords) {
    table.view->setVisible(!figures.rows.empty());
    table.model->show(std::move(figures), columnsOfWords);
    fitToRows(*table.view);
}

void WorthItView::showState() {
    const WorthItState& state = model_.state();
    if (state.worth == nullptr && state.fault.isEmpty() && (state.isWorking || state.isStopped)) {
        shown_.reset();
        return showEmpty(state.isStopped   ? tr("Stopped")
                         : state.isReading ? tr("Reading the records \u2026")
                                           : QString(),
                         {});
    }
    if (state.isWorking) return;  // what stood there stays
    if (state.worth != nullptr && state.worth == shown_ && state.pair == shownPair_) return showPayOff();
    shown_ = state.worth;
    shownPair_ = state.pair;
    if (!state.fault.isEmpty()) return showEmpty(tr("This can\u2019t be worked out"), state.fault);
    if (shown_ == nullptr || !state.hasBatches)
        return showEmpty(
            tr("Nothing to reckon with yet"),
            tr("Once batches are in the logbook and prices beside them, this page says what a rooted plant "
               "costs by each method, and whether the dearer one is worth it."));
    if (!state.isAnythingPriced)
        return showEmpty(
            tr("No prices yet"),
            tr("First write down what only one of your methods needs, with the years that it lasts: the tub, "
               "the pump, the dome. Then what is used up (medium, hormone, labels), what draws power and "
               "the tariff, the minutes that work takes, and what an hour is worth to you; it may be "
               "nothing."),
            true);
    showWorth(*shown_);
}

void WorthItView::showEmpty(const QString& title, const QString& text, bool leadsToPrices) {
    emptyTitle_->setText(title);
    emptyText_->setText(text);
    const bool hasButton = !text.isEmpty() && model_.state().fault.isEmpty();
    session_->setVisible(hasButton && !leadsToPrices);
    prices_->setVisible(hasButton && leadsToPrices);
    setCurrentIndex(1);
}

void WorthItView::showWorth(const core::Worth& worth) {
    setCurrentIndex(0);
    const std::string& currency = model_.shelves().facts.currency;
    showCautions(*cautions_, worth.cautions);
    missing_->showSentences(worth.missing);
    const std::vector<core::WorthOfMethod> methods = report::methodsToShow(worth, shownPair_);
    fill(methods_, report::worthTable(methods, false, worth.level, currency), 1);
    parts_->setFigure(
        plot::costPartsFigure({.methods = methods, .hasPlants = false, .currency = currency, .level = worth.level}),
        report::notesOnCosts(worth, methods));
    const bool hasPlants = !worth.byPlant.empty();
    plantHeading_->setVisible(hasPlants);
    plantParts_->setVisible(hasPlants);
    fill(byPlant_, report::worthTable(worth.byPlant, true, worth.level, currency), 2);
    plantParts_->setFigure(
        plot::costPartsFigure(
            {.methods = worth.byPlant, .hasPlants = true, .currency = currency, .level = worth.level}),
        report::notesOnCosts(worth, worth.byPlant));
    stoodEmptyHeading_->setVisible(!worth.stoodEmpty.empty());
    stoodEmptyHeading_->setText(
        tr("What stood empty cost %1 in all: on these days no cutting stood where it belongs. No batch bears that.")
            .arg(plot::costText(report::sumOf(worth.stoodEmpty), currency)));
    fill(stoodEmpty_, report::stoodEmptyTable(worth.stoodEmpty, model_.shelves()), 2);
    if (shownPair_ < 0) return hidePair();
    showPair(model_.pair(), worth.level);
}

void WorthItView::hidePair() {
    headline_->setText(shown_->methods.empty() ? tr("Nothing stuck in this time")
                                               : tr("Only one method: it takes two to say which is worth it"));
    inWords_->setText(QString::fromStdString(shown_->inWords));
    inWords_->setVisible(!shown_->inWords.empty());
    for (QWidget* part : std::initializer_list<QWidget*>{plane_, payOff_}) part->hide();
}

void WorthItView::showPair(const core::WorthOfPair& pair, double level) {
    headline_->setText(report::verdictHeadline(pair));
    inWords_->setText(QString::fromStdString(pair.inWords));
    inWords_->show();
    plane_->setFigure(plot::strikePlaneFigure(pair, level), report::notesOnWorth(*shown_, shownPair_));
    plane_->show();
    showPayOff();
}

void WorthItView::showPayOff() {
    const WorthItState& state = model_.state();
    const bool isShown = state.pair >= 0 && state.payOff != nullptr && model_.pair().breakEven;
    payOff_->setVisible(isShown);
    if (isShown)
        payOff_->setFigure(plot::chanceFigure(report::paidOffCurve(model_.pair(), *state.payOff, state.worth->level)),
                           report::notesOnPayOff(*state.worth, state.pair));
}

}  // namespace desktop
