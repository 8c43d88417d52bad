#include "machine/terminal.h"

#include <cstdlib>
#include <string_view>

#include <sys/ioctl.h>
#include <unistd.h>

namespace glim {

namespace {

constexpr int usual_columns = 80;

int descriptor(Stream stream) { return stream == Stream::output ? STDOUT_FILENO : STDERR_FILENO; }

std::string_view environment(const char* name)
{
    const char* const value = std::getenv(name);
    return value == nullptr ? std::string_view() : std::string_view(value);
}

} // namespace

TerminalWishes TerminalWishes::from_environment()
{
    return {.no_colour = !environment("NO_COLOR").empty(),
            .dumb = environment("TERM") == "dumb",
            .unattended = !environment("CI").empty()};
}

bool is_terminal(Stream stream) { return isatty(descriptor(stream)) == 1; }

int terminal_columns(Stream stream)
{
    winsize size = {};
    if (ioctl(descriptor(stream), TIOCGWINSZ, &size) != 0 || size.ws_col == 0)
        return usual_columns;
    return size.ws_col;
}

bool may_colour(Stream stream, const TerminalWishes& wishes)
{
    return is_terminal(stream) && !wishes.no_colour && !wishes.dumb;
}

bool may_show_progress(const TerminalWishes& wishes)
{
    return is_terminal(Stream::error) && !wishes.dumb && !wishes.unattended;
}

} // namespace glim
