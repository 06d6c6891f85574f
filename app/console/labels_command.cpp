// SPDX-License-Identifier: MIT
#include "app/console/labels_command.h"

#include <algorithm>

#include "app/console/arguments.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/painting_application.h"
#include "app/console/stuck_on_day.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"
#include "app/report/labels.h"

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

}  // namespace

std::string LabelsCommand::name() const {
    return "labels";
}

std::string LabelsCommand::summary() const {
    return tr("labels for the batches of a day, with their codes to read and to scan, as PDF");
}

void LabelsCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.neededOption("--session", "DATE", tr("the day on which they were stuck"), session_);
    options.neededOption("--to", "FILE.pdf", tr("the file to write; an older one is replaced"), to_);
    options.option("--sheet", "SHEET",
                   filled(tr("%1 (the first that fits the logbook's paper)"),
                          {report::stockWords().join(QStringLiteral(", ")).toStdString()}),
                   sheet_);
    options.option("--start", "N", tr("the first label that is left on a half-used sheet, row by row (1)"), start_);
    options.flag("--json", tr("for machines"), isJson_);
}

int LabelsCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    const core::Date day = dateFrom("--session", *session_);
    requirePdfName(*to_);
    stockFrom(sheet_, "A4");  // a wrong word is wrong use, whatever the logbook holds
    const db::Logbook logbook = openToRead(file_, surroundings);
    const core::Shelves shelves = logbook.shelves();
    report::LabelPrint labels{.labels = {}, .stock = stockFrom(sheet_, shelves.facts.paper), .start = 1};
    if (start_) labels.start = static_cast<int>(wholeFrom("--start", *start_, 1, labels.stock.perPage()));
    const std::vector<core::Batch> batches = batchesStuckOn(day, logbook);
    if (batches.empty()) {
        err << nothingStuckText(day, file_) << '\n';
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

}  // namespace console
