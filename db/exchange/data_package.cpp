// SPDX-License-Identifier: MIT
#include "db/exchange/data_package.h"

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "db/exchange/exchange_tables.h"

namespace db {

namespace {

using Json = nlohmann::ordered_json;

std::string_view frictionlessType(CellKind kind) {
    switch (kind) {
        case CellKind::Text:
            return "string";
        case CellKind::Date:
            return "date";
        case CellKind::Moment:
            return "datetime";
        case CellKind::Count:
            return "integer";
        case CellKind::Figure:
            return "number";
        case CellKind::Truth:
            return "boolean";
    }
    return "any";
}

/// One name as it is, several as a list: both are allowed for keys.
Json keyNames(std::string_view names) {
    std::istringstream words{std::string(names)};
    Json list = Json::array();
    for (std::string word; words >> word;) list.push_back(word);
    return list.size() == 1 ? list.front() : list;
}

Json fieldOf(const ExchangeColumn& column) {
    Json field = {{"name", column.name}, {"type", frictionlessType(column.kind)}};
    if (!column.meaning.empty()) field["description"] = column.meaning;
    if (column.isRequired) field["constraints"] = {{"required", true}};
    return field;
}

Json schemaOf(const ExchangeTable& table) {
    Json schema = {{"fields", Json::array()}, {"missingValues", Json::array({""})}};
    for (const ExchangeColumn& column : table.columns) schema["fields"].push_back(fieldOf(column));
    if (!table.key.empty()) schema["primaryKey"] = keyNames(table.key);
    for (const ExchangeReference& reference : table.references)
        schema["foreignKeys"].push_back(
            {{"fields", keyNames(reference.columns)},
             {"reference", {{"resource", reference.table}, {"fields", keyNames(reference.theirColumns)}}}});
    return schema;
}

Json resourceOf(const ExchangeTable& table) {
    return {{"name", table.name},     {"path", std::string(table.name) + ".csv"},
            {"title", table.meaning}, {"profile", "tabular-data-resource"},
            {"format", "csv"},        {"mediatype", "text/csv"},
            {"encoding", "utf-8"},    {"schema", schemaOf(table)}};
}

std::string titlesOf(const Json& sources) {
    std::string titles;
    if (!sources.is_array()) return titles;
    for (const Json& source : sources)
        if (source.is_object() && source.contains("title") && source["title"].is_string())
            titles += (titles.empty() ? "" : "; ") + source["title"].get<std::string>();
    return titles;
}

}  // namespace

void writeDataPackage(std::ostream& out, const core::LogbookFacts& facts) {
    Json package = {{"profile", "tabular-data-package"}, {"name", "strikebook-logbook"}, {"title", facts.name}};
    if (!facts.citation.empty()) package["sources"] = Json::array({{{"title", facts.citation}}});
    package["strikebook"] = {{"exchange_version", exchangeVersion}};
    package["resources"] = Json::array();
    for (const ExchangeTable& table : exchangeTables()) package["resources"].push_back(resourceOf(table));
    out << package.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
}

DataPackage readDataPackage(const std::filesystem::path& file) {
    constexpr std::uintmax_t largest = 1'000'000;
    std::error_code ignored;
    if (!std::filesystem::exists(file, ignored)) return {};
    const bool isReadable =
        std::filesystem::is_regular_file(file, ignored) && std::filesystem::file_size(file, ignored) <= largest;
    std::ifstream in(file, std::ios::binary);
    const Json package = isReadable ? Json::parse(in, nullptr, false) : Json(Json::value_t::discarded);
    if (!package.is_object())
        return {.title = {},
                .citation = {},
                .fault = "The file is no JSON object of at most 1 MB; mend it or take it away."};
    DataPackage read;
    if (package.contains("title") && package["title"].is_string()) read.title = package["title"];
    if (package.contains("sources")) read.citation = titlesOf(package["sources"]);
    const Json ours = package.value("strikebook", Json::object());
    const Json version = ours.is_object() ? ours.value("exchange_version", Json()) : Json();
    if (version.is_number_integer() && version.get<std::int64_t>() > exchangeVersion)
        read.fault = "The folder was written by a newer Strikebook; bring this one up to date to import it.";
    return read;
}

}  // namespace db
