// SPDX-License-Identifier: MIT
#include "app/desktop/widgets/table_columns.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QMenu>
#include <QScopedValueRollback>
#include <QTableView>
#include <algorithm>
#include <optional>

#include "app/desktop/memory.h"
#include "app/desktop/names/mnemonic.h"

namespace desktop {

namespace {

constexpr double narrowest = 1.5;  // in heights of the text
constexpr double widest = 200;

struct RememberedColumn {
    int number{};
    double ems{};
    bool isHidden{};
};

struct RememberedTable {
    std::vector<RememberedColumn> columns;  // in the order shown
    int sortedBy{};
    Qt::SortOrder order{};
};

/// "COLUMN:HUNDREDTHS:HIDDEN" for each, and in front "SORTED:ORDER". Anything else is nothing: a file can be spoilt.
std::optional<RememberedTable> tableFrom(const QByteArray& text, int count) {
    const QList<QByteArray> parts = text.split(' ');
    if (parts.size() != count + 1) return std::nullopt;
    RememberedTable table;
    std::vector<bool> isSeen(static_cast<std::size_t>(count));
    const QList<QByteArray> sorting = parts.front().split(':');
    if (sorting.size() != 2) return std::nullopt;
    table.sortedBy = std::clamp(sorting[0].toInt(), 0, count - 1);
    table.order = sorting[1] == "1" ? Qt::DescendingOrder : Qt::AscendingOrder;
    for (const QByteArray& part : parts.mid(1)) {
        const QList<QByteArray> fields = part.split(':');
        bool isNumber = false;
        const int number = fields.size() == 3 ? fields[0].toInt(&isNumber) : -1;
        if (!isNumber || number < 0 || number >= count || isSeen[static_cast<std::size_t>(number)]) return std::nullopt;
        isSeen[static_cast<std::size_t>(number)] = true;
        const double ems = fields[1].toInt() / 100.0;
        table.columns.push_back({number, ems == 0 ? 0 : std::clamp(ems, narrowest, widest), fields[2] == "1"});
    }
    return table;
}

}  // namespace

TableColumns::TableColumns(QTableView& table, const std::vector<int>& widths, int stretched, Memory* memory,
                           QString name)
    : QObject(&table), table_(table), stretched_(stretched), memory_(memory), name_(std::move(name)) {
    for (const int width : widths) startEms_.push_back(static_cast<double>(width) / em());
    QHeaderView& header = *table_.horizontalHeader();
    header.setStretchLastSection(false);
    header.setSectionsMovable(true);
    header.setMinimumSectionSize(static_cast<int>(narrowest * em()));
    header.setContextMenuPolicy(Qt::CustomContextMenu);
    reset();
    recall();
    lay();
    connectHeader();
    table_.installEventFilter(this);
    table_.viewport()->installEventFilter(this);
}

void TableColumns::connectHeader() {
    const QHeaderView* header = table_.horizontalHeader();
    connect(header, &QHeaderView::customContextMenuRequested, this, [this, header](const QPoint& place) {
        showMenuFor(header->logicalIndexAt(place), header->mapToGlobal(place));
    });
    connect(header, &QHeaderView::sectionResized, this, [this](int column, int, int width) {
        if (isLaying_ || width == 0) return;
        columns_[static_cast<std::size_t>(column)].ems = static_cast<double>(width) / em();
        fitStretched();
        remember();
    });
    connect(header, &QHeaderView::sectionMoved, this, &TableColumns::remember);
    connect(header, &QHeaderView::sortIndicatorChanged, this, &TableColumns::remember);
}

int TableColumns::em() const {
    return table_.fontMetrics().height();
}

QString TableColumns::titleOf(int column) const {
    return table_.model()->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString();
}

void TableColumns::reset() {
    columns_.clear();
    for (const double ems : startEms_) columns_.push_back({.ems = ems, .isHidden = false});
    columns_[static_cast<std::size_t>(stretched_)].ems = 0;
    QHeaderView& header = *table_.horizontalHeader();
    for (int column = 0; column < static_cast<int>(columns_.size()); ++column)
        header.moveSection(header.visualIndex(column), column);
}

void TableColumns::startWith(const std::vector<int>& widths) {
    for (std::size_t column = 0; column < columns_.size(); ++column) {
        const double ems = static_cast<double>(widths[column]) / em();
        if (columns_[column].ems == startEms_[column]) columns_[column].ems = ems;
        startEms_[column] = ems;
    }
    lay();
}

void TableColumns::recall() {
    const auto table = memory_ ? tableFrom(memory_->shape(name_), static_cast<int>(columns_.size())) : std::nullopt;
    if (!table) return;
    QHeaderView& header = *table_.horizontalHeader();
    for (int place = 0; place < static_cast<int>(table->columns.size()); ++place) {
        const RememberedColumn& column = table->columns[static_cast<std::size_t>(place)];
        columns_[static_cast<std::size_t>(column.number)] = {column.ems, column.isHidden && column.number != 0};
        header.moveSection(header.visualIndex(column.number), place);
    }
    header.setSortIndicator(table->sortedBy, table->order);
}

void TableColumns::remember() {
    if (!memory_ || isLaying_) return;
    const QHeaderView& header = *table_.horizontalHeader();
    QByteArray text = QByteArray::number(header.sortIndicatorSection()) +
                      (header.sortIndicatorOrder() == Qt::DescendingOrder ? ":1" : ":0");
    for (int place = 0; place < header.count(); ++place) {
        const int number = header.logicalIndex(place);
        const Column& column = columns_[static_cast<std::size_t>(number)];
        text += ' ' + QByteArray::number(number) + ':' + QByteArray::number(qRound(column.ems * 100)) +
                (column.isHidden ? ":1" : ":0");
    }
    memory_->setShape(name_, text);
}

void TableColumns::lay() {
    const QScopedValueRollback laying(isLaying_, true);
    for (int column = 0; column < static_cast<int>(columns_.size()); ++column) {
        const Column& wanted = columns_[static_cast<std::size_t>(column)];
        table_.setColumnHidden(column, wanted.isHidden);
        if (wanted.ems > 0) table_.setColumnWidth(column, qRound(wanted.ems * em()));
    }
    fitStretched();
}

void TableColumns::fitStretched() {
    const auto stretched = static_cast<std::size_t>(stretched_);
    if (columns_[stretched].ems > 0 || columns_[stretched].isHidden) return;
    const QScopedValueRollback laying(isLaying_, true);
    const QHeaderView& header = *table_.horizontalHeader();
    const int left = table_.viewport()->width() - (header.length() - header.sectionSize(stretched_));
    table_.setColumnWidth(stretched_, std::max(left, qRound(startEms_[stretched] * em())));
}

void TableColumns::resize(int column, double times) {
    const double ems = static_cast<double>(table_.columnWidth(column)) / em() * times;
    columns_[static_cast<std::size_t>(column)].ems = std::clamp(ems, narrowest, widest);
    lay();
    remember();
}

void TableColumns::move(int column, int places) {
    QHeaderView& header = *table_.horizontalHeader();
    const int step = places < 0 ? -1 : 1;
    int to = header.visualIndex(column) + places;
    // Over what is hidden, so that something is seen to happen.
    while (to >= 0 && to < header.count() && header.isSectionHidden(header.logicalIndex(to))) to += step;
    if (to >= 0 && to < header.count()) header.moveSection(header.visualIndex(column), to);
}

void TableColumns::setHidden(int column, bool isHidden) {
    columns_[static_cast<std::size_t>(column)].isHidden = isHidden;
    lay();
    remember();
}

void TableColumns::showMenu(const QPoint& globalPlace) {
    showMenuFor(table_.currentIndex().column(), globalPlace);
}

void TableColumns::showMenuFor(int column, const QPoint& globalPlace) {
    auto* menu = new QMenu(&table_);
    menu->setObjectName("columnMenu");
    menu->setAttribute(Qt::WA_DeleteOnClose);
    const QHeaderView& header = *table_.horizontalHeader();
    for (int place = 0; place < header.count(); ++place) {
        const int number = header.logicalIndex(place);
        if (number == 0) continue;
        QAction* shown = menu->addAction(asMenuText(titleOf(number)));
        shown->setCheckable(true);
        shown->setChecked(!columns_[static_cast<std::size_t>(number)].isHidden);
        connect(shown, &QAction::toggled, this, [this, number](bool on) { setHidden(number, !on); });
    }
    menu->addSeparator();
    if (column >= 0) {
        const QString title = asMenuText(titleOf(column));
        menu->addAction(tr("\u201c%1\u201d &wider").arg(title), this, [this, column] { resize(column, 1.25); });
        menu->addAction(tr("\u201c%1\u201d &narrower").arg(title), this, [this, column] { resize(column, 0.8); });
        menu->addAction(tr("\u201c%1\u201d one place &forward").arg(title), this, [this, column] { move(column, -1); });
        menu->addAction(tr("\u201c%1\u201d one place &back").arg(title), this, [this, column] { move(column, 1); });
        menu->addSeparator();
    }
    menu->addAction(tr("All columns as at &first"), this, [this] {
        reset();
        lay();
        remember();
    });
    menu->popup(globalPlace);
}

bool TableColumns::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && watched == table_.viewport()) fitStretched();
    if (event->type() == QEvent::FontChange && watched == &table_) lay();
    if (event->type() == QEvent::KeyPress && watched == &table_) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_F10 && key->modifiers() == Qt::ShiftModifier) {
            showMenu(table_.viewport()->mapToGlobal(table_.visualRect(table_.currentIndex()).bottomLeft()));
            return true;
        }
    }
    return QObject::eventFilter(watched, event);
}

}  // namespace desktop
