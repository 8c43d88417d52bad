#include "machine/flush_to_zero.h"

#if defined(__SSE2__)
#include <xmmintrin.h>
#endif

namespace glim {

#if defined(__SSE2__)

namespace {
constexpr unsigned flush_to_zero = 1U << 15;
constexpr unsigned denormals_are_zero = 1U << 6;
} // namespace

FlushToZero::FlushToZero() : before_(_mm_getcsr())
{
    _mm_setcsr(before_ | flush_to_zero | denormals_are_zero);
}

FlushToZero::~FlushToZero() { _mm_setcsr(before_); }

#else

FlushToZero::FlushToZero() : before_(0) {}
FlushToZero::~FlushToZero() = default;

#endif

} // namespace glim
