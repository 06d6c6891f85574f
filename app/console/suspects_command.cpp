// SPDX-License-Identifier: MIT
#include "app/console/suspects_command.h"

#include "app/console/losses_output.h"
#include "app/console/open_logbook.h"
#include "app/console/words.h"
#include "db/logbook.h"

namespace console {

std::string SuspectsCommand::name() const {
    return "suspects";
}

std::string SuspectsCommand::summary() const {
    return tr("what may have gone wrong with one batch, and what to change or try");
}

void SuspectsCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.neededOption("--batch", "CODE", tr("the batch"), code_);
    options.flag("--json", tr("for machines"), isJson_);
}

int SuspectsCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    const db::Logbook logbook = openToRead(file_, surroundings);
    const core::BatchId batch = logbook.batchWithCode(*code_);
    const auto suspects = batch.isSet() ? report::suspectsOf(logbook, batch) : std::nullopt;
    if (!suspects) {
        err << filled(tr("There is no batch %1 in %2."), {shown(*code_), file_}) << '\n';
        return Refused;
    }
    if (isJson_)
        print(suspectsJson(*suspects), out);
    else
        printSuspects(*suspects, out);
    return Done;
}

}  // namespace console
