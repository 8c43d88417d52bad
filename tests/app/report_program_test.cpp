#include "app/study_folder.h"

#include <catch2/catch.hpp>

using namespace glim;
using test::contents;
using test::Ran;
using test::run;
using test::StudyFolder;

namespace fs = std::filesystem;

TEST_CASE("a report stands beside the results, and the exit code is that of check", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in("cornerglim report walled.toml --out report");
    CHECK(ran.exit_code == 1);
    CHECK(ran.errors.find("Written: report/report.html and report.pdf\n") != std::string::npos);
    CHECK(folder.in("cornerglim check walled.toml --out results").exit_code == 1);
    auto with = contents(folder.home / "report");
    const auto without = contents(folder.home / "results");
    CHECK(with.erase("report.html") == 1);
    CHECK(with.erase("report.pdf") == 1);
    for (const auto& [name, bytes] : without)
        if (name != "result.json" && name != ".cornerglim") // they name command and files
            CHECK(with[name] == bytes);
    CHECK(with.size() == without.size());
    CHECK(folder.in("cornerglim report clear.toml --out clear").exit_code == 0);
    CHECK(folder.in("cornerglim report position.toml --out open").exit_code == 4);
}

TEST_CASE("reports are equal to the byte for any number of threads, on any day", "[app]")
{
    const StudyFolder folder;
    CHECK(folder.in("cornerglim report walled.toml --out one --threads 1").exit_code == 1);
    CHECK(folder.in("cornerglim report walled.toml --out four --threads 4").exit_code == 1);
    const auto one = contents(folder.home / "one");
    CHECK(one.contains("report.pdf"));
    const bool same = one == contents(folder.home / "four");
    CHECK(same);
    CHECK(one.at("report.pdf").find("CreationDate") == std::string::npos);
}

TEST_CASE("a report bears a day on request, and the day makes all the difference there is", "[app]")
{
    const StudyFolder folder;
    folder.in("cornerglim report walled.toml --out asked --date 2026-01-02");
    folder.in("SOURCE_DATE_EPOCH=1767312245 cornerglim report walled.toml --out epoch");
    const auto asked = contents(folder.home / "asked");
    CHECK(asked.at("report.html").find("<p class=\"date\">2026-01-02</p>") != std::string::npos);
    CHECK(asked.at("report.pdf").find("20260102") != std::string::npos);
    const bool same = asked == contents(folder.home / "epoch");
    CHECK(same);
}

TEST_CASE("a report that would not come to an end is refused before the work begins", "[app]")
{
    const StudyFolder folder;
    const auto before = contents(folder.home.path());
    const Ran no_folder = folder.in("cornerglim report walled.toml");
    CHECK(no_folder.exit_code == 2);
    CHECK(no_folder.errors.find("--out DIR") != std::string::npos);
    const Ran below_file = folder.in("cornerglim report walled.toml --out wall.obj/report");
    CHECK(below_file.exit_code == 2);
    CHECK(below_file.errors.find("which is no folder") != std::string::npos);
    const Ran epoch = folder.in("SOURCE_DATE_EPOCH=soon cornerglim report walled.toml --out x");
    CHECK(epoch.exit_code == 2);
    CHECK(epoch.errors.find("SOURCE_DATE_EPOCH: `soon`") != std::string::npos);
    CHECK(contents(folder.home.path()) == before);
}

TEST_CASE("a study without checks has nothing to report", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in("sed '/^\\[\\[check\\]\\]/,$d' walled.toml > unasked.toml\n"
                              "cornerglim report unasked.toml --out x");
    CHECK(ran.exit_code == 2);
    CHECK(ran.errors.find("nothing is asked; add a [[check]]") != std::string::npos);
    CHECK_FALSE(fs::exists(folder.home / "x"));
}

TEST_CASE("where the disk is full, nothing is half written and the report before stays", "[app]")
{
    const StudyFolder folder;
    CHECK(folder.in("cornerglim report clear.toml --out report").exit_code == 0);
    const auto before = contents(folder.home.path());
    // No file above 8 blocks of 512 bytes: as on a full disk, at some file in the middle.
    const Ran full = folder.in("trap '' XFSZ\nulimit -f 8\n"
                               "cornerglim report walled.toml --out report");
    CHECK(full.exit_code == 3);
    CHECK(full.errors.find("cannot write ") != std::string::npos);
    CHECK(full.errors.find("report.html: ") != std::string::npos);
    const bool unchanged = contents(folder.home.path()) == before;
    CHECK(unchanged);
}

TEST_CASE("a study without a title whose name is no UTF-8 has a report all the same", "[app]")
{
    const StudyFolder folder;
    const Ran ran = folder.in("name=$(printf 'b\\344d.toml')\n"
                              "sed '/^title/d' walled.toml > \"$name\"\n"
                              "cornerglim report \"$name\" --out report");
    INFO(ran.errors);
    CHECK(ran.exit_code == 1);
    CHECK(fs::exists(folder.home / "report" / "report.pdf"));
}
