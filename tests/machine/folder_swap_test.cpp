#include "machine/folder_swap.h"

#include "machine/temporary_folder.h"

#include <catch2/catch.hpp>

#include <system_error>

using namespace glim;
using glim::test::TemporaryFolder;

TEST_CASE("two folders change places, in one step or in three", "[machine]")
{
    const auto swap = GENERATE(swap_folders, swap_folders_in_steps);
    const TemporaryFolder folder;
    test::write(folder / "a/which", "a");
    test::write(folder / "b/which", "b");
    swap(folder / "a", folder / "b");
    CHECK(test::read(folder / "a/which") == "b");
    CHECK(test::read(folder / "b/which") == "a");
    CHECK(folder.entries() == 2);
}

TEST_CASE("a swap that cannot be done changes nothing", "[machine]")
{
    const auto swap = GENERATE(swap_folders, swap_folders_in_steps);
    const TemporaryFolder folder;
    test::write(folder / "b/which", "b");
    CHECK_THROWS_AS(swap(folder / "a", folder / "b"), std::system_error);
    CHECK(test::read(folder / "b/which") == "b");
    CHECK(folder.entries() == 1);
}
