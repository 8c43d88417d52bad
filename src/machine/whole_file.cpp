#include "machine/whole_file.h"

#include <cerrno>
#include <cstdio>
#include <system_error>
#include <utility>

#include <fcntl.h>
#include <unistd.h>

namespace glim {

namespace fs = std::filesystem;

namespace {

[[noreturn]] void fail(const std::string& what, const fs::path& path, int error)
{
    throw std::system_error(error, std::generic_category(), what + " " + path.string());
}

/// An open file for writing; close() tells what the disk has to say, the destructor only lets go.
class Descriptor {
public:
    explicit Descriptor(const fs::path& path)
        : number_(open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666))
    {
        if (number_ < 0)
            fail("cannot create", path, errno);
    }
    ~Descriptor()
    {
        if (number_ >= 0)
            ::close(number_);
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    bool write_all(std::string_view bytes) const
    {
        while (!bytes.empty()) {
            const ssize_t written = ::write(number_, bytes.data(), bytes.size());
            if (written < 0 && errno != EINTR)
                return false;
            if (written > 0)
                bytes.remove_prefix(static_cast<std::size_t>(written));
        }
        return true;
    }
    bool close() { return ::close(std::exchange(number_, -1)) == 0; }

private:
    int number_;
};

/// The file that `path` leads to, if it leads to one that may be replaced.
fs::path end_of_links(const fs::path& path, IfThere if_there)
{
    const fs::file_status itself = fs::symlink_status(path);
    if (!fs::exists(itself))
        return path;
    if (if_there == IfThere::refuse)
        throw WriteRefused(path, "is there already", "name another file, or remove this one first");
    if (!fs::is_regular_file(fs::status(path)))
        throw WriteRefused(path, "is there already and is not a file", "name a file to write");
    return fs::canonical(path);
}

/// Moves `from` to `to`, over what may be there or not.
void move_file(const fs::path& from, const fs::path& to, IfThere if_there)
{
    const unsigned flags = if_there == IfThere::refuse ? RENAME_NOREPLACE : 0;
    if (renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), flags) == 0)
        return;
    // Some file systems know no flags; end_of_links has looked, a moment ago, that nothing is
    // there.
    if (errno == EINVAL && std::rename(from.c_str(), to.c_str()) == 0)
        return;
    fail("cannot put in place", to, errno);
}

} // namespace

WriteRefused::WriteRefused(fs::path where, std::string why, std::string instead)
    : std::runtime_error(where.string() + ": " + why + "\n    " + instead), path(std::move(where)),
      reason(std::move(why)), remedy(std::move(instead))
{
}

void write_new_file(const fs::path& path, std::string_view bytes)
{
    Descriptor file(path);
    if (file.write_all(bytes) && file.close())
        return;
    const int error = errno;
    unlink(path.c_str());
    fail("cannot write", path, error);
}

fs::path nearest_folder(const fs::path& path)
{
    fs::path above = fs::absolute(path).parent_path();
    while (!fs::exists(above) && above.has_relative_path())
        above = above.parent_path();
    if (!fs::is_directory(above))
        throw WriteRefused(path, "lies below " + above.string() + ", which is no folder",
                           "name a place inside a folder");
    return above;
}

fs::path free_path_beside(const fs::path& path)
{
    const std::string stem = "." + path.filename().string() + "." + std::to_string(getpid()) + "-";
    for (int i = 1;; ++i) {
        fs::path candidate = path.parent_path() / (stem + std::to_string(i));
        if (!fs::exists(fs::symlink_status(candidate)))
            return candidate;
    }
}

void write_file_atomically(const fs::path& path, std::string_view bytes, IfThere if_there)
{
    nearest_folder(path);
    const fs::path target = end_of_links(fs::absolute(path), if_there);
    fs::create_directories(target.parent_path());
    const fs::path beside = free_path_beside(target);
    write_new_file(beside, bytes);
    try {
        if (if_there == IfThere::replace && fs::exists(target))
            fs::permissions(beside, fs::status(target).permissions());
        move_file(beside, target, if_there);
    } catch (...) {
        unlink(beside.c_str());
        throw;
    }
}

} // namespace glim
