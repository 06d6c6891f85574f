// SPDX-License-Identifier: MIT
#include "app/console/chart_command.h"

#include <algorithm>

#include "app/console/arguments.h"
#include "app/console/json_text.h"
#include "app/console/open_logbook.h"
#include "app/console/plant_called.h"
#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"
#include "core/comparison/spread.h"
#include "core/comparison/unusual.h"
#include "core/units/number_entry.h"

namespace console {

namespace {

struct ChartAnswer {
    int atDay{};
    core::StrikeChart chart;
    std::optional<core::AgainstThePast> newest;
};

double falseAlarmsFrom(const std::string& text) {
    constexpr double least = 1e-6, most = 0.5;
    const std::optional<double> share = core::numberFrom(text);
    if (share && *share >= least && *share <= most) return *share;
    throw WrongArgument(
        filled(tr("--false-alarms is %1; a share of batches from 0.000001 to 0.5 is allowed, such as 0.0027."),
               {shown(text)}));
}

std::string signalWord(core::ChartSignal signal) {
    switch (signal) {
        case core::ChartSignal::Inside:
            return "inside";
        case core::ChartSignal::Below:
            return "below";
        case core::ChartSignal::Above:
            return "above";
        case core::ChartSignal::NothingKnown:
            return "nothing_known";
    }
    return {};
}

ChartAnswer answerOf(const core::Plant& plant, const core::Method& method, std::optional<int> atDay, double falseAlarms,
                     const core::Shelves& shelves, const std::vector<core::BatchRecord>& all) {
    ChartAnswer answer;
    answer.atDay = atDay.value_or(plant.usualRootingDaysHigh.value_or(shelves.facts.horizonDay));
    std::vector<core::Course> courses;
    for (const core::BatchRecord& record : all)
        if (record.batch.plant == plant.id && record.batch.method == method.id)
            courses.push_back(core::courseOf(record, answer.atDay));
    answer.chart =
        core::strikeChart(courses, falseAlarms, core::pooledSpreadOf(all, answer.atDay, shelves.facts.level));
    if (answer.chart.batches.size() < 2) return answer;
    const auto newest = std::ranges::find_if(
        courses, [&](const core::Course& course) { return course.record->batch.id == answer.chart.batches.back().id; });
    std::vector<core::Course> earlier(courses.begin(), newest);
    earlier.insert(earlier.end(), newest + 1, courses.end());
    answer.newest = core::againstThePast(
        *newest, earlier, answer.atDay,
        core::pooledSpreadWithout(all, newest->record->batch.id, answer.atDay, shelves.facts.level));
    return answer;
}

Json jsonOf(const ChartAnswer& answer) {
    Json batches = Json::array();
    for (const core::ChartedBatch& batch : answer.chart.batches)
        batches.push_back({{"batch", batch.code},
                           {"stuck_on", core::isoText(batch.stuckOn)},
                           {"rooted", batch.rooted},
                           {"assessed", batch.assessed},
                           {"rate", figure(batch.rate)},
                           {"limits", limits(batch.limits)},
                           {"signal", signalWord(batch.signal)}});
    Json json = {{"at_day", answer.atDay},
                 {"false_alarms", figure(answer.chart.falseAlarmRate)},
                 {"icc", figure(answer.chart.correlation)},
                 {"centre", figure(answer.chart.centre)},
                 {"batches", std::move(batches)},
                 {"newest", nullptr},
                 {"in_words", answer.chart.inWords}};
    if (const auto& newest = answer.newest)
        json["newest"] = {{"day", newest->day},
                          {"rooted", newest->rooted},
                          {"of", newest->of},
                          {"past_batches", newest->pastBatches},
                          {"expected", figure(newest->expected)},
                          {"usual_fewest", newest->usualFewest},
                          {"usual_most", newest->usualMost},
                          {"chance_of_so_few", figure(newest->chanceOfSoFew)},
                          {"in_words", newest->inWords}};
    return json;
}

void printText(const ChartAnswer& answer, const std::string& heading, std::ostream& out) {
    out << heading << "\n\n";
    TextTable table({{tr("batch"), TextTable::Align::Left},
                     {tr("stuck on"), TextTable::Align::Left},
                     {tr("strike rate"), TextTable::Align::Left},
                     {tr("limits"), TextTable::Align::Left},
                     {"", TextTable::Align::Left}});
    for (const core::ChartedBatch& batch : answer.chart.batches) {
        const bool isKnown = batch.signal != core::ChartSignal::NothingKnown;
        table.addRow({batch.code, plot::dateText(batch.stuckOn).toStdString(),
                      isKnown ? plot::percentText(batch.rooted, batch.assessed).toStdString() : tr("nothing assessed"),
                      isKnown ? plot::limitsText(batch.limits).toStdString() : "–",
                      batch.signal == core::ChartSignal::Below   ? tr("below")
                      : batch.signal == core::ChartSignal::Above ? tr("above")
                                                                 : ""});
    }
    table.printTo(out);
    out << '\n' << answer.chart.inWords << '\n';
    if (answer.newest) out << filled(tr("The newest batch. %1"), {answer.newest->inWords}) << '\n';
}

}  // namespace

std::string ChartCommand::name() const {
    return "chart";
}

std::string ChartCommand::summary() const {
    return tr("a plant's batches in order, and which are out of the ordinary");
}

void ChartCommand::declare(Options& options) {
    options.argument("LOG", tr("the logbook"), file_);
    options.neededOption("--species", "NAME", tr("the plant"), species_);
    options.neededOption("--method", "NAME", tr("the method, as the logbook writes it"), method_);
    options.option("--at-day", "D", tr("day at which batches are counted (the plant's or the logbook's)"), atDay_);
    options.option("--false-alarms", "P", tr("share of batches that luck alone may put outside the limits (0.0027)"),
                   falseAlarms_);
    options.flag("--json", tr("for machines"), isJson_);
}

int ChartCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    constexpr int longestHorizon = 3650;
    std::optional<int> atDay;
    if (atDay_) atDay = static_cast<int>(wholeFrom("--at-day", *atDay_, 1, longestHorizon));
    const double falseAlarms = falseAlarms_ ? falseAlarmsFrom(*falseAlarms_) : core::usualFalseAlarmRate;
    const db::Logbook logbook = openToRead(file_, surroundings);
    const core::Shelves shelves = logbook.shelves();
    const core::Plant* plant = plantCalled(*species_, shelves, file_, err);
    if (plant == nullptr) return Refused;
    const core::Method* method = methodCalled(*method_, shelves, file_, err);
    if (method == nullptr) return Refused;
    const ChartAnswer answer = answerOf(*plant, *method, atDay, falseAlarms, shelves, logbook.batchRecords(plant->id));
    if (isJson_)
        print(jsonOf(answer), out);
    else
        printText(answer,
                  filled(tr("%1, %2: rooted by day %3"),
                         {core::fullName(*plant), method->name, std::to_string(answer.atDay)}),
                  out);
    return Done;
}

}  // namespace console
