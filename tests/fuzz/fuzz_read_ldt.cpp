#include "fuzz/photometry_targets.h"

#include <cstddef>
#include <cstdint>

/// What libFuzzer calls.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    glim::test::read_as_ldt({reinterpret_cast<const char*>(data), size});
    return 0;
}
