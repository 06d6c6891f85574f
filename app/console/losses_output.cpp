// SPDX-License-Identifier: MIT
#include "app/console/losses_output.h"

#include "app/console/goes_with_output.h"
#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/plot/loss_words.h"
#include "app/plot/number_text.h"
#include "app/plot/rare_text.h"
#include "app/report/losses_words.h"

namespace console {

namespace {

using Align = TextTable::Align;

std::string plainText(const QString& words) {
    return words.toStdString();
}

Json dayJson(const std::optional<core::Date>& day) {
    return day ? Json(core::isoText(*day)) : Json();
}

std::string monthWord(std::chrono::year_month month) {
    return core::isoText(core::Date{month.year(), month.month(), std::chrono::day{1}}).substr(0, 7);
}

Json countJson(const core::LossCount& count) {
    return {{"batches", count.batches},
            {"stood", count.stood},
            {"lost", count.lost},
            {"rate", figure(count.rate)},
            {"as_counted", limits(count.asCounted)},
            {"by_cause", count.byCause}};
}

Json causesJson(const core::Losses& losses) {
    Json list = Json::array();
    for (const core::LossRow& row : losses.rows)
        list.push_back({{"cause", row.cause.isSet() ? Json(row.loss.cause) : Json()},
                        {"count", row.loss.count},
                        {"batches", row.batches},
                        {"share", figure(row.share)},
                        {"as_counted", limits(row.asCounted)},
                        {"with_spread", limits(row.withSpread)},
                        {"running_share", figure(row.runningShare)}});
    return list;
}

template <class Thing, class ThingId>
Json nameJson(const std::vector<Thing>& things, ThingId id) {
    const Thing* thing = core::find(things, id);
    return thing == nullptr ? Json() : Json(thing->name);
}

Json unusualJson(const core::UnusualBatch& batch, const core::Shelves& shelves) {
    const core::Plant* plant = core::find(shelves.plants, batch.plant);
    return {{"batch", batch.code},
            {"plant", plant == nullptr ? Json() : Json(core::fullName(*plant))},
            {"method", nameJson(shelves.methods, batch.method)},
            {"stuck_on", core::isoText(batch.stuckOn)},
            {"is_open", batch.isOpen},
            {"day", batch.against.day},
            {"rooted", batch.against.rooted},
            {"of", batch.against.of},
            {"past_batches", batch.against.pastBatches},
            {"expected", figure(batch.against.expected)},
            {"chance_of_so_few", figure(batch.against.chanceOfSoFew)}};
}

void printCauses(const core::Losses& losses, std::ostream& out) {
    if (losses.rows.empty()) return;
    TextTable table({{tr("lost to"), Align::Left},
                     {tr("of all lost"), Align::Left},
                     {tr("as counted"), Align::Left},
                     {tr("batches"), Align::Right},
                     {tr("running"), Align::Right}});
    for (const core::LossRow& row : losses.rows)
        table.addRow({plainText(plot::lossCauseText(row.cause, row.loss.cause)),
                      plainText(plot::percentText(row.share, row.loss.count, losses.lost)),
                      plainText(plot::limitsText(row.asCounted)), std::to_string(row.batches),
                      plainText(plot::shareText(row.runningShare))});
    out << '\n';
    table.printTo(out);
}

template <class Rows, class Name>
void printCounts(const std::string& heading, const Rows& rows, const Name& name, std::ostream& out) {
    if (rows.empty()) return;
    TextTable table({{heading, Align::Left},
                     {tr("lost of those that stood"), Align::Left},
                     {tr("as counted"), Align::Left},
                     {tr("batches"), Align::Right}});
    for (const auto& row : rows)
        table.addRow({name(row), plainText(plot::lossRateText(row.count)),
                      row.count.rate ? plainText(plot::limitsText(row.count.asCounted)) : "–",
                      std::to_string(row.count.batches)});
    out << '\n';
    table.printTo(out);
}

void printUnusual(const report::LossesAnswer& answer, const core::Shelves& shelves, std::ostream& out) {
    out << '\n' << plainText(report::unusualText(answer, shelves.facts.falseAlarmRate)) << '\n';
    if (answer.unusual.empty()) return;
    TextTable table({{tr("batch"), Align::Left},
                     {tr("stuck on"), Align::Left},
                     {tr("rooted"), Align::Left},
                     {tr("expected"), Align::Right},
                     {tr("by luck"), Align::Right},
                     {tr("plant, method"), Align::Left}});
    for (const core::UnusualBatch& batch : answer.unusual) {
        const core::Plant* plant = core::find(shelves.plants, batch.plant);
        const core::Method* method = core::find(shelves.methods, batch.method);
        table.addRow({batch.code, plainText(plot::dateText(batch.stuckOn)),
                      plainText(report::rootedText(batch.against)),
                      plainText(plot::decimalText(batch.against.expected, 1)),
                      plainText(plot::oneInText(batch.against.chanceOfSoFew)),
                      (plant == nullptr ? std::string() : core::fullName(*plant)) +
                          (method == nullptr ? std::string() : ", " + method->name)});
    }
    table.printTo(out);
}

Json suspectJson(const core::Suspect& suspect) {
    Json json = {{"kind", core::wordFor(suspect.kind)},
                 {"name", suspect.name},
                 {"batches", suspect.batches},
                 {"cuttings", suspect.cuttings},
                 {"others",
                  {{"batches", suspect.others.batches},
                   {"rooted", suspect.others.rooted},
                   {"assessed", suspect.others.assessed},
                   {"expected", figure(suspect.others.expected)},
                   {"usual_low", figure(suspect.others.usualLow)},
                   {"usual_high", figure(suspect.others.usualHigh)}}},
                 {"for", suspect.speaksFor},
                 {"against", suspect.speaksAgainst},
                 {"together_with", suspect.togetherWith},
                 {"odds", figure(suspect.odds)},
                 {"odds_in_words", suspect.oddsInWords},
                 {"change_next_time", suspect.changeNextTime},
                 {"check_instead", suspect.checkInstead},
                 {"trial", nullptr}};
    if (suspect.trial) json["trial"] = {{"name", suspect.trial->trial.name}, {"in_words", suspect.trial->inWords}};
    return json;
}

void printSentences(const std::string& caption, const std::vector<std::string>& sentences, std::ostream& out) {
    for (const std::string& sentence : sentences)
        if (!sentence.empty()) out << "   " << filled(tr("%1: %2"), {caption, sentence}) << '\n';
}

void printSuspect(std::size_t number, const core::Suspect& suspect, std::ostream& out) {
    out << '\n'
        << filled(tr("%1. %2 (%3): %4"), {std::to_string(number), suspect.name,
                                          plainText(report::kindText(suspect.kind)), suspect.oddsInWords})
        << '\n'
        << "   " << plainText(report::sharedText(suspect)) << '\n';
    printSentences(tr("for"), suspect.speaksFor, out);
    printSentences(tr("against"), suspect.speaksAgainst, out);
    printSentences(tr("can't be told apart from"), suspect.togetherWith, out);
    printSentences(tr("change next time"), {suspect.changeNextTime}, out);
    if (suspect.trial) printSentences(tr("to find out"), {suspect.trial->inWords}, out);
    printSentences(tr("check"), {suspect.checkInstead}, out);
}

}  // namespace

Json lossesJson(const report::LossesAnswer& answer, const core::Shelves& shelves) {
    const core::Losses& losses = answer.losses;
    Json months = Json::array(), stations = Json::array(), unusual = Json::array();
    for (const core::MonthOfLosses& month : losses.months) {
        months.push_back({{"month", monthWord(month.month)}});
        months.back().update(countJson(month.count));
    }
    for (const core::StationOfLosses& station : losses.stations) {
        stations.push_back({{"station", station.station.isSet() ? Json(station.name) : Json()}});
        stations.back().update(countJson(station.count));
    }
    for (const core::UnusualBatch& batch : answer.unusual) unusual.push_back(unusualJson(batch, shelves));
    return {{"from", dayJson(losses.from)},
            {"until", dayJson(losses.until)},
            {"level", figure(losses.level)},
            {"batches", losses.batches},
            {"stood", losses.stood},
            {"lost", losses.lost},
            {"batches_with_losses", losses.batchesWithLosses},
            {"causes", causesJson(losses)},
            {"months", std::move(months)},
            {"stations", std::move(stations)},
            {"false_alarms", figure(shelves.facts.falseAlarmRate)},
            {"out_of_the_ordinary", std::move(unusual)},
            {"goes_with", goesWithJson(answer.goesWith)},
            {"in_words", losses.inWords}};
}

void printLosses(const report::LossesAnswer& answer, const core::Shelves& shelves, std::ostream& out) {
    const core::Losses& losses = answer.losses;
    out << losses.inWords << '\n' << plainText(report::coveredText(losses)) << '\n';
    printUnusual(answer, shelves, out);
    printCauses(losses, out);
    printCounts(
        tr("month"), losses.months,
        [](const core::MonthOfLosses& month) { return plainText(plot::monthText(month.month)); }, out);
    printCounts(
        tr("station"), losses.stations,
        [](const core::StationOfLosses& station) { return plainText(plot::lossStationText(station)); }, out);
    if (losses.batches > 0) printGoesWith(answer.goesWith, out);
}

Json suspectsJson(const core::Suspects& suspects) {
    Json list = Json::array();
    for (const core::Suspect& suspect : suspects.suspects) list.push_back(suspectJson(suspect));
    const auto& past = suspects.againstPast;
    return {{"batch", suspects.code},
            {"chance_of_so_few", past ? figure(past->chanceOfSoFew) : Json()},
            {"expected", past ? figure(past->expected) : Json()},
            {"rooted", past ? Json(past->rooted) : Json()},
            {"of", past ? Json(past->of) : Json()},
            {"day", past ? Json(past->day) : Json()},
            {"is_named", suspects.isNamed},
            {"considered", suspects.considered},
            {"suspects", std::move(list)},
            {"record_next_time", suspects.recordNextTime},
            {"warning", suspects.warning},
            {"in_words", suspects.inWords}};
}

void printSuspects(const core::Suspects& suspects, std::ostream& out) {
    out << filled(tr("What may have gone wrong with %1"), {suspects.code}) << "\n\n"
        << suspects.inWords << '\n'
        << suspects.warning << '\n';
    if (const QString against = report::againstText(suspects); !against.isEmpty()) out << plainText(against) << '\n';
    for (std::size_t i = 0; i < suspects.suspects.size(); ++i) printSuspect(i + 1, suspects.suspects[i], out);
    if (suspects.recordNextTime.empty()) return;
    out << '\n' << tr("Write down next time") << '\n';
    for (const std::string& sentence : suspects.recordNextTime) out << "   " << sentence << '\n';
}

}  // namespace console
