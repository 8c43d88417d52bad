#include "input/read_mesh.h"

#include "input/file_digest.h"
#include "input/foreign_file.h"
#include "input/mesh_formats.h"
#include "input/text_file.h"
#include "machine/file_bytes.h"
#include "model/complaint.h"
#include "model/nearest_word.h"

#include <algorithm>
#include <future>

namespace glim {

namespace {

/// Lines, columns, points and facets of such a file can be counted with 31 bits.
constexpr std::size_t largest_file = (std::size_t{1} << 31) - 1;

[[noreturn]] void refuse(const std::string& name, std::string what, std::string remedy)
{
    throw InputError(
        {{{.file = name, .line = 0, .column = 0, .byte = {}}, std::move(what), std::move(remedy)}});
}

[[noreturn]] void refuse(const std::filesystem::path& file, const std::string& name,
                         FileTrouble trouble)
{
    switch (trouble) {
    case FileTrouble::missing:
        refuse(name, "there is no such file", remedy_for_missing(file));
    case FileTrouble::is_folder:
        refuse(name, "this is a folder", "name a mesh file in it");
    case FileTrouble::not_a_file:
        refuse(name, "this is no ordinary file", "save the mesh as a file first");
    case FileTrouble::not_allowed:
        refuse(name, "this file may not be read", "ask its owner for the right to read it");
    case FileTrouble::too_large:
        break;
    }
    refuse(name, "this file is larger than 2 GiB",
           "export only the parts near the lamps, or more coarsely");
}

std::string bytes_of(const std::filesystem::path& file, const std::string& name)
{
    std::variant<std::string, FileTrouble> bytes = file_bytes(file, largest_file);
    if (const FileTrouble* const trouble = std::get_if<FileTrouble>(&bytes))
        refuse(file, name, *trouble);
    return std::get<std::string>(std::move(bytes));
}

std::string ending_of(const std::filesystem::path& file)
{
    std::string ending = file.extension().string();
    for (char& c : ending)
        c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return ending;
}

const MeshFormat* format_with_ending(const std::string& ending)
{
    const auto formats = mesh_formats();
    const auto found = std::find_if(formats.begin(), formats.end(),
                                    [&](const MeshFormat& f) { return f.ending == ending; });
    return found == formats.end() ? nullptr : &*found;
}

const MeshFormat* format_by_look(const std::string& bytes)
{
    const auto formats = mesh_formats();
    const auto found = std::find_if(formats.begin(), formats.end(),
                                    [&](const MeshFormat& f) { return f.looks_like(bytes); });
    return found == formats.end() ? nullptr : &*found;
}

std::string export_remedy()
{
    std::vector<std::string> endings;
    for (const MeshFormat& format : mesh_formats())
        endings.emplace_back(format.ending);
    return "export the mesh as a file that ends in " + listed(endings, "or");
}

void refuse_foreign(const std::string& bytes, const std::string& name)
{
    if (bytes.empty())
        refuse(name, "this file is empty", "copy or export it again");
    // What is STL by its size is STL, however its title begins.
    if (format_by_look(bytes))
        return;
    if (const std::optional<ForeignFile> foreign = foreign_file(bytes))
        refuse(name, "this is " + std::string(foreign->what) + " and no mesh that can be read",
               std::string(foreign->remedy));
}

const MeshFormat& format_of(const std::filesystem::path& file, const std::string& bytes,
                            const std::string& name)
{
    const std::string ending = ending_of(file);
    const MeshFormat* const named = format_with_ending(ending);
    const MeshFormat* const seen = format_by_look(bytes);
    if (named && (!seen || named->looks_like(bytes)))
        return *named;
    const std::string remedy = seen
                                   ? "it looks like " + std::string(seen->name) +
                                         ": let its name end in `" + std::string(seen->ending) + "`"
                                   : export_remedy();
    if (named)
        refuse(name, "this is not " + std::string(named->name) + ", as its name says", remedy);
    refuse(name,
           ending.empty() ? "the name of this file has no ending, which would tell what it is"
                          : "`" + ending + "` is no kind of mesh that can be read",
           remedy);
}

} // namespace

MeshFile read_mesh(const std::filesystem::path& file, const std::string& name_for_messages)
{
    const std::string bytes = bytes_of(file, name_for_messages);
    refuse_foreign(bytes, name_for_messages);
    const MeshFormat& format = format_of(file, bytes, name_for_messages);
    // Beside the reading, which takes longer: the digest of a large mesh is not waited for.
    std::future<FileIdentity> identity =
        std::async(std::launch::async, [&] { return identity_of(bytes); });
    MeshFile mesh = format.read(bytes, name_for_messages);
    mesh.is = identity.get();
    return mesh;
}

} // namespace glim
