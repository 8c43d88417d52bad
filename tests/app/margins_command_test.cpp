#include "app/study_folder.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using namespace glim;
using test::contents;
using test::Ran;
using test::StudyFolder;

TEST_CASE("margins are told, and written as data, as a table and as text", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in("cornerglim margins walled.toml --out out");
    INFO(ran.output << ran.errors);
    CHECK(ran.exit_code == 1);
    CHECK(ran.output.find("is not met") != std::string::npos);
    CHECK(ran.output.find("homologation") != std::string::npos);
    const nlohmann::json margins =
        nlohmann::json::parse(test::read(folder.home / "out/margins.json"));
    REQUIRE_FALSE(margins["checks"].empty());
    CHECK(margins["checks"][0]["met"] == false);
    CHECK(margins["checks"][0]["surfaces"][0]["surface"] == "wall");
    CHECK(std::filesystem::exists(folder.home / "out/margins.csv"));
    CHECK(test::read(folder.home / "out/margins.txt") == ran.output);
    const std::string page = test::read(folder.home / "out/margins.html");
    CHECK(page.find("is not met") != std::string::npos);
    CHECK(page.find("homologation") != std::string::npos);
    CHECK(page.find("cornerglim margins walled.toml") != std::string::npos);
    CHECK(std::filesystem::exists(folder.home / "out/margins.pdf"));
}

TEST_CASE("margins are the same to the byte for any number of threads", "[app]")
{
    const StudyFolder folder;
    CHECK(folder
              .in("cornerglim margins clear.toml --out one --threads 1 && "
                  "cornerglim margins clear.toml --out two --threads 3")
              .exit_code == 0);
    CHECK(contents(folder.home / "one") == contents(folder.home / "two"));
}

TEST_CASE("a reach that is no length is complained of, and nothing is written", "[app]")
{
    const StudyFolder folder;
    for (const char* reach : {"0", "-3", "nan", "far", "1e9"}) {
        const Ran ran =
            folder.in(std::string("cornerglim margins clear.toml --out out --reach ") + reach);
        CHECK(ran.exit_code == 2);
        CHECK(ran.errors.find("--reach") != std::string::npos);
        CHECK_FALSE(std::filesystem::exists(folder.home / "out"));
    }
}
