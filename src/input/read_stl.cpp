#include "input/read_stl.h"

#include "input/read_stl_binary.h"
#include "input/read_stl_text.h"
#include "input/text_scanner.h"
#include "model/complaint.h"

namespace glim {

namespace {

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
    if (looks_like_text(bytes) && begins_with_solid(bytes))
        return read_stl_text(bytes, name);
    if (looks_like_text(bytes))
        refuse_text(name);
    return read_stl_binary(bytes, name);
}

} // namespace glim
