// SPDX-License-Identifier: MIT
#include "app/console/console.h"

#include <algorithm>
#include <memory>

#include "app/console/arguments.h"
#include "app/console/auxin_command.h"
#include "app/console/backup_command.h"
#include "app/console/chart_command.h"
#include "app/console/climate_command.h"
#include "app/console/command_line.h"
#include "app/console/compare_command.h"
#include "app/console/cost_command.h"
#include "app/console/create_command.h"
#include "app/console/demo_command.h"
#include "app/console/due_command.h"
#include "app/console/export_command.h"
#include "app/console/history_command.h"
#include "app/console/import_command.h"
#include "app/console/labels_command.h"
#include "app/console/logger_command.h"
#include "app/console/losses_command.h"
#include "app/console/mix_command.h"
#include "app/console/plant_command.h"
#include "app/console/power_command.h"
#include "app/console/print_command.h"
#include "app/console/rates_command.h"
#include "app/console/stick_command.h"
#include "app/console/suspects_command.h"
#include "app/console/verify_command.h"
#include "app/console/words.h"

namespace console {

namespace {

constexpr const char* program = "strikebook-cli";

std::vector<std::unique_ptr<Command>> allCommands() {
    std::vector<std::unique_ptr<Command>> commands;
    commands.push_back(std::make_unique<RatesCommand>());
    commands.push_back(std::make_unique<CreateCommand>());
    commands.push_back(std::make_unique<DemoCommand>());
    commands.push_back(std::make_unique<ImportCommand>());
    commands.push_back(std::make_unique<LoggerCommand>());
    commands.push_back(std::make_unique<ExportCommand>());
    commands.push_back(std::make_unique<DueCommand>());
    commands.push_back(std::make_unique<ChartCommand>());
    commands.push_back(std::make_unique<LossesCommand>());
    commands.push_back(std::make_unique<SuspectsCommand>());
    commands.push_back(std::make_unique<CompareCommand>());
    commands.push_back(std::make_unique<CostCommand>());
    commands.push_back(std::make_unique<PlantCommand>());
    commands.push_back(std::make_unique<StickCommand>());
    commands.push_back(std::make_unique<PowerCommand>());
    commands.push_back(std::make_unique<MixCommand>());
    commands.push_back(std::make_unique<AuxinCommand>());
    commands.push_back(std::make_unique<ClimateCommand>());
    commands.push_back(std::make_unique<PrintCommand>());
    commands.push_back(std::make_unique<LabelsCommand>());
    commands.push_back(std::make_unique<VerifyCommand>());
    commands.push_back(std::make_unique<BackupCommand>());
    commands.push_back(std::make_unique<HistoryCommand>());
    return commands;
}

void printHelp(const std::vector<std::unique_ptr<Command>>& commands, std::ostream& out) {
    out << tr("Strikebook on the command line: a logbook for people who multiply plants from cuttings.") << "\n\n";
    for (const auto& command : commands) {
        Options options;
        command->declare(options);
        out << program << ' ' << usageOf(command->name(), options) << "\n    " << command->summary() << '\n';
    }
    out << '\n'
        << filled(tr("%1 COMMAND --help says more. It ends with 0: done, 1: the logbook or the figures say no, 2: "
                     "wrong use."),
                  {program})
        << '\n';
}

bool asksForHelp(const std::string& word) {
    return word == "--help" || word == "-h";
}

int runCommand(Command& command, const std::vector<std::string>& words, const Surroundings& surroundings,
               std::ostream& out, std::ostream& err) {
    Options options;
    command.declare(options);
    const std::string usage = filled(tr("Use: %1 %2"), {program, usageOf(command.name(), options)});
    if (std::ranges::any_of(words, asksForHelp)) {
        out << command.summary() << '\n' << usage << '\n' << meaningsOf(options);
        return Done;
    }
    try {
        if (const std::optional<std::string> complaint = readCommandLine(options, words))
            throw WrongArgument(*complaint);
        return command.run(surroundings, out, err);
    } catch (const WrongArgument& wrong) {
        err << wrong.what() << '\n' << usage << '\n';
        return WrongUse;
    } catch (const db::LogbookError& error) {
        err << error.what() << '\n';
        return Refused;
    }
}

}  // namespace

int runConsole(const std::vector<std::string>& words, const Surroundings& surroundings, std::ostream& out,
               std::ostream& err) {
    const std::vector<std::unique_ptr<Command>> commands = allCommands();
    if (words.empty()) {
        printHelp(commands, err);
        return WrongUse;
    }
    if (asksForHelp(words.front()) || words.front() == "help") {
        printHelp(commands, out);
        return Done;
    }
    if (words.front() == "--version") {
        out << "strikebook-cli " << STRIKEBOOK_VERSION << '\n';
        return Done;
    }
    for (const auto& command : commands)
        if (command->name() == words.front())
            return runCommand(*command, {words.begin() + 1, words.end()}, surroundings, out, err);
    std::string names;
    for (const auto& command : commands) names += (names.empty() ? "" : ", ") + command->name();
    err << filled(tr("There is no command %1; known are %2."), {shown(words.front()), names}) << '\n';
    return WrongUse;
}

}  // namespace console
