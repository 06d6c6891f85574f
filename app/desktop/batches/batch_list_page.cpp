// SPDX-License-Identifier: MIT
#include "app/desktop/batches/batch_list_page.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "app/desktop/batches/batch_table_model.h"
#include "app/desktop/batches/copied_rows.h"
#include "app/desktop/names/plain_text_delegate.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/table_columns.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"

namespace desktop {

namespace {

/// "Batches of Hebe albicans", as rich text; empty when it is no plant, stock plant or station that there is.
QString whoseInWords(const Place& whose, const core::Shelves& shelves) {
    const auto plantName = [&](core::PlantId id) {
        const core::Plant* plant = core::find(shelves.plants, id);
        return plant ? plantNameAsHtml(QString::fromStdString(core::fullName(*plant))) : QString();
    };
    if (whose.kind == Place::Kind::Plant) {
        const QString name = plantName({whose.id});
        return name.isEmpty() ? QString() : BatchListPage::tr("Only batches of %1").arg(name);
    }
    if (whose.kind == Place::Kind::StockPlant) {
        const core::StockPlant* stock = core::find(shelves.stockPlants, core::StockPlantId{whose.id});
        return stock ? BatchListPage::tr("Only batches from the stock plant %1, %2")
                           .arg(QString::fromStdString(stock->label).toHtmlEscaped(), plantName(stock->plant))
                     : QString();
    }
    if (whose.kind != Place::Kind::Station) return {};
    const core::Station* station = core::find(shelves.stations, core::StationId{whose.id});
    return station ? BatchListPage::tr("Only batches at %1").arg(QString::fromStdString(station->name).toHtmlEscaped())
                   : QString();
}

}  // namespace

BatchListPage::BatchListPage(const PageContext& context, QWidget* parent)
    : QWidget(parent), context_(context), model_(new BatchTableModel(this)) {
    build();
    connect(&context_.workspace, &Workspace::logbookChanged, this, &BatchListPage::refresh);
    connect(&context_.workspace, &Workspace::logbookReplaced, this, &BatchListPage::readAll);
    readAll();
}

void BatchListPage::build() {
    filter_ = new QLineEdit;
    filter_->setObjectName(QStringLiteral("batchFilter"));
    filter_->setClearButtonEnabled(true);
    filter_->setPlaceholderText(tr("part of a code, plant, method or station; or open, closed"));
    filter_->installEventFilter(this);
    connect(filter_, &QLineEdit::textChanged, this, [this](const QString& words) {
        keepCurrent([&] { model_->setFilter(words); });
        showCounts();
    });
    auto* caption = new QLabel(tr("&Filter"));
    caption->setBuddy(filter_);
    counts_ = new QLabel;
    counts_->setObjectName(QStringLiteral("batchCounts"));
    auto* top = new QHBoxLayout;
    top->addWidget(caption);
    top->addWidget(filter_, 1);
    top->addSpacing(fontMetrics().height());
    top->addWidget(counts_);

    stack_ = new QStackedWidget;
    stack_->addWidget(makeTable());
    stack_->addWidget(makeEmpty());
    columnsButton_ = new QPushButton(tr("&Columns"));
    columnsButton_->setObjectName(QStringLiteral("batchColumns"));
    columnsButton_->setToolTip(tr("Which columns, in which order, how wide (Shift+F10 in the table)"));
    connect(columnsButton_, &QPushButton::clicked, this,
            [this] { columns_->showMenu(columnsButton_->mapToGlobal(QPoint(0, columnsButton_->height()))); });
    top->addWidget(columnsButton_);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(makeOnly());
    layout->addLayout(top);
    layout->addWidget(stack_, 1);
}

QWidget* BatchListPage::makeTable() {
    table_ = new QTableView;
    table_->setObjectName(QStringLiteral("batchTable"));
    table_->setAccessibleName(tr("All batches"));
    table_->setModel(model_);
    table_->setItemDelegate(new PlainTextDelegate(static_cast<int>(BatchColumn::Plant), table_));
    giveTableManners(*table_);
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    table_->horizontalHeader()->setSortIndicator(static_cast<int>(BatchColumn::Day), Qt::DescendingOrder);
    columns_ = new TableColumns(*table_, usualWidths(), static_cast<int>(BatchColumn::Plant), context_.memory,
                                QStringLiteral("batch_columns"));
    table_->setSortingEnabled(true);
    table_->installEventFilter(this);
    copyOnRequest(*table_, [this](const QString& sentence) { emit said(sentence); });
    connect(table_, &QTableView::doubleClicked, this, &BatchListPage::openCurrent);
    return table_;
}

std::vector<int> BatchListPage::usualWidths() const {
    // What usually stands in a column, or its heading with the mark of sorting.
    const core::Date longDay{std::chrono::year{2026}, std::chrono::month{12}, std::chrono::day{28}};
    const std::array<QString, batchColumns> usual{QStringLiteral("B260047K"),
                                                  plot::shortDateText(longDay),
                                                  QStringLiteral("Salvia rosmarinus"),
                                                  tr("aerated water"),
                                                  tr("Bench west 2"),
                                                  {},
                                                  {},
                                                  {},
                                                  {},
                                                  {},
                                                  plot::percentText(100, 100),
                                                  plot::limitsText({.low = 0.85, .high = 1.0}),
                                                  tr("open: so far")};
    std::vector<int> widths;
    for (int column = 0; column < batchColumns; ++column) {
        const QString heading = model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
        const int text = fontMetrics().horizontalAdvance(usual[static_cast<std::size_t>(column)]);
        widths.push_back(std::max(text, fontMetrics().horizontalAdvance(heading)) + fontMetrics().height() * 3 / 4);
    }
    return widths;
}

QWidget* BatchListPage::makeOnly() {
    onlyRow_ = new QWidget;
    onlyWords_ = new QLabel;
    onlyWords_->setObjectName(QStringLiteral("onlyWords"));
    onlyWords_->setTextFormat(Qt::RichText);
    onlyWords_->setWordWrap(true);
    auto* all = new QPushButton(tr("Show &all batches"));
    all->setObjectName(QStringLiteral("showAllBatches"));
    connect(all, &QPushButton::clicked, this, &BatchListPage::showAllBatches);
    auto* shelf = new QPushButton(tr("On its s&helf"));
    shelf->setObjectName(QStringLiteral("onItsShelf"));
    connect(shelf, &QPushButton::clicked, this,
            [this] { emit placeWanted({.page = QStringLiteral("shelves"), .kind = only_.kind, .id = only_.id}); });
    auto* layout = new QHBoxLayout(onlyRow_);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(onlyWords_, 1);
    layout->addWidget(shelf);
    layout->addWidget(all);
    onlyRow_->hide();
    return onlyRow_;
}

bool BatchListPage::showOnly(const Place& whose) {
    const QString words = whoseInWords(whose, context_.workspace.shelves());
    if (words.isEmpty() && whose.kind != Place::Kind::Page) return false;
    only_ = {.page = {}, .kind = whose.kind, .id = whose.id};
    onlyWords_->setText(words);
    onlyRow_->setVisible(!words.isEmpty());
    if (whose.kind != Place::Kind::Page) filter_->clear();
    keepCurrent([&] { model_->setOnly(only_); });
    showCounts();
    emit onlyChanged();
    return true;
}

void BatchListPage::showAllBatches() {
    showOnly({});
    focusTable();
}

QWidget* BatchListPage::makeEmpty() {
    auto* empty = new QWidget;
    emptyTitle_ = largeLabel(QStringLiteral("emptyTitle"), 1.3);
    emptyTitle_->setAlignment(Qt::AlignCenter);
    emptyText_ = new QLabel;
    emptyText_->setAlignment(Qt::AlignCenter);
    emptyText_->setWordWrap(true);
    emptyButton_ = new QPushButton;
    emptyButton_->setObjectName(QStringLiteral("emptyButton"));
    connect(emptyButton_, &QPushButton::clicked, this, [this] {
        if (model_->total() == 0) return emit sessionWanted();
        filter_->clear();
        showAllBatches();
    });
    auto* layout = new QVBoxLayout(empty);
    layout->addStretch(2);
    layout->addWidget(emptyTitle_);
    layout->addWidget(emptyText_);
    layout->addSpacing(fontMetrics().height() / 2);
    layout->addWidget(emptyButton_, 0, Qt::AlignHCenter);
    layout->addStretch(3);
    return empty;
}

void BatchListPage::focusTable() {
    if (stack_->currentIndex() == 1) return emptyButton_->setFocus();
    if (!table_->currentIndex().isValid() && model_->rowCount() > 0) chooseRow(*table_, 0);
    table_->setFocus(Qt::OtherFocusReason);
}

void BatchListPage::focusFilter() {
    filter_->setFocus(Qt::ShortcutFocusReason);
    filter_->selectAll();
}

bool BatchListPage::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    const bool isEnter = key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter;
    if (watched == table_ && isEnter) {
        openCurrent();
        return true;
    }
    if (watched == filter_ && (isEnter || key->key() == Qt::Key_Down)) {
        focusTable();
        return true;
    }
    if (watched == filter_ && key->key() == Qt::Key_Escape && !filter_->text().isEmpty()) {
        filter_->clear();
        return true;
    }
    if (key->key() == Qt::Key_Escape && only_.kind != Place::Kind::Page) {
        showAllBatches();
        return true;
    }
    return QWidget::eventFilter(watched, event);
}

void BatchListPage::readAll() {
    keepCurrent([&] {
        if (context_.workspace.hasLogbook())
            model_->show(context_.workspace.batchLines(), context_.workspace.shelves());
        else
            model_->show({}, {});
    });
    showCounts();
}

void BatchListPage::refresh(const db::Changes& changes) {
    // A plant's or station's new name stands in many rows: then everything is read anew.
    if (!(context_.workspace.shelves() == model_->shelves())) return readAll();
    keepCurrent([&] { model_->refresh(changes.batches, context_.workspace.batchLinesOf(changes.batches)); });
    showCounts();
}

void BatchListPage::showCounts() {
    const int shown = model_->rowCount();
    const int total = model_->total();
    counts_->setText(shown == total
                         ? plot::batchesText(total)
                         : tr("%1 of %2", "12 of 340 batches").arg(plot::countText(shown), plot::batchesText(total)));
    stack_->setCurrentIndex(shown == 0 ? 1 : 0);
    if (total == 0) {
        emptyTitle_->setText(tr("No batches yet"));
        emptyText_->setText(
            tr("Every batch that you stick will be a row here, with what rooted, what was lost, and how sure its "
               "strike rate is."));
        emptyButton_->setText(tr("New session"));
    } else if (filter_->text().isEmpty()) {
        emptyTitle_->setText(tr("No batches of it yet"));
        emptyText_->setText(onlyWords_->text());
        emptyButton_->setText(tr("Show all batches"));
    } else {
        emptyTitle_->setText(tr("No batch has \u201c%1\u201d").arg(filter_->text().simplified()));
        emptyText_->setText(tr("The filter looks in code, plant, method, station and state."));
        emptyButton_->setText(tr("Clear filter"));
    }
}

void BatchListPage::openCurrent() {
    const core::BatchId batch = model_->batchAt(table_->currentIndex().row());
    if (batch.isSet()) emit batchChosen(batch);
}

void BatchListPage::keepCurrent(const std::function<void()>& change) {
    const core::BatchId current = model_->batchAt(table_->currentIndex().row());
    change();
    const int row = model_->rowOf(current);
    if (row >= 0)
        chooseRow(*table_, row);
    else if (model_->rowCount() > 0)
        chooseRow(*table_, 0);
}

}  // namespace desktop
