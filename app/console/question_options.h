// SPDX-License-Identifier: MIT
// The options of a command that answers several questions (mix ph, mix medium ...): each question takes some of them, and says so of the rest.
// Figures may carry a unit: "20", "5.3gal", "75F", "500ppm500".
#pragma once

#include <map>
#include <optional>
#include <ostream>
#include <span>
#include <string>
#include <vector>

#include "app/console/options.h"
#include "app/console/surroundings.h"
#include "core/result.h"

namespace console {

struct QuestionOption {
    const char* name;     // "--volume"
    const char* value;    // "V"
    const char* meaning;  // to be translated
    bool isList{};
};

class QuestionOptions {
  public:
    void declare(Options& options, std::span<const QuestionOption> all);

    /// Throws WrongArgument where an option is given that `question` doesn't take.
    void restrictTo(const std::string& question, std::span<const char* const> taken) const;
    /// Throws WrongArgument where it is missing.
    [[nodiscard]] const std::string& needed(const std::string& name) const;
    [[nodiscard]] const std::optional<std::string>& given(const std::string& name) const { return values_.at(name); }
    [[nodiscard]] const std::vector<std::string>& list(const std::string& name) const { return lists_.at(name); }
    [[nodiscard]] const std::vector<std::string>& neededList(const std::string& name) const;

    // Numbers of needed options; all throw WrongArgument.
    [[nodiscard]] double number(const std::string& name) const;
    [[nodiscard]] double litres(const std::string& name) const;
    [[nodiscard]] double ec(const std::string& name) const;  // mS/cm
    [[nodiscard]] double celsius(const std::string& name) const;
    [[nodiscard]] int whole(const std::string& name, int low, int high) const;
    /// Also of an option that the command doesn't have.
    [[nodiscard]] double numberOr(const std::string& name, double otherwise) const;

  private:
    std::map<std::string, std::optional<std::string>> values_;
    std::map<std::string, std::vector<std::string>> lists_;
};

/// How an answer is to be written.
struct AnswerWriter {
    bool isJson{};
    std::ostream& out;
    const Surroundings* surroundings{};  // for what is printed: the day
};

struct Question {
    const char* word;  // "ph"
    void (*answer)(const QuestionOptions&, const AnswerWriter&);
    std::vector<const char*> taken;  // the options that it takes
};
/// Answers the one of that word; throws WrongArgument where there is none, or where another's option is given.
void answerQuestion(const std::string& command, const std::string& word, std::span<const Question> questions,
                    const QuestionOptions& options, const AnswerWriter& writer);

/// Throws WrongArgument.
[[nodiscard]] double numberFrom(const std::string& option, const std::string& text);
/// "0.5g" as 0.5 and "g"; a unit begins at the first letter or per cent sign.
struct FigureAndUnit {
    double figure{};
    std::string unit;
};
[[nodiscard]] FigureAndUnit figureAndUnitFrom(const std::string& option, const std::string& text);
/// "coir=3" as "coir" and "3"; throws WrongArgument where there is no sign of equality.
[[nodiscard]] std::pair<std::string, std::string> pairFrom(const std::string& option, const std::string& text);

/// The answer, or WrongArgument with the sentences of the refusals.
void throwRefusals(const core::Refusals& refusals);
template <class Answer>
[[nodiscard]] Answer allowed(core::Result<Answer> answer) {
    if (!answer) throwRefusals(answer.error());
    return std::move(*answer);
}

}  // namespace console
