// SPDX-License-Identifier: MIT
// How the dialog is laid out, and which field says what.
#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QTableWidget>
#include <QTimeZone>
#include <QVBoxLayout>
#include <array>

#include "app/desktop/logger/column_choosers.h"
#include "app/desktop/logger/logger_dialog.h"
#include "app/desktop/logger/logger_model.h"
#include "app/desktop/names/text_labels.h"
#include "app/desktop/widgets/fault_label.h"
#include "app/desktop/workspace.h"
#include "app/logger/logger_text.h"
#include "app/logger/logger_zone.h"

namespace desktop {

namespace {

QComboBox* namedBox(const char* name, QWidget* parent) {
    auto* box = new QComboBox(parent);
    box->setObjectName(QString::fromLatin1(name));
    box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    return box;
}

/// This place, UTC, fixed offsets, then every name that the system knows.
void offerZones(QComboBox& box, std::int64_t now) {
    const QString here = QString::fromStdString(logger::LoggerZone::here());
    box.addItem(LoggerDialog::tr("this place (%1)", "time zone").arg(here), here);
    const auto zone = logger::LoggerZone::from(here.toStdString());
    const QString winter = zone ? QString::fromStdString(zone->winterTimeAt(now)) : QString();
    if (!winter.isEmpty() && zone->secondsAheadAt(now) != zone->secondsAheadAt(now + 182 * 86'400))
        box.addItem(LoggerDialog::tr("winter time of this place all the year (%1)", "time zone").arg(winter), winter);
    if (here != QStringLiteral("UTC")) box.addItem(QStringLiteral("UTC"), QStringLiteral("UTC"));
    constexpr int hour = 3600, west = -12, east = 14;
    for (int hours = west; hours <= east; ++hours) {
        const QString offset = QString::fromStdString(logger::offsetText(hours * hour));
        if (hours != 0 && box.findData(offset) < 0) box.addItem(offset, offset);
    }
    for (const QByteArray& id : QTimeZone::availableTimeZoneIds())
        if (const QString name = QString::fromLatin1(id); box.findData(name) < 0 && name.contains(u'/'))
            box.addItem(name, name);
}

}  // namespace

void LoggerDialog::makeFields() {
    file_ = new QLineEdit(this);
    file_->setObjectName(QStringLiteral("loggerFile"));
    file_->setReadOnly(true);
    file_->setPlaceholderText(tr("Choose a file, or drop one here"));
    choose_ = new QPushButton(tr("&Choose…"), this);
    choose_->setObjectName(QStringLiteral("loggerChoose"));
    columns_ = new ColumnChoosers(this);
    sentence_ = answerLabel(QStringLiteral("loggerSentence"));
    sentence_->setWordWrap(true);
    gaps_ = quietLabel(QStringLiteral("loggerGaps"));
    gaps_->setWordWrap(true);
    unsaid_ = new FaultLabel(this);
    unsaid_->setObjectName(QStringLiteral("loggerUnsaid"));
    progress_ = new QProgressBar(this);
    progress_->setObjectName(QStringLiteral("loggerProgress"));
    progress_->setAccessibleName(tr("How much of the file is read"));
    progress_->setRange(0, 100);
    faults_ = new QTableWidget(this);
    faults_->setObjectName(QStringLiteral("loggerFaults"));
    faults_->setAccessibleName(tr("Faults"));
    faults_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    faults_->setTabKeyNavigation(false);
    faults_->setWordWrap(false);
    faults_->verticalHeader()->hide();
    name_ = new QLineEdit(this);
    name_->setObjectName(QStringLiteral("loggerName"));
    name_->setMaxLength(200);
    copy_ = new QPushButton(tr("Copy the l&ist"), this);
    copy_->setObjectName(QStringLiteral("loggerCopy"));
    copy_->setAutoDefault(false);
    bringIn_ = new QPushButton(tr("&Bring in"), this);
    bringIn_->setObjectName(QStringLiteral("loggerBringIn"));
    cancel_ = new QPushButton(tr("Cancel"), this);
    cancel_->setObjectName(QStringLiteral("loggerCancel"));
    cancel_->setAutoDefault(false);
}

void LoggerDialog::makeChoices() {
    format_ = namedBox("loggerFormat", this);
    order_ = namedBox("loggerOrder", this);
    order_->setPlaceholderText(tr("which stands first?", "day or month"));
    for (const auto form : {core::TimeForm::DayMonthYear, core::TimeForm::MonthDayYear, core::TimeForm::YearMonthDay,
                            core::TimeForm::UnixSeconds})
        order_->addItem(logger::timeFormText(form), static_cast<int>(form));
    decimal_ = namedBox("loggerDecimal", this);
    decimal_->addItem(tr("point: 21.5"), static_cast<int>(core::DecimalSign::Point));
    decimal_->addItem(tr("comma: 21,5"), static_cast<int>(core::DecimalSign::Comma));
    zone_ = namedBox("loggerZone", this);
    zone_->setMaxVisibleItems(20);
    offerZones(*zone_, context_.workspace.clock()().time_since_epoch().count());
    twice_ = namedBox("loggerTwice", this);
    twice_->addItem(tr("not said", "which hour is meant"), static_cast<int>(core::TwiceHour::NotSettled));
    twice_->addItem(tr("summer time, the first"), static_cast<int>(core::TwiceHour::Summer));
    twice_->addItem(tr("winter time, the second"), static_cast<int>(core::TwiceHour::Winter));
    noReading_ = new QCheckBox(tr("B&lank cells and words such as OFL mean no reading"), this);
    noReading_->setObjectName(QStringLiteral("loggerNoReading"));
}

QFormLayout* LoggerDialog::makeForm() {
    form_ = new QFormLayout;
    auto* file = new QHBoxLayout;
    file->addWidget(file_, 1);
    file->addWidget(choose_);
    auto* fileLabel = new QLabel(tr("&File"), this);
    fileLabel->setBuddy(choose_);
    file_->setAccessibleName(tr("File"));
    form_->addRow(fileLabel, file);
    form_->addRow(tr("&Read as"), format_);
    form_->addRow(tr("&Order of the date"), order_);
    form_->addRow(tr("&Decimal sign"), decimal_);
    form_->addRow(tr("Logger's &zone"), zone_);
    form_->addRow(tr("&Hour that comes twice"), twice_);
    form_->addRow(QString(), noReading_);
    return form_;
}

void LoggerDialog::build() {
    nameLabel_ = new QLabel(tr("Remember the columns &as"), this);
    nameLabel_->setBuddy(name_);
    auto* foot = new QHBoxLayout;
    foot->addWidget(nameLabel_);
    foot->addWidget(name_, 1);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(copy_);
    buttons->addStretch(1);
    buttons->addWidget(cancel_);
    buttons->addWidget(bringIn_);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(makeForm());
    layout->addWidget(columns_, 2);
    layout->addWidget(unsaid_);
    layout->addWidget(sentence_);
    layout->addWidget(gaps_);
    layout->addWidget(progress_);
    layout->addWidget(faults_, 1);
    layout->addLayout(foot);
    layout->addStretch();
    layout->addLayout(buttons);
    for (QWidget* hidden :
         {static_cast<QWidget*>(columns_), static_cast<QWidget*>(progress_), static_cast<QWidget*>(faults_)})
        hidden->hide();
    orderTab();
}

void LoggerDialog::connectFields() {
    connect(choose_, &QPushButton::clicked, this, &LoggerDialog::pickFile);
    connect(format_, &QComboBox::activated, this, [this] { model_->readAs(format_->currentData().toInt()); });
    connect(order_, &QComboBox::activated, this,
            [this] { model_->setTimeForm(static_cast<core::TimeForm>(order_->currentData().toInt())); });
    connect(decimal_, &QComboBox::activated, this,
            [this] { model_->setDecimalSign(static_cast<core::DecimalSign>(decimal_->currentData().toInt())); });
    connect(zone_, &QComboBox::activated, this,
            [this] { model_->setZone(zone_->currentData().toString().toStdString()); });
    connect(twice_, &QComboBox::activated, this,
            [this] { model_->setTwiceHour(static_cast<core::TwiceHour>(twice_->currentData().toInt())); });
    connect(noReading_, &QCheckBox::clicked, model_, &LoggerModel::setWordsMeanNoReading);
    connect(columns_, &ColumnChoosers::meant, model_, &LoggerModel::setColumn);
    connect(copy_, &QPushButton::clicked, this, &LoggerDialog::copyFaults);
    connect(bringIn_, &QPushButton::clicked, this, &LoggerDialog::bringIn);
    connect(cancel_, &QPushButton::clicked, this, &QDialog::reject);
}

void LoggerDialog::orderTab() {
    const std::array<QWidget*, 8> above{file_, choose_, format_, order_, decimal_, zone_, twice_, noReading_};
    for (std::size_t i = 1; i < above.size(); ++i) setTabOrder(above[i - 1], above[i]);
    QWidget* before = columns_->followInTab(noReading_);
    const std::array<QWidget*, 5> below{faults_, name_, copy_, cancel_, bringIn_};
    for (QWidget* each : below) {
        setTabOrder(before, each);
        before = each;
    }
}

}  // namespace desktop
