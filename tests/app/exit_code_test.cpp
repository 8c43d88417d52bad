#include "app/exit_code.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

ExitCode exit_code(const std::vector<Outcome>& outcomes)
{
    Findings findings;
    for (const Outcome outcome : outcomes) {
        findings.checks.emplace_back();
        findings.checks.back().outcome = outcome;
    }
    return exit_code_of(findings);
}

} // namespace

TEST_CASE("the exit code is the worst check's", "[app]")
{
    CHECK(exit_code({Outcome::met, Outcome::met}) == ExitCode::met);
    CHECK(exit_code({Outcome::met, Outcome::not_met}) == ExitCode::not_met);
    CHECK(exit_code({Outcome::undecided, Outcome::not_met}) == ExitCode::not_met);
}

TEST_CASE("whatever is not known to be met leaves the answer open", "[app]")
{
    CHECK(exit_code({Outcome::met, Outcome::undecided}) == ExitCode::open);
    CHECK(exit_code({Outcome::proof_due}) == ExitCode::open);
    CHECK(exit_code({Outcome::no_photometric_data}) == ExitCode::open);
    CHECK(exit_code({Outcome::met, Outcome::not_applicable}) == ExitCode::open);
}
