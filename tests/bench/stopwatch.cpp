#include "bench/stopwatch.h"

#include <time.h>

namespace glim::bench {

namespace {

constexpr double nanosecond = 1e-9;

double now_s(clockid_t clock)
{
    timespec t{};
    clock_gettime(clock, &t);
    return double(t.tv_sec) + nanosecond * double(t.tv_nsec);
}

} // namespace

Stopwatch::Stopwatch()
    : wall_(now_s(CLOCK_MONOTONIC)), process_(now_s(CLOCK_PROCESS_CPUTIME_ID)),
      thread_(now_s(CLOCK_THREAD_CPUTIME_ID))
{
}

double Stopwatch::wall_s() const { return now_s(CLOCK_MONOTONIC) - wall_; }
double Stopwatch::process_cpu_s() const { return now_s(CLOCK_PROCESS_CPUTIME_ID) - process_; }
double Stopwatch::thread_cpu_s() const { return now_s(CLOCK_THREAD_CPUTIME_ID) - thread_; }

} // namespace glim::bench
