#include "app/command_line.h"

#include "app/help_words.h"
#include "model/complaint.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

template <class Asked>
Asked asked(const std::vector<std::string>& arguments)
{
    return std::get<Asked>(read_command_line(arguments, "0.1.0"));
}

std::string complaint(const std::vector<std::string>& arguments)
{
    try {
        read_command_line(arguments, "0.1.0");
    } catch (const InputError& error) {
        return error.what();
    }
    return "(none)";
}

} // namespace

TEST_CASE("check takes a study and its options in any order", "[app]")
{
    const auto plain = asked<CheckRequest>({"check", "a.toml"});
    CHECK(plain.study == "a.toml");
    CHECK_FALSE(plain.out);
    CHECK_FALSE(plain.step);
    CHECK(plain.threads == 0);
    CHECK_FALSE(plain.json);

    const auto full = asked<CheckRequest>(
        {"check", "--step", "0.5", "--json", "a b.toml", "--out=x", "--threads", "3", "--quiet"});
    CHECK(full.study == "a b.toml");
    CHECK(full.out == std::filesystem::path("x"));
    CHECK(full.step == degrees(0.5));
    CHECK(full.threads == 3);
    CHECK(full.json);
    CHECK(full.quiet);
}

TEST_CASE("the other commands take what they need", "[app]")
{
    CHECK(asked<InspectRequest>({"inspect", "a.obj", "--json"}).json);
    const auto fresh = asked<NewRequest>({"new", "a.obj", "--out", "-", "--force"});
    CHECK(fresh.mesh == "a.obj");
    CHECK(fresh.out == std::filesystem::path("-"));
    CHECK(fresh.force);
    CHECK_FALSE(asked<TablesRequest>({"tables"}).table);
    CHECK(asked<TablesRequest>({"tables", "fmvss-108"}).table == "fmvss-108");
}

TEST_CASE("picture takes a direction that begins with a minus", "[app]")
{
    const auto plain = asked<PictureRequest>({"picture", "a.toml", "--toward", "-45,0"});
    CHECK(plain.study == "a.toml");
    CHECK(plain.toward == Bearing{degrees(-45), degrees(0)});
    CHECK_FALSE(plain.lamp);
    CHECK_FALSE(plain.far_side);
    CHECK_FALSE(plain.out);
    const auto full =
        asked<PictureRequest>({"picture", "--toward=12.5,-15", "a.toml", "--lamp", "the lamp",
                               "--far-side", "--out", "x.png", "--threads", "2"});
    CHECK(full.toward == Bearing{degrees(12.5), degrees(-15)});
    CHECK(full.lamp == "the lamp");
    CHECK(full.far_side);
    CHECK(full.out == std::filesystem::path("x.png"));
    CHECK(full.threads == 2);
}

TEST_CASE("a direction that is none is refused however it is written", "[app]")
{
    for (const char* toward : {"45", "45,", ",0", "45;0", "45 0", "nan,0", "0,90.5", "181,0", "a,b",
                               "0,0,0", "1e400,0", ""})
        CHECK(complaint({"picture", "a.toml", std::string("--toward=") + toward}) != "(none)");
    CHECK(complaint({"picture", "a.toml", "--toward", "45"}) ==
          "command line: --toward `45` is no direction\n    give degrees outboard (inboard below "
          "0), a comma, degrees up (down below 0), such as --toward -45,0\n");
    CHECK(complaint({"picture", "a.toml"}).find("does not say from where to look") !=
          std::string::npos);
}

TEST_CASE("a file may be called like a command, or begin with a dash after two", "[app]")
{
    CHECK(asked<CheckRequest>({"check", "new"}).study == "new");
    CHECK(asked<CheckRequest>({"check", "--", "-a.toml"}).study == "-a.toml");
}

TEST_CASE("help and version are texts, and no command at all is a call for help", "[app]")
{
    CHECK(asked<TextRequest>({"--version"}).text == "cornerglim 0.1.0\n");
    CHECK(asked<TextRequest>({}).text == program_help());
    CHECK(asked<TextRequest>({"--help"}).text == program_help());
    CHECK(asked<TextRequest>({"check", "--help"}).text == command_help(command_table().front()));
    CHECK(asked<TextRequest>({"check", "-h"}).text == command_help(command_table().front()));
}

TEST_CASE("an unknown option names the nearest one", "[app]")
{
    CHECK(complaint({"check", "a.toml", "--stpe", "5"}) ==
          "command line: unknown option `--stpe`\n    did you mean `--step`?\n");
    CHECK(complaint({"check", "a.toml", "--stpe=5"}) ==
          "command line: unknown option `--stpe`\n    did you mean `--step`?\n");
}

TEST_CASE("an unknown command names the nearest one", "[app]")
{
    CHECK(complaint({"chek", "a.toml"}) ==
          "command line: unknown command `chek`\n    did you mean `check`?\n");
}

TEST_CASE("a missing study is asked for", "[app]")
{
    CHECK(complaint({"check"}) ==
          "command line: `check` needs a STUDY\n    write cornerglim check STUDY\n");
    CHECK(complaint({"check", ""}) == complaint({"check"}));
}

TEST_CASE("a word too many is not passed over", "[app]")
{
    CHECK(
        complaint({"check", "a.toml", "b.toml"}) ==
        "command line: `b.toml` is one word too many\n    `check` takes one STUDY; put a name with "
        "blanks in quotes\n");
}

TEST_CASE("a step outside 0 to 45 degrees is refused however it is written", "[app]")
{
    for (const char* step : {"0", "-1", "45.001", "nan", "inf", "1e400", "1,5", "5deg", ""})
        CHECK(complaint({"check", "a.toml", std::string("--step=") + step}) != "(none)");
    CHECK(asked<CheckRequest>({"check", "a.toml", "--step", "45"}).step == degrees(45));
    CHECK(
        complaint({"check", "a.toml", "--step=1,5"}) ==
        "command line: --step `1,5` is no usable angle\n    give degrees above 0, at most 45, such "
        "as --step 0.5\n");
}

TEST_CASE("several wrong values are told at once", "[app]")
{
    CHECK(
        complaint({"check", "--threads", "-2", "--step", "x"}) ==
        "command line: `check` needs a STUDY\n    write cornerglim check STUDY\n"
        "command line: --step `x` is no usable angle\n    give degrees above 0, at most 45, such "
        "as --step 0.5\n"
        "command line: --threads `-2` is no usable number\n    give a whole number up to 1024, or "
        "0 for all cores\n");
}

TEST_CASE("an option without its value, or given twice, is complained of", "[app]")
{
    CHECK(complaint({"check", "a.toml", "--step"}) != "(none)");
    CHECK(complaint({"check", "a.toml", "--step", "1", "--step", "2"}) != "(none)");
}

TEST_CASE("report needs a folder and takes a day", "[app]")
{
    const auto full = asked<ReportRequest>(
        {"report", "a.toml", "--out", "x", "--date", "2026-01-31", "--step", "2", "--quiet"});
    CHECK(full.study == "a.toml");
    CHECK(full.out == "x");
    CHECK(full.date == "2026-01-31");
    CHECK(full.step == degrees(2));
    CHECK(full.quiet);
    CHECK(asked<ReportRequest>({"report", "a.toml", "--out", "x", "--date", "today"}).date ==
          "today");
    CHECK(complaint({"report", "a.toml", "--date", "tomorrow"}) ==
          "command line: `report` does not say where to write\n    name a new folder: --out DIR\n"
          "command line: --date `tomorrow` is no day\n"
          "    write it as 2026-01-31, or --date today\n");
}
