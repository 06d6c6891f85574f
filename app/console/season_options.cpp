// SPDX-License-Identifier: MIT
#include "app/console/season_options.h"

#include "app/console/arguments.h"
#include "app/console/words.h"
#include "app/report/season_review_records.h"

namespace console {

namespace {

constexpr std::int64_t earliestYear = 1800, latestYear = 9999;

std::string_view wordFor(core::HowSure sure) {
    switch (sure) {
        case core::HowSure::NothingKnown:
            return "nothing known";
        case core::HowSure::OneMethodOnly:
            return "one method only";
        case core::HowSure::CannotTell:
            return "cannot tell yet";
        case core::HowSure::BetterThanSome:
            return "better than some";
        case core::HowSure::BetterThanAll:
            return "better than all";
    }
    return "";
}

Json plantJson(const core::PlantInReview& plant) {
    Json json = {{"plant", plant.name}, {"stuck", plant.counts.stuck}, {"at_day", plant.horizonDay}};
    json["methods"] = Json::array();
    for (const core::Arm& arm : plant.methods)
        json["methods"].push_back({{"method", arm.name},
                                   {"batches", arm.batches},
                                   {"rooted", arm.rooted},
                                   {"assessed", arm.assessed},
                                   {"rate", figure(arm.rate)},
                                   {"as_counted", limits(arm.asCounted)},
                                   {"with_spread", limits(arm.withSpread)}});
    const int best = plant.best.method;
    json["best"] = best < 0 ? Json() : Json(plant.methods[static_cast<std::size_t>(best)].name);
    json["how_sure"] = wordFor(plant.best.sure);
    json["chance_ahead"] = figure(plant.best.chanceAhead);
    json["in_words"] = plant.best.inWords;
    return json;
}

}  // namespace

void SeasonOptions::declare(Options& options) {
    options.option("--season", "YEAR", tr("a review of what was stuck in that year"), season_);
    options.option("--from", "DATE", tr("with --until: a review of what was stuck from that day on"), from_);
    options.option("--until", "DATE", tr("with --from: up to and including that day"), until_);
}

std::optional<core::ReviewQuestion> SeasonOptions::read() const {
    if (!isWanted()) return {};
    if (season_ && (from_ || until_))
        throw WrongArgument(tr("Of --season YEAR and --from DATE --until DATE no more than one is allowed."));
    if (season_) {
        const std::chrono::year year(static_cast<int>(wholeFrom("--season", *season_, earliestYear, latestYear)));
        return core::ReviewQuestion{.from = year / std::chrono::January / 1,
                                    .until = year / std::chrono::December / 31};
    }
    if (!from_ || !until_) throw WrongArgument(tr("--from DATE and --until DATE are needed both."));
    const core::ReviewQuestion question{.from = dateFrom("--from", *from_), .until = dateFrom("--until", *until_)};
    if (question.until < question.from)
        throw WrongArgument(filled(tr("--until is %1; %2 or later is allowed."), {shown(*until_), shown(*from_)}));
    return question;
}

core::SeasonReview seasonReviewOf(const core::ReviewQuestion& question, const db::Logbook& logbook,
                                  const Surroundings& surroundings) {
    const report::SeasonRecords records = report::seasonRecordsOf(logbook, surroundings.today);
    core::Result<core::SeasonReview> review = core::seasonReview(question, records.view());
    if (!review) throw WrongArgument(linesOf(review.error()));
    return std::move(*review);
}

Json jsonOf(const core::SeasonReview& review) {
    Json json = {{"from", core::isoText(review.from)},   {"until", core::isoText(review.until)},
                 {"sessions", review.sessions},          {"batches", review.counts.batches},
                 {"stuck", review.counts.stuck},         {"rooted", review.counts.rooted},
                 {"lost", review.counts.lost},           {"withdrawn", review.counts.withdrawn},
                 {"undecided", review.counts.undecided}, {"in_words", review.inWords}};
    json["plants"] = Json::array();
    for (const core::PlantInReview& plant : review.plants) json["plants"].push_back(plantJson(plant));
    json["learned"] = Json::array();
    for (const core::Lesson& lesson : review.lessons)
        json["learned"].push_back({{"about", lesson.about}, {"in_words", lesson.inWords}});
    json["out_of_the_ordinary"] = Json::array();
    for (const core::UnusualBatch& batch : review.unusual) json["out_of_the_ordinary"].push_back(batch.code);
    json["spent"] = review.money ? figure(review.money->spent.total()) : Json();
    json["try_next"] = Json::array();
    for (const core::Advice& advice : review.next) json["try_next"].push_back(advice.inWords);
    return json;
}

}  // namespace console
