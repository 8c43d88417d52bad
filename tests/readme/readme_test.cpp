#include "app/run.h"
#include "machine/temporary_folder.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <sstream>
#include <vector>

using namespace glim;

namespace {

const std::string root = GLIM_SOURCE_DIR;

/// A command that a text shows, and what it shows below it.
struct Shown {
    std::string command;
    std::string output;
};

/// The blocks marked `console`: a line that begins with "$ " is a command, the others its output.
std::vector<Shown> shown_in(const std::string& text)
{
    std::vector<Shown> all;
    std::istringstream lines(text);
    bool inside = false;
    for (std::string line; std::getline(lines, line);) {
        if (line.rfind("```", 0) == 0)
            inside = line == "```console";
        else if (inside && line.rfind("$ ", 0) == 0)
            all.push_back({line.substr(2), ""});
        else if (inside && !all.empty())
            all.back().output += line + "\n";
    }
    return all;
}

std::string with_tested_program(std::string command)
{
    const std::string built = "build/cornerglim";
    REQUIRE(command.rfind(built, 0) == 0);
    return command.replace(0, built.size(), "cornerglim");
}

} // namespace

TEST_CASE("the commands of the README print what it shows", "[readme]")
{
    const std::vector<Shown> all = shown_in(test::read(root + "/README.md"));
    REQUIRE(!all.empty());
    for (const Shown& shown : all) {
        INFO(shown.command);
        const test::Ran ran = test::run(with_tested_program(shown.command), root);
        CHECK(ran.output == shown.output);
        CHECK(ran.errors.empty());
    }
}

TEST_CASE("every file that the README and the manual link to is there", "[readme]")
{
    for (const char* page : {"/README.md", "/docs/frames.md", "/docs/results.md"}) {
        const std::string text = test::read(root + page);
        const std::filesystem::path folder = std::filesystem::path(root + page).parent_path();
        int links = 0;
        for (std::size_t at = 0; (at = text.find("](", at)) != std::string::npos; ++links) {
            at += 2;
            const std::string target = text.substr(at, text.find(')', at) - at);
            INFO(page << " links to " << target);
            CHECK(std::filesystem::exists(folder / target));
        }
        CHECK(links > 0);
    }
}

TEST_CASE("the README fits on two screens", "[readme]")
{
    const std::string text = test::read(root + "/README.md");
    CHECK(std::count(text.begin(), text.end(), '\n') <= 90);
}
