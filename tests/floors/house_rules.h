#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace glim::test {

/// The paths that git tracks in `checkout`; nothing if that is not the top of a git checkout.
std::optional<std::vector<std::string>> tracked_paths(const std::filesystem::path& checkout);

/// What stands visibly at the top of the tree though it should not, and what should but does not.
/// Entries that begin with a dot are not looked at.
std::vector<std::string> wrong_top_entries(const std::vector<std::string>& tracked);

/// A file of C++ longer than this holds more than one idea.
inline constexpr int most_lines = 400;

/// The files of C++ below `folder` that are longer than that.
std::vector<std::string> long_files(const std::filesystem::path& folder);

/// Names of types that two headers below `folder` define outside any other type: one program that
/// sees both has one of them twice, and no compiler tells.
std::vector<std::string> twice_defined(const std::filesystem::path& folder);

/// The tests below `folder` whose names Catch2 2.13 and CTest do not carry through: with a `;` a
/// test seems to pass without being run, with a `-` in front it always fails.
std::vector<std::string> bad_test_names(const std::filesystem::path& folder);

} // namespace glim::test
