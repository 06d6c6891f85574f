// SPDX-License-Identifier: MIT
#include "app/console/labels_command.h"

#include <algorithm>
#include <cmath>

#include "app/console/arguments.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/painting_application.h"
#include "app/console/stuck_on_day.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"
#include "app/report/labels.h"
#include "core/units/number_entry.h"

namespace console {

namespace {

report::LabelStock stockFrom(const std::optional<std::string>& word, const std::string& paper) {
    const std::vector<report::LabelStock> stocks = report::labelStocks(paper);
    if (!word) return stocks.front();
    const auto found = std::ranges::find(stocks, QString::fromStdString(*word), &report::LabelStock::word);
    if (found != stocks.end()) return *found;
    throw WrongArgument(filled(tr("--sheet is %1; %2 is allowed."),
                               {shown(*word), report::stockWords().join(QStringLiteral(", ")).toStdString()}));
}

/// "0.5,-1": to the right and down, in half millimetres.
report::LabelOffset offsetFrom(const std::optional<std::string>& text) {
    if (!text) return {};
    const std::size_t comma = text->find(',');
    const auto halves = [](const std::string& word) -> std::optional<int> {
        const std::optional<double> millimetres = core::numberFrom(word);
        if (!millimetres || std::abs(*millimetres) * 2 > report::mostHalfMillimetres) return {};
        const double half = *millimetres * 2;
        return half == std::round(half) ? std::optional(static_cast<int>(half)) : std::nullopt;
    };
    if (comma != std::string::npos)
        if (const auto right = halves(text->substr(0, comma)), down = halves(text->substr(comma + 1)); right && down)
            return {.right = *right, .down = *down};
    throw WrongArgument(filled(
        tr("--offset is %1; millimetres to the right and down, in steps of 0.5 from -10 to 10, are allowed, such "
           "as 0.5,-1."),
        {shown(*text)}));
}

}  // namespace

std::string LabelsCommand::name() const {
    return "labels";
}

std::string LabelsCommand::summary() const {
    return tr("labels for the batches of a day, with their codes to read and to scan, as PDF");
}

void LabelsCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.option("--session", "DATE", tr("the day on which they were stuck"), session_);
    options.neededOption("--to", "FILE.pdf", tr("the file to write; an older one is replaced"), to_);
    options.option("--sheet", "SHEET",
                   filled(tr("%1 (the first that fits the logbook's paper)"),
                          {report::stockWords().join(QStringLiteral(", ")).toStdString()}),
                   sheet_);
    options.option("--start", "N", tr("the first label that is left on a half-used sheet, row by row (1)"), start_);
    options.option("--offset", "X,Y", tr("moves all to the right and down, in mm, in steps of 0.5 (0,0)"), offset_);
    options.flag("--calibration", tr("instead of labels, a page to find the offset by"), isCalibration_);
    options.flag("--json", tr("for machines"), isJson_);
}

int LabelsCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    if (!session_ && !isCalibration_) throw WrongArgument(tr("--session DATE is missing."));
    const std::optional<core::Date> day =
        session_ ? std::optional(dateFrom("--session", *session_)) : std::optional<core::Date>();
    requirePdfName(*to_);
    stockFrom(sheet_, "A4");  // a wrong word is wrong use, whatever the logbook holds
    const report::LabelOffset offset = offsetFrom(offset_);
    if (isCalibration_) return calibrate(surroundings, out);
    const db::Logbook logbook = openToRead(file_, surroundings);
    const core::Shelves shelves = logbook.shelves();
    report::LabelPrint labels{
        .labels = {}, .stock = stockFrom(sheet_, shelves.facts.paper), .start = 1, .offset = offset};
    if (start_) labels.start = static_cast<int>(wholeFrom("--start", *start_, 1, labels.stock.perPage()));
    const std::vector<core::Batch> batches = batchesStuckOn(*day, logbook);
    if (batches.empty()) {
        err << nothingStuckText(*day, file_) << '\n';
        return Refused;
    }
    labels.labels = report::labelsOf(batches, shelves);
    const PaintingApplication application;
    report::writePdf(labels, QString::fromStdString(*to_));
    if (isJson_)
        print({{"session", *session_},
               {"labels", batches.size()},
               {"sheet", labels.stock.word.toStdString()},
               {"pages", labels.pages()},
               {"file", *to_}},
              out);
    else
        out << filled(tr("Printed the labels of %1 to %2."),
                      {plot::batchesText(static_cast<int>(batches.size())).toStdString(), *to_})
            << '\n';
    return Done;
}

int LabelsCommand::calibrate(const Surroundings& surroundings, std::ostream& out) const {
    const std::string paper = openToRead(file_, surroundings).shelves().facts.paper;
    const report::LabelCalibration calibration{.stock = stockFrom(sheet_, paper), .offset = offsetFrom(offset_)};
    const PaintingApplication application;
    report::writePdf(calibration, QString::fromStdString(*to_));
    if (isJson_)
        print({{"calibration", true}, {"sheet", calibration.stock.word.toStdString()}, {"file", *to_}}, out);
    else
        out << filled(tr("Printed the calibration page of %1 to %2."), {calibration.stock.word.toStdString(), *to_})
            << '\n';
    return Done;
}

}  // namespace console
