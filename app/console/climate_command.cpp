// SPDX-License-Identifier: MIT
#include "app/console/climate_command.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "app/console/arguments.h"
#include "app/console/mix_output.h"
#include "app/console/station_climate.h"
#include "app/console/words.h"
#include "core/climate/climate_workings.h"
#include "core/climate/dissolved_oxygen.h"
#include "core/climate/ec_at_25.h"
#include "core/climate/over_time.h"
#include "core/climate/vapour.h"

namespace console {

namespace {

constexpr std::array climateOptions = std::to_array<QuestionOption>({
    {"--air", "T", "temperature of the air, in C or with its unit: 22, 72F"},
    {"--humidity", "PERCENT", "relative humidity"},
    {"--leaf", "T", "vapour: temperature of the leaf"},
    {"--deficit", "KPA", "humidity: deficit wanted over the air"},
    {"--light", "PPFD", "light: umol/m2/s"},
    {"--hours", "H", "light: hours of light"},
    {"--daily", "DLI", "light: or the mol/m2 wanted in so many hours"},
    {"--reading", "HH:MM=VALUE...", "light, degree-days: or readings of one day, in order, such as 06:00=0 08:30=120",
     true},
    {"--gap", "H", "light, degree-days: the longest time between two readings that a line may bridge (3)"},
    {"--water", "T", "oxygen, ec: temperature of the water"},
    {"--altitude", "M", "oxygen: height above the sea (0)"},
    {"--pressure", "ATM", "oxygen: or the station's air pressure"},
    {"--oxygen", "MG", "oxygen: a reading in mg/L"},
    {"--ec", "EC", "ec: read without compensation, in mS/cm or with its unit"},
    {"--slope", "S", "ec: change per degree (0.0191)"},
    {"--low", "T", "degree-days: lowest of the day"},
    {"--high", "T", "degree-days: highest of the day"},
    {"--base", "T", "degree-days: above this"},
    {"--station", "NAME", "of a logbook: the station whose climate it is"},
    {"--from", "DATE", "of a logbook: from this day on (all)"},
    {"--to", "DATE", "of a logbook: up to this day (today)"},
    {"--batch", "CODE", "of a logbook: since it was stuck, beside the bands of its stages"},
});

/// One figure with its unit, name and working.
struct ShownFigure {
    const char* key;
    std::string sentence;
    double value{};
    core::Working working;
};

void writeFigures(const char* question, const std::vector<ShownFigure>& figures, const AnswerWriter& writer) {
    if (writer.isJson) {
        Json json = {{"question", question}};
        Json workings = Json::array();
        for (const ShownFigure& each : figures) {
            json[each.key] = figure(each.value);
            workings.push_back(workingJson(each.working));
        }
        json["workings"] = workings;
        print(json, writer.out);
        return;
    }
    for (const ShownFigure& each : figures) writer.out << filled(each.sentence, {core::briefText(each.value)}) << '\n';
    writer.out << '\n' << tr("How it is worked out") << '\n';
    for (const ShownFigure& each : figures) printWorking(each.working, writer.out);
}

void answerVapour(const QuestionOptions& options, const AnswerWriter& writer) {
    const double air = options.celsius("--air"), humidity = options.number("--humidity");
    std::vector<ShownFigure> figures{{"air_vpd_kpa", tr("Vapour pressure deficit of the air: %1 kPa"),
                                      allowed(core::airVapourDeficit(air, humidity)),
                                      core::airDeficitWorking(air, humidity)}};
    if (options.given("--leaf")) {
        const double leaf = options.celsius("--leaf");
        const double deficit = allowed(core::leafVapourDeficit(air, humidity, leaf));
        figures.push_back({"leaf_vpd_kpa",
                           deficit < 0 ? tr("Vapour pressure deficit at the leaf: %1 kPa; dew forms on it")
                                       : tr("Vapour pressure deficit at the leaf: %1 kPa"),
                           deficit, core::leafDeficitWorking(air, humidity, leaf)});
    }
    if (humidity >= 1)
        figures.push_back({"dew_point_c", tr("Dew point: %1 C"), allowed(core::dewPoint(air, humidity)),
                           core::dewPointWorking(air, humidity)});
    writeFigures("vapour", figures, writer);
}

void answerHumidity(const QuestionOptions& options, const AnswerWriter& writer) {
    const double air = options.celsius("--air"), deficit = options.number("--deficit");
    writeFigures("humidity",
                 {{"humidity_percent", tr("Relative humidity: %1 %"), allowed(core::humidityForDeficit(air, deficit)),
                   core::humidityWorking(air, deficit)}},
                 writer);
}

/// Readings of one day that has no date.
struct DayOfReadings {
    std::vector<core::TimedValue> readings;
    core::TimeSpan span;
};

core::Moment timeFrom(const std::string& text, core::Moment midnight) {
    const auto digit = [&](std::size_t at) { return text[at] >= '0' && text[at] <= '9' ? text[at] - '0' : 100; };
    if (text.size() == 5 && text[2] == ':') {
        const int hour = 10 * digit(0) + digit(1), minute = 10 * digit(3) + digit(4);
        if ((hour < 24 && minute < 60) || (hour == 24 && minute == 0))
            return midnight + std::chrono::hours{hour} + std::chrono::minutes{minute};
    }
    throw WrongArgument(filled(tr("--reading has the time %1; 00:00 to 24:00 is allowed."), {shown(text)}));
}

DayOfReadings dayFrom(const QuestionOptions& options, bool isTemperature) {
    const core::Moment midnight{std::chrono::sys_days{std::chrono::year{2000} / 1 / 1}};
    DayOfReadings day{.readings = {}, .span = {.from = midnight, .to = midnight + std::chrono::days{1}}};
    for (const std::string& text : options.neededList("--reading")) {
        const auto [time, value] = pairFrom("--reading", text);
        const auto [number, unit] = figureAndUnitFrom("--reading", value);
        const bool isFahrenheit = isTemperature && unit == "F";
        if (!unit.empty() && !isFahrenheit && !(isTemperature && unit == "C"))
            throw WrongArgument(filled(tr("--reading is %1; its unit is not known here."), {shown(text)}));
        const core::DisplayUnits units{.temperature = isFahrenheit ? core::TemperatureUnit::Fahrenheit
                                                                   : core::TemperatureUnit::Celsius};
        day.readings.push_back({.at = timeFrom(time, midnight),
                                .value = core::storedValue(number, core::Quantity::AirTemperature, units)});
        if (day.readings.size() > 1 && day.readings.back().at < day.readings[day.readings.size() - 2].at)
            throw WrongArgument(filled(tr("--reading is %1, which is earlier than the one before it; readings stand in "
                                          "order of time."),
                                       {shown(text)}));
    }
    if (options.given("--gap"))
        day.span.longestGap =
            std::chrono::seconds{std::lround(3600 * std::clamp(options.number("--gap"), 0.0, 1000.0))};
    return day;
}

void writeDay(const char* question, const char* key, const std::string& sentence, const core::SumOverTime& sum,
              const core::Working& working, const AnswerWriter& writer) {
    constexpr double secondsOfHour = 3600;
    const double hours = static_cast<double>(sum.covered.count()) / secondsOfHour;
    if (writer.isJson) {
        Json gaps = Json::array();
        for (const core::TimeGap& gap : sum.gaps)
            gaps.push_back({{"from", core::isoText(gap.from).substr(11, 5)},
                            {"hours", static_cast<double>((gap.to - gap.from).count()) / secondsOfHour}});
        print({{"question", question},
               {key, figure(sum.sum)},
               {"hours_covered", figure(hours)},
               {"gaps", gaps},
               {"workings", Json::array({workingJson(working)})}},
              writer.out);
        return;
    }
    writer.out << filled(sentence, {core::briefText(sum.sum), core::briefText(hours)}) << '\n';
    for (const core::TimeGap& gap : sum.gaps)
        writer.out << filled(tr("Nothing is known from %1 for %2 h; nothing is counted for it."),
                             {core::isoText(gap.from).substr(11, 5),
                              core::briefText(static_cast<double>((gap.to - gap.from).count()) / secondsOfHour)})
                   << '\n';
    writer.out << '\n' << tr("How it is worked out") << '\n';
    printWorking(working, writer.out);
}

core::Working linesWorking(const std::string& of, const core::SumOverTime& sum, const std::string& unit) {
    return {.formula = "sum over time of " + of + ", on straight lines between readings",
            .withNumbers = core::briefText(sum.sum) + ' ' + unit,
            .source = "by definition"};
}

void answerLight(const QuestionOptions& options, const AnswerWriter& writer) {
    if (!options.list("--reading").empty()) {
        const DayOfReadings day = dayFrom(options, false);
        const core::SumOverTime light = allowed(core::dailyLight(day.readings, day.span));
        writeDay("light", "dli_mol", tr("Daily light integral: %1 mol/m2 in the %2 h that readings cover"), light,
                 linesWorking("light", light, "mol/m2"), writer);
        return;
    }
    const double hours = options.number("--hours");
    if (options.given("--daily")) {
        const double daily = options.number("--daily");
        writeFigures("light",
                     {{"light_umol", tr("Light: %1 umol/m2/s"), allowed(core::lightForDaily(daily, hours)),
                       core::lightForDailyWorking(daily, hours)}},
                     writer);
        return;
    }
    const double light = options.number("--light");
    writeFigures("light",
                 {{"dli_mol", tr("Daily light integral: %1 mol/m2"), allowed(core::dailyLightOf(light, hours)),
                   core::dailyLightWorking(light, hours)}},
                 writer);
}

void answerOxygen(const QuestionOptions& options, const AnswerWriter& writer) {
    if (options.given("--altitude") && options.given("--pressure"))
        throw WrongArgument(tr("Of --altitude M and --pressure ATM no more than one is allowed."));
    const double water = options.celsius("--water");
    std::vector<ShownFigure> figures;
    double pressure = options.numberOr("--pressure", 1);
    if (options.given("--altitude")) {
        const double altitude = options.number("--altitude");
        pressure = allowed(core::pressureAtAltitude(altitude));
        figures.push_back({"pressure_atm", tr("Air pressure: %1 atm"), pressure, core::pressureWorking(altitude)});
    }
    figures.push_back({"saturation_mg_per_litre", tr("Saturated water holds %1 mg/L of oxygen"),
                       allowed(core::oxygenSaturation(water, pressure)), core::oxygenWorking(water, pressure)});
    if (options.given("--oxygen")) {
        const double oxygen = options.number("--oxygen");
        const double percent = allowed(core::oxygenPercent(oxygen, water, pressure));
        figures.push_back(
            {"percent_of_saturation",
             percent > core::doubtfulOxygenPercent
                 ? tr("The reading is %1 % of saturation, which points to a fault of the meter")
             : percent < core::goodOxygenPercent
                 ? tr("The reading is %1 % of saturation; 80 or more is the aim (common practice, no source)")
                 : tr("The reading is %1 % of saturation"),
             percent, core::oxygenPercentWorking(oxygen, water, pressure)});
    }
    writeFigures("oxygen", figures, writer);
}

void answerEc(const QuestionOptions& options, const AnswerWriter& writer) {
    const double ec = options.ec("--ec"), water = options.celsius("--water");
    const double slope = options.numberOr("--slope", core::usualEcSlope);
    writeFigures("ec",
                 {{"ec_at_25", tr("EC at 25 C: %1 mS/cm; only for a meter that doesn't compensate itself"),
                   allowed(core::ecAt25(ec, water, slope)), core::ecAt25Working(ec, water, slope)}},
                 writer);
}

void answerDegreeDays(const QuestionOptions& options, const AnswerWriter& writer) {
    const double base = options.celsius("--base");
    if (!options.list("--reading").empty()) {
        const DayOfReadings day = dayFrom(options, true);
        const core::SumOverTime days = allowed(core::degreeDays(day.readings, base, day.span));
        writeDay("degree-days", "degree_days", tr("Degree-days: %1 C days in the %2 h that readings cover"), days,
                 linesWorking("what is above " + core::briefText(base) + " C", days, "C days"), writer);
        return;
    }
    const double low = options.celsius("--low"), high = options.celsius("--high");
    writeFigures("degree-days",
                 {{"degree_days", tr("Degree-days: %1 C days"), allowed(core::degreeDaysOf(low, high, base)),
                   core::degreeDaysWorking(low, high, base)}},
                 writer);
}

const std::vector<Question>& climateQuestions() {
    static const std::vector<Question> questions{
        {"vapour", answerVapour, {"--air", "--humidity", "--leaf"}},
        {"humidity", answerHumidity, {"--air", "--deficit"}},
        {"light", answerLight, {"--light", "--hours", "--daily", "--reading", "--gap"}},
        {"oxygen", answerOxygen, {"--water", "--altitude", "--pressure", "--oxygen"}},
        {"ec", answerEc, {"--ec", "--water", "--slope"}},
        {"degree-days", answerDegreeDays, {"--low", "--high", "--base", "--reading", "--gap"}}};
    return questions;
}

}  // namespace

std::string ClimateCommand::name() const {
    return "climate";
}

std::string ClimateCommand::summary() const {
    return tr(
        "what readings mean: vapour pressure deficit, dew point, light of a day, oxygen, EC at 25 C, degree-days");
}

void ClimateCommand::declare(Options& options) {
    options.argument("QUESTION", tr("vapour, humidity, light, oxygen, ec or degree-days; or a logbook, with --station"),
                     question_);
    options_.declare(options, climateOptions);
    options.flag("--json", tr("for machines"), isJson_);
}

int ClimateCommand::run(const Surroundings& surroundings, std::ostream& out, std::ostream& err) {
    if (options_.given("--station")) {
        options_.restrictTo("LOG", std::array{"--station", "--from", "--to", "--batch"});
        return answerStationClimate(question_, options_, isJson_, surroundings, out, err);
    }
    answerQuestion(name(), question_, climateQuestions(), options_, {.isJson = isJson_, .out = out});
    return Done;
}

}  // namespace console
