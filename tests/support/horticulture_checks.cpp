// SPDX-License-Identifier: MIT
#include "tests/support/horticulture_checks.h"

#include <cctype>
#include <fstream>
#include <stdexcept>

namespace support {
namespace {

void expectNumber(const nlohmann::json& got, const nlohmann::json& want, double tolerance, const std::string& place) {
    ASSERT_TRUE(got.is_number()) << place << " is " << got;
    EXPECT_NEAR(got.get<double>(), want.get<double>(), tolerance) << place;
}

}  // namespace

void HorticultureCheck::expect(const nlohmann::json& got) const {
    if (expected.is_number()) {
        expectNumber(got, expected, tolerance, id);
        return;
    }
    ASSERT_EQ(got.is_array(), expected.is_array()) << id;
    if (expected.is_array()) {
        ASSERT_EQ(got.size(), expected.size()) << id;
        for (std::size_t i = 0; i < expected.size(); ++i)
            expectNumber(got[i], expected[i], tolerance, id + " " + std::to_string(i));
        return;
    }
    for (const auto& [field, want] : expected.items()) {
        ASSERT_TRUE(got.contains(field)) << id << " expects " << field;
        expectNumber(got[field], want, tolerance, id + " " + field);
    }
}

void PrintTo(const HorticultureCheck& check, std::ostream* out) {
    *out << check.id;
}

const nlohmann::json& horticulture() {
    static const nlohmann::json file = [] {
        const std::string path = std::string(STRIKEBOOK_SOURCE_DIR) + "/tests/data/reference/horticulture.json";
        std::ifstream stream(path);
        if (!stream) throw std::runtime_error("cannot read " + path);
        return nlohmann::json::parse(stream);
    }();
    return file;
}

std::vector<HorticultureCheck> horticultureChecks(const std::set<std::string>& functions) {
    std::vector<HorticultureCheck> checks;
    std::set<std::string> found;
    for (const nlohmann::json& each : horticulture().at("checks")) {
        const auto function = each.at("function").get<std::string>();
        if (!functions.contains(function)) continue;
        found.insert(function);
        checks.push_back({.id = each.at("id"),
                          .function = function,
                          .inputs = each.at("inputs"),
                          .expected = each.at("expected"),
                          .tolerance = each.at("tolerance"),
                          .source = each.at("source")});
    }
    if (found != functions) throw std::runtime_error("a function has no check");
    return checks;
}

std::string nameOfCheck(const testing::TestParamInfo<HorticultureCheck>& info) {
    std::string name = info.param.source + "_" + info.param.id;
    for (char& letter : name)
        if (std::isalnum(static_cast<unsigned char>(letter)) == 0) letter = '_';
    return name;
}

}  // namespace support
