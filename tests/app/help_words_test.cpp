#include "app/help_words.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("every command and every option stands in the help", "[app]")
{
    for (const Command& command : command_table()) {
        INFO(command.name);
        CHECK(program_help().find("\n  " + std::string(command.name) + " ") != std::string::npos);
        const std::string help = command_help(command);
        CHECK(help.find("--help") != std::string::npos);
        for (const CommandOption& option : command.options)
            CHECK(help.find("\n  " + std::string(option.name)) != std::string::npos);
    }
}

TEST_CASE("no line of the help is longer than a small terminal", "[app]")
{
    std::string all = program_help();
    for (const Command& command : command_table())
        all += command_help(command);
    std::size_t from = 0;
    for (std::size_t end; (end = all.find('\n', from)) != std::string::npos; from = end + 1)
        CHECK(end - from <= 80);
}
