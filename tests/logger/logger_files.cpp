// SPDX-License-Identifier: MIT
#include "tests/logger/logger_files.h"

#include <QStringEncoder>

#include "tests/support/builders.h"

namespace support {

namespace {

QStringConverter::Encoding ofConverter(logger::Encoding encoding) {
    switch (encoding) {
        case logger::Encoding::Utf16Le:
            return QStringConverter::Utf16LE;
        case logger::Encoding::Utf16Be:
            return QStringConverter::Utf16BE;
        case logger::Encoding::Latin1:
            return QStringConverter::Latin1;
        case logger::Encoding::Utf8:
            break;
    }
    return QStringConverter::Utf8;
}

}  // namespace

std::string encoded(const std::string& text, logger::Encoding encoding, bool hasMark) {
    QStringEncoder encoder(ofConverter(encoding),
                           hasMark ? QStringConverter::Flag::WriteBom : QStringConverter::Flag::Default);
    const QByteArray bytes = encoder.encode(QString::fromStdString(text));
    return bytes.toStdString();
}

core::LoggerMapping timeAndAir() {
    core::LoggerMapping mapping{.timeForm = core::TimeForm::YearMonthDay, .zone = "UTC"};
    mapping.columns = {{.role = core::ColumnRole::DayAndTime}, {.role = core::ColumnRole::Values, .station = tubNorth}};
    return mapping;
}

core::Moment loggersNow() {
    return moment("2026-11-26T12:00:00Z");
}

core::Moment moment(const std::string& iso) {
    return core::momentFromIso(iso).value();
}

std::vector<Logged> loggedIn(const logger::LogContents& contents) {
    std::vector<Logged> logged;
    for (const core::LoggerDay& day : contents.days)
        for (const core::Sample& sample : day.samples)
            logged.push_back({.quantity = day.quantity, .at = core::momentOf(day, sample), .value = sample.value});
    return logged;
}

std::vector<std::string> momentsIn(const logger::LogContents& contents) {
    std::vector<std::string> moments;
    for (const Logged& each : loggedIn(contents)) moments.push_back(core::isoText(each.at));
    return moments;
}

logger::LogContents readText(const std::string& text, const core::LoggerMapping& mapping) {
    const LoggerFile file(text);
    return logger::readLog(file.path(), logger::topOf(file.path()).form, mapping, loggersNow());
}

}  // namespace support
