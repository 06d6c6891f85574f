// SPDX-License-Identifier: MIT
#include "app/desktop/climate/climate_page.h"

#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/climate/own_bands_dialog.h"
#include "app/desktop/figures/figure_panel.h"
#include "app/desktop/look/look.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/readings/care_dialog.h"
#include "app/desktop/readings/reading_dialog.h"
#include "app/desktop/registry.h"
#include "app/desktop/widgets/chooser.h"
#include "app/desktop/workspace.h"
#include "app/report/sheet.h"
#include "db/actions/station_actions.h"

namespace desktop {

namespace {

void openAndForget(QDialog* dialog) {
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

}  // namespace

ClimatePage::ClimatePage(const PageContext& context, QWidget* parent)
    : Page(parent), context_(context), model_(new ClimateModel(context.workspace, this)) {
    setObjectName(QStringLiteral("climatePage"));
    state_ = quietLabel(QStringLiteral("climateState"));
    stack_ = new QStackedWidget;
    stack_->addWidget(makeCharts());
    stack_->addWidget(makeEmpty());
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(makeChoosers());
    layout->addWidget(makeButtons());
    layout->addWidget(state_);
    layout->addWidget(stack_, 1);
    connect(model_, &ClimateModel::choicesChanged, this, &ClimatePage::showChoices);
    connect(model_, &ClimateModel::viewChanged, this, &ClimatePage::showView);
    connect(model_, &ClimateModel::viewChanged, this, &Page::sheetChanged);
    showView();
}

QWidget* ClimatePage::makeChoosers() {
    auto* bar = new QWidget;
    auto* row = new WrappingRow(bar);
    constexpr int letters = 22;
    station_ = addChooser(*row, QStringLiteral("climateStation"), tr("St&ation"), letters);
    span_ = addChooser(*row, QStringLiteral("climateSpan"), tr("&Time"), letters);
    bands_ = addChooser(*row, QStringLiteral("climateBands"), tr("&Bands of"), letters);
    connect(station_, &QComboBox::activated, model_, &ClimateModel::chooseStation);
    connect(span_, &QComboBox::activated, model_, &ClimateModel::chooseSpan);
    connect(bands_, &QComboBox::activated, model_, &ClimateModel::chooseBands);
    return bar;
}

QPushButton* ClimatePage::makeButton(const QString& name, const QString& text, const QString& hint) {
    auto* button = new QPushButton(text);
    button->setObjectName(name);
    button->setToolTip(hint);
    button->setAutoDefault(true);  // Enter does what Space does
    edits_.push_back(button);
    return button;
}

QWidget* ClimatePage::makeButtons() {
    auto* bar = new QWidget;
    auto* row = new WrappingRow(bar);
    QPushButton* round = makeButton(QStringLiteral("climateRound"), tr("Readings &round\u2026"),
                                    tr("What you read and did, station by station as you walk (Ctrl+E)"));
    QPushButton* reading =
        makeButton(QStringLiteral("climateReading"), tr("&New reading\u2026"), tr("What you read at this station"));
    QPushButton* care =
        makeButton(QStringLiteral("climateCare"), tr("&Care\u2026"), tr("What was done to this station"));
    QPushButton* bands = makeButton(QStringLiteral("climateOwnBands"), tr("&Own bands\u2026"),
                                    tr("Where your cuttings do well, by your own experience"));
    QPushButton* logger =
        makeButton(QStringLiteral("climateLogger"), tr("Readings of a &logger\u2026"),
                   tr("A file that a logger has written, with its columns and units matched once (Ctrl+Shift+E)"));
    connect(logger, &QPushButton::clicked, this, [this] { emit taskWanted(task::logger); });
    connect(round, &QPushButton::clicked, this, [this] { emit taskWanted(task::reading); });
    connect(reading, &QPushButton::clicked, this, &ClimatePage::openReading);
    connect(care, &QPushButton::clicked, this, &ClimatePage::openCare);
    connect(bands, &QPushButton::clicked, this, &ClimatePage::openBands);
    for (QPushButton* button : edits_) row->addWidget(button);
    return bar;
}

QWidget* ClimatePage::makeCharts() {
    auto* content = new QWidget;
    charts_ = new QVBoxLayout(content);
    charts_->setContentsMargins(0, 0, fontMetrics().height() / 2, 0);
    charts_->setSpacing(fontMetrics().height() / 2);
    charts_->addStretch();
    auto* scroll = new QScrollArea;
    scroll->setObjectName(QStringLiteral("climateScroll"));
    scroll->setAccessibleName(tr("Charts of this station"));
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidget(content);
    return scroll;
}

QWidget* ClimatePage::makeEmpty() {
    auto* empty = new QWidget;
    emptyTitle_ = largeLabel(QStringLiteral("climateEmptyTitle"), 1.3);
    emptyTitle_->setAlignment(Qt::AlignCenter);
    emptyTitle_->setTextInteractionFlags(Qt::NoTextInteraction);
    emptyText_ = new QLabel;
    emptyText_->setObjectName(QStringLiteral("climateEmptyText"));
    emptyText_->setAlignment(Qt::AlignCenter);
    emptyText_->setWordWrap(true);
    auto* layout = new QVBoxLayout(empty);
    layout->addStretch(2);
    layout->addWidget(emptyTitle_);
    layout->addWidget(emptyText_);
    layout->addStretch(3);
    return empty;
}

void ClimatePage::showChoices() {
    const ClimateView& view = model_->view();
    fillChooser(*station_, view.stations, view.station);
    fillChooser(*span_, view.spans, view.span);
    fillChooser(*bands_, view.bands, view.band);
}

void ClimatePage::showView() {
    const ClimateView& view = model_->view();
    const bool isWritable =
        context_.workspace.hasLogbook() && !context_.workspace.isReadOnly() && model_->station().isSet();
    for (QPushButton* button : edits_) button->setEnabled(isWritable);
    state_->setText(view.isWorking ? tr("Reading \u2026") : QString());
    state_->setVisible(view.isWorking);
    if (view.isWorking && !view.parts.empty()) return;  // what stood there stays until the answer is there
    if (view.parts.empty()) return showEmpty();
    showParts();
    stack_->setCurrentIndex(0);
}

void ClimatePage::showEmpty() {
    const ClimateView& view = model_->view();
    if (view.isWorking)
        emptyTitle_->setText(QString());
    else if (!view.fault.isEmpty())
        emptyTitle_->setText(view.fault);
    else
        emptyTitle_->setText(view.stations.empty() ? tr("No stations yet") : tr("Nothing was read in this time"));
    emptyText_->setText(view.isWorking ? QString()
                        : view.stations.empty()
                            ? tr("The first session makes one.")
                            : tr("This page shows what is measured at a station over time, and what "
                                 "comes of it: vapour pressure deficit, dew point, light of the "
                                 "day, oxygen in water. \u201cReadings round\u201d adds readings; "
                                 "\u201call\u201d shows older ones."));
    stack_->setCurrentIndex(1);
}

void ClimatePage::showParts() {
    for (auto& [quantity, part] : parts_) {
        const bool isShown = std::ranges::any_of(
            model_->view().parts, [&shown = quantity](const ClimatePart& each) { return each.quantity == shown; });
        part.words->setVisible(isShown);
        part.figure->setVisible(isShown);
    }
    for (const ClimatePart& shown : model_->view().parts) {
        Part& part = partOf(shown.quantity);
        part.words->setText(shown.words);
        part.figure->setFigure(shown.figure);
    }
}

ClimatePage::Part& ClimatePage::partOf(core::ClimateQuantity quantity) {
    const auto found = parts_.find(quantity);
    if (found != parts_.end()) return found->second;
    const std::string_view word = core::factsOf(quantity).word;
    const QString name =
        QStringLiteral("climate_") + QString::fromUtf8(word.data(), static_cast<qsizetype>(word.size()));
    auto* words = new QLabel;
    words->setObjectName(name + QStringLiteral("Words"));
    words->setTextFormat(Qt::PlainText);
    words->setWordWrap(true);
    words->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* figure = new FigurePanel(name, context_);
    connect(figure, &FigurePanel::said, this, &Page::said);
    // In the order of quantities, whichever is made first: words and figure of each that stands before it.
    const auto& order = core::allClimateQuantities();
    const auto place = std::ranges::find(order, quantity);
    const auto before =
        std::count_if(order.begin(), place, [&](core::ClimateQuantity other) { return parts_.contains(other); });
    charts_->insertWidget(static_cast<int>(2 * before), words);
    charts_->insertWidget(static_cast<int>(2 * before) + 1, figure);
    return parts_[quantity] = {words, figure};
}

void ClimatePage::activated() {
    station_->setFocus();
}

std::shared_ptr<const report::Sheet> ClimatePage::sheet() const {
    return model_->sheet();
}

void ClimatePage::showEvent(QShowEvent* event) {
    Page::showEvent(event);
    model_->setWatched(true);
}

void ClimatePage::hideEvent(QHideEvent* event) {
    Page::hideEvent(event);
    model_->setWatched(false);
}

void ClimatePage::openReading() {
    openAndForget(new ReadingDialog(context_, model_->station(), this));
}

void ClimatePage::openBands() {
    openAndForget(new OwnBandsDialog(context_, this));
}

void ClimatePage::openCare() {
    const core::Station* station = core::find(context_.workspace.shelves().stations, model_->station());
    if (station == nullptr) return;
    core::Care care;
    care.station = station->id;
    care.doneAt = context_.workspace.clock()();
    const auto keep = [this](const core::Care& done) {
        const db::StationVisit visit{.station = done.station, .readings = {}, .care = {done}, .gone = {}};
        return context_.workspace.run(
            [&](db::Logbook& logbook) { return db::keepVisit(logbook, visit, context_.workspace.clock()()); });
    };
    openAndForget(new CareDialog(care, QString::fromStdString(station->name), context_.workspace.shelves().facts.units,
                                 context_.workspace.today(), keep, this));
}

}  // namespace desktop
