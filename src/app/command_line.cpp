#include "app/command_line.h"

#include "app/command_table.h"
#include "app/help_words.h"
#include "app/request_of.h"
#include "model/complaint.h"
#include "model/nearest_word.h"

#include <CLI/CLI.hpp>

#include <algorithm>

namespace glim {

namespace {

[[noreturn]] void complain(const std::string& what, const std::string& remedy)
{
    throw InputError({{command_line_place(), what, remedy}});
}

void add_option(CLI::App& app, const CommandOption& option, Words& words)
{
    const std::string name(option.name);
    if (const auto* flag = std::get_if<CommandOption::Flag>(&option.kept_in))
        app.add_flag(name, words.*(*flag));
    else
        app.add_option(name, words.*std::get<CommandOption::Value>(option.kept_in));
}

void add_command(CLI::App& program, const Command& command, Words& words)
{
    CLI::App* app = program.add_subcommand(std::string(command.name));
    app->set_help_flag();
    app->allow_extras();
    app->add_option("argument", words.argument);
    app->add_flag("--help,-h", words.help);
    for (const CommandOption& option : command.options)
        add_option(*app, option, words);
}

std::vector<std::string> option_names(const Command* command)
{
    std::vector<std::string> names{"--help"};
    if (!command)
        names.emplace_back("--version");
    else
        for (const CommandOption& option : command->options)
            names.emplace_back(option.name);
    return names;
}

std::vector<std::string> command_names()
{
    std::vector<std::string> names;
    for (const Command& command : command_table())
        names.emplace_back(command.name);
    return names;
}

/// What CLI11 could not place, without the "--" that it keeps among it.
std::vector<std::string> unknown_words(const CLI::App& program)
{
    std::vector<std::string> words = program.remaining(true);
    words.erase(std::remove(words.begin(), words.end(), "--"), words.end());
    return words;
}

bool looks_like_option(const std::string& word) { return word.size() > 1 && word.front() == '-'; }

/// Unknown options first: what follows one was perhaps meant as its value.
void complain_of_unknown(const std::vector<std::string>& unknown, const Command* command)
{
    Complaints complaints;
    for (const std::string& word : unknown) {
        const std::string name = word.substr(0, word.find('='));
        if (looks_like_option(word))
            complaints.add(command_line_place(), "unknown option `" + name + "`",
                           did_you_mean(name, option_names(command)));
    }
    complaints.throw_if_any();
    if (unknown.empty())
        return;
    if (!command)
        complain("unknown command `" + unknown.front() + "`",
                 did_you_mean(unknown.front(), command_names()));
    complain("`" + unknown.front() + "` is one word too many",
             "`" + std::string(command->name) + "` takes one " + std::string(command->argument) +
                 "; put a name with blanks in quotes");
}

/// CLI11 complains only of an option without its value, or given twice: all else is kept as words
/// and judged here, so that one run tells everything, in our own words.
void parse(CLI::App& program, std::vector<std::string> arguments)
{
    std::reverse(arguments.begin(), arguments.end()); // as CLI11 takes them
    try {
        program.parse(std::move(arguments));
    } catch (const CLI::ParseError&) {
        complain("an option lacks its value, or is given twice",
                 "give each option once, followed by its value; `--help` after the command lists "
                 "them");
    }
}

const Command* chosen_command(const CLI::App& program)
{
    for (const Command& command : command_table())
        if (program.got_subcommand(std::string(command.name)))
            return &command;
    return nullptr;
}

} // namespace

Request read_command_line(const std::vector<std::string>& arguments,
                          const std::string& program_version)
{
    CLI::App program;
    Words words;
    bool version = false;
    program.set_help_flag();
    program.allow_extras();
    program.require_subcommand(0, 1);
    program.add_flag("--help,-h", words.help);
    program.add_flag("--version", version);
    for (const Command& command : command_table())
        add_command(program, command, words);
    parse(program, arguments);

    const Command* command = chosen_command(program);
    complain_of_unknown(unknown_words(program), command);
    if (version)
        return TextRequest{"cornerglim " + program_version + "\n"};
    if (words.help || arguments.empty())
        return TextRequest{command ? command_help(*command) : program_help()};
    if (!command)
        complain("there is no command", listed(command_names(), "or") + " is needed");
    return request_of(*command, words);
}

} // namespace glim
