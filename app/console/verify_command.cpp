// SPDX-License-Identifier: MIT
#include "app/console/verify_command.h"

#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"
#include "db/safekeeping/verify.h"

namespace console {

std::string VerifyCommand::name() const {
    return "verify";
}

std::string VerifyCommand::summary() const {
    return tr("look through the whole logbook for damage and broken rules");
}

void VerifyCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.flag("--json", tr("for machines"), isJson_);
}

int VerifyCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    const db::Verification found = db::verify(openToRead(file_, surroundings), surroundings.today);
    if (isJson_) {
        print({{"content", found.faults.empty()},
               {"batches", found.batches},
               {"checks", found.checks},
               {"history_entries", found.historyEntries},
               {"faults", found.faults}},
              out);
    } else if (found.faults.empty()) {
        const std::string steps = found.historyEntries == 1
                                      ? tr("1 step of history")
                                      : filled(tr("%1 steps of history"), {std::to_string(found.historyEntries)});
        out << filled(tr("All is well: %1, %2, %3."), {plot::batchesText(found.batches).toStdString(),
                                                       plot::checksText(found.checks).toStdString(), steps})
            << '\n';
    } else {
        for (const std::string& fault : found.faults) err << fault << '\n';
    }
    return found.faults.empty() ? Done : Refused;
}

}  // namespace console
