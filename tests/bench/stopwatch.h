#pragma once

namespace glim::bench {

/// Seconds since it was made: on the wall, and of processor time. Wall times move by a factor of
/// two on a machine that others use as well; processor times by a twentieth.
class Stopwatch {
public:
    Stopwatch();
    double wall_s() const;
    double process_cpu_s() const; ///< of all threads together
    double thread_cpu_s() const;  ///< of the thread that asks, which must be the one that made it

private:
    double wall_, process_, thread_;
};

} // namespace glim::bench
