#include "app/study_folder.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace glim;
using test::contents;
using test::Ran;
using test::StudyFolder;

namespace {

/// The clear study with a lower state, and with a wall that stands beside the lamp and can be
/// folded ahead of it.
constexpr const char* folding = R"(format = 1
base = "walled.toml"
title = "A wall that folds"

[[surface]]
name = "wall"
role = "ignored"

[[state]]
name = "lowered"
rise = -30

[[moved_part]]
name = "wall"
surfaces = ["wall"]
position = [{ name = "up", shift = [0, 0, 0] }]
)";

} // namespace

TEST_CASE("states and moved parts are told, and written as a page, as data and as text", "[app]")
{
    const StudyFolder folder;
    test::write(folder.home / "folding.toml", folding);
    const Ran ran = folder.in("cornerglim states folding.toml --out out");
    INFO(ran.output << ran.errors);
    // As drawn the wall is not there: the verdicts are met, whatever the information says.
    CHECK(ran.exit_code == 0);
    CHECK(ran.output.find("with `wall: up`") != std::string::npos);
    CHECK(ran.output.find("homologation") != std::string::npos);
    CHECK(test::read(folder.home / "out/states.txt") == ran.output);
    CHECK(std::filesystem::exists(folder.home / "out/states.html"));
    CHECK(std::filesystem::exists(folder.home / "out/states.pdf"));
    CHECK(std::filesystem::exists(folder.home / "out/states.csv"));
    const nlohmann::json states =
        nlohmann::json::parse(test::read(folder.home / "out/states.json"));
    CHECK(states["states"][1]["name"] == "lowered");
    CHECK(states["states"][1]["rise_mm"] == -30);
    // Two checks, as drawn, lowered, and with the wall up.
    REQUIRE(states["situations"].size() == 6);
    for (const auto& situation : states["situations"]) {
        const bool verdict = situation["state"].is_null() && situation["moved"].is_null();
        CHECK(situation["counts_as"] == (verdict ? "verdict" : "information"));
        const bool up = !situation["moved"].is_null();
        CHECK(situation["outcome"] == (up ? "not_met" : "met"));
    }
}

TEST_CASE("states are the same to the byte for any number of threads", "[app]")
{
    const StudyFolder folder;
    test::write(folder.home / "folding.toml", folding);
    CHECK(folder
              .in("cornerglim states folding.toml --out one --threads 1 && "
                  "cornerglim states folding.toml --out two --threads 3")
              .exit_code == 0);
    CHECK(contents(folder.home / "one") == contents(folder.home / "two"));
}

TEST_CASE("a study of one state in which nothing moves is refused", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in("cornerglim states clear.toml --out out");
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("[[state]]") != std::string::npos);
    CHECK_FALSE(std::filesystem::exists(folder.home / "out"));
}
