// SPDX-License-Identifier: MIT
#include "app/console/compare_command.h"

#include "app/console/arguments.h"
#include "app/console/compare_json.h"
#include "app/console/compare_text.h"
#include "app/console/open_logbook.h"
#include "app/console/plant_called.h"
#include "app/console/words.h"
#include "app/plot/station_charts.h"
#include "core/comparison/comparison.h"

namespace console {

namespace {

constexpr int longestHorizon = 3650;

core::Factor factorFrom(const std::string& text) {
    for (const core::Factor factor :
         {core::Factor::Method, core::Factor::Treatment, core::Factor::Medium, core::Factor::CuttingKind})
        if (text == core::wordFor(factor)) return factor;
    throw WrongArgument(filled(tr("--by is %1; method, treatment, medium or cutting is allowed."), {shown(text)}));
}

core::RateInterval intervalFrom(const std::string& text) {
    if (const auto interval = core::rateIntervalFrom(text)) return *interval;
    throw WrongArgument(
        filled(tr("--interval is %1; wilson, wilson_continuity, clopper_pearson, jeffreys, agresti_coull or "
                  "mid_p is allowed."),
               {shown(text)}));
}

}  // namespace

std::string CompareCommand::name() const {
    return "compare";
}

std::string CompareCommand::summary() const {
    return tr("methods, treatments, media or kinds of cutting head to head");
}

void CompareCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.option("--by", "FACTOR", tr("method, treatment, medium or cutting (method)"), by_);
    options.option("--species", "NAME", tr("only this plant (all)"), species_);
    options.option("--at-day", "D", tr("day at which it is decided (the trial's, the plant's or the logbook's)"),
                   atDay_);
    options.option("--level", "L", tr("of the intervals, between 0 and 1 (the logbook's)"), level_);
    options.option(
        "--interval", "NAME",
        tr("of each arm's rate: wilson, wilson_continuity, clopper_pearson, jeffreys, agresti_coull or mid_p (the "
           "logbook's)"),
        interval_);
    options.option("--margin", "M", tr("\"as good as, within M of 100\", such as 10 (not asked)"), margin_);
    options.flag("--json", tr("for machines"), isJson_);
}

int CompareCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    core::ComparisonQuestion question;
    if (by_) question.factor = factorFrom(*by_);
    if (atDay_) question.horizonDay = static_cast<int>(wholeFrom("--at-day", *atDay_, 1, longestHorizon));
    if (level_) question.level = levelFrom("--level", *level_);
    if (interval_) question.interval = intervalFrom(*interval_);
    if (margin_) question.margin = marginFrom("--margin", *margin_);
    const db::Logbook logbook = openToRead(file_, surroundings);
    const core::Shelves shelves = logbook.shelves();
    if (species_) {
        const core::Plant* plant = plantCalled(*species_, shelves, file_, err);
        if (plant == nullptr) return Refused;
        question.plant = plant->id;
    }
    // All of them, also where one plant is asked for: how alike batches are is judged by the whole logbook.
    const std::vector<core::BatchRecord> batches = logbook.batchRecords();
    const core::Result<core::Comparison> comparison =
        core::compare(question, shelves, batches, {}, plot::conditionsOnRecord(logbook, shelves));
    if (!comparison) {
        err << linesOf(comparison.error());
        return WrongUse;
    }
    if (isJson_)
        print(jsonOf(*comparison), out);
    else
        printText(*comparison, out);
    return Done;
}

}  // namespace console
