#include "machine/stop.h"

#include <atomic>
#include <cassert>
#include <cerrno>
#include <cstdint>
#include <system_error>
#include <thread>

#include <semaphore.h>
#include <signal.h>
#include <time.h>

namespace glim {

namespace {

/// timeout(1) sends its signal to the program and then to the whole group, microseconds apart.
constexpr std::int64_t same_request_ms = 250;

/// Never taken down, so that a handler that runs late still finds it.
struct Bell {
    sem_t semaphore = {};

    Bell() { sem_init(&semaphore, 0, 0); }
    void ring() { sem_post(&semaphore); }
    void wait()
    {
        while (sem_wait(&semaphore) != 0 && errno == EINTR) {
        }
    }
};

// A handler may touch only lock-free atomics, sem_post and the like; std::stop_source takes locks,
// so a thread of ours waits for the bell and asks for the stop.
Bell bell;
constexpr std::int64_t never = -1;
std::atomic<std::int64_t> first_heard_ms = never;
std::atomic<bool> listening = false;
static_assert(std::atomic<std::int64_t>::is_always_lock_free);

std::int64_t now_ms()
{
    timespec now = {};
    clock_gettime(CLOCK_MONOTONIC, &now);
    return std::int64_t{now.tv_sec} * 1000 + now.tv_nsec / 1'000'000;
}

/// The signal is blocked while its handler runs: raised here, it strikes on return.
void end_at_once(int number)
{
    signal(number, SIG_DFL);
    raise(number);
}

extern "C" void hear(int number)
{
    const int error_before = errno;
    std::int64_t first = never;
    const std::int64_t now = now_ms();
    if (!first_heard_ms.compare_exchange_strong(first, now) && now - first > same_request_ms)
        end_at_once(number);
    bell.ring();
    errno = error_before;
}

/// Our handler for one signal; the one from before comes back at the end.
class Handler {
public:
    explicit Handler(int number) : number_(number)
    {
        struct sigaction ours = {};
        ours.sa_handler = hear;
        ours.sa_flags = SA_RESTART; // no read or write of ours should fail because of it
        sigemptyset(&ours.sa_mask);
        if (sigaction(number, &ours, &before_) != 0)
            throw std::system_error(errno, std::generic_category(), "cannot listen for signals");
    }
    ~Handler() { sigaction(number_, &before_, nullptr); }
    Handler(const Handler&) = delete;
    Handler& operator=(const Handler&) = delete;

private:
    int number_;
    struct sigaction before_ = {};
};

/// There is one set of signals in a program, so there is one listener.
struct OnlyOne {
    OnlyOne()
    {
        const bool another = listening.exchange(true);
        assert(!another);
        static_cast<void>(another);
        first_heard_ms = never;
    }
    ~OnlyOne() { listening = false; }
    OnlyOne(const OnlyOne&) = delete;
    OnlyOne& operator=(const OnlyOne&) = delete;
};

} // namespace

void throw_if_stopped(const std::stop_token& stop)
{
    if (stop.stop_requested())
        throw Stopped();
}

struct StopOnSignal::Listener {
    OnlyOne only_one;
    std::stop_source source;
    std::jthread thread{[this](const std::stop_token& leave) { listen(leave); }};
    Handler interrupt{SIGINT};
    Handler terminate{SIGTERM};

    void listen(const std::stop_token& leave)
    {
        const std::stop_callback wake(leave, [] { bell.ring(); });
        while (!leave.stop_requested()) {
            bell.wait();
            if (first_heard_ms != never)
                source.request_stop();
        }
    }
};

StopOnSignal::StopOnSignal() : listener_(std::make_unique<Listener>()) {}
StopOnSignal::~StopOnSignal() = default;

std::stop_token StopOnSignal::token() const { return listener_->source.get_token(); }

} // namespace glim
