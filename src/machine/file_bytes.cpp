#include "machine/file_bytes.h"

#include <algorithm>
#include <cerrno>
#include <cstdint>
#include <cstdio>
#include <memory>
#include <stdexcept>

namespace glim {

namespace {

struct Close {
    void operator()(std::FILE* file) const { std::fclose(file); }
};
using OpenFile = std::unique_ptr<std::FILE, Close>;

/// Large enough that the number of calls does not matter.
constexpr std::size_t chunk = std::size_t{1} << 20;

FileTrouble trouble_from(int error)
{
    switch (error) {
    case ENOENT:
    case ENOTDIR:
    case ENAMETOOLONG:
        return FileTrouble::missing;
    case EISDIR:
        return FileTrouble::is_folder;
    case EACCES:
    case EPERM:
        return FileTrouble::not_allowed;
    default:
        return FileTrouble::not_a_file;
    }
}

/// Reads to the end, or one byte beyond `most_bytes`; `expected` only saves copying, since the file
/// may grow meanwhile.
std::string read_all(std::FILE* file, std::size_t most_bytes, std::size_t expected)
{
    std::string bytes;
    bytes.reserve(expected + chunk);
    std::size_t filled = 0;
    for (;;) {
        const std::size_t wanted = std::min(chunk, most_bytes + 1 - filled);
        bytes.resize(filled + wanted);
        const std::size_t got = std::fread(bytes.data() + filled, 1, wanted, file);
        filled += got;
        if (got < wanted || filled > most_bytes)
            break;
    }
    bytes.resize(filled);
    return bytes;
}

} // namespace

std::variant<std::string, FileTrouble> file_bytes(const std::filesystem::path& file,
                                                  std::size_t most_bytes)
{
    // Looked at first, because to open a pipe would wait for somebody to write into it.
    std::error_code error;
    const std::filesystem::file_status status = std::filesystem::status(file, error);
    if (error)
        return trouble_from(error.value());
    if (std::filesystem::is_directory(status))
        return FileTrouble::is_folder;
    if (!std::filesystem::is_regular_file(status))
        return FileTrouble::not_a_file;

    const OpenFile open(std::fopen(file.c_str(), "rb"));
    if (!open)
        return trouble_from(errno);
    const std::uintmax_t expected = std::filesystem::file_size(file, error);
    if (!error && expected > most_bytes)
        return FileTrouble::too_large;
    std::string bytes = read_all(open.get(), most_bytes, error ? 0 : expected);
    if (std::ferror(open.get()) != 0)
        throw std::runtime_error(file.string() + ": the disk failed while it was read");
    if (bytes.size() > most_bytes)
        return FileTrouble::too_large;
    return bytes;
}

} // namespace glim
