#pragma once

#include <exception>
#include <memory>
#include <stop_token>

namespace glim {

/// Thrown by work that was asked to stop and has nothing whole to give back: exit code 130.
class Stopped : public std::exception {
public:
    const char* what() const noexcept override { return "stopped before the work was done"; }
};

/// Throws Stopped if `stop` was requested. For the joints of long work.
void throw_if_stopped(const std::stop_token& stop);

/// While it lives, Ctrl-C (SIGINT) and SIGTERM ask politely: the token is set, and long work ends
/// after the piece in hand. A second signal ends the program at once, as if nobody had listened;
/// one within a quarter of a second counts with the first, since some wrappers send theirs twice.
/// Both signals are heard even where a shell has told a background program to ignore SIGINT,
/// because whoever sends one means it. Afterwards the signals mean what they meant before.
/// Requires: one at a time in the whole program.
class StopOnSignal {
public:
    /// Throws std::system_error if the machine refuses a thread or a handler.
    StopOnSignal();
    ~StopOnSignal();
    StopOnSignal(const StopOnSignal&) = delete;
    StopOnSignal& operator=(const StopOnSignal&) = delete;

    std::stop_token token() const;

private:
    struct Listener;
    std::unique_ptr<Listener> listener_;
};

} // namespace glim
