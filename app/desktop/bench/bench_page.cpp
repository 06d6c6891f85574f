// SPDX-License-Identifier: MIT
#include "app/desktop/bench/bench_page.h"

#include <QEvent>
#include <QHeaderView>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QSplitter>
#include <QStackedWidget>
#include <QStyledItemDelegate>
#include <QTableView>
#include <QTreeView>
#include <QVBoxLayout>
#include <algorithm>

#include "app/desktop/bench/attention_panel.h"
#include "app/desktop/bench/behind_search.h"
#include "app/desktop/bench/bench_view.h"
#include "app/desktop/bench/due_model.h"
#include "app/desktop/bench/empty_bench.h"
#include "app/desktop/bench/fill_delegate.h"
#include "app/desktop/bench/station_model.h"
#include "app/desktop/look/look.h"
#include "app/desktop/losses/suspects_dialog.h"
#include "app/desktop/names/plant_name_delegate.h"
#include "app/desktop/printing/printed_at.h"
#include "app/desktop/registry.h"
#include "app/desktop/widgets/headline.h"
#include "app/desktop/widgets/table_manners.h"
#include "app/desktop/workspace.h"
#include "app/plot/number_text.h"
#include "app/report/check_sheet.h"
#include "core/due/due_today.h"

namespace desktop {

namespace {

/// Rows as high as those of tables; a tree has no setting for that.
class AiryRows : public QStyledItemDelegate {
  public:
    using QStyledItemDelegate::QStyledItemDelegate;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        return QStyledItemDelegate::sizeHint(option, index).expandedTo(QSize(0, option.fontMetrics.height() * 8 / 5));
    }
};

}  // namespace

BenchPage::BenchPage(const PageContext& context, QWidget* parent)
    : Page(parent),
      context_(context),
      dueModel_(new DueModel(this)),
      stationModel_(new StationModel(this)),
      behind_(new BehindSearch(context.workspace, this)) {
    setObjectName("benchPage");
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(makeHead());
    stack_ = new QStackedWidget(this);
    stack_->addWidget(makeDay());
    stack_->addWidget(makeEmpty());
    layout->addWidget(stack_, 1);
    connect(&context_.workspace, &Workspace::logbookReplaced, this, &BenchPage::readAll);
    connect(&context_.workspace, &Workspace::logbookChanged, this, &BenchPage::readAll);
    readAll();
}

QWidget* BenchPage::makeHead() {
    auto* head = new QWidget(this);
    day_ = new Headline(head);
    day_->setObjectName("benchDay");
    sentence_ = new QLabel(head);
    sentence_->setObjectName("benchSentence");
    sentence_->setWordWrap(true);
    round_ = new QPushButton(icon("round"), tr("Start ro&und"), head);
    round_->setObjectName("benchRound");
    round_->setToolTip(tr("Write down what you see, batch by batch (Ctrl+R)"));
    session_ = new QPushButton(icon("session"), tr("New &session"), head);
    session_->setObjectName("benchSession");
    session_->setToolTip(tr("Write down a day's cutting work (Ctrl+N)"));
    reading_ = new QPushButton(icon("reading"), tr("New readin&g"), head);
    reading_->setObjectName("benchReading");
    reading_->setToolTip(tr("Write down EC, pH, temperatures and what was done to a station (Ctrl+E)"));
    for (QPushButton* button : {round_, session_, reading_})
        button->setAutoDefault(true);  // Enter does what Space does
    connect(reading_, &QPushButton::clicked, this, [this] { emit taskWanted(task::reading); });
    connect(round_, &QPushButton::clicked, this, [this] { emit taskWanted(task::round); });
    connect(session_, &QPushButton::clicked, this, [this] { emit taskWanted(task::session); });

    auto* words = new QVBoxLayout;
    words->addWidget(day_);
    words->addWidget(sentence_);
    auto* layout = new QHBoxLayout(head);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(words, 1);
    layout->addWidget(round_, 0, Qt::AlignTop);
    layout->addWidget(session_, 0, Qt::AlignTop);
    layout->addWidget(reading_, 0, Qt::AlignTop);
    return head;
}

QWidget* BenchPage::makeDay() {
    auto* day = new QSplitter(Qt::Vertical, this);
    day->setObjectName("benchSplitter");
    day->setChildrenCollapsible(false);
    day->addWidget(makeDue());
    day->addWidget(makeAttention());
    day->addWidget(makeStations());
    day->setStretchFactor(0, 3);
    day->setStretchFactor(1, 0);
    day->setStretchFactor(2, 2);
    return day;
}

QWidget* BenchPage::makeDue() {
    auto* part = new QWidget(this);
    due_ = new QTreeView(part);
    due_->setObjectName("benchDue");
    due_->setModel(dueModel_);
    due_->installEventFilter(this);
    due_->setAllColumnsShowFocus(true);
    due_->setUniformRowHeights(true);
    due_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    due_->setItemDelegate(new AiryRows(due_));
    due_->setItemDelegateForColumn(DueModel::Plant, new PlantNameDelegate(due_));
    due_->setAlternatingRowColors(true);
    due_->header()->setStretchLastSection(true);
    due_->header()->setSectionsMovable(false);
    auto* label = new QLabel(tr("&Due for a look, as you walk"), part);
    label->setBuddy(due_);
    due_->setAccessibleName(tr("Due for a look"));
    connect(due_, &QTreeView::activated, this, [this](const QModelIndex& index) {
        if (const core::BatchId batch = dueModel_->batchAt(index); batch.isSet()) emit batchWanted(batch);
    });
    auto* layout = new QVBoxLayout(part);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(label);
    layout->addWidget(due_);
    return part;
}

QWidget* BenchPage::makeAttention() {
    attention_ = new AttentionPanel(this);
    connect(attention_, &AttentionPanel::batchWanted, this, &Page::batchWanted);
    connect(attention_, &AttentionPanel::stationWanted, this,
            [this](core::StationId station) { emit placeWanted(placeOf(station)); });
    connect(attention_, &AttentionPanel::suspectsWanted, this, [this](core::BatchId batch) {
        SuspectsDialog* dialog = showSuspects(batch, context_, this);
        connect(dialog, &SuspectsDialog::said, this, &Page::said);
        connect(dialog, &SuspectsDialog::batchWanted, this, &Page::batchWanted);
    });
    connect(behind_, &BehindSearch::foundChanged, this, &BenchPage::showAttention);
    return attention_;
}

QWidget* BenchPage::makeStations() {
    auto* part = new QWidget(this);
    stations_ = new QTableView(part);
    stations_->setObjectName("benchStations");
    stations_->setModel(stationModel_);
    giveTableManners(*stations_);
    stations_->setItemDelegateForColumn(StationModel::Places, new FillDelegate(stations_));
    connect(stations_, &QTableView::activated, this, [this](const QModelIndex& index) {
        if (const core::StationId station = stationModel_->stationAt(index); station.isSet())
            emit placeWanted(placeOf(station));
    });
    auto* label = new QLabel(tr("S&tations"), part);
    label->setBuddy(stations_);
    stations_->setAccessibleName(tr("Stations"));
    auto* layout = new QVBoxLayout(part);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(label);
    layout->addWidget(stations_);
    return part;
}

EmptyBench* BenchPage::makeEmpty() {
    empty_ = new EmptyBench(this);
    connect(empty_, &EmptyBench::sessionWanted, this, [this] { emit taskWanted(task::session); });
    connect(empty_, &EmptyBench::stationWanted, this, [this] { emit taskWanted(task::station); });
    connect(empty_, &EmptyBench::tablesWanted, this, &Page::tablesWanted);
    return empty_;
}

void BenchPage::activated() {
    if (!hasBatches_)
        empty_->focusFirst();
    else
        round_->setFocus();
}

std::shared_ptr<const report::Sheet> BenchPage::sheet() const {
    const Workspace& workspace = context_.workspace;
    std::shared_ptr<const report::Sheet> sheet;
    if (!workspace.hasLogbook()) return sheet;
    context_.workspace.attemptWithout([&] {
        const core::Date today = workspace.today();
        const auto due = core::dueOn(today, workspace.batchLines(), workspace.shelves());
        if (!due.empty())
            sheet = std::make_shared<const report::Sheet>(
                report::checkSheet(due, today, workspace.shelves(), printedAt(workspace)));
    });
    return sheet;
}

void BenchPage::readAll() {
    context_.workspace.attemptWithout([this] { showLines(); });
    emit sheetChanged();
}

void BenchPage::showLines() {
    const Workspace& workspace = context_.workspace;
    if (!workspace.hasLogbook()) return;
    const std::vector<core::BatchLine>& lines = workspace.batchLines();
    hasBatches_ = !lines.empty();
    readings_ = core::newestOf(workspace.logbook().newestReadings(), workspace.logbook().newestLoggerValues());
    BenchView view = benchView(lines, workspace.shelves(), workspace.today(), readings_);
    day_->setText(plot::dateText(workspace.today()));
    showSentence(view);
    dueModel_->show(std::move(view.due));
    stationModel_->show(std::move(view.stations));
    showAttention();
    for (int row = 0; row < dueModel_->rowCount(); ++row) due_->expand(dueModel_->index(row, 0));
    fitColumns();
    stack_->setCurrentIndex(hasBatches_ ? 0 : 1);
    round_->setEnabled(!workspace.isReadOnly() && hasBatches_);
    session_->setEnabled(!workspace.isReadOnly());
    reading_->setEnabled(!workspace.isReadOnly() && !workspace.shelves().stations.empty());
    empty_->setWritable(!workspace.isReadOnly());
}

void BenchPage::fitColumns() {
    for (int column = 0; column < DueModel::Due; ++column) {
        due_->resizeColumnToContents(column);
        due_->setColumnWidth(column, due_->columnWidth(column) + fontMetrics().averageCharWidth() * 2);
    }
    fitStations();
    attention_->fitColumns();
}

/// Readings are the longest: they give way where a table as wide as its words would scroll sideways.
void BenchPage::fitStations() {
    stations_->resizeColumnsToContents();
    const int letter = stations_->fontMetrics().averageCharWidth();
    int over = letter * 16 - stations_->viewport()->width();  // what stands there has room in the last column
    for (int column = 0; column < StationModel::Plants; ++column) over += stations_->columnWidth(column);
    const int wished = stations_->columnWidth(StationModel::Readings);
    if (over > 0)
        stations_->setColumnWidth(StationModel::Readings, std::max(std::min(wished, letter * 30), wished - over));
}

void BenchPage::resizeEvent(QResizeEvent* event) {
    Page::resizeEvent(event);
    fitStations();
}

bool BenchPage::eventFilter(QObject* watched, QEvent* event) {
    // After the event: the table measures in the new text size only once it has it.
    if (watched == due_ && event->type() == QEvent::FontChange)
        QMetaObject::invokeMethod(this, &BenchPage::fitColumns, Qt::QueuedConnection);
    return Page::eventFilter(watched, event);
}

void BenchPage::showSentence(const BenchView& view) {
    if (!hasBatches_)
        sentence_->clear();
    else if (view.dueCount == 0)
        sentence_->setText(view.nextDue.isEmpty()
                               ? tr("Nothing is due, and no batch is open.")
                               : tr("Nothing is due today. The next look is due on %1.").arg(view.nextDue));
    else if (view.overdueCount == 0)
        sentence_->setText(tr("%1 due for a look today.").arg(plot::batchesText(view.dueCount)));
    else
        sentence_->setText(
            tr("%1 due for a look, %2 of them overdue.").arg(plot::batchesText(view.dueCount)).arg(view.overdueCount));
}

void BenchPage::showAttention() {
    const Workspace& workspace = context_.workspace;
    if (!workspace.hasLogbook()) return;
    attention_->show(
        attentionRows(behind_->found(), readings_, workspace.batchLines(), workspace.shelves(), workspace.clock()()),
        behind_->isLooking(), workspace.shelves().facts.falseAlarmRate);
}

}  // namespace desktop
