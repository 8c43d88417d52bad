#include "input/read_stl.h"

#include "input/read_stl_binary.h"
#include "input/read_stl_text.h"
#include "model/complaint.h"

#include <algorithm>

namespace glim {

namespace {

/// Enough to cover the 80 bytes of a binary file's title, its count and a few facets.
constexpr std::size_t sample_size = 1024;

bool is_control(char c)
{
    const auto byte = static_cast<unsigned char>(c);
    return byte < 0x20 && std::string_view("\t\n\v\f\r").find(c) == std::string_view::npos;
}

/// A title of binary STL is filled up with zeros, and its numbers have bytes that no text has.
bool is_text(std::string_view bytes)
{
    const std::string_view sample = bytes.substr(0, sample_size);
    return std::none_of(sample.begin(), sample.end(), is_control);
}

void refuse_text(const std::string& name)
{
    Complaints complaints;
    complaints.add({name, 1, 1, {}},
                   "this is text, but its first word is not `solid`, as STL would have it",
                   "export the mesh as STL again, or give the file the ending it needs");
    complaints.throw_if_any();
}

} // namespace

bool looks_like_stl(std::string_view bytes)
{
    return has_exact_size_of_binary_stl(bytes) || begins_with_solid(bytes);
}

MeshFile read_stl(std::string_view bytes, const std::string& name)
{
    // Text cannot have the exact size by chance: its bytes would count 500 million facets.
    if (has_exact_size_of_binary_stl(bytes))
        return read_stl_binary(bytes, name);
    if (is_text(bytes) && begins_with_solid(bytes))
        return read_stl_text(bytes, name);
    if (is_text(bytes))
        refuse_text(name);
    return read_stl_binary(bytes, name);
}

} // namespace glim
