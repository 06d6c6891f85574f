// SPDX-License-Identifier: MIT
#include "tests/support/accuracy_ledger.h"

#include <errno.h>  // program_invocation_short_name
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <map>
#include <nlohmann/json.hpp>
#include <tuple>

namespace support {
namespace {

struct Kept {
    int cases{};
    double worst{};
};
using Key = std::tuple<std::string, std::string, std::string>;  // function, source, independent
using Rows = std::map<Key, Kept>;

void write(const Rows& rows, const char* ledgerFolder) {
    nlohmann::json page = nlohmann::json::array();
    for (const auto& [key, kept] : rows)
        page.push_back({{"function", std::get<0>(key)},
                        {"source", std::get<1>(key)},
                        {"independent", std::get<2>(key)},
                        {"cases", kept.cases},
                        {"worst", kept.worst}});
    const std::filesystem::path folder(ledgerFolder);
    std::filesystem::create_directories(folder);
    std::ofstream(folder / (std::string(program_invocation_short_name) + ".json")) << page.dump(1) << "\n";
}

// Writes at the end of the program, and only where every test ran: rows of a part would look like the whole.
class LedgerWriter : public testing::EmptyTestEventListener {
  public:
    Rows rows;

    void OnTestProgramEnd(const testing::UnitTest& tests) override {
        const char* folder = std::getenv("STRIKEBOOK_LEDGER_FOLDER");  // set for the tests of stats only
        if (folder != nullptr && testing::GTEST_FLAG(filter) == "*" && tests.Passed()) write(rows, folder);
    }
};

Rows& ledgerRows() {
    static LedgerWriter* const writer = [] {
        auto* made = new LedgerWriter;  // GoogleTest owns its listeners
        testing::UnitTest::GetInstance()->listeners().Append(made);
        return made;
    }();
    return writer->rows;
}

}  // namespace

void prove(const Proof& proof, double got, double want) {
    const double error = got == want ? 0 : std::abs(got - want) / std::max(1.0, std::abs(want));
    proveWithin(proof, error);
}

void proveWithin(const Proof& proof, double error) {
    Kept& kept = ledgerRows()[{std::string(proof.function), std::string(proof.source), std::string(proof.independent)}];
    ++kept.cases;
    kept.worst = std::isnan(error) ? error : std::max(kept.worst, error);
}

}  // namespace support
