#include "machine/folder_swap.h"

#include "machine/whole_file.h"

#include <cerrno>
#include <cstdio>
#include <string>
#include <system_error>

#include <fcntl.h>

namespace glim {

namespace fs = std::filesystem;

namespace {

bool exchange_is_unknown(int error)
{
    return error == EINVAL || error == ENOSYS || error == ENOTSUP;
}

[[noreturn]] void fail(const fs::path& path, int error)
{
    throw std::system_error(error, std::generic_category(), "cannot put in place " + path.string());
}

} // namespace

void swap_folders(const fs::path& a, const fs::path& b)
{
    if (renameat2(AT_FDCWD, a.c_str(), AT_FDCWD, b.c_str(), RENAME_EXCHANGE) == 0)
        return;
    if (!exchange_is_unknown(errno))
        fail(b, errno);
    swap_folders_in_steps(a, b);
}

void swap_folders_in_steps(const fs::path& a, const fs::path& b)
{
    const fs::path aside = free_path_beside(b);
    if (std::rename(b.c_str(), aside.c_str()) != 0)
        fail(b, errno);
    if (std::rename(a.c_str(), b.c_str()) != 0) {
        const int error = errno;
        std::rename(aside.c_str(), b.c_str());
        fail(b, error);
    }
    if (std::rename(aside.c_str(), a.c_str()) != 0)
        fail(a, errno);
}

} // namespace glim
