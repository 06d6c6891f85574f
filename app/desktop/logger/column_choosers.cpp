// SPDX-License-Identifier: MIT
#include "app/desktop/logger/column_choosers.h"

#include <QComboBox>
#include <QEvent>
#include <QHeaderView>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QVBoxLayout>

#include "app/logger/logger_text.h"
#include "app/plot/quantity_text.h"
#include "core/units/figure_text.h"
#include "core/units/number_entry.h"

namespace desktop {

namespace {

constexpr int whatRow = 0, stationRow = 1, unitRow = 2, luxRow = 3, chooserRows = 4;
constexpr std::size_t mostRowsShown = 20;
constexpr int firstQuantity = 100;  // what() of values: this and the quantity; else the role

int whatOf(const core::LoggerColumn& column) {
    if (column.role != core::ColumnRole::Values) return static_cast<int>(column.role);
    return firstQuantity + static_cast<int>(column.quantity);
}

void chooseData(QComboBox& box, const QVariant& data) {
    box.setCurrentIndex(box.findData(data));
}

}  // namespace

ColumnChoosers::ColumnChoosers(QWidget* parent) : QTableWidget(parent) {
    setObjectName(QStringLiteral("loggerColumns"));
    setAccessibleName(tr("The file's first rows"));
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setSelectionMode(QAbstractItemView::NoSelection);
    setFocusPolicy(Qt::NoFocus);
    setTabKeyNavigation(false);
    setWordWrap(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    horizontalHeader()->setHighlightSections(false);
    verticalHeader()->setHighlightSections(false);
}

ColumnChoosers::Choosers ColumnChoosers::makeChoosers(int column, const QString& name, const core::Shelves& shelves) {
    const auto placed = [&](auto* widget, int row, const char* id, const QString& accessible) {
        widget->setObjectName(QStringLiteral("%1%2").arg(QString::fromLatin1(id)).arg(column + 1));
        widget->setAccessibleName(accessible);
        widget->setToolTip(accessible);
        // The view shows its cells' widgets again at every turn: what is to be hidden sits in another.
        auto* cell = new QWidget(this);
        auto* layout = new QVBoxLayout(cell);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(widget);
        widget->installEventFilter(this);
        setCellWidget(row, column, cell);
        return widget;
    };
    Choosers made{.what = placed(new QComboBox(this), whatRow, "loggerWhat", tr("%1: what it is").arg(name)),
                  .station = placed(new QComboBox(this), stationRow, "loggerStation", tr("%1: station").arg(name)),
                  .unit = placed(new QComboBox(this), unitRow, "loggerUnit", tr("%1: unit").arg(name)),
                  .lux = placed(new QLineEdit(this), luxRow, "loggerLux",
                                tr("%1: so many lux are 1 µmol/m²/s under this lamp").arg(name))};
    made.what->addItem(tr("leave out"), static_cast<int>(core::ColumnRole::LeftOut));
    made.what->addItem(tr("day and time"), static_cast<int>(core::ColumnRole::DayAndTime));
    made.what->addItem(tr("day"), static_cast<int>(core::ColumnRole::Day));
    made.what->addItem(tr("time of day"), static_cast<int>(core::ColumnRole::TimeOfDay));
    for (const core::Quantity quantity : core::allQuantities)
        made.what->addItem(plot::quantityName(quantity), firstQuantity + static_cast<int>(quantity));
    made.station->setPlaceholderText(tr("which station?"));
    for (const core::Station& station : shelves.stations)
        if (!station.isRetired)
            made.station->addItem(QString::fromStdString(station.name), QVariant::fromValue<qint64>(station.id.value));
    for (const QComboBox* box : {made.what, made.station, made.unit})
        connect(box, &QComboBox::activated, this, [this, column] { choose(column); });
    connect(made.lux, &QLineEdit::editingFinished, this, [this, column] { choose(column); });
    return made;
}

void ColumnChoosers::showFile(const logger::FileLook& look, const core::Shelves& shelves) {
    const QScopedValueRollback quiet(isShowing_, true);
    columns_.clear();
    clear();
    const auto& names = look.top.form.names;
    const std::size_t shown = std::min(mostRowsShown, look.top.rows.size());
    setColumnCount(static_cast<int>(names.size()));
    setRowCount(chooserRows + static_cast<int>(shown));
    QStringList headings, rows{tr("What it is"), tr("Station"), tr("Unit"), tr("Lux for 1 µmol")};
    for (const std::string& name : names) headings << QString::fromStdString(name);
    for (std::size_t row = 0; row < shown; ++row) {
        rows << tr("Row %1").arg(look.top.rows[row].number);
        for (std::size_t column = 0; column < std::min(names.size(), look.top.rows[row].cells.size()); ++column)
            setItem(chooserRows + static_cast<int>(row), static_cast<int>(column),
                    new QTableWidgetItem(QString::fromStdString(look.top.rows[row].cells[column])));
    }
    setHorizontalHeaderLabels(headings);
    setVerticalHeaderLabels(rows);
    for (int column = 0; column < columnCount(); ++column)
        columns_.push_back(makeChoosers(column, headings[column], shelves));
}

void ColumnChoosers::offerUnits(const Choosers& choosers, core::Quantity quantity) const {
    choosers.unit->clear();
    for (const core::LoggerUnit unit : core::loggerUnitsOf(quantity)) {
        const QString text = logger::unitText(unit);
        choosers.unit->addItem(text.isEmpty() ? tr("pH") : text, static_cast<int>(unit));
    }
}

void ColumnChoosers::showMapping(const core::LoggerMapping& mapping) {
    const QScopedValueRollback quiet(isShowing_, true);
    mapping_ = mapping;
    bool hasLux = false;
    for (std::size_t i = 0; i < columns_.size(); ++i) {
        const core::LoggerColumn& column = mapping.columns[i];
        const Choosers& choosers = columns_[i];
        const bool hasValues = column.role == core::ColumnRole::Values;
        const bool isLux = hasValues && column.unit == core::LoggerUnit::Lux;
        chooseData(*choosers.what, whatOf(column));
        chooseData(*choosers.station, QVariant::fromValue<qint64>(column.station.value));
        offerUnits(choosers, column.quantity);
        chooseData(*choosers.unit, static_cast<int>(column.unit));
        choosers.station->setVisible(hasValues);
        choosers.unit->setVisible(hasValues);
        choosers.lux->setVisible(isLux);
        if (isLux && column.luxPerMicromole > 0)
            choosers.lux->setText(QString::fromStdString(core::figureText(column.luxPerMicromole)));
        hasLux = hasLux || isLux;
    }
    setRowHidden(luxRow, !hasLux);
    resizeColumnsToContents();
    for (int row = 0; row < chooserRows && !columns_.empty(); ++row)
        setRowHeight(row, columns_.front().what->sizeHint().height());
    for (int column = 0; column < columnCount(); ++column) {
        const Choosers& of = columns_[static_cast<std::size_t>(column)];
        const int wanted = std::max(of.what->sizeHint().width(), of.station->sizeHint().width());
        setColumnWidth(column, std::max(columnWidth(column), wanted));
    }
}

core::LoggerColumn ColumnChoosers::meaningIn(int column) const {
    const auto place = static_cast<std::size_t>(column);
    const Choosers& choosers = columns_[place];
    const int what = choosers.what->currentData().toInt();
    if (what < firstQuantity) return {.role = static_cast<core::ColumnRole>(what)};
    core::LoggerColumn meaning = mapping_.columns[place];
    const auto quantity = static_cast<core::Quantity>(what - firstQuantity);
    const bool isOther = meaning.role != core::ColumnRole::Values || meaning.quantity != quantity;
    meaning.role = core::ColumnRole::Values;
    meaning.quantity = quantity;
    meaning.station.value = choosers.station->currentData().toLongLong();
    meaning.unit = isOther ? core::loggerUnitsOf(quantity).front()
                           : static_cast<core::LoggerUnit>(choosers.unit->currentData().toInt());
    meaning.luxPerMicromole =
        meaning.unit == core::LoggerUnit::Lux ? core::numberFrom(choosers.lux->text().toStdString()).value_or(0) : 0;
    return meaning;
}

void ColumnChoosers::choose(int column) {
    if (isShowing_) return;
    const core::LoggerColumn meaning = meaningIn(column);
    if (meaning != mapping_.columns[static_cast<std::size_t>(column)]) emit meant(column, meaning);
}

/// Tab may lead to a column that lies outside.
bool ColumnChoosers::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn)
        for (std::size_t i = 0; i < columns_.size(); ++i) {
            const Choosers& of = columns_[i];
            if (watched == of.what || watched == of.station || watched == of.unit || watched == of.lux)
                scrollTo(model()->index(whatRow, static_cast<int>(i)));
        }
    return QTableWidget::eventFilter(watched, event);
}

QWidget* ColumnChoosers::followInTab(QWidget* before) {
    for (const Choosers& of : columns_)
        for (QWidget* each : {static_cast<QWidget*>(of.what), static_cast<QWidget*>(of.station),
                              static_cast<QWidget*>(of.unit), static_cast<QWidget*>(of.lux)}) {
            setTabOrder(before, each);
            before = each;
        }
    return before;
}

}  // namespace desktop
