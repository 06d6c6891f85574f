// SPDX-License-Identifier: MIT
#include "app/console/losses_command.h"

#include <algorithm>

#include "app/console/arguments.h"
#include "app/console/losses_output.h"
#include "app/console/open_logbook.h"
#include "app/console/plant_called.h"
#include "app/console/words.h"
#include "db/logbook.h"

namespace console {

std::string LossesCommand::name() const {
    return "losses";
}

std::string LossesCommand::summary() const {
    return tr("what cuttings were lost to, when and where, and which batches are out of the ordinary");
}

void LossesCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.option("--from", "DATE", tr("first day of checks that count (the first there is)"), from_);
    options.option("--until", "DATE", tr("last day of checks that count (the last there is; today at the latest)"),
                   until_);
    options.option("--species", "NAME", tr("only this plant (all)"), species_);
    options.option("--method", "NAME", tr("only this method, as the logbook writes it (all)"), method_);
    options.flag("--json", tr("for machines"), isJson_);
}

int LossesCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    core::LossQuestion question;
    if (from_) question.from = dateFrom("--from", *from_);
    if (until_) question.until = std::min(dateFrom("--until", *until_), surroundings.today);
    if (question.from && *question.from > surroundings.today)
        throw WrongArgument(tr("--from is after today; a day no later than today is allowed."));
    if (question.from && question.until && *question.from > *question.until)
        throw WrongArgument(tr("--from is later than --until; a day no later than that is allowed."));
    const db::Logbook logbook = openToRead(file_, surroundings);
    const report::LossesRecords records = report::lossesRecordsOf(logbook);
    if (species_) {
        const core::Plant* plant = plantCalled(*species_, records.shelves, file_, err);
        if (plant == nullptr) return Refused;
        question.plant = plant->id;
    }
    if (method_) {
        const core::Method* method = methodCalled(*method_, records.shelves, file_, err);
        if (method == nullptr) return Refused;
        question.method = method->id;
    }
    const report::LossesAnswer answer = report::lossesAnswerOf(records, question);
    if (isJson_)
        print(lossesJson(answer, records.shelves), out);
    else
        printLosses(answer, records.shelves, out);
    return Done;
}

}  // namespace console
