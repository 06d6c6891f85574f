// SPDX-License-Identifier: MIT
#include "tests/house/accuracy_page.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <nlohmann/json.hpp>
#include <regex>
#include <set>
#include <sstream>

#include "tests/house/source_tree.h"

namespace house {
namespace {

constexpr const char* introduction =
    "# How exact the figures are\n\n"
    "Written by the tests: `STRIKEBOOK_APPROVE=1 tests/run` writes it anew, and without that a run fails when this "
    "page differs from what "
    "was\nmeasured, or when a function has no row. *Checked against* says how the values were had without our code; "
    "*cases* counts single "
    "numbers\ncompared; *worst error* is the largest difference, divided by the value where that is above 1, rounded "
    "up to a power of ten. "
    "Where the other\nside is a printed figure, its own rounding is in the error.\n";

// A cell is one line, and a bar would end it.
std::string cell(std::string text) {
    for (std::size_t at = 0; (at = text.find('|', at)) != std::string::npos; at += 2) text.insert(at, "\\");
    std::replace(text.begin(), text.end(), '\n', ' ');
    return text;
}

void addRow(std::vector<LedgerRow>& rows, const LedgerRow& row) {
    for (LedgerRow& known : rows) {
        if (known.source != row.source || known.independent != row.independent) continue;
        known.cases += row.cases;
        known.worst = std::max(known.worst, row.worst);
        return;
    }
    rows.push_back(row);
}

std::string folderOf(const std::string& header) {
    const auto from = header.find('/') + 1;
    return header.substr(from, header.rfind('/') - from);
}

std::string sectionOf(const std::string& function, const std::string& page) {
    const auto start = page.find("### " + function + "\n");
    return start == std::string::npos ? std::string() : page.substr(start, page.find("\n##", start + 4) - start);
}

// What the page said of this row before, if it is still true and not out of date; else what was measured.
std::string boundThatHolds(double worst, const std::string& rowStart, const std::string& section) {
    constexpr std::string_view words = "below ";
    constexpr double muchSmaller = 1e-3;
    const auto row = section.find(rowStart);
    if (row == std::string::npos) return errorText(worst);
    const auto at = row + rowStart.size();
    const std::string said = section.substr(at, section.find(" |", at) - at);
    if (said == "exact" && worst <= 1e-15) return said;
    if (!said.starts_with(words)) return errorText(worst);
    const double bound = std::stod(said.substr(words.size()));
    const bool isTrue = worst <= bound, isStale = bound > 1e-15 && worst < bound * muchSmaller;
    return isTrue && !isStale ? said : errorText(worst);
}

}  // namespace

LedgerRows ledgerIn(const std::filesystem::path& folder) {
    LedgerRows ledger;
    std::set<std::filesystem::path> files;
    if (std::filesystem::exists(folder))
        for (const auto& entry : std::filesystem::directory_iterator(folder)) files.insert(entry.path());
    for (const auto& file : files) {
        std::ifstream stream(file);
        for (const nlohmann::json& row : nlohmann::json::parse(stream))
            addRow(ledger[row.at("function")],
                   {.source = row.at("source"),
                    .independent = row.at("independent"),
                    .cases = row.at("cases"),
                    .worst = row.at("worst").is_null() ? std::nan("") : row.at("worst").get<double>()});
    }
    for (auto& [function, rows] : ledger)
        std::sort(rows.begin(), rows.end(), [](const LedgerRow& a, const LedgerRow& b) {
            return std::tie(a.source, a.independent) < std::tie(b.source, b.independent);
        });
    return ledger;
}

std::vector<PublicFunction> publicStatsFunctions() {
    // A declaration at the margin is a free function; members are indented. The name is the word before the first bracket.
    const std::regex declaration(R"(^\[\[nodiscard\]\] [^(]*?(\w+)\()");
    std::vector<PublicFunction> functions;
    std::set<std::string> seen;
    for (const SourceFile& source : sourcesIn({"stats"})) {
        if (!source.isHeader() || source.isIn("stats/numeric")) continue;
        for (const std::string& line : source.lines) {
            std::smatch match;
            if (std::regex_search(line, match, declaration) && seen.insert(match[1]).second)
                functions.push_back({.name = match[1], .header = source.path});
        }
    }
    return functions;
}

std::string errorText(double worst) {
    if (std::isnan(worst)) return "not a number";
    if (worst == 0) return "exact";
    const int power = std::max(-15, static_cast<int>(std::ceil(std::log10(worst))));
    return "below 1e" + std::to_string(power);
}

std::string accuracyPage(const std::vector<PublicFunction>& functions, const LedgerRows& ledger,
                         const std::string& committed) {
    std::ostringstream page;
    page << introduction;
    std::string folder;
    for (const PublicFunction& function : functions) {
        if (folderOf(function.header) != folder) {
            folder = folderOf(function.header);
            page << "\n## " << folder << "\n";
        }
        page << "\n### " << function.name << "\n\n`" << function.header << "`\n\n";
        const auto rows = ledger.find(function.name);
        if (rows == ledger.end()) {
            page << "No row.\n";
            continue;
        }
        page << "| cases from | checked against | cases | worst error |\n| --- | --- | ---: | --- |\n";
        const std::string before = sectionOf(function.name, committed);
        for (const LedgerRow& row : rows->second) {
            const std::string start =
                "| " + cell(row.source) + " | " + cell(row.independent) + " | " + std::to_string(row.cases) + " | ";
            page << start << boundThatHolds(row.worst, start, before) << " |\n";
        }
    }
    return page.str();
}

}  // namespace house
