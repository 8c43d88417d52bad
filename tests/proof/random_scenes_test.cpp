#include "shapes/proof_run.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

TEST_CASE("in 300 random scenes the program's areas hold against the definition", "[proof]")
{
    const ProofRun run{.failures = std::string(GLIM_BINARY_DIR) + "/random-scenes", .workers = {}};
    const ProofResult result = prove(run);
    CHECK(result.failures == std::vector<std::string>{});
    CHECK(result.scenes == 300);
    // Else the scenes would prove little.
    CHECK(result.hidden > result.directions / 2);
    CHECK(result.mean_width < 0.5); // 0.35 when this was written: cells are large for such lamps
}
