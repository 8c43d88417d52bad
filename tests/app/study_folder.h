#pragma once

#include "app/run.h"
#include "machine/temporary_folder.h"

#include <filesystem>
#include <map>
#include <string>

namespace glim::test {

/// Every file below a folder with its bytes, hidden ones too.
inline std::map<std::string, std::string> contents(const std::filesystem::path& folder)
{
    namespace fs = std::filesystem;
    std::map<std::string, std::string> files;
    for (const fs::directory_entry& entry : fs::recursive_directory_iterator(folder))
        if (entry.is_regular_file())
            files[entry.path().lexically_relative(folder).string()] = read(entry.path());
    return files;
}

/// A folder with a space in its name that holds the studies of these tests. The day of the machine
/// that runs them is nobody's business.
class StudyFolder {
public:
    StudyFolder()
    {
        std::filesystem::copy(studies(), home.path(), std::filesystem::copy_options::recursive);
    }
    Ran in(const std::string& line) const
    {
        return run("unset SOURCE_DATE_EPOCH\n" + line, home.path().string());
    }

    TemporaryFolder home;
};

} // namespace glim::test
