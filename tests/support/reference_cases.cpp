// SPDX-License-Identifier: MIT
#include "tests/support/reference_cases.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <fstream>
#include <limits>
#include <stdexcept>

#include "tests/support/accuracy_ledger.h"
#include "tests/support/reference_functions.h"

namespace support {
namespace {

const nlohmann::json& referenceFile() {
    static const nlohmann::json file = [] {
        const std::string path = std::string(STRIKEBOOK_SOURCE_DIR) + "/tests/data/reference/statistics.json";
        std::ifstream stream(path);
        if (!stream) throw std::runtime_error("cannot read " + path);
        return nlohmann::json::parse(stream);
    }();
    return file;
}

double toleranceOf(const nlohmann::json& tolerance, const std::string& field, double want) {
    const nlohmann::json* used = &tolerance;
    if (tolerance.contains("fields") && tolerance["fields"].contains(field)) used = &tolerance["fields"][field];
    if (used->is_number()) return used->get<double>();
    return used->value("abs", 0.0) + used->value("rel", 0.0) * std::abs(want);
}

// "recomputed here with X and agrees with the published figure" is "X; in print".
std::string computedOtherwise(std::string provenance) {
    const auto drop = [&provenance](std::string_view part) {
        const auto place = provenance.find(part);
        if (place != std::string::npos) provenance.erase(place, part.size());
        return place != std::string::npos;
    };
    const bool isInPrint = drop(" and agrees with the published figure");
    drop("recomputed here with ");
    drop("reference library value only ");
    return provenance + (isInPrint ? "; in print" : "");
}

}  // namespace

int ReferenceCase::count(std::string_view input) const {
    return inputs.at(std::string(input)).get<int>();
}

double ReferenceCase::number(std::string_view input) const {
    return numberIn(inputs.at(std::string(input))).value();
}

bool ReferenceCase::flag(std::string_view input) const {
    return inputs.value(std::string(input), false);
}

void ReferenceCase::expect(const ReferenceFields& got, const std::set<std::string>& ignored) const {
    for (const auto& [field, want] : expected.items()) {
        if (ignored.contains(field)) continue;
        const auto found = got.find(field);
        if (found == got.end()) {
            ADD_FAILURE() << id << " expects " << field << ", which was not given";
            continue;
        }
        expectNear(field, found->second, want);
    }
}

void ReferenceCase::expectNear(const std::string& field, std::optional<double> got, const nlohmann::json& want,
                               const std::string& where) const {
    const std::string place = id + ": " + field + " " + where;
    const std::optional<double> number = numberIn(want);
    EXPECT_EQ(got.has_value(), number.has_value()) << place << " expects " << want;
    if (!got || !number) return;
    if (std::isinf(*number)) {
        EXPECT_EQ(*got, *number) << place;
    } else {
        EXPECT_NEAR(*got, *number, toleranceOf(tolerance, field, *number)) << place;
    }
    prove(
        {.function = functionOf(method, inputs, field), .source = source, .independent = computedOtherwise(provenance)},
        *got, *number);
}

void PrintTo(const ReferenceCase& each, std::ostream* out) {
    *out << each.id;
}

std::vector<ReferenceCase> referenceCases(std::initializer_list<std::string_view> methods) {
    std::vector<ReferenceCase> cases;
    for (const nlohmann::json& each : referenceFile().at("cases")) {
        const auto method = each.at("method").get<std::string>();
        if (std::find(methods.begin(), methods.end(), method) == methods.end()) continue;
        cases.push_back({.id = each.at("id"),
                         .method = method,
                         .inputs = each.at("inputs"),
                         .expected = each.at("expected"),
                         .tolerance = each.at("tolerance"),
                         .published = each.value("published", nlohmann::json()),
                         .source = each.at("source"),
                         .provenance = each.at("provenance")});
    }
    if (cases.empty()) throw std::runtime_error("no reference case of these methods");
    return cases;
}

std::string nameOfCase(const testing::TestParamInfo<ReferenceCase>& info) {
    std::string name = info.param.id;
    for (char& letter : name)
        if (std::isalnum(static_cast<unsigned char>(letter)) == 0) letter = '_';
    return name;
}

std::optional<double> numberIn(const nlohmann::json& value) {
    if (value.is_null()) return std::nullopt;
    if (value == "Infinity") return std::numeric_limits<double>::infinity();
    if (value == "-Infinity") return -std::numeric_limits<double>::infinity();
    return value.get<double>();
}

}  // namespace support
