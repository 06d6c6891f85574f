// SPDX-License-Identifier: MIT
#include "app/console/compare_json.h"

#include "app/console/dose_output.h"
#include "app/console/goes_with_output.h"
#include "app/console/speed_output.h"

namespace console {

namespace {

Json sharesJson(const std::vector<core::DayShare>& shares) {
    Json list = Json::array();
    for (const core::DayShare& share : shares) {
        Json day = {{"day", figure(share.day)}, {"share", figure(share.share)}};
        if (share.band) day["band"] = limits(*share.band);
        list.push_back(std::move(day));
    }
    return list;
}

Json rangeJson(const std::optional<core::DayRange>& range) {
    return range ? Json{{"after", figure(range->after)}, {"by", figure(range->by)}} : Json();
}

Json quantilesJson(const core::DaysToRoot& days) {
    return {{"p25", rangeJson(days.p25)},
            {"p50", rangeJson(days.p50)},
            {"p75", rangeJson(days.p75)},
            {"p90", rangeJson(days.p90)}};
}

Json lossesJson(const std::vector<core::LossByCause>& losses) {
    Json list = Json::array();
    for (const core::LossByCause& loss : losses) list.push_back({{"cause", loss.cause}, {"lost", loss.count}});
    return list;
}

Json armJson(const core::Arm& arm) {
    return {{"name", arm.name},
            {"batches", arm.batches},
            {"stations", arm.stations},
            {"stuck", arm.stuck},
            {"rooted", arm.rooted},
            {"lost", arm.lost},
            {"withdrawn", arm.withdrawn},
            {"undecided", arm.undecided},
            {"assessed", arm.assessed},
            {"rate", figure(arm.rate)},
            {"curve_share", figure(arm.curveShare)},  // of all stuck, read off the curve at the day
            {"as_counted", limits(arm.asCounted)},
            {"with_spread", limits(arm.withSpread)},
            {"share_rooted_by_day", sharesJson(arm.rootedByDay)},
            {"share_lost_by_day", sharesJson(arm.lostByDay)},
            {"days_to_root",
             {{"of_stuck", quantilesJson(arm.ofStuck)},
              {"of_rooted", quantilesJson(arm.ofRooted)},
              {"p50_interval", limits(arm.ofStuck.p50Interval)}}},
            {"speed", speedJson(arm.speed)},
            {"losses", lossesJson(arm.losses)}};
}

Json differenceJson(const std::optional<core::PairDifference>& difference) {
    if (!difference)
        return {{"value", nullptr},
                {"newcombe", nullptr},
                {"miettinen_nurminen", nullptr},
                {"of_batches", nullptr},
                {"with_spread", nullptr}};
    return {{"value", figure(difference->value)},
            {"newcombe", limits(difference->newcombe)},
            {"miettinen_nurminen", limits(difference->miettinenNurminen)},
            {"of_batches", figure(difference->ofBatches)},
            {"with_spread", limits(difference->withSpread)}};
}

std::string countText(int rooted, int assessed) {
    return std::to_string(rooted) + "/" + std::to_string(assessed);
}

Json speciesJson(const std::vector<core::BySpecies>& all) {
    Json list = Json::array();
    for (const core::BySpecies& one : all)
        list.push_back({{"species", one.species},
                        {"first", countText(one.firstRooted, one.firstAssessed)},
                        {"second", countText(one.secondRooted, one.secondAssessed)},
                        {"difference", figure(one.difference)},
                        {"low", figure(one.limits.low)},
                        {"high", figure(one.limits.high)}});
    return list;
}

Json limitsIf(bool areThere, const core::Limits& interval) {
    return areThere ? limits(interval) : Json();
}

Json pooledJson(const core::Pooled& pooled) {
    return {
        {"strata", pooled.strata},
        {"odds_ratio", figure(pooled.oddsRatio)},
        {"odds_ratio_low", figure(pooled.oddsRatioLimits.low)},
        {"odds_ratio_high", figure(pooled.oddsRatioLimits.high)},
        {"risk_difference", figure(pooled.riskDifference)},
        {"risk_difference_low", figure(pooled.riskDifferenceLimits.low)},
        {"risk_difference_high", figure(pooled.riskDifferenceLimits.high)},
        {"odds_ratio_with_spread", limitsIf(pooled.oddsRatio.has_value(), pooled.oddsRatioWithSpread)},
        {"risk_difference_with_spread", limitsIf(pooled.riskDifference.has_value(), pooled.riskDifferenceWithSpread)},
        {"cmh_p", figure(pooled.cmhP)},
        {"agreement_p", figure(pooled.agreementP)}};
}

Json asGoodJson(const std::optional<core::AsGoodAs>& answer) {
    if (!answer) return {};
    return {{"margin", figure(answer->margin)},          {"shown", answer->isShown},
            {"as_counted", limits(answer->asCounted)},   {"p_as_counted", figure(answer->asCountedP)},
            {"with_spread", limits(answer->withSpread)}, {"p_with_spread", figure(answer->withSpreadP)}};
}

Json severalJson(const std::optional<core::SeveralArms>& several) {
    if (!several) return {};
    return {{"arms", several->arms},
            {"chi_square", figure(several->chiSquare)},
            {"degrees_of_freedom", several->degreesOfFreedom},
            {"p_as_counted", figure(several->chiSquareP)},
            {"smallest_expected", figure(several->smallestExpected)},
            {"f_of_batch_rates", figure(several->f)},
            {"p_batch_rates", figure(several->batchRatesP)}};
}

Json exactP(const core::Pair& pair, double p) {
    return pair.exactTestsLeftOut ? Json() : figure(p);
}

std::string verdictWord(core::Verdict verdict) {
    switch (verdict) {
        case core::Verdict::CannotTellMethodFromStation:
            return "cannot_tell_method_from_station";
        case core::Verdict::TooFewBatches:
            return "too_few_batches";
        case core::Verdict::NoClearDifference:
            return "no_clear_difference";
        case core::Verdict::FirstBetter:
            return "first_better";
        case core::Verdict::SecondBetter:
            return "second_better";
    }
    return {};
}

Json pairJson(const core::Pair& pair, const std::vector<core::Arm>& arms) {
    return {{"first", arms[static_cast<std::size_t>(pair.first)].name},
            {"second", arms[static_cast<std::size_t>(pair.second)].name},
            {"difference", differenceJson(pair.difference)},
            {"risk_ratio", {{"value", figure(pair.riskRatio)}, {"koopman", limits(pair.koopman)}}},
            {"odds_ratio", {{"conditional", figure(pair.oddsRatio)}, {"exact", limits(pair.oddsRatioExact)}}},
            {"p",
             {{"fisher", figure(pair.fisher)},
              {"fisher_mid", figure(pair.fisherMid)},
              {"boschloo", exactP(pair, pair.boschloo)},
              {"barnard", exactP(pair, pair.barnard)},
              {"batch_rates", figure(pair.batchRatesP)},
              {"batch_permutation", figure(pair.batchPermutationP)},
              {"batch_rates_holm", figure(pair.batchRatesHolm)},
              {"boschloo_holm", figure(pair.boschlooHolm)}}},
            {"first_as_good", asGoodJson(pair.firstAsGood)},
            {"second_as_good", asGoodJson(pair.secondAsGood)},
            {"probability_first_better", figure(pair.probabilityFirstBetter)},
            {"speed", speedJson(pair.speed)},
            {"curves_p", figure(pair.curvesP)},
            {"by_species", speciesJson(pair.bySpecies)},
            {"pooled", pooledJson(pair.pooled)},
            {"verdict", verdictWord(pair.verdict)},
            {"in_words", pair.inWords}};
}

Json spreadJson(const core::Spread& spread) {
    const std::optional<double> none;
    return {{"icc", figure(spread.isFromRecords ? spread.intraclassCorrelation : none)},
            {"icc_limits", limits(spread.isFromRecords ? std::optional(spread.limits) : std::nullopt)},
            {"icc_used", figure(spread.intraclassCorrelation)},  // what is usual, where no like batches are on record
            {"weight_of_records", figure(spread.weightOfRecords)},
            {"design_effect", figure(spread.isFromRecords ? spread.designEffect : none)},
            {"groups", spread.groups},
            {"batches", spread.batches}};
}

}  // namespace

Json jsonOf(const core::Comparison& comparison) {
    Json json = {{"factor", core::wordFor(comparison.factor)},
                 {"at_day", comparison.horizonDay},
                 {"at_day_reason", comparison.horizonReason},
                 {"level", figure(comparison.level)},
                 {"interval", core::wordFor(comparison.interval)},
                 {"arms", Json::array()},
                 {"pairs", Json::array()},
                 {"spread", spreadJson(comparison.spread)},
                 {"several_arms", severalJson(comparison.severalArms)},
                 {"doses", dosesJson(comparison.doses)},
                 {"goes_with", goesWithJson(comparison.goesWith)},
                 {"cautions", comparison.cautions},
                 {"in_words", comparison.inWords}};
    for (const core::Arm& arm : comparison.arms) json["arms"].push_back(armJson(arm));
    for (const core::Pair& pair : comparison.pairs) json["pairs"].push_back(pairJson(pair, comparison.arms));
    return json;
}

}  // namespace console
