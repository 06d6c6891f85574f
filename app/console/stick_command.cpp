// SPDX-License-Identifier: MIT
#include "app/console/stick_command.h"

#include <algorithm>
#include <cctype>

#include "app/console/arguments.h"
#include "app/console/calendar_output.h"
#include "app/console/open_logbook.h"
#include "app/console/plant_called.h"
#include "app/console/words.h"
#include "core/units/number_entry.h"
#include "stats/planning/predictive_count.h"

namespace console {

namespace {

constexpr int longestStay = 3650;  // days
constexpr int mostPast = 100'000;

core::BatchCount pastCountFrom(const std::string& text) {
    const std::size_t slash = text.find('/');
    const std::optional<int> rooted = core::countFrom(text.substr(0, slash));
    const std::optional<int> stuck =
        slash == std::string::npos ? std::nullopt : core::countFrom(text.substr(slash + 1));
    if (rooted && stuck && *rooted <= *stuck && *stuck <= mostPast)
        return {.code = {}, .rooted = *rooted, .assessed = *stuck};
    throw WrongArgument(
        filled(tr("--past is %1, which is not ROOTED/STUCK; two whole numbers are allowed, STUCK from 0 "
                  "to %2 and ROOTED from 0 to STUCK, such as 18/24."),
               {shown(text), std::to_string(mostPast)}));
}

/// core's answer to a question that the command has looked through already.
core::HowMany answered(core::Result<core::HowMany> answer) {
    if (!answer) throw WrongArgument(linesOf(answer.error()));
    return std::move(*answer);
}

/// For a calendar: what it is known by for good, in small letters, digits and dashes.
std::string keyOf(const std::string& plant, const std::string& method, core::Date needBy) {
    std::string key = "plan-" + core::isoText(needBy) + "-" + plant + (method.empty() ? "" : "-" + method);
    for (char& letter : key) {
        const auto byte = static_cast<unsigned char>(letter);
        letter = std::isalnum(byte) != 0 ? static_cast<char>(std::tolower(byte)) : '-';
    }
    return key;
}

}  // namespace

std::string StickCommand::name() const {
    return "stick";
}

std::string StickCommand::summary() const {
    return tr("how many cuttings to stick for so many plants, and when");
}

void StickCommand::declare(Options& options) {
    options.neededOption("--need", "K", tr("plants wanted, 1 to 10000"), need_);
    options.option("--assurance", "P", tr("chance of having enough, between 0 and 1 (0.9)"), assurance_);
    options.listOption("--past", "X/N...", tr("past counts, rooted of stuck, one for each batch"), past_);
    options.option("--rate", "R", tr("or a strike rate that is known for certain, from 0 to 1"), rate_);
    options.option("--log", "LOG", tr("or the records of this logbook"), log_);
    options.option("--species", "NAME", tr("of this plant; without --log by the reference table alone"), species_);
    options.option("--method", "M", tr("of the logbook: only batches by this method (all)"), method_);
    options.option("--by", "DATE", tr("day on which the plants are needed; needs --species"), by_);
    options.option("--growing-on", "DAYS", tr("from potting on, when rooted, to the hardening (0)"), potting_);
    options.option("--hardening", "DAYS", tr("the last days before that (0)"), hardening_);
    options.option("--potted-live", "PERCENT", tr("of 100 that are potted, how many live on (100)"), pottedLive_);
    options.option("--tray", "N",
                   tr("cuttings that share a tray and its luck (the plant's usual; of --past: not reckoned with)"),
                   tray_);
    options.option("--ics", "FILE.ics", tr("write the days for calendars; an older file is replaced"), ics_);
    options.flag("--json", tr("for machines"), isJson_);
}

core::HowManyQuestion StickCommand::question() const {
    core::HowManyQuestion question{.wanted = static_cast<int>(wholeFrom("--need", *need_, 1, core::mostWanted))};
    if (assurance_) question.assurance = levelFrom("--assurance", *assurance_);
    if (pottedLive_) question.pottedLive = percentFrom("--potted-live", *pottedLive_);
    if (tray_) question.traySize = static_cast<int>(wholeFrom("--tray", *tray_, 1, core::mostWanted));
    return question;
}

std::optional<core::WhenQuestion> StickCommand::dayQuestion() const {
    if (ics_) requireCalendarName(*ics_);
    if (!by_) {
        if (ics_ || hardening_ || potting_)
            throw WrongArgument(
                tr("--ics, --hardening and --growing-on need --by DATE: the day on which the plants are wanted."));
        return {};
    }
    if (!species_)
        throw WrongArgument(tr("--by needs --species NAME: without a plant nothing is known of its days to root."));
    core::WhenQuestion when{.needBy = dateFrom("--by", *by_)};
    if (hardening_) when.hardeningDays = static_cast<int>(wholeFrom("--hardening", *hardening_, 0, longestStay));
    if (potting_) when.pottingDays = static_cast<int>(wholeFrom("--growing-on", *potting_, 0, longestStay));
    return when;
}

void StickCommand::requireOneBasis() const {
    const bool isByRecords = log_ || species_ || method_;
    if ((past_.empty() ? 0 : 1) + (rate_ ? 1 : 0) + (isByRecords ? 1 : 0) != 1)
        throw WrongArgument(
            tr("Of --past X/N, --rate R and --species NAME (with --log LOG or without) one is needed, and no more than "
               "one."));
    if (log_ && !species_) throw WrongArgument(tr("--log needs --species NAME: the plant that is meant."));
    if (method_ && !log_) throw WrongArgument(tr("--method needs --log LOG: the logbook that knows it."));
}

StickAnswer StickCommand::fromRate(const core::HowManyQuestion& question) const {
    const double rate = shareFrom("--rate", *rate_);
    const stats::CountToStick count =
        stats::countForKnownRate(question.wanted, rate, question.assurance, question.pottedLive);
    StickAnswer answer{.basis = "rate", .howMany = {}, .past = {}, .inTrays = {}, .when = {}, .calendar = {}};
    answer.howMany.question = question;
    answer.howMany.stick = count.count;
    answer.howMany.achieved = count.achieved;
    if (count.count) {
        answer.howMany.expectedPlants = *count.count * rate * question.pottedLive;
        answer.howMany.expectedRange =
            stats::rangeForKnownRate(*count.count, rate, question.level, question.pottedLive);
    }
    answer.howMany.answerInWords = core::howManyInWords(answer.howMany);
    answer.howMany.recordsInWords = tr("The rate is taken as known for certain, which no grower's is.");
    return answer;
}

StickAnswer StickCommand::fromCounts(const core::HowManyQuestion& question) const {
    std::vector<core::BatchCount> counts;
    for (const std::string& text : past_) counts.push_back(pastCountFrom(text));
    StickAnswer answer{.basis = "past", .howMany = {}, .past = {}, .inTrays = {}, .when = {}, .calendar = {}};
    const core::PastRecords inTrays = core::pastRecordsOf(counts);
    answer.past = tray_ ? inTrays : core::plainRecordsOf(counts);
    answer.howMany = answered(core::howManyToStick(question, *answer.past));
    if (tray_) return answer;
    answer.inTrays = answered(core::howManyToStick(question, inTrays));
    if (answer.howMany.stick || question.pottedLive < 1) return answer;
    const stats::CountToStick far =
        stats::countForPastRecords(question.wanted, answer.past->rooted, answer.past->assessed, question.assurance);
    if (!far.count) return answer;
    answer.howMany.stick = far.count;
    answer.howMany.achieved = far.achieved;
    answer.howMany.expectedPlants = *far.count * answer.past->meanRate;
    answer.howMany.expectedRange =
        stats::rangeForPastRecords(*far.count, answer.past->rooted, answer.past->assessed, question.level);
    answer.howMany.answerInWords = core::howManyInWords(answer.howMany);
    return answer;
}

StickAnswer StickCommand::fromShelves(core::HowManyQuestion question, const core::Plant& plant, core::MethodId method,
                                      const core::Shelves& shelves, std::span<const core::BatchRecord> batches,
                                      core::Date today) const {
    StickAnswer answer{.basis = "logbook", .howMany = {}, .past = {}, .inTrays = {}, .when = {}, .calendar = {}};
    answer.past = core::pastRecordsOf(plant.id, method, shelves, batches);
    const std::optional<core::WhenQuestion> when = dayQuestion();
    const core::RootingDays rooting = when ? core::rootingDaysOf(*answer.past, shelves, batches) : core::RootingDays{};
    if (when) question.rootedInTime = rooting.rootedInTime;
    if (!tray_) question.traySize = core::usualTraySize(*answer.past, shelves);
    question.level = shelves.facts.level;
    answer.howMany = answered(core::howManyToStick(question, *answer.past));
    if (!when) return answer;
    const auto days = core::whenToStick(*when, rooting, *answer.past, answer.howMany.stick, shelves, today);
    if (!days) throw WrongArgument(linesOf(days.error()));
    answer.when = *days;
    return answer;
}

std::optional<StickAnswer> StickCommand::fromLogbook(core::HowManyQuestion question, const Surroundings& surroundings,
                                                     std::ostream& err) const {
    const db::Logbook logbook = openToRead(*log_, surroundings);
    const core::Shelves shelves = logbook.shelves();
    const core::Plant* plant = plantCalled(*species_, shelves, *log_, err);
    if (plant == nullptr) return {};
    core::MethodId method;
    if (method_) {
        const core::Method* called = methodCalled(*method_, shelves, *log_, err);
        if (called == nullptr) return {};
        method = called->id;
    }
    return fromShelves(question, *plant, method, shelves, logbook.batchRecords(), surroundings.today);
}

std::optional<StickAnswer> StickCommand::fromReference(core::HowManyQuestion question, const Surroundings& surroundings,
                                                       std::ostream& err) const {
    if (core::plantReferenceFor(*species_) == nullptr) {
        err << filled(tr("The reference table has no plant %1."), {shown(*species_)}) << '\n';
        return {};
    }
    core::Shelves shelves;
    core::Plant plant;
    plant.id = core::PlantId{1};
    plant.botanicalName = *species_;
    shelves.plants.push_back(plant);
    StickAnswer answer = fromShelves(question, shelves.plants.front(), {}, shelves, {}, surroundings.today);
    answer.basis = "reference";
    return answer;
}

int StickCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    const core::HowManyQuestion asked = question();
    requireOneBasis();
    static_cast<void>(dayQuestion());  // what is wrong with a day is said before a logbook is opened
    std::optional<StickAnswer> answer = rate_            ? fromRate(asked)
                                        : !past_.empty() ? fromCounts(asked)
                                        : log_           ? fromLogbook(asked, surroundings, err)
                                                         : fromReference(asked, surroundings, err);
    if (!answer) return Refused;
    if (ics_ && answer->when) {
        const std::string title = answer->past->plantName;
        const auto days =
            report::calendarOf(answer->when->days, keyOf(title, answer->past->methodName, dayQuestion()->needBy));
        writeCalendar(*ics_, title, days, surroundings);
        answer->calendar = *ics_;
    }
    if (isJson_)
        print(jsonOf(*answer), out);
    else
        printText(*answer, out);
    return answer->howMany.stick ? Done : Refused;
}

}  // namespace console
