// SPDX-License-Identifier: MIT
#include "app/console/export_command.h"

#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"
#include "db/exchange/export_folder.h"

namespace console {

std::string ExportCommand::name() const {
    return "export";
}

std::string ExportCommand::summary() const {
    return tr("write the whole logbook as plain tables");
}

void ExportCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.argument("FOLDER", tr("to make, or an empty one"), folder_);
    options.flag("--json", tr("for machines"), isJson_);
}

int ExportCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream&) {
    const db::Logbook logbook = openToRead(file_, surroundings);
    db::exportFolder(logbook, folder_);
    const std::size_t batches = logbook.batchLines().size();
    if (isJson_)
        print({{"folder", folder_}, {"batches", batches}}, out);
    else
        out << filled(tr("Wrote %1 to %2."), {plot::batchesText(static_cast<int>(batches)).toStdString(), folder_})
            << '\n';
    return Done;
}

}  // namespace console
