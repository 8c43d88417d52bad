#include "app/canonical_command.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("the canonical command leaves out what changes no result", "[app]")
{
    CheckRequest request{{.study = "some/where/theme.toml",
                          .out = "results",
                          .step = {},
                          .threads = 3,
                          .json = true,
                          .quiet = true}};
    CHECK(canonical_command(request) == "cornerglim check theme.toml");
    request.step = degrees(0.1);
    CHECK(canonical_command(request) == "cornerglim check theme.toml --step 0.1");
    request.write_ies = true;
    CHECK(canonical_command(request) == "cornerglim check theme.toml --step 0.1 --write-ies");
}

TEST_CASE("a name with blanks or quotes can be typed as it stands", "[app]")
{
    CheckRequest request;
    request.study = "a b.toml";
    CHECK(canonical_command(request) == "cornerglim check 'a b.toml'");
    request.study = "it's.toml";
    CHECK(canonical_command(request) == "cornerglim check 'it'\\''s.toml'");
}

TEST_CASE("the command of a report names its day, wherever that comes from", "[app]")
{
    ReportRequest request;
    request.study = "some/where/theme.toml";
    request.out = "elsewhere";
    CHECK(canonical_command(request, "") == "cornerglim report theme.toml --out report");
    request.step = degrees(2);
    CHECK(canonical_command(request, "2026-01-02") ==
          "cornerglim report theme.toml --step 2 --date 2026-01-02 --out report");
}
