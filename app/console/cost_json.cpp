// SPDX-License-Identifier: MIT
#include "app/console/cost_json.h"

namespace console {

namespace {

Json countJson(const std::optional<int>& count) {
    return count ? Json(*count) : Json();
}

Json eachJson(const core::CostOfEach& each) {
    return {{"value", figure(each.value)}, {"low", figure(each.limits.low)}, {"high", figure(each.limits.high)}};
}

Json rateJson(const core::CountedRate& rate) {
    return {{"batches", rate.batches},
            {"of", rate.of},
            {"succeeded", rate.succeeded},
            {"rate", rate.of > 0 ? figure(rate.rate) : Json()},
            {"limits", limits(rate.limits)}};
}

Json partsJson(const core::CostParts& parts) {
    return {{"lasting", figure(parts.of(core::CostPart::Lasting))},
            {"used_up", figure(parts.of(core::CostPart::UsedUp))},
            {"electricity", figure(parts.of(core::CostPart::Electricity))},
            {"work", figure(parts.of(core::CostPart::Work))},
            {"written_down", figure(parts.of(core::CostPart::WrittenDown))},
            {"total", figure(parts.total())}};
}

Json methodJson(const core::WorthOfMethod& method) {
    const bool hasCosts = method.pricedStuck > 0;
    Json json = {{"name", method.name}};
    if (!method.plantName.empty()) json["species"] = method.plantName;
    json.update(
        {{"batches", method.batches},
         {"stations", method.stations},
         {"stuck", method.stuck},
         {"not_at_the_horizon_yet", method.running},
         {"left_before_the_horizon", method.unwatched},
         {"without_costs", method.unpriced},
         {"strike", rateJson(method.strike)},
         {"per_cutting", partsJson(method.perCutting)},
         {"per_rooted", hasCosts && !method.rates.empty() ? eachJson(method.perRooted) : Json()},
         {"usable", method.usable ? rateJson(*method.usable) : Json()},
         {"per_usable", method.usable && method.perUsable.limits.high > 0 ? eachJson(method.perUsable) : Json()},
         {"up_front", figure(method.upFront)},
         {"per_batch", figure(method.perBatch)},
         {"cuttings_per_batch", figure(method.cuttingsPerBatch)},
         {"days_to_root", method.medianDays ? Json{{"after", figure(method.medianDays->after)},
                                                   {"by", figure(method.medianDays->by)},
                                                   {"interval", limits(method.medianDaysLimits)}}
                                            : Json()}});
    return json;
}

Json breakEvenJson(const std::optional<core::BreakEvenBatches>& even) {
    if (!even) return {};
    return {{"method", even->name},
            {"chance_ever", figure(even->chanceEver)},
            {"low", countJson(even->low)},
            {"batches", countJson(even->middle)},
            {"high", countJson(even->high)}};
}

Json worthPairJson(const core::WorthOfPair& pair) {
    return {{"dear", methodJson(pair.dear)},
            {"cheap", methodJson(pair.cheap)},
            {"species", pair.plants},
            {"left_out", pair.leftOut},
            {"chance_dear_pays", figure(pair.chanceDearPays)},
            {"chance_dear_pays_without_days", figure(pair.chanceDearPaysWithoutDays)},
            {"chance_dear_roots_more", figure(pair.chanceDearRootsMore)},
            {"break_even", breakEvenJson(pair.breakEven)},
            {"days_saved", {{"value", figure(pair.daysSaved)}, {"interval", limits(pair.daysSavedLimits)}}},
            {"worth_of_a_day", figure(pair.worthOfADay)},
            {"worth_of_days_a_plant", figure(pair.line.shift)},
            {"ties_at",
             {{"dear_strike", figure(pair.dearStrikeToTie)},
              {"dear_per_cutting", figure(pair.dearCostToTie)},
              {"dear_up_front", figure(pair.upFrontToTie)}}},
            {"more_cuttings_to_tell", countJson(pair.moreCuttings)},
            {"verdict", core::wordFor(pair.verdict)},
            {"in_words", pair.inWords}};
}

Json emptyJson(const core::StoodEmpty& empty) {
    return {{"part", core::wordFor(empty.part)},
            {"what", empty.what},
            {"days", empty.days},
            {"amount", figure(empty.amount)}};
}

}  // namespace

Json jsonOf(const core::Worth& worth, const std::string& currency) {
    Json json = {{"at_day", worth.horizonDay},
                 {"at_day_reason", worth.horizonReason},
                 {"level", figure(worth.level)},
                 {"currency", currency},
                 {"icc_used", figure(worth.correlation)},
                 {"methods", Json::array()},
                 {"by_species", Json::array()},
                 {"pair", worthPairJson(worth.pairs.front())},
                 {"stood_empty", Json::array()},
                 {"missing", worth.missing},
                 {"cautions", worth.cautions},
                 {"in_words", worth.inWords}};
    for (const core::WorthOfMethod& method : worth.methods) json["methods"].push_back(methodJson(method));
    for (const core::WorthOfMethod& row : worth.byPlant) json["by_species"].push_back(methodJson(row));
    for (const core::StoodEmpty& empty : worth.stoodEmpty) json["stood_empty"].push_back(emptyJson(empty));
    return json;
}

}  // namespace console
