#include "app/help_words.h"

#include "model/rule.h"
#include "words/text_block.h"

#include <vector>

namespace glim {

namespace {

/// A help page is read in terminals of every width and pasted into mails.
constexpr TextStyle style{.columns = 80, .colour = false};
constexpr int indent = 2;

std::vector<Labelled> command_entries()
{
    std::vector<Labelled> entries;
    for (const Command& c : command_table())
        entries.push_back(
            {std::string(c.name) + " " + std::string(c.argument), std::string(c.sentence)});
    return entries;
}

std::vector<Labelled> exit_code_entries()
{
    return {{"0", "all that was asked is met"},
            {"1", "something is not met"},
            {"2", "the command line or a file is wrong: the complaints say what to do"},
            {"3", "the program or the machine failed"},
            {"4", "nothing fails, but something is undecided, unproven or not applicable"},
            {"130", "stopped by Ctrl-C"}};
}

std::string capitalized(std::string_view sentence)
{
    std::string text(sentence);
    text.front() = static_cast<char>(text.front() - 'a' + 'A');
    return text;
}

std::vector<Labelled> option_entries(const Command& command)
{
    std::vector<Labelled> entries;
    for (const CommandOption& o : command.options)
        entries.push_back(
            {std::string(o.name) + (o.value.empty() ? "" : " ") + std::string(o.value),
             std::string(o.sentence)});
    entries.push_back({"--help", "print this and do nothing"});
    return entries;
}

} // namespace

std::string program_help()
{
    return wrapped("cornerglim tells whether a vehicle's signal lamps can be seen from where a "
                   "lighting rule asks it, how much of them, and what is in the way.",
                   style.columns) +
           "\n\ncornerglim COMMAND ...\n" + labelled_block(command_entries(), indent, style) +
           "\n" +
           labelled_block({{"--help", "print this; after a command, its options"},
                           {"--version", "print the version"}},
                          indent, style) +
           "\nExit codes\n" + labelled_block(exit_code_entries(), indent, style) + "\n" +
           wrapped(caution, style.columns) + "\n";
}

std::string command_help(const Command& command)
{
    return "cornerglim " + std::string(command.name) + " " + std::string(command.argument) +
           " [options]\n\n" +
           wrapped(capitalized(command.sentence) + ". " + std::string(command.more),
                   style.columns) +
           "\n\n" + labelled_block(option_entries(command), indent, style);
}

} // namespace glim
