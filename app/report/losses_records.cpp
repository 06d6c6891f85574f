// SPDX-License-Identifier: MIT
#include "app/report/losses_records.h"

#include <algorithm>
#include <map>
#include <tuple>

#include "app/plot/station_charts.h"
#include "core/causes/batches_around.h"
#include "core/comparison/comparison.h"
#include "core/comparison/spread.h"
#include "db/logbook.h"

namespace report {
namespace {

constexpr std::size_t mostCharted = 200;
constexpr int fewestCharted = 2;

bool isAsked(const core::Batch& batch, const core::LossQuestion& question) {
    return (!question.plant.isSet() || batch.plant == question.plant) &&
           (!question.method.isSet() || batch.method == question.method);
}

bool isInSpan(core::Date day, const core::LossQuestion& question) {
    return (!question.from || day >= *question.from) && (!question.until || day <= *question.until);
}

std::vector<ChartChoice> chartsOf(const std::vector<core::BatchRecord>& batches, const core::LossQuestion& question) {
    std::map<std::pair<core::PlantId, core::MethodId>, int> counts;
    for (const core::BatchRecord& record : batches)
        if (isAsked(record.batch, question)) ++counts[{record.batch.plant, record.batch.method}];
    std::vector<ChartChoice> choices;
    for (const auto& [key, count] : counts)
        if (count >= fewestCharted) choices.push_back({.plant = key.first, .method = key.second, .batches = count});
    std::ranges::stable_sort(choices, std::ranges::greater{}, &ChartChoice::batches);
    return choices;
}

void addGoesWith(const LossesRecords& records, LossesAnswer& answer) {
    std::vector<const core::BatchRecord*> asked;
    for (const core::BatchRecord& record : records.batches)
        if (isAsked(record.batch, answer.question) && isInSpan(record.batch.stuckOn, answer.question))
            asked.push_back(&record);
    int day = asked.empty() ? records.shelves.facts.horizonDay : 0;
    for (const core::BatchRecord* record : asked)
        day = std::max(day, core::usualHorizonOf(record->batch.plant, records.shelves));
    answer.goesWithHorizon = day;
    answer.goesWith = core::goesWithRooting(records.shelves, asked, day, answer.losses.level, records.conditions);
}

std::vector<core::BatchRecord> ofPlant(const std::vector<core::BatchRecord>& batches, core::PlantId plant) {
    std::vector<core::BatchRecord> found;
    std::ranges::copy_if(batches, std::back_inserter(found),
                         [plant](const core::BatchRecord& record) { return record.batch.plant == plant; });
    return found;
}

}  // namespace

LossesRecords lossesRecordsOf(const db::Logbook& logbook) {
    LossesRecords records{.shelves = logbook.shelves(), .batches = logbook.batchRecords(), .conditions = {}};
    records.conditions = plot::conditionsOnRecord(logbook, records.shelves);
    return records;
}

LossesAnswer lossesAnswerOf(const LossesRecords& records, const core::LossQuestion& question,
                            const std::stop_token& stop) {
    LossesAnswer answer{.question = question};
    answer.losses = core::lossesOver(records.batches, records.shelves, question, stop);
    answer.charts = chartsOf(records.batches, question);
    if (!stop.stop_requested())
        answer.unusual = core::outOfTheOrdinary(records.batches, records.shelves, question, stop);
    if (!stop.stop_requested()) addGoesWith(records, answer);
    return answer;
}

BatchChart chartOf(const LossesRecords& records, const ChartChoice& choice) {
    const std::vector<core::BatchRecord> all = ofPlant(records.batches, choice.plant);
    const int day = core::usualHorizonOf(choice.plant, records.shelves);
    std::vector<core::Course> courses;
    for (const core::BatchRecord& record : all)
        if (record.batch.method == choice.method) courses.push_back(core::courseOf(record, day));
    std::ranges::sort(courses, {}, [](const core::Course& course) {
        return std::tuple(course.record->batch.stuckOn, course.record->batch.code);
    });
    if (courses.size() > mostCharted)
        courses.erase(courses.begin(), courses.end() - static_cast<std::ptrdiff_t>(mostCharted));
    const double level = records.shelves.facts.level;
    return {.chart =
                core::strikeChart(courses, records.shelves.facts.falseAlarmRate, core::pooledSpreadOf(all, day, level)),
            .turn = core::turningPointOf(
                courses, core::pooledSpreadOfOthers(records.batches, choice.plant, choice.method, day, level), level)};
}

std::optional<core::Suspects> suspectsOf(const db::Logbook& logbook, core::BatchId batch, const std::stop_token& stop) {
    const LossesRecords records = lossesRecordsOf(logbook);
    const auto own =
        std::ranges::find(records.batches, batch, [](const core::BatchRecord& record) { return record.batch.id; });
    if (own == records.batches.end()) return {};
    const core::PlantId plant = own->batch.plant;
    const int day = core::usualHorizonOf(plant, records.shelves);
    std::vector<core::Course> courses;
    for (const core::BatchRecord& record : records.batches)
        courses.push_back(core::courseOf(record, core::usualHorizonOf(record.batch.plant, records.shelves)));
    const std::vector<core::Session> sessions = logbook.sessions();
    const std::vector<core::Care> care = logbook.allCare();
    // As the bench and the list judge it: by batches of its own plant, without itself.
    const stats::PooledSpread spread =
        core::pooledSpreadWithout(ofPlant(records.batches, plant), batch, day, records.shelves.facts.level);
    return core::suspectsFor(courses[static_cast<std::size_t>(own - records.batches.begin())],
                             {.batches = courses,
                              .shelves = records.shelves,
                              .sessions = sessions,
                              .care = care,
                              .conditions = records.conditions,
                              .spread = spread},
                             stop);
}

}  // namespace report
