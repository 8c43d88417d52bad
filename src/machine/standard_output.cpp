#include "machine/standard_output.h"

#include <cerrno>
#include <csignal>
#include <system_error>

#include <unistd.h>

namespace glim {

namespace {

/// 0, or the errno that stopped it.
int write_all(int descriptor, std::string_view text)
{
    while (!text.empty()) {
        const ssize_t written = write(descriptor, text.data(), text.size());
        if (written < 0 && errno != EINTR)
            return errno;
        if (written > 0)
            text.remove_prefix(static_cast<std::size_t>(written));
    }
    return 0;
}

} // namespace

void survive_broken_pipes() { std::signal(SIGPIPE, SIG_IGN); }

void write_output(std::string_view text)
{
    if (const int trouble = write_all(STDOUT_FILENO, text))
        throw std::system_error(trouble, std::generic_category(), "standard output");
}

void write_error(std::string_view text)
{
    [[maybe_unused]] const int trouble = write_all(STDERR_FILENO, text);
}

} // namespace glim
