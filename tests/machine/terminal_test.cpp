#include "machine/terminal.h"

#include "machine/pseudo_terminal.h"

#include <catch2/catch.hpp>

#include <optional>
#include <string>

using namespace glim;
using glim::test::PseudoTerminal;

namespace {

/// Sets a variable for a while.
class Variable {
public:
    Variable(const char* name, const char* value) : name_(name)
    {
        if (const char* const before = getenv(name))
            before_ = before;
        setenv(name, value, 1);
    }
    ~Variable()
    {
        if (before_)
            setenv(name_, before_->c_str(), 1);
        else
            unsetenv(name_);
    }

private:
    const char* name_;
    std::optional<std::string> before_;
};

} // namespace

TEST_CASE("the environment is read by the known conventions", "[machine]")
{
    const Variable colour("NO_COLOR", "1");
    const Variable term("TERM", "dumb");
    const Variable ci("CI", "true");
    const TerminalWishes wishes = TerminalWishes::from_environment();
    CHECK(wishes.no_colour);
    CHECK(wishes.dumb);
    CHECK(wishes.unattended);
}

TEST_CASE("variables that are empty wish nothing", "[machine]")
{
    const Variable colour("NO_COLOR", "");
    const Variable term("TERM", "");
    const Variable ci("CI", "");
    const TerminalWishes wishes = TerminalWishes::from_environment();
    CHECK_FALSE(wishes.no_colour);
    CHECK_FALSE(wishes.dumb);
    CHECK_FALSE(wishes.unattended);
}

TEST_CASE("on a terminal colour and progress are on, until a wish says no", "[machine]")
{
    const PseudoTerminal terminal(100);
    CHECK(is_terminal(Stream::error));
    CHECK(may_colour(Stream::error, {}));
    CHECK(may_show_progress({}));
    CHECK_FALSE(may_colour(Stream::error, {.no_colour = true}));
    CHECK_FALSE(may_colour(Stream::error, {.dumb = true}));
    CHECK(may_colour(Stream::error, {.unattended = true}));
    CHECK_FALSE(may_show_progress({.dumb = true}));
    CHECK_FALSE(may_show_progress({.unattended = true}));
    CHECK(may_show_progress({.no_colour = true}));
}

TEST_CASE("where there is no terminal there is neither colour nor progress", "[machine]")
{
    const int before = dup(STDERR_FILENO);
    const int nowhere = open("/dev/null", O_WRONLY);
    dup2(nowhere, STDERR_FILENO);
    const bool colour = may_colour(Stream::error, {});
    const bool progress = may_show_progress({});
    const int columns = terminal_columns(Stream::error);
    dup2(before, STDERR_FILENO);
    close(before);
    close(nowhere);
    CHECK_FALSE(colour);
    CHECK_FALSE(progress);
    CHECK(columns == 80);
}

TEST_CASE("a terminal says how wide it is, and 0 means 80", "[machine]")
{
    {
        const PseudoTerminal wide(132);
        CHECK(terminal_columns(Stream::error) == 132);
    }
    const PseudoTerminal silent(0);
    CHECK(terminal_columns(Stream::error) == 80);
}
