// SPDX-License-Identifier: MIT
#include "core/plants/botanical_name.h"

#include <algorithm>
#include <array>
#include <span>
#include <utility>

namespace core {
namespace {

constexpr std::string_view crossSign = "×";
constexpr std::string_view groupWord = "Group";
constexpr std::string_view leftQuote = "‘";
constexpr std::string_view rightQuote = "’";

/// Abbreviations and what they stand for.
constexpr std::array<std::pair<std::string_view, std::string_view>, 8> theRanks{{{"subsp.", "subspecies"},
                                                                                 {"ssp.", "subspecies"},
                                                                                 {"convar.", "convariety"},
                                                                                 {"var.", "variety"},
                                                                                 {"subvar.", "subvariety"},
                                                                                 {"f.", "form"},
                                                                                 {"fo.", "form"},
                                                                                 {"subf.", "subform"}}};
/// Below a genus.
constexpr std::array<std::pair<std::string_view, std::string_view>, 4> ranksOfGenera{
    {{"subg.", "subgenus"}, {"sect.", "section"}, {"subsect.", "subsection"}, {"ser.", "series"}}};
constexpr std::string_view hybridRank = "notho";

std::string_view withoutNotho(std::string_view word) {
    if (word.starts_with(hybridRank)) word.remove_prefix(hybridRank.size());
    return word;
}

bool isRank(std::string_view word) {
    return std::ranges::find(theRanks, withoutNotho(word), &std::pair<std::string_view, std::string_view>::first) !=
           theRanks.end();
}

bool isRankOfGenus(std::string_view word) {
    return std::ranges::find(ranksOfGenera, word, &std::pair<std::string_view, std::string_view>::first) !=
           ranksOfGenera.end();
}

bool isCapital(char letter) {
    return letter >= 'A' && letter <= 'Z';
}

/// Small letters with hyphens inside. The only sign on a letter that the Code keeps is the diaeresis.
bool isSmall(std::string_view letters) {
    if (letters.empty() || letters.front() == '-' || letters.back() == '-') return false;
    while (!letters.empty()) {
        const bool isPlain = (letters.front() >= 'a' && letters.front() <= 'z') || letters.front() == '-';
        constexpr std::array<std::string_view, 5> withDiaeresis{"ä", "ë", "ï", "ö", "ü"};
        const bool isOther = std::ranges::any_of(
            withDiaeresis, [letters](std::string_view letter) { return letters.starts_with(letter); });
        if (!isPlain && !isOther) return false;
        letters.remove_prefix(isPlain ? 1 : 2);
    }
    return true;
}

/// At least two letters: one alone is an abbreviation, or a mark.
bool isNameOfEpithet(std::string_view word) {
    return word.size() >= 2 && isSmall(word);
}

bool isNameOfGenus(std::string_view word) {
    return word.size() >= 2 && isCapital(word.front()) && isSmall(word.substr(1));
}

bool isLikeAuthor(std::span<const std::string> words) {
    const bool startsLikeOne = !words.empty() && (isCapital(words.front().front()) || words.front().front() == '(');
    return startsLikeOne && std::ranges::any_of(words, [](const std::string& word) {
               return word.find_first_of(".(&") != std::string::npos;
           });
}

std::vector<std::string> namePieces(std::string_view text) {
    std::vector<std::string> words;
    for (std::size_t at = 0; (at = text.find_first_not_of(" \t\n\r", at)) != std::string_view::npos;) {
        const std::size_t end = std::min(text.size(), text.find_first_of(" \t\n\r", at));
        words.emplace_back(text.substr(at, end - at));
        at = end;
    }
    return words;
}

std::string joined(std::span<const std::string> words) {
    std::string text;
    for (const std::string& word : words) text += (text.empty() ? "" : " ") + word;
    return text;
}

/// Reads the words from the left; whoever finds what it looks for takes it.
class NameReader {
  public:
    explicit NameReader(std::span<const std::string> words) : words_(words) {}

    std::optional<BotanicalName> read() {
        name_.genusMark = mark(true);
        if (isAtEnd() || !isNameOfGenus(rest(name_.genusMark))) return {};
        name_.genus = take(name_.genusMark);
        if (!readSpecies() || !readRank() || !readFormula()) return {};
        readGroup();
        if (isAtEnd()) return name_;
        if (!isLikeAuthor(words_)) return {};
        name_.author = joined(words_);
        return name_;
    }

  private:
    [[nodiscard]] bool isAtEnd() const { return words_.empty(); }
    [[nodiscard]] const std::string& word() const { return words_.front(); }
    void next() { words_ = words_.subspan(1); }

    /// The mark before the next word, with its blank when it stands alone; a mark alone is taken, one that is joined to its word not yet.
    std::string mark(bool mayBeChimaera) {
        if (words_.size() >= 2 && (word() == crossSign || word() == "x" || (mayBeChimaera && word() == "+"))) {
            std::string alone = word() + " ";
            next();
            return alone;
        }
        if (!isAtEnd() && word().starts_with(crossSign)) return std::string(crossSign);
        if (!isAtEnd() && mayBeChimaera && word().starts_with("+")) return "+";
        return {};
    }
    /// The next word without a mark that is joined to it.
    [[nodiscard]] std::string_view rest(std::string_view mark) const {
        const bool isJoined = !mark.empty() && !mark.ends_with(' ');
        return std::string_view(word()).substr(isJoined ? mark.size() : 0);
    }
    std::string take(std::string_view mark) {
        std::string taken(rest(mark));
        next();
        return taken;
    }

    bool readSpecies() {
        if (isAtEnd()) return true;
        if (word() == "sp." || word() == "spp.") {
            name_.undetermined = take({});
            return true;
        }
        const auto before = words_;
        name_.speciesMark = mark(false);
        if (!isAtEnd() && isNameOfEpithet(rest(name_.speciesMark))) {
            name_.species = take(name_.speciesMark);
            return true;
        }
        name_.speciesMark.clear();
        words_ = before;  // perhaps the formula of two genera, a group or an author
        return true;
    }

    bool readRank() {
        const bool isOfGenus = name_.species.empty();
        if (words_.size() < 2 || !(isOfGenus ? isRankOfGenus(word()) : isRank(word()))) return true;
        name_.rank = take({});
        if (isOfGenus ? !isNameOfGenus(word()) : !isNameOfEpithet(word())) return false;
        name_.ofRank = take({});
        return true;
    }

    /// "australis × alba", "officinalis × Salvia lavandulifolia".
    bool readFormula() {
        if (words_.size() < 2 || (word() != crossSign && word() != "x")) return true;
        name_.parentsMark = take({});
        const bool hasGenus = isNameOfGenus(word());
        name_.otherParent = take({});
        if (!hasGenus) return isNameOfEpithet(name_.otherParent) && !name_.species.empty();
        if (!isAtEnd() && isNameOfEpithet(word())) name_.otherParent += " " + take({});
        return true;
    }

    /// One to three words with capitals and "Group" behind them.
    void readGroup() {
        if (words_.size() < 2 || words_.size() > 4 || words_.back() != groupWord) return;
        const auto own = words_.first(words_.size() - 1);
        if (!std::ranges::all_of(own, [](const std::string& each) { return isCapital(each.front()); })) return;
        name_.group = joined(own);
        words_ = {};
    }

    std::span<const std::string> words_;
    BotanicalName name_;
};

struct QuotedCultivar {
    std::string_view before;
    std::string cultivar;
    bool isCurly{};
};

/// What stands in single quotes at the end; absent when the quotes are not a pair.
std::optional<QuotedCultivar> cultivarIn(std::string_view text) {
    for (const auto& [left, right] :
         {std::pair(std::string_view("'"), std::string_view("'")), {leftQuote, rightQuote}}) {
        const std::size_t start = text.find(left);
        if (start == std::string_view::npos) continue;
        const std::string_view inside = text.substr(start + left.size());
        if (start == 0 || text[start - 1] != ' ' || !inside.ends_with(right)) return {};
        const std::string cultivar = joined(namePieces(inside.substr(0, inside.size() - right.size())));
        if (cultivar.empty() || cultivar.find(left) != std::string::npos) return {};
        return QuotedCultivar{.before = text.substr(0, start), .cultivar = cultivar, .isCurly = left == leftQuote};
    }
    return QuotedCultivar{.before = text, .cultivar = {}};
}

void add(std::vector<NameStretch>& stretches, const std::string& text, bool isItalic) {
    if (text.empty()) return;
    if (!stretches.empty() && stretches.back().isItalic == isItalic)
        stretches.back().text += text;
    else
        stretches.push_back({.text = text, .isItalic = isItalic});
}

/// The blank goes with the word before it.
void addWord(std::vector<NameStretch>& stretches, const std::string& word, bool isItalic) {
    if (word.empty()) return;
    if (!stretches.empty()) stretches.back().text += ' ';
    add(stretches, word, isItalic);
}

void addMarked(std::vector<NameStretch>& stretches, const std::string& mark, const std::string& word) {
    addWord(stretches, mark.empty() ? word : mark, mark.empty());
    if (!mark.empty()) add(stretches, word, true);
}

std::string rankInWords(std::string_view rank) {
    const std::string_view plain = withoutNotho(rank);
    for (const std::span<const std::pair<std::string_view, std::string_view>> ranks :
         {std::span<const std::pair<std::string_view, std::string_view>>(theRanks), {ranksOfGenera}})
        for (const auto& [abbreviation, words] : ranks)
            if (abbreviation == plain) return (rank == plain ? "" : "hybrid ") + std::string(words);
    return std::string(rank);
}

void say(std::string& words, const std::string& what, const std::string& name) {
    if (!name.empty()) words += (words.empty() ? "" : ", ") + what + " " + name;
}

}  // namespace

std::optional<BotanicalName> botanicalNameFrom(std::string_view text) {
    const std::vector<std::string> simplified = namePieces(text);
    const std::string whole = joined(simplified);
    const std::optional<QuotedCultivar> parts = cultivarIn(whole);
    if (!parts) return {};
    const std::vector<std::string> words = namePieces(parts->before);
    std::optional<BotanicalName> name = NameReader(words).read();
    if (!name) return {};
    name->cultivar = parts->cultivar;
    name->hasCurlyQuotes = parts->isCurly;
    return textOf(*name) == whole ? name : std::nullopt;
}

std::vector<NameStretch> stretchesOf(const BotanicalName& name) {
    std::vector<NameStretch> stretches;
    addMarked(stretches, name.genusMark, name.genus);
    addMarked(stretches, name.speciesMark, name.species);
    addWord(stretches, name.undetermined, false);
    addWord(stretches, name.rank, false);
    addWord(stretches, name.ofRank, true);
    addWord(stretches, name.parentsMark, false);
    addWord(stretches, name.otherParent, true);
    addWord(stretches, name.group.empty() ? name.group : name.group + " " + std::string(groupWord), false);
    addWord(stretches, name.author, false);
    const bool isCurly = name.hasCurlyQuotes;
    if (!name.cultivar.empty())
        addWord(stretches,
                std::string(isCurly ? leftQuote : "'") + name.cultivar + std::string(isCurly ? rightQuote : "'"),
                false);
    return stretches;
}

std::string textOf(const BotanicalName& name) {
    std::string text;
    for (const NameStretch& stretch : stretchesOf(name)) text += stretch.text;
    return text;
}

std::string inWords(const BotanicalName& name) {
    const bool isChimaera = name.genusMark.starts_with('+');
    std::string words;
    say(words, name.genusMark.empty() ? "genus" : isChimaera ? "graft-chimaera" : "hybrid genus", name.genus);
    say(words, name.speciesMark.empty() ? "species" : "hybrid species", name.species);
    if (!name.undetermined.empty()) words += ", species not determined";
    say(words, rankInWords(name.rank), name.ofRank);
    say(words, "crossed with", name.otherParent);
    say(words, "group", name.group);
    say(words, "author", name.author);
    say(words, "cultivar", name.cultivar);
    return words;
}

}  // namespace core
