// SPDX-License-Identifier: MIT
#include "app/desktop/shelves/plant_facts_panel.h"

#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "app/desktop/names/text_labels.h"
#include "app/desktop/shelves/plant_facts_model.h"

namespace desktop {

namespace {

constexpr int plantSidesFrom = 110;  // average letters of width
constexpr int leastLines = 6;

QLabel* plantText(const QString& name, const QString& text = {}) {
    auto* label = new QLabel(text);
    label->setObjectName(name);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    label->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

QGridLayout* linesOf(const QFontMetrics& metrics) {
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(metrics.height());
    grid->setVerticalSpacing(metrics.height() / 5);
    grid->setColumnStretch(1, 5);
    grid->setColumnStretch(2, 3);
    return grid;
}

}  // namespace

PlantFactsPanel::PlantFactsPanel(const PageContext& context, QWidget* parent)
    : QScrollArea(parent),
      model_(new PlantFactsModel(context.workspace, this)),
      sides_(new QBoxLayout(QBoxLayout::LeftToRight)) {
    setObjectName(QStringLiteral("plantFacts"));
    setAccessibleName(tr("What is known of the plant"));
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::StrongFocus);  // it scrolls by the arrow keys
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    build();
    fit();
    connect(model_, &PlantFactsModel::told, this, &PlantFactsPanel::tell);
    tell();
}

void PlantFactsPanel::build() {
    const auto side = [this](QWidget*& whole, QLayout* lines, const QString& title,
                             std::initializer_list<QWidget*> above, std::initializer_list<QWidget*> below) {
        whole = new QWidget;
        auto* layout = new QVBoxLayout(whole);
        layout->setContentsMargins(0, 0, 0, 0);
        QLabel* head = largeLabel({}, 1.1);
        head->setText(title);
        layout->addWidget(head);
        for (QWidget* each : above) layout->addWidget(each);
        layout->addLayout(lines);
        for (QWidget* each : below) layout->addWidget(each);
        layout->addStretch(1);
        sides_->addWidget(whole, 1);
    };
    printedLines_ = linesOf(fontMetrics());
    ownLines_ = linesOf(fontMetrics());
    heading_ = plantText(QStringLiteral("plantFactsHeading"));
    citations_ = quietLabel(QStringLiteral("plantFactsCitations"));
    citations_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    plannedBy_ = plantText(QStringLiteral("plantFactsPlannedBy"));
    side(printed_, printedLines_, tr("What is printed of it"), {heading_}, {citations_});
    side(own_, ownLines_, tr("Your own records"), {}, {plannedBy_});
    sides_->setSpacing(fontMetrics().height());
    sides_->setContentsMargins(0, fontMetrics().height() / 2, 0, 0);
    auto* content = new QWidget;
    content->setLayout(sides_);
    setWidget(content);
}

void PlantFactsPanel::showThing(std::int64_t id) {
    model_->show({id});
}

void PlantFactsPanel::tell() {
    const core::PlantFacts* facts = model_->facts();
    widget()->setVisible(facts != nullptr);
    if (facts == nullptr) return;
    const report::PlantWords words = report::plantWords(*facts);
    heading_->setText(words.heading);
    showLines(*printedLines_, words.printed, QStringLiteral("plantPrinted"));
    citations_->setText(words.citations.join(u'\n'));
    citations_->setVisible(!words.citations.isEmpty());
    showLines(*ownLines_, words.own, QStringLiteral("plantOwn"));
    plannedBy_->setText(words.plannedBy.join(u'\n'));
}

void PlantFactsPanel::showLines(QGridLayout& grid, const std::vector<report::PlantFactLine>& lines,
                                const QString& name) {
    while (QLayoutItem* item = grid.takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (std::size_t row = 0; row < lines.size(); ++row) {
        const int at = static_cast<int>(row);
        QLabel* what = quietLabel({});
        what->setText(lines[row].what);
        what->setAlignment(Qt::AlignLeft | Qt::AlignTop);
        what->setMinimumWidth(fontMetrics().averageCharWidth() * 15);
        QLabel* source = quietLabel(QStringLiteral("%1Source_%2").arg(name).arg(at));
        source->setText(lines[row].source);
        source->setAlignment(Qt::AlignLeft | Qt::AlignTop);
        grid.addWidget(what, at, 0);
        grid.addWidget(plantText(QStringLiteral("%1_%2").arg(name).arg(at), lines[row].figure), at, 1);
        grid.addWidget(source, at, 2);
    }
}

void PlantFactsPanel::fit() {
    const bool isWide = width() >= fontMetrics().averageCharWidth() * plantSidesFrom;
    sides_->setDirection(isWide ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    setMinimumHeight(fontMetrics().lineSpacing() * leastLines);
}

void PlantFactsPanel::resizeEvent(QResizeEvent* event) {
    fit();
    QScrollArea::resizeEvent(event);
}

void PlantFactsPanel::showEvent(QShowEvent* event) {
    QScrollArea::showEvent(event);
    model_->setWatched(true);
}

void PlantFactsPanel::hideEvent(QHideEvent* event) {
    QScrollArea::hideEvent(event);
    model_->setWatched(false);
}

void PlantFactsPanel::changeEvent(QEvent* event) {
    QScrollArea::changeEvent(event);
    if (event->type() == QEvent::FontChange) fit();
}

}  // namespace desktop
