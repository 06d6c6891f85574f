// SPDX-License-Identifier: MIT
#include "app/console/logger_command.h"

#include <algorithm>

#include "app/console/arguments.h"
#include "app/console/fault_output.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/words.h"
#include "app/logger/logger_text.h"
#include "app/logger/mapping_text.h"

namespace console {

namespace {

Json summaryJson(const logger::LogSummary& summary) {
    Json gaps = Json::array();
    for (const logger::LogGap& gap : summary.gaps)
        gaps.push_back({{"from", core::isoText(gap.from)},
                        {"to", core::isoText(gap.to)},
                        {"seconds", (gap.to - gap.from).count()}});
    return {{"rows", summary.rows},
            {"first", core::isoText(summary.first)},
            {"last", core::isoText(summary.last)},
            {"step_seconds", summary.step.count()},
            {"gaps", gaps},
            {"without_reading", summary.blanks},
            {"repeated", summary.repeated}};
}

void printSummary(const logger::LogContents& contents, std::ostream& out) {
    out << logger::summaryText(contents.summary).toStdString() << '\n';
    constexpr std::size_t mostGaps = 20;
    const auto& gaps = contents.summary.gaps;
    for (std::size_t i = 0; i < std::min(mostGaps, gaps.size()); ++i)
        out << "  " << logger::gapText(gaps[i]).toStdString() << '\n';
    if (gaps.size() > mostGaps) out << "  " << tr("And more gaps; these are the first.") << '\n';
}

}  // namespace

std::string LoggerCommand::name() const {
    return "logger";
}

std::string LoggerCommand::summary() const {
    return tr("take in the readings of a logger's file, all or nothing");
}

void LoggerCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook to add to"), file_);
    options.argument("FILE", tr("a table as a logger writes it"), log_);
    options.option("--format", "NAME", tr("read it as this remembered format; without, by the heading of the file"),
                   format_);
    options_.declare(options);
    options.option("--remember", "NAME", tr("remember what the columns are, under this name"), remember_);
    options.flag("--json", tr("for machines"), isJson_);
}

std::optional<core::LoggerMapping> LoggerCommand::rememberedMapping(const logger::FileLook& look,
                                                                    const db::Logbook& logbook, std::ostream& err) {
    const auto known = logger::formatsFor(look.top.form, logbook.loggerFormats());
    std::string names;
    for (const logger::KnownFormat& format : known) {
        if (format_ ? format.name == *format_ : known.size() == 1) {
            core::LoggerMapping mapping = format.mapping;
            options_.putOver(mapping);
            return mapping;
        }
        names += (names.empty() ? "" : ", ") + shown(format.name);
    }
    if (!known.empty()) {
        err << filled(tr("Files with this heading are remembered as %1; name one of them with --format."), {names})
            << '\n';
        return {};
    }
    if (format_)
        err << filled(tr("No format %1 is remembered for files with this heading."), {shown(*format_)}) << '\n';
    else
        err << tr("No format is remembered for files with this heading. Say what its columns are; by their names it "
                  "may be:")
            << '\n'
            << optionsSaying(look.guess, look.top.form, logbook.shelves()) << '\n';
    return {};
}

std::optional<core::LoggerMapping> LoggerCommand::mappingOf(const logger::FileLook& look, const db::Logbook& logbook,
                                                            std::ostream& err) {
    if (format_ && options_.areGiven())
        throw WrongArgument(tr("--format is given beside what the columns are; the one or the other is allowed."));
    auto mapping = options_.areGiven() ? options_.mappingFor(look, log_, logbook.shelves())
                                       : rememberedMapping(look, logbook, err);
    if (!mapping) return {};
    core::Refusals faults = core::faultsIn(*mapping, look.top.form.names, logbook.shelves());
    if (mapping->timeForm != core::TimeForm::UnixSeconds && !logger::LoggerZone::from(mapping->zone))
        faults.push_back({.field = "Zone",
                          .value = mapping->zone,
                          .allowed = "",
                          .sentence = filled(tr("The time zone %1 is not known here; name another with --zone."),
                                             {shown(mapping->zone)})});
    if (faults.empty()) return mapping;
    err << linesOf(faults);
    return {};
}

int LoggerCommand::bringIn(db::Logbook& logbook, const logger::LogContents& contents,
                           const std::optional<core::LoggerFormat>& remembered, core::Moment now, std::ostream& out,
                           std::ostream& err) const {
    const auto done =
        logger::importLog(logbook, contents, std::filesystem::path(log_).filename().string(), now, remembered);
    if (!done) {
        err << linesOf(done.error()) << tr("Nothing was imported.") << '\n';
        return Refused;
    }
    if (isJson_) {
        Json json = {{"imported", true}};
        json.update(summaryJson(contents.summary));
        json.update({{"added", done->added}, {"known", done->known}, {"differing", done->differing}});
        print(json, out);
        return Done;
    }
    printSummary(contents, out);
    out << logger::addedText(*done).toStdString() << '\n';
    return Done;
}

int LoggerCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    db::Logbook logbook = openToWrite(file_, surroundings);
    const logger::FileLook look = logger::lookAt(log_, logbook.shelves());
    if (!look.isTable()) {
        err << look.fault << '\n';
        return Refused;
    }
    const auto mapping = mappingOf(look, logbook, err);
    if (!mapping) return Refused;
    const core::Moment now = surroundings.clock();
    const logger::LogContents contents = logger::readLog(log_, look.top.form, *mapping, now);
    if (!contents.faults.empty()) {
        printFaults(contents.faults, contents.moreFaults, isJson_, out, err);
        return Refused;
    }
    std::optional<core::LoggerFormat> remembered;
    if (remember_) remembered = logger::formatOf(look.top.form, *mapping, *remember_);
    return bringIn(logbook, contents, remembered, now, out, err);
}

}  // namespace console
