#pragma once

#include <stdexcept>
#include <string>

#include <fcntl.h>
#include <stdlib.h>
#include <sys/ioctl.h>
#include <unistd.h>

namespace glim::test {

/// While it lives, standard error is a terminal of `columns` that a program can read back.
class PseudoTerminal {
public:
    explicit PseudoTerminal(unsigned short columns)
        : near_(posix_openpt(O_RDWR | O_NOCTTY)), before_(dup(STDERR_FILENO))
    {
        if (near_ < 0 || grantpt(near_) != 0 || unlockpt(near_) != 0)
            throw std::runtime_error("this machine gives no pseudo terminal");
        const int far = open(ptsname(near_), O_RDWR | O_NOCTTY);
        const winsize size = {.ws_row = 24, .ws_col = columns, .ws_xpixel = 0, .ws_ypixel = 0};
        ioctl(far, TIOCSWINSZ, &size);
        dup2(far, STDERR_FILENO);
        close(far);
        fcntl(near_, F_SETFL, O_NONBLOCK);
    }
    ~PseudoTerminal()
    {
        dup2(before_, STDERR_FILENO);
        close(before_);
        close(near_);
    }
    PseudoTerminal(const PseudoTerminal&) = delete;
    PseudoTerminal& operator=(const PseudoTerminal&) = delete;

    /// All that was written since the last time.
    std::string shown() const
    {
        std::string text;
        char part[512];
        for (ssize_t n = read(near_, part, sizeof part); n > 0; n = read(near_, part, sizeof part))
            text.append(part, static_cast<std::size_t>(n));
        return text;
    }

private:
    int near_;
    int before_;
};

} // namespace glim::test
