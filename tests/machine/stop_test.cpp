#include "machine/stop.h"

#include <catch2/catch.hpp>

#include <chrono>
#include <csignal>
#include <thread>

#include <sys/wait.h>
#include <unistd.h>

namespace {

using glim::StopOnSignal;
using namespace std::chrono_literals;

bool comes_true(const std::stop_token& stop)
{
    for (int i = 0; i < 1000 && !stop.stop_requested(); ++i)
        std::this_thread::sleep_for(5ms);
    return stop.stop_requested();
}

/// Runs `work` in a process of its own and gives what waitpid says of its end.
template <class Work>
int end_of_child(const Work& work)
{
    const pid_t child = fork();
    if (child == 0) {
        work();
        _exit(0);
    }
    int status = -1;
    waitpid(child, &status, 0);
    return status;
}

} // namespace

TEST_CASE("without a signal nothing asks for a stop", "[machine]")
{
    const StopOnSignal stop;
    CHECK(stop.token().stop_possible());
    CHECK_FALSE(stop.token().stop_requested());
    CHECK_NOTHROW(glim::throw_if_stopped(stop.token()));
}

TEST_CASE("an interrupt or a terminate sets the token and the program lives on", "[machine]")
{
    const int signal = GENERATE(SIGINT, SIGTERM);
    const StopOnSignal stop;
    std::raise(signal);
    CHECK(comes_true(stop.token()));
    CHECK_THROWS_AS(glim::throw_if_stopped(stop.token()), glim::Stopped);
}

TEST_CASE("a signal sent twice in a moment is one request", "[machine]")
{
    const StopOnSignal stop;
    std::raise(SIGINT);
    std::raise(SIGINT);
    CHECK(comes_true(stop.token()));
}

TEST_CASE("a later listener starts afresh after an earlier one was asked to stop", "[machine]")
{
    {
        const StopOnSignal earlier;
        std::raise(SIGINT);
        REQUIRE(comes_true(earlier.token()));
    }
    const StopOnSignal later;
    std::this_thread::sleep_for(20ms);
    CHECK_FALSE(later.token().stop_requested());
    std::raise(SIGTERM);
    CHECK(comes_true(later.token()));
}

TEST_CASE("a second signal ends the program by that very signal", "[machine]")
{
    const int status = end_of_child([] {
        const StopOnSignal stop;
        std::raise(SIGINT);
        comes_true(stop.token());
        std::this_thread::sleep_for(400ms);
        std::raise(SIGINT);
        std::this_thread::sleep_for(5s);
    });
    REQUIRE(WIFSIGNALED(status));
    CHECK(WTERMSIG(status) == SIGINT);
}

TEST_CASE("afterwards the signal means what it meant before", "[machine]")
{
    const int status = end_of_child([] {
        std::signal(SIGTERM, SIG_DFL); // Catch2 listens too
        {
            const StopOnSignal stop;
        }
        std::raise(SIGTERM);
    });
    REQUIRE(WIFSIGNALED(status));
    CHECK(WTERMSIG(status) == SIGTERM);
}

TEST_CASE("an interrupt is heard even where the shell had it ignored", "[machine]")
{
    const int status = end_of_child([] {
        std::signal(SIGINT, SIG_IGN);
        const StopOnSignal stop;
        std::raise(SIGINT);
        _exit(comes_true(stop.token()) ? 7 : 8);
    });
    REQUIRE(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 7);
}
