// SPDX-License-Identifier: MIT
// The worked examples of tests/data/reference/statistics.json, one test instance a case:
//
//     class MyMethod : public testing::TestWithParam<support::ReferenceCase> {};
//     TEST_P(MyMethod, GivesTheReferenceValue) {
//         const support::ReferenceCase& each = GetParam();
//         each.expect({{"estimate", value}, {"lower", interval.low}, {"upper", std::nullopt}});
//     }
//     INSTANTIATE_TEST_SUITE_P(Reference, MyMethod, testing::ValuesIn(support::referenceCases({"my_method"})),
//     support::nameOfCase);
//
// expect() compares every field that the case expects, with the case's tolerance, and fails on a field that wasn't
// given. A field that the program does not compute is named in `ignored`, with the reason beside it. What was compared goes
// into the accuracy ledger.
#pragma once

#include <gtest/gtest.h>

#include <initializer_list>
#include <map>
#include <nlohmann/json.hpp>
#include <optional>
#include <ostream>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace support {

/// nullopt is "undefined", as null in the file.
using ReferenceFields = std::map<std::string, std::optional<double>>;

struct ReferenceCase {
    std::string id;
    std::string method;
    nlohmann::json inputs;
    nlohmann::json expected;
    nlohmann::json tolerance;
    nlohmann::json published;  // as printed in the source; null where nothing is in print
    std::string source;        // where the case comes from
    std::string provenance;    // how its values were computed

    [[nodiscard]] int count(std::string_view input) const;
    [[nodiscard]] double number(std::string_view input) const;
    /// False when the input is left out.
    [[nodiscard]] bool flag(std::string_view input) const;

    void expect(const ReferenceFields& got, const std::set<std::string>& ignored = {}) const;
    /// One number against one expected value of this case, for fields that hold lists or structures. `field` picks the
    /// tolerance.
    void expectNear(const std::string& field, std::optional<double> got, const nlohmann::json& want,
                    const std::string& where = "") const;
};

void PrintTo(const ReferenceCase& each, std::ostream* out);

/// All cases of these methods, in the file's order. Fails loudly (std::runtime_error) when the file has none.
[[nodiscard]] std::vector<ReferenceCase> referenceCases(std::initializer_list<std::string_view> methods);
/// The id with what GoogleTest allows in a name.
[[nodiscard]] std::string nameOfCase(const testing::TestParamInfo<ReferenceCase>& info);
/// A number of the file: "Infinity" and "-Infinity" are infinite, null is nothing.
[[nodiscard]] std::optional<double> numberIn(const nlohmann::json& value);

}  // namespace support
