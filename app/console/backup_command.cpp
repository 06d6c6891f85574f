// SPDX-License-Identifier: MIT
#include "app/console/backup_command.h"

#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/words.h"
#include "db/safekeeping/backup.h"

namespace console {

std::string BackupCommand::name() const {
    return "backup";
}

std::string BackupCommand::summary() const {
    return tr("write a checked copy");
}

void BackupCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.argument("FILE", tr("the copy; one that is there is left alone"), to_);
    options.flag("--json", tr("for machines"), isJson_);
}

int BackupCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream&) {
    db::backUp(openToRead(file_, surroundings), to_);
    if (isJson_)
        print({{"logbook", file_}, {"backup", to_}}, out);
    else
        out << filled(tr("Wrote a copy of %1 to %2."), {file_, to_}) << '\n';
    return Done;
}

}  // namespace console
