// SPDX-License-Identifier: MIT
#include "app/console/stick_answer.h"

#include "app/console/text_table.h"
#include "app/console/words.h"
#include "app/plot/number_text.h"

namespace console {

namespace {

Json numberOrNull(const std::optional<int>& number) {
    return number ? Json(*number) : Json();
}

Json recordsJson(const core::PastRecords& records) {
    return {{"rooted", records.rooted},
            {"assessed", records.assessed},
            {"batches", records.batches.size()},
            {"left_out", records.leftOut},
            {"at_day", records.horizonDay > 0 ? Json(records.horizonDay) : Json()},
            {"band", limits(records.band)},
            {"band_source", records.band ? Json(core::sourceWords(records.reference->strike)) : Json()},
            {"own_weight", figure(records.ownWeight)},
            {"expected_rate", figure(records.meanRate)},
            {"icc", figure(records.correlation)},
            {"icc_from_records", records.isSpreadFromRecords}};
}

Json rangeJson(const core::HowMany& howMany) {
    if (!howMany.expectedRange) return {};
    return {{"low", howMany.expectedRange->low},
            {"high", howMany.expectedRange->high},
            {"level", figure(howMany.question.level)}};
}

/// What one would stick who only divides.
Json plainNumberJson(const core::HowMany& howMany) {
    if (!howMany.stick || *howMany.stick == 0) return {};
    const auto number = core::plainNumber(howMany.question.wanted, howMany.expectedPlants / *howMany.stick);
    return number ? Json(*number) : Json();
}

Json whenJson(const core::When& when) {
    Json days = Json::array();
    for (const core::PlanDay& day : when.days)
        days.push_back({{"on", core::isoText(day.on)}, {"kind", core::wordFor(day.kind)}, {"what", day.what}});
    return {{"stick_by", core::isoText(when.stickBy)},
            {"margin_days", when.marginDays},
            {"days_to_root", when.rooting.upper},
            {"half_by_day", when.rooting.middle},
            {"rooted_in_time", figure(when.rooting.rootedInTime)},
            {"rests_on", core::wordFor(when.rooting.restsOn)},
            {"days", std::move(days)},
            {"in_words", when.answerInWords},
            {"rooting_in_words", when.rooting.inWords},
            {"warning", when.warning.empty() ? Json() : Json(when.warning)}};
}

Json curveJson(const core::HowMany& howMany) {
    Json curve = Json::array();
    for (const core::StuckChance& point : howMany.curve)
        curve.push_back({{"stuck", point.stuck}, {"chance", figure(point.chance)}});
    return curve;
}

}  // namespace

Json jsonOf(const StickAnswer& answer) {
    const core::HowMany& howMany = answer.howMany;
    const core::HowManyQuestion& question = howMany.question;
    const bool hasTrays = answer.past && !answer.past->haveOwnLuck;
    Json json = {{"need", question.wanted},
                 {"assurance", figure(question.assurance)},
                 {"potted_live", figure(question.pottedLive)},
                 {"basis", answer.basis},
                 {"stick", numberOrNull(howMany.stick)},
                 {"achieved", figure(howMany.achieved)},
                 {"expected_plants", howMany.stick ? figure(howMany.expectedPlants) : Json()},
                 {"expected_range", rangeJson(howMany)},
                 {"plain_number", plainNumberJson(howMany)},
                 {"tray", hasTrays ? Json(question.traySize) : Json()},
                 {"with_a_tray_more", nullptr},
                 {"curve", curveJson(howMany)},
                 {"records", answer.past ? recordsJson(*answer.past) : Json()},
                 {"in_trays", nullptr},
                 {"when", answer.when ? whenJson(*answer.when) : Json()},
                 {"ics", answer.calendar.empty() ? Json() : Json(answer.calendar)},
                 {"in_words", howMany.answerInWords},
                 {"warning", howMany.warning.empty() ? Json() : Json(howMany.warning)}};
    if (hasTrays && howMany.stick)
        json["with_a_tray_more"] = {{"stick", howMany.withATrayMore},
                                    {"achieved", figure(howMany.chanceWithATrayMore)}};
    if (answer.inTrays)
        json["in_trays"] = {{"tray", answer.inTrays->question.traySize},
                            {"stick", numberOrNull(answer.inTrays->stick)},
                            {"achieved", figure(answer.inTrays->achieved)}};
    return json;
}

void printText(const StickAnswer& answer, std::ostream& out) {
    const core::HowMany& howMany = answer.howMany;
    out << howMany.answerInWords << '\n';
    if (answer.past && !answer.past->haveOwnLuck && !howMany.trayMoreInWords.empty())
        out << howMany.trayMoreInWords << '\n';
    if (!howMany.recordsInWords.empty()) out << howMany.recordsInWords << '\n';
    if (answer.inTrays && answer.inTrays->stick)
        out << filled(tr("In trays of %1 that differ as usual it would take %2."),
                      {std::to_string(answer.inTrays->question.traySize), std::to_string(*answer.inTrays->stick)})
            << '\n';
    if (!howMany.warning.empty()) out << howMany.warning << '\n';
    if (!answer.when) return;
    const core::When& when = *answer.when;
    out << '\n' << when.answerInWords << '\n' << when.rooting.inWords << '\n';
    if (!when.warning.empty()) out << when.warning << '\n';
    TextTable table({{tr("day"), TextTable::Align::Left}, {tr("what"), TextTable::Align::Left}});
    for (const core::PlanDay& day : when.days) table.addRow({plot::dateText(day.on).toStdString(), day.what});
    table.printTo(out);
    if (!answer.calendar.empty()) out << filled(tr("Wrote these days to %1."), {answer.calendar}) << '\n';
}

}  // namespace console
