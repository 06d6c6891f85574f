// SPDX-License-Identifier: MIT
#include "app/console/create_command.h"

#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/words.h"
#include "core/shelf_rules.h"

namespace console {

std::string CreateCommand::name() const {
    return "create";
}

std::string CreateCommand::summary() const {
    return tr("make a new, empty logbook");
}

void CreateCommand::declare(Options& options) {
    options.argument("LOG", tr("the file to make, such as bench.strikebook"), file_);
    options.option("--name", "NAME", tr("what the logbook is called (as its file)"), title_);
    options.option("--grower", "NAME", tr("whose logbook it is"), grower_);
    options.flag("--json", tr("for machines"), isJson_);
}

int CreateCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    core::LogbookFacts facts;
    facts.name = title_.value_or(nameFromFile(file_));
    facts.grower = grower_.value_or("");
    if (const core::Refusals refusals = core::faultsIn(facts); !refusals.empty()) {
        err << linesOf(refusals);
        return WrongUse;
    }
    const auto made = createAndFill(file_, facts, surroundings,
                                    [](db::Logbook&) { return core::Result<db::Changes>(db::Changes{}); });
    if (!made) return Refused;
    if (isJson_)
        print({{"logbook", file_}, {"name", facts.name}}, out);
    else
        out << filled(tr("Made the logbook %1."), {file_}) << '\n';
    return Done;
}

}  // namespace console
