// SPDX-License-Identifier: MIT
#include "app/logger/mapping_text.h"

#include <algorithm>
#include <array>
#include <nlohmann/json.hpp>
#include <string_view>

namespace logger {

namespace {

using Json = nlohmann::ordered_json;

constexpr std::array roleWords = std::to_array<std::string_view>({"left_out", "day_and_time", "day", "time", "values"});
constexpr std::array formWords = std::to_array<std::string_view>({"", "d.m.y", "m/d/y", "y-m-d", "unix"});
constexpr std::array signWords = std::to_array<std::string_view>({".", ","});
constexpr std::array twiceWords = std::to_array<std::string_view>({"", "summer", "winter"});
constexpr std::size_t mostColumns = db::CsvReader::mostCells;

template <class Choice, std::size_t count>
Json wordOfChoice(Choice choice, const std::array<std::string_view, count>& words) {
    return words[static_cast<std::size_t>(choice)];
}

/// What a JSON object has under a name, as text; empty where it has none.
std::string textIn(const Json& json, const char* name) {
    const auto found = json.find(name);
    return found != json.end() && found->is_string() ? found->get<std::string>() : std::string();
}

template <class Choice, std::size_t count>
bool readChoice(const Json& json, const char* name, const std::array<std::string_view, count>& words, Choice& choice) {
    const auto found = std::ranges::find(words, textIn(json, name));
    if (found == words.end()) return false;
    choice = static_cast<Choice>(found - words.begin());
    return true;
}

Json jsonOf(const core::LoggerColumn& column) {
    Json json = {{"is", wordOfChoice(column.role, roleWords)}};
    if (column.role != core::ColumnRole::Values) return json;
    json["station"] = column.station.value;
    json["quantity"] = core::factsOf(column.quantity).word;
    json["unit"] = core::wordFor(column.unit);
    if (column.unit == core::LoggerUnit::Lux) json["lux_per_umol"] = column.luxPerMicromole;
    return json;
}

std::optional<core::LoggerColumn> columnFrom(const Json& json) {
    core::LoggerColumn column;
    if (!json.is_object() || !readChoice(json, "is", roleWords, column.role)) return {};
    if (column.role != core::ColumnRole::Values) return column;
    const auto station = json.find("station");
    const auto quantity = core::quantityFrom(textIn(json, "quantity"));
    const auto unit = core::loggerUnitFrom(textIn(json, "unit"));
    if (station == json.end() || !station->is_number_integer() || !quantity || !unit) return {};
    column.station.value = station->get<std::int64_t>();
    column.quantity = *quantity;
    column.unit = *unit;
    if (const auto lux = json.find("lux_per_umol"); lux != json.end() && lux->is_number())
        column.luxPerMicromole = lux->get<double>();
    return column;
}

}  // namespace

std::string textOf(const core::LoggerMapping& mapping) {
    Json columns = Json::array();
    for (const core::LoggerColumn& column : mapping.columns) columns.push_back(jsonOf(column));
    return Json{{"columns", std::move(columns)},
                {"time", wordOfChoice(mapping.timeForm, formWords)},
                {"decimal_sign", wordOfChoice(mapping.decimalSign, signWords)},
                {"zone", mapping.zone},
                {"twice", wordOfChoice(mapping.twiceHour, twiceWords)},
                {"words_mean_no_reading", mapping.wordsMeanNoReading}}
        .dump();
}

std::optional<core::LoggerMapping> mappingFrom(const std::string& text) {
    const Json json = Json::parse(text, nullptr, false);
    if (!json.is_object()) return {};
    const auto columns = json.find("columns");
    core::LoggerMapping mapping;
    if (columns == json.end() || !columns->is_array() || columns->size() > mostColumns ||
        !readChoice(json, "time", formWords, mapping.timeForm) ||
        !readChoice(json, "decimal_sign", signWords, mapping.decimalSign) ||
        !readChoice(json, "twice", twiceWords, mapping.twiceHour))
        return {};
    for (const Json& each : *columns) {
        const auto column = columnFrom(each);
        if (!column) return {};
        mapping.columns.push_back(*column);
    }
    mapping.zone = textIn(json, "zone");
    const auto words = json.find("words_mean_no_reading");
    mapping.wordsMeanNoReading = words != json.end() && words->is_boolean() && words->get<bool>();
    return mapping;
}

std::vector<KnownFormat> formatsFor(const FileForm& form, const std::vector<core::LoggerFormat>& formats) {
    std::vector<KnownFormat> known;
    for (const core::LoggerFormat& format : formats) {
        if (format.header != form.heading) continue;
        auto mapping = mappingFrom(format.mapping);
        if (mapping && mapping->columns.size() == form.names.size())
            known.push_back({.id = format.id, .name = format.name, .mapping = std::move(*mapping)});
    }
    return known;
}

core::LoggerFormat formatOf(const FileForm& form, const core::LoggerMapping& mapping, const std::string& name) {
    return {.id = {}, .name = name, .header = form.heading, .mapping = textOf(mapping)};
}

std::string freeName(const std::string& wished, const std::vector<core::LoggerFormat>& formats) {
    std::string name = wished;
    for (int count = 2; std::ranges::find(formats, name, &core::LoggerFormat::name) != formats.end(); ++count)
        name = wished + " (" + std::to_string(count) + ")";
    return name;
}

}  // namespace logger
