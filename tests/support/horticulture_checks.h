// SPDX-License-Identifier: MIT
// The reference data on propagation that the calculators of the trade are checked against, tests/data/reference/horticulture.json: one test
// instance a check, named after its source and its id.
//
//     class MyTrade : public testing::TestWithParam<support::HorticultureCheck> {};
//     TEST_P(MyTrade, GivesTheReferenceValue) { GetParam().expect(value); }
//     INSTANTIATE_TEST_SUITE_P(Horticulture, MyTrade, testing::ValuesIn(support::horticultureChecks({"my_function"})),
//                              support::nameOfCheck);
#pragma once

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>
#include <ostream>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace support {

struct HorticultureCheck {
    std::string id;
    std::string function;
    nlohmann::json inputs;
    nlohmann::json expected;
    double tolerance{};
    std::string source;

    [[nodiscard]] double number(const std::string& input) const { return inputs.at(input).get<double>(); }
    [[nodiscard]] std::string word(const std::string& input) const { return inputs.at(input).get<std::string>(); }
    /// A number, or an object of numbers, or a list of them, within the tolerance; every field that is expected must be there.
    void expect(const nlohmann::json& got) const;
};

void PrintTo(const HorticultureCheck& check, std::ostream* out);

/// The whole file.
[[nodiscard]] const nlohmann::json& horticulture();
/// In the file's order. Fails loudly (std::runtime_error) when the file has none of one of these.
[[nodiscard]] std::vector<HorticultureCheck> horticultureChecks(const std::set<std::string>& functions);
[[nodiscard]] std::string nameOfCheck(const testing::TestParamInfo<HorticultureCheck>& info);

}  // namespace support
