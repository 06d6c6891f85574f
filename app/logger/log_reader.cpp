// SPDX-License-Identifier: MIT
#include "app/logger/log_reader.h"

#include <algorithm>
#include <deque>
#include <optional>

#include "app/logger/cell_number.h"
#include "app/logger/log_faults.h"
#include "app/logger/log_values.h"
#include "app/logger/row_times.h"
#include "core/units/entered_text.h"

namespace logger {

namespace {

constexpr std::chrono::minutes clockLeeway{5};  // so much may the logger's clock run fast

/// Takes the rows one by one; what they hold waits until their moments are known.
class LogReading {
  public:
    LogReading(const std::string& file, const FileForm& form, const core::LoggerMapping& mapping, LoggerZone zone,
               core::Moment now)
        : form_(form),
          mapping_(mapping),
          now_(now.time_since_epoch().count()),
          faults_(file, form_, mapping_, zone.name()),
          times_(std::move(zone), mapping.twiceHour, [this](const RowTimes::Row& row) { keep(row); }),
          values_(mapping.columns.size()) {
        for (std::size_t i = 0; i < mapping.columns.size(); ++i) {
            const core::ColumnRole role = mapping.columns[i].role;
            if (role == core::ColumnRole::Values) valueColumns_.push_back(i);
            if (role == core::ColumnRole::Day || role == core::ColumnRole::DayAndTime) dayColumn_ = i;
            if (role == core::ColumnRole::TimeOfDay) timeColumn_ = i;
        }
    }

    void take(const db::CsvRow& row);
    [[nodiscard]] LogContents end();

  private:
    static const std::string& cellOf(const db::CsvRow& row, std::size_t column) {
        static const std::string none;
        return column < row.cells.size() ? row.cells[column] : none;
    }

    [[nodiscard]] bool isEmptyOfOurs(const db::CsvRow& row) const;
    [[nodiscard]] std::optional<WrittenTime> timeOf(const db::CsvRow& row);
    [[nodiscard]] std::optional<double> valueOf(const db::CsvRow& row, std::size_t column);
    void keep(const RowTimes::Row& row);

    const FileForm& form_;
    const core::LoggerMapping& mapping_;
    std::int64_t now_;
    LogFaults faults_;
    RowTimes times_;
    std::vector<LogValues> values_;
    std::vector<std::size_t> valueColumns_;
    std::size_t dayColumn_{};
    std::optional<std::size_t> timeColumn_;
    std::deque<std::optional<double>> waiting_;  // the values of the rows whose moments are not known yet
    std::vector<std::int64_t> moments_;          // of rows with a value
    std::int64_t blanks_{};
};

bool LogReading::isEmptyOfOurs(const db::CsvRow& row) const {
    return std::ranges::all_of(row.cells, [](const std::string& cell) { return core::isBlank(cell); });
}

std::optional<WrittenTime> LogReading::timeOf(const db::CsvRow& row) {
    const std::string& day = cellOf(row, dayColumn_);
    if (!timeColumn_) {
        const auto time = writtenTime(day, mapping_.timeForm);
        if (!time) faults_.noTime(row.number, dayColumn_, day);
        return time;
    }
    const std::string& ofDay = cellOf(row, *timeColumn_);
    const auto time = writtenTime(day, ofDay, mapping_.timeForm);
    if (!time) {
        std::string_view rest = withoutBlanks(day);
        const auto figures = takeDay(rest);
        const bool isDay = figures && rest.empty() && dayOf(*figures, mapping_.timeForm);
        faults_.noTime(row.number, isDay ? *timeColumn_ : dayColumn_, isDay ? ofDay : day);
    }
    return time;
}

std::optional<double> LogReading::valueOf(const db::CsvRow& row, std::size_t column) {
    const std::string& cell = cellOf(row, column);
    const auto logged = cellNumber(cell, mapping_.decimalSign);
    if (!logged) {
        if (mapping_.wordsMeanNoReading && isWithoutNumber(cell))
            ++blanks_;
        else
            faults_.noNumber(row.number, column, cell);
        return {};
    }
    const core::LoggerColumn& of = mapping_.columns[column];
    const core::QuantityFacts& facts = core::factsOf(of.quantity);
    const double stored = core::storedValue(*logged, of);
    if (stored >= facts.low && stored <= facts.high) return stored;
    faults_.outOfRange(row.number, column, *logged);
    return {};
}

void LogReading::take(const db::CsvRow& row) {
    for (const db::CsvFault& fault : row.faults) faults_.unreadable(row.number, fault);
    if (!row.faults.empty() || isEmptyOfOurs(row)) return;
    const bool isTooLong = row.cells.size() > form_.names.size() &&
                           std::any_of(row.cells.begin() + static_cast<std::ptrdiff_t>(form_.names.size()),
                                       row.cells.end(), [](const std::string& cell) { return !core::isBlank(cell); });
    if (isTooLong) faults_.tooLong(row.number);
    const auto time = timeOf(row);
    for (const std::size_t column : valueColumns_) {
        const auto value = valueOf(row, column);
        if (time) waiting_.push_back(value);
    }
    if (time) times_.add(row.number, *time);
}

void LogReading::keep(const RowTimes::Row& row) {
    const bool isKnown = row.doubt == RowTimes::Doubt::None;
    const bool isToCome = isKnown && row.moment > now_ + std::chrono::seconds(clockLeeway).count();
    if (isToCome) faults_.stillToCome(row.number, core::Moment{std::chrono::seconds{row.moment}});
    if (!isKnown) faults_.unclear(row, times_.zone().winterTimeAt(row.written));
    bool hasValue = false;
    for (const std::size_t column : valueColumns_) {
        const auto value = waiting_.front();
        waiting_.pop_front();
        if (!value || !isKnown) continue;
        values_[column].add(row.moment, row.number, *value);
        hasValue = true;
    }
    if (hasValue) moments_.push_back(row.moment);
}

LogContents LogReading::end() {
    times_.end();
    LogContents contents;
    std::int64_t repeated = 0;
    for (const std::size_t column : valueColumns_) {
        const core::LoggerColumn& of = mapping_.columns[column];
        values_[column].moveInto(
            contents.days, of, repeated, [&](const LogValues::Entry& before, const LogValues::Entry& after) {
                faults_.twoValues(after.row, column, before.row, core::loggedValue(after.value, of),
                                  core::loggedValue(before.value, of));
            });
    }
    contents.summary = summaryOf(std::move(moments_));
    contents.summary.blanks = blanks_;
    contents.summary.repeated = repeated;
    faults_.handOver(contents);
    if (!contents.faults.empty()) contents.days.clear();
    return contents;
}

}  // namespace

LogContents readLog(const std::filesystem::path& file, const FileForm& form, const core::LoggerMapping& mapping,
                    core::Moment now, const db::Waiting& waiting) {
    std::optional<LoggerZone> zone =
        LoggerZone::from(mapping.timeForm == core::TimeForm::UnixSeconds ? "UTC" : mapping.zone);
    LogReading reading(file.filename().string(), form, mapping, std::move(zone.value()), now);
    TextFile text(file, form.encoding);
    db::CsvReader reader(text.text(), form.separator);
    int rows = 0;
    while (const auto row = reader.next()) {
        constexpr int rowsBetweenTellings = 4096;
        if (++rows % rowsBetweenTellings == 0) {
            if (waiting.isCalledOff()) return {.isCalledOff = true};
            waiting.tellShare(text.shareRead());
        }
        if (row->number >= form.firstRow) reading.take(*row);
    }
    return reading.end();
}

}  // namespace logger
