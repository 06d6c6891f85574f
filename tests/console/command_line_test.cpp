// SPDX-License-Identifier: MIT
#include "app/console/command_line.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "app/console/words.h"
#include "tests/console/console_runner.h"

namespace {

using testing::HasSubstr;

struct Line {
    console::Options options;
    std::string file;
    std::optional<std::string> day;
    bool isJson{};

    Line() {
        options.argument("LOG", "the logbook", file);
        options.option("--day", "D", "the day", day);
        options.flag("--json", "for machines", isJson);
    }
};

TEST(CommandLine, TakesOptionsBeforeAndBehindArguments) {
    Line line;
    EXPECT_FALSE(console::readCommandLine(line.options, {"--json", "--day", "-3", "my log"}));
    EXPECT_EQ(line.file, "my log");
    EXPECT_EQ(line.day, "-3");
    EXPECT_TRUE(line.isJson);
    Line other;
    EXPECT_FALSE(console::readCommandLine(other.options, {"my log", "--day=4"}));
    EXPECT_EQ(other.day, "4");
    EXPECT_FALSE(other.isJson);
}

TEST(CommandLine, NamesWhatIsWrong) {
    EXPECT_THAT(console::readCommandLine(Line().options, {}).value(), HasSubstr("LOG is missing"));
    EXPECT_THAT(console::readCommandLine(Line().options, {"a", "b"}).value(),
                HasSubstr("\"b\" is one argument too many"));
    EXPECT_THAT(console::readCommandLine(Line().options, {"a", "--dya", "3"}).value(),
                HasSubstr("\"--dya\" is not known here; known are --day"));
    EXPECT_THAT(console::readCommandLine(Line().options, {"a", "--day"}).value(), HasSubstr("--day needs a value"));
}

TEST(CommandLine, TakesAListUpToTheNextOption) {
    struct ListLine : Line {
        std::vector<std::string> counts;
        ListLine() { options.listOption("--past", "X/N...", "counts", counts, true); }
    };
    ListLine line;
    EXPECT_FALSE(console::readCommandLine(line.options, {"log", "--past", "1/2", "-3/4", "--json", "--past=5/6"}));
    EXPECT_THAT(line.counts, testing::ElementsAre("1/2", "-3/4", "5/6"));
    EXPECT_EQ(line.file, "log");
    EXPECT_TRUE(line.isJson);
    EXPECT_THAT(console::readCommandLine(ListLine().options, {"log"}).value(), HasSubstr("--past X/N... is missing"));
    EXPECT_THAT(console::readCommandLine(ListLine().options, {"log", "--past"}).value(),
                HasSubstr("--past needs a value"));
    EXPECT_THAT(console::readCommandLine(ListLine().options, {"log", "--past", "--json"}).value(),
                HasSubstr("--past needs a value"));
    ListLine empty;
    EXPECT_FALSE(console::readCommandLine(empty.options, {"log", "--past", ""}));
    EXPECT_THAT(empty.counts, testing::ElementsAre(""));
}

TEST(CommandLine, ShowsTheUse) {
    EXPECT_EQ(console::usageOf("due", Line().options), "due LOG [--day D] [--json]");
    EXPECT_THAT(console::meaningsOf(Line().options), HasSubstr("  --day D  the day\n"));
}

TEST(CommandLine, FillsValuesOnce) {
    EXPECT_EQ(console::filled("%2 and %1, 5 %", {"%2", "b"}), "b and %2, 5 %");
    EXPECT_EQ(console::filled("%3", {"a"}), "%3");
}

TEST(Console, HelpsWhereNothingIsAsked) {
    EXPECT_EQ(support::run({}).status, 2);
    const support::Ran help = support::run({"--help"});
    EXPECT_EQ(help.status, 0);
    for (const char* command : {"rates", "create", "demo", "import", "export", "due", "compare", "mix", "auxin",
                                "climate", "print", "verify", "backup", "history"}) {
        EXPECT_THAT(help.out, HasSubstr(std::string("strikebook-cli ") + command + " "));
        const support::Ran own = support::run({command, "--help"});
        EXPECT_EQ(own.status, 0);
        EXPECT_THAT(own.out, HasSubstr(std::string("Use: strikebook-cli ") + command + " "));
    }
}

TEST(Console, NamesTheCommandsWhereItKnowsNoneOfThatName) {
    const support::Ran ran = support::run({"compere", "x"});
    EXPECT_EQ(ran.status, 2);
    EXPECT_THAT(ran.err, HasSubstr("There is no command \"compere\"; known are rates, create"));
    EXPECT_THAT(support::run({"--version"}).out, HasSubstr("strikebook-cli "));
}

TEST(CommandLine, KeepsAnEmptyValueToItsOption) {
    for (const std::vector<std::string>& words : {std::vector<std::string>{"log", "--day", "", "--json"},
                                                  std::vector<std::string>{"log", "--day=", "--json"}}) {
        Line line;
        EXPECT_FALSE(console::readCommandLine(line.options, words));
        EXPECT_EQ(line.day, "");
        EXPECT_TRUE(line.isJson);
    }
    EXPECT_THAT(console::readCommandLine(Line().options, {"a", "--day", "", "b"}).value(),
                HasSubstr("\"b\" is one argument too many"));
}

}  // namespace
