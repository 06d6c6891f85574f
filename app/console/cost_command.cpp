// SPDX-License-Identifier: MIT
#include "app/console/cost_command.h"

#include <algorithm>

#include "app/console/arguments.h"
#include "app/console/cost_json.h"
#include "app/console/cost_text.h"
#include "app/console/open_logbook.h"
#include "app/console/plant_called.h"
#include "app/console/words.h"
#include "app/report/logbook_costs.h"

namespace console {

namespace {

constexpr int longestWait = 3650;

void requireTwoMethods(const std::vector<std::string>& names) {
    if (names.size() != 2)
        throw WrongArgument(
            filled(tr("--between has %1 methods; two are needed, such as --between \"aerated water\" \"media tray\"."),
                   {std::to_string(names.size())}));
    if (names[0] == names[1])
        throw WrongArgument(filled(tr("--between is %1 twice; two different methods are needed."), {shown(names[0])}));
}

/// Why there is nothing to tell; empty: there is.
std::string whyNothing(const core::Worth& worth, const std::vector<std::string>& names, const std::string& file) {
    for (const std::string& name : names) {
        const auto isIt = [&name](const core::WorthOfMethod& method) { return method.name == name; };
        if (std::ranges::none_of(worth.methods, isIt))
            return filled(tr("No batch of these plants was stuck by %1 in %2."), {shown(name), file});
    }
    const bool isPriced = worth.pairs.front().verdict != core::WorthVerdict::NothingPriced;
    return isPriced ? std::string() : worth.pairs.front().inWords;
}

}  // namespace

std::string CostCommand::name() const {
    return "cost";
}

std::string CostCommand::summary() const {
    return tr("what a rooted plant costs by two methods, and whether the dearer is worth it");
}

void CostCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.listOption("--between", "METHOD METHOD", tr("two methods by their names"), between_, true);
    options.option("--species", "NAME", tr("only this plant (all that both methods have)"), species_);
    options.option("--at-day", "D", tr("day at which rooted ones are counted (the plant's or the logbook's)"), atDay_);
    options.option("--level", "L", tr("of the intervals, between 0 and 1 (the logbook's)"), level_);
    options.flag("--json", tr("for machines"), isJson_);
}

int CostCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    requireTwoMethods(between_);
    core::WorthQuestion question;
    if (atDay_) question.horizonDay = static_cast<int>(wholeFrom("--at-day", *atDay_, 1, longestWait));
    if (level_) question.level = levelFrom("--level", *level_);
    const db::Logbook logbook = openToRead(file_, surroundings);
    const core::Shelves shelves = logbook.shelves();
    for (const std::string& name : between_) {
        const core::Method* method = methodCalled(name, shelves, file_, err);
        if (method == nullptr) return Refused;
        question.methods.push_back(method->id);
    }
    if (species_) {
        const core::Plant* plant = plantCalled(*species_, shelves, file_, err);
        if (plant == nullptr) return Refused;
        question.plant = plant->id;
    }
    // All of them: they share what the bench costs, and how alike batches are is judged by the whole logbook.
    const std::vector<core::BatchRecord> batches = logbook.batchRecords();
    const std::vector<core::Potting> pottings = logbook.allPottings();
    const core::CostsOfBatches costs = report::costsOfLogbook(logbook, batches, surroundings.today);
    const core::Result<core::Worth> worth = core::worthIt(
        question,
        {.shelves = shelves, .batches = batches, .pottings = pottings, .costs = costs, .today = surroundings.today});
    if (!worth) {
        err << linesOf(worth.error());
        return WrongUse;
    }
    if (const std::string reason = whyNothing(*worth, between_, file_); !reason.empty()) {
        err << reason << '\n';
        return Refused;
    }
    if (isJson_)
        print(jsonOf(*worth, shelves.facts.currency), out);
    else
        printText(*worth, shelves.facts.currency, out);
    return Done;
}

}  // namespace console
