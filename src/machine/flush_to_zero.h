#pragma once

namespace glim {

/// While it lives, this thread treats denormal floats as zero: rays want it, and every thread must
/// do the same, or the bytes would depend on which thread did the work.
class FlushToZero {
public:
    FlushToZero();
    ~FlushToZero();
    FlushToZero(const FlushToZero&) = delete;
    FlushToZero& operator=(const FlushToZero&) = delete;

private:
    unsigned before_;
};

} // namespace glim
