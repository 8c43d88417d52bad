#pragma once

#include "machine/temporary_folder.h"
#include "model/complaint.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <functional>

namespace glim::test {

/// While it lives, the program works in this folder, so that files go by their bare names.
class WorkingFolder {
public:
    explicit WorkingFolder(const std::filesystem::path& folder)
        : before_(std::filesystem::current_path())
    {
        std::filesystem::current_path(folder);
    }
    ~WorkingFolder() { std::filesystem::current_path(before_); }
    WorkingFolder(const WorkingFolder&) = delete;
    WorkingFolder& operator=(const WorkingFolder&) = delete;

private:
    std::filesystem::path before_;
};

/// What `read` complains of, whole.
inline std::string complaints_of(const std::function<void()>& read)
{
    try {
        read();
    } catch (const InputError& error) {
        return error.what();
    }
    return "(read without a complaint)";
}

/// Reads every NAME.toml of the folder and compares all its complaints with NAME.toml.expected.
/// At least `least` files must be there.
inline void expect_complaints(const std::filesystem::path& folder, std::size_t least,
                              const std::function<void(const std::string& name)>& read_one)
{
    const WorkingFolder here(folder);
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator("."))
        if (entry.path().extension() == ".toml")
            names.push_back(entry.path().filename().string());
        else if (entry.path().extension() == ".expected")
            CHECK(std::filesystem::exists(entry.path().stem()));
    std::sort(names.begin(), names.end());
    CHECK(names.size() >= least);
    for (const std::string& name : names) {
        INFO(name);
        REQUIRE(std::filesystem::exists(name + ".expected"));
        CHECK(complaints_of([&] { read_one(name); }) == read(name + ".expected"));
    }
}

} // namespace glim::test
