#include "fuzz/photometry_targets.h"
#include "machine/temporary_folder.h"

#include <catch2/catch.hpp>

using namespace glim::test;

namespace {

std::size_t replay(const std::string& corpus, void (*target)(std::string_view))
{
    std::size_t files = 0;
    const std::filesystem::path folder = GLIM_SOURCE_DIR "/tests/fuzz/corpus/" + corpus;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        INFO(entry.path().string());
        CHECK_NOTHROW(target(read(entry.path())));
        ++files;
    }
    return files;
}

} // namespace

TEST_CASE("every input that fuzzing left behind is read or refused in order", "[fuzz]")
{
    CHECK(replay("ies", read_as_ies) >= 20);
    CHECK(replay("ldt", read_as_ldt) >= 20);
}

TEST_CASE("the bad files of one reader are refused by the other too", "[fuzz]")
{
    const std::filesystem::path folder = GLIM_SOURCE_DIR "/tests/bad/photometry";
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        INFO(entry.path().string());
        CHECK_NOTHROW(read_as_ies(read(entry.path())));
        CHECK_NOTHROW(read_as_ldt(read(entry.path())));
    }
}
