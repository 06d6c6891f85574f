// SPDX-License-Identifier: MIT
#include "core/mixing/formula.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <map>

#include "core/field_faults.h"

namespace core {

namespace {

struct AtomicMass {
    std::string_view symbol;
    double mass;
};

constexpr std::array atomMasses = std::to_array<AtomicMass>({
    {"H", 1.008},
    {"B", 10.81},
    {"C", 12.011},
    {"N", 14.007},
    {"O", 15.999},
    {"Na", 22.990},
    {"Mg", 24.305},
    {"Si", 28.085},
    {"P", 30.974},
    {"S", 32.06},
    {"Cl", 35.45},
    {"K", 39.098},
    {"Ca", 40.078},
    {"Mn", 54.938},
    {"Fe", 55.845},
    {"Cu", 63.546},
    {"Zn", 65.38},
    {"Mo", 95.95},
});

constexpr std::size_t longestFormula = 100;
constexpr int mostNested = 4;
constexpr int mostCount = 999;

using FormulaCounts = std::map<std::string, int>;

/// Reads from left to right; nothing anywhere means that it is no formula.
class FormulaReader {
  public:
    explicit FormulaReader(std::string_view text) : text_(text) {}

    std::optional<FormulaCounts> whole() {
        FormulaCounts all;
        do {
            const std::optional<int> times = count();
            const std::optional<FormulaCounts> part = group(0);
            if (!times || !part || part->empty()) return {};
            add(all, *part, *times);
        } while (take('.'));
        if (at_ != text_.size()) return {};
        return all;
    }

  private:
    static void add(FormulaCounts& all, const FormulaCounts& part, int times) {
        for (const auto& [symbol, count] : part) all[symbol] += count * times;
    }

    [[nodiscard]] bool isAt(int (*kind)(int)) const {
        return at_ < text_.size() && kind(static_cast<unsigned char>(text_[at_])) != 0;
    }

    bool take(char letter) {
        if (at_ == text_.size() || text_[at_] != letter) return false;
        ++at_;
        return true;
    }

    /// 1 where no number stands; nothing for 0 or too much.
    std::optional<int> count() {
        if (!isAt(std::isdigit)) return 1;
        int number = 0;
        while (isAt(std::isdigit)) {
            number = number * 10 + (text_[at_++] - '0');
            if (number > mostCount) return {};
        }
        return number == 0 ? std::nullopt : std::optional(number);
    }

    std::optional<FormulaCounts> unit(int depth) {
        if (take('(')) {
            std::optional<FormulaCounts> inner = depth < mostNested ? group(depth + 1) : std::nullopt;
            return inner && !inner->empty() && take(')') ? inner : std::nullopt;
        }
        if (!isAt(std::isupper)) return {};
        std::string symbol(1, text_[at_++]);
        if (isAt(std::islower)) symbol += text_[at_++];
        if (!atomicMass(symbol)) return {};
        return FormulaCounts{{symbol, 1}};
    }

    std::optional<FormulaCounts> group(int depth) {
        FormulaCounts all;
        while (at_ < text_.size() && text_[at_] != '.' && text_[at_] != ')') {
            const std::optional<FormulaCounts> part = unit(depth);
            const std::optional<int> times = part ? count() : std::nullopt;
            if (!times) return {};
            add(all, *part, *times);
        }
        return all;
    }

    std::string_view text_;
    std::size_t at_{};
};

Refusal noFormula(std::string_view formula) {
    std::string known;
    for (const AtomicMass& atom : atomMasses) known += (known.empty() ? "" : ", ") + std::string(atom.symbol);
    const std::string allowed = "a chemical formula such as Ca(NO3)2.4H2O, of " + known + ",";
    return outOfRange("Formula", quotable(formula), allowed);
}

}  // namespace

std::optional<double> atomicMass(std::string_view symbol) {
    const auto* const found = std::ranges::find(atomMasses, symbol, &AtomicMass::symbol);
    if (found == atomMasses.end()) return {};
    return found->mass;
}

Result<std::vector<ElementCount>> elementsOf(std::string_view formula) {
    if (formula.size() > longestFormula) return refused({noFormula(formula)});
    const std::optional<FormulaCounts> counts = FormulaReader(formula).whole();
    if (!counts) return refused({noFormula(formula)});
    std::vector<ElementCount> elements;
    for (const auto& [symbol, count] : *counts) elements.push_back({.symbol = symbol, .count = count});
    return elements;
}

Result<double> molarMass(std::string_view formula) {
    const Result<std::vector<ElementCount>> elements = elementsOf(formula);
    if (!elements) return refused(elements.error());
    double mass = 0;
    for (const ElementCount& element : *elements) mass += element.count * *atomicMass(element.symbol);
    return mass;
}

Result<std::vector<ElementShare>> elementSharesOf(std::string_view formula) {
    const Result<std::vector<ElementCount>> elements = elementsOf(formula);
    if (!elements) return refused(elements.error());
    const double whole = *molarMass(formula);
    std::vector<ElementShare> shares;
    for (const ElementCount& element : *elements)
        shares.push_back({.symbol = element.symbol, .share = element.count * *atomicMass(element.symbol) / whole});
    return shares;
}

}  // namespace core
