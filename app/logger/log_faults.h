// SPDX-License-Identifier: MIT
// The faults of a logger's file: the first hundred with their sentences, the others counted. Inside logger only.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "app/logger/log_reader.h"
#include "app/logger/row_times.h"

namespace logger {

class LogFaults {
  public:
    LogFaults(std::string file, const FileForm& form, const core::LoggerMapping& mapping, std::string zone)
        : file_(std::move(file)), form_(form), mapping_(mapping), zone_(std::move(zone)) {}

    void noTime(int row, std::size_t column, const std::string& cell);
    void noNumber(int row, std::size_t column, const std::string& cell);
    void outOfRange(int row, std::size_t column, double logged);
    void stillToCome(int row, core::Moment moment);
    void unclear(const RowTimes::Row& row, const std::string& winterTime);
    void twoValues(int row, std::size_t column, int rowBefore, double logged, double loggedBefore);
    void tooLong(int row);
    void unreadable(int row, const db::CsvFault& fault);

    [[nodiscard]] bool isEmpty() const { return listed_.empty(); }
    void handOver(LogContents& contents);

  private:
    void add(int row, std::size_t column, const QString& sentence);
    [[nodiscard]] bool isListFull();

    std::string file_;
    const FileForm& form_;
    const core::LoggerMapping& mapping_;
    std::string zone_;
    std::vector<db::ImportFault> listed_;
    std::int64_t more_{};
    int lastUnclear_{};  // row
    bool goesOnce_{};
    std::string winterTime_;
};

}  // namespace logger
