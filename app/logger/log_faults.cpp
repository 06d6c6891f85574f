// SPDX-License-Identifier: MIT
#include "app/logger/log_faults.h"

#include <algorithm>

#include "app/logger/logger_text.h"
#include "app/logger/logger_words.h"
#include "app/plot/local_time.h"
#include "app/plot/number_text.h"
#include "core/units/entered_text.h"

namespace logger {

namespace {

QString quotedCell(const std::string& cell) {
    return QString::fromStdString(core::quotable(cell));
}

QString loggedText(double value, core::LoggerUnit unit) {
    constexpr int digits = 6;
    const QString number = QLocale(QLocale::C).toString(value, 'g', digits).replace(u'-', QChar(0x2212));
    const QString name = unitText(unit);
    return name.isEmpty() ? number : number + u' ' + name;
}

QString writtenText(std::int64_t written) {
    constexpr std::int64_t secondsInADay = 86'400;
    const std::chrono::sys_days day{std::chrono::days{written / secondsInADay}};
    const std::int64_t ofDay = written % secondsInADay;
    return LoggerWords::tr("%1, %2", "day, time of day")
        .arg(plot::dateText(core::Date(day)),
             QTime::fromMSecsSinceStartOfDay(static_cast<int>(ofDay) * 1000).toString(QStringLiteral("HH:mm:ss")));
}

}  // namespace

bool LogFaults::isListFull() {
    if (listed_.size() < mostFaultsListed) return false;
    ++more_;
    return true;
}

void LogFaults::add(int row, std::size_t column, const QString& sentence) {
    const bool isNamed = column < form_.names.size();
    listed_.push_back({.file = file_,
                       .row = row,
                       .column = isNamed ? form_.names[column] : std::string(),
                       .reason = sentence.toStdString()});
}

void LogFaults::noTime(int row, std::size_t column, const std::string& cell) {
    if (isListFull()) return;
    const QString example = timeExample(mapping_.timeForm, mapping_.columns[column].role);
    add(row, column,
        core::isBlank(cell) ? LoggerWords::tr("The time is missing; one such as %1 is allowed.").arg(example)
                            : LoggerWords::tr("%1 is no time of the form %2; one such as %3 is allowed.")
                                  .arg(quotedCell(cell), timeFormText(mapping_.timeForm), example));
}

void LogFaults::noNumber(int row, std::size_t column, const std::string& cell) {
    if (isListFull()) return;
    const QString example =
        mapping_.decimalSign == core::DecimalSign::Comma ? QStringLiteral("21,5") : QStringLiteral("21.5");
    const QString what = core::isBlank(cell) ? LoggerWords::tr("The cell is blank")
                                             : LoggerWords::tr("%1 is no number").arg(quotedCell(cell));
    //: what is wrong, a number
    QString sentence = LoggerWords::tr("%1; a number such as %2 is allowed.").arg(what, example);
    if (cell.find_first_of("0123456789") == std::string::npos)
        sentence += u' ' + LoggerWords::tr("Say that blanks and words mean no reading if that is so.");
    add(row, column, sentence);
}

void LogFaults::outOfRange(int row, std::size_t column, double logged) {
    if (isListFull()) return;
    const core::LoggerColumn& of = mapping_.columns[column];
    const core::QuantityFacts& facts = core::factsOf(of.quantity);
    add(row, column,
        LoggerWords::tr("%1 is nothing that a meter shows; %2 to %3 is allowed.")
            .arg(loggedText(logged, of.unit), loggedText(core::loggedValue(facts.low, of), core::LoggerUnit::Ph),
                 loggedText(core::loggedValue(facts.high, of), of.unit)));
}

void LogFaults::stillToCome(int row, core::Moment moment) {
    if (isListFull()) return;
    add(row, form_.names.size(),
        LoggerWords::tr("%1 is still to come; times up to now are allowed. Are form and time zone right?")
            .arg(plot::momentText(moment)));
}

/// One fault for all the rows of that hour.
void LogFaults::unclear(const RowTimes::Row& row, const std::string& winterTime) {
    const bool isSaid = row.number == lastUnclear_ + 1;
    lastUnclear_ = row.number;
    goesOnce_ = goesOnce_ || row.doubt == RowTimes::Doubt::GoesOnce;
    if (row.doubt == RowTimes::Doubt::LeftOut) winterTime_ = winterTime;
    if (isSaid || isListFull()) return;
    const QString time = writtenText(row.written), zone = QString::fromStdString(zone_),
                  winter = QString::fromStdString(winterTime);
    QString sentence;
    if (row.doubt == RowTimes::Doubt::LeftOut)
        sentence = LoggerWords::tr(
                       "In %2 there was no %1: the clocks went over that hour when summer time began. If the logger's "
                       "clock stayed on winter time all the year, its zone is %3.")
                       .arg(time, zone, winter);
    else if (row.doubt == RowTimes::Doubt::GoesOnce)
        sentence = LoggerWords::tr(
                       "In %2 %1 came twice, when summer time ended, and the rows go through that hour only once: say "
                       "whether summer or winter time is meant. If the logger's clock stayed on winter time all "
                       "the year, its zone is %3.")
                       .arg(time, zone, winter);
    else
        sentence = LoggerWords::tr(
                       "In %2 %1 came twice, when summer time ended, and the rows go to and fro in that hour: rows in "
                       "order of time are allowed.")
                       .arg(time, zone);
    add(row.number, form_.names.size(), sentence);
}

void LogFaults::twoValues(int row, std::size_t column, int rowBefore, double logged, double loggedBefore) {
    if (isListFull()) return;
    const core::LoggerUnit unit = mapping_.columns[column].unit;
    add(row, column,
        LoggerWords::tr("%1, where row %2 has %3 at the same moment; one value of each moment is allowed.")
            .arg(loggedText(logged, unit))
            .arg(rowBefore)
            .arg(loggedText(loggedBefore, unit)));
}

void LogFaults::tooLong(int row) {
    if (isListFull()) return;
    add(row, form_.names.size(),
        LoggerWords::tr("The row has more cells than the file has columns; %1 are allowed.")
            .arg(plot::countText(static_cast<int>(form_.names.size()))));
}

void LogFaults::unreadable(int row, const db::CsvFault& fault) {
    if (isListFull()) return;
    add(row, fault.cell, QString::fromStdString(fault.reason));
}

void LogFaults::handOver(LogContents& contents) {
    std::ranges::stable_sort(listed_, {}, &db::ImportFault::row);
    contents.faults = std::move(listed_);
    contents.moreFaults = more_;
    contents.goesOnceThroughTwiceHour = goesOnce_;
    contents.winterTime = winterTime_;
}

}  // namespace logger
