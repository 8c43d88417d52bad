#include "app/run.h"
#include "machine/temporary_folder.h"

#include <nlohmann/json.hpp>

#include <catch2/catch.hpp>

#include <fstream>

using namespace glim;
using namespace glim::test;

namespace {

/// The walled study with something that strays; few builds, so that it is quick.
void write_study(const TemporaryFolder& folder, const std::string& lines)
{
    write(folder / "study.toml", "format = 1\nbase = \"" + studies() + "/walled.toml\"\n" + lines);
}

const std::string wall_strays = "[[tolerance]]\nname = \"wall\"\nsurfaces = [\"wall\"]\n"
                                "origin = \"installation\"\ndistribution = \"limits\"\n"
                                "sigmas = 3\noutboard = 3\n"
                                "[tolerances]\nbuilds = 128\n";

} // namespace

TEST_CASE("tolerances are counted, told and written", "[app]")
{
    const TemporaryFolder folder;
    write_study(folder, wall_strays);
    const Ran ran = run("cornerglim tolerances study.toml --out out", folder.path().string());
    INFO(ran.output << ran.errors);
    CHECK((ran.exit_code == 0 || ran.exit_code == 1 || ran.exit_code == 4));
    CHECK(ran.output.find("of 128 builds") != std::string::npos);
    CHECK(ran.output.find("homologation") != std::string::npos);
    for (const char* file :
         {"tolerances.html", "tolerances.pdf", "tolerances.txt", "contributions.csv", "builds.csv"})
        CHECK(std::filesystem::exists(folder / "out" / file));
    std::ifstream stream(folder / "out/tolerances.json");
    const nlohmann::json answer = nlohmann::json::parse(stream);
    CHECK(answer["builds"] == 128);
    CHECK_FALSE(answer["partial"].get<bool>());
    CHECK(answer["command"] == "cornerglim tolerances study.toml");
    std::size_t counted = 0;
    for (const auto& count : answer["verdicts"][0]["spread"]["histogram"]["builds"])
        counted += count.get<std::size_t>();
    CHECK(counted == 128);
}

TEST_CASE("the folder of tolerances is the same for one thread and for two", "[app]")
{
    const TemporaryFolder folder;
    write_study(folder, wall_strays);
    std::vector<std::string> bytes;
    for (const char* threads : {"1", "2"}) {
        const Ran ran = run("cornerglim tolerances study.toml --quiet --out out --threads " +
                                std::string(threads),
                            folder.path().string());
        INFO(ran.output << ran.errors);
        std::string all;
        for (const char* file : {"tolerances.html", "tolerances.pdf", "tolerances.json",
                                 "tolerances.txt", "contributions.csv", "builds.csv"})
            all += read(folder / "out" / file);
        bytes.push_back(all);
    }
    CHECK(bytes[0] == bytes[1]);
}

TEST_CASE("a study without tolerances is refused, and nothing is written", "[app]")
{
    const TemporaryFolder folder;
    const Ran ran = run("cornerglim tolerances '" + studies() + "/walled.toml' --out out",
                        folder.path().string());
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("[[tolerance]]") != std::string::npos);
    CHECK_FALSE(std::filesystem::exists(folder / "out"));
}
