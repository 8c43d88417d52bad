#include "input/read_reshaped.h"

#include "input/read_mesh.h"
#include "input/text_file.h"

#include <system_error>

namespace glim {

std::optional<ReshapedDraft> read_reshaped(TableReader& surface)
{
    const std::optional<std::string> name = surface.text("reshaped");
    if (!name)
        return std::nullopt;
    const std::filesystem::path path = surface.folder_of("reshaped") / *name;
    std::error_code trouble;
    if (!std::filesystem::exists(path, trouble)) {
        surface.complain("reshaped", "there is no file `" + path.string() + "`",
                         remedy_for_missing(path));
        return std::nullopt;
    }
    try {
        MeshFile file = read_mesh(path, path.string());
        return ReshapedDraft{std::move(file.mesh), {FileUse::mesh, path.string(), file.is}};
    } catch (const InputError& error) {
        surface.complaints().add(error);
        return std::nullopt;
    }
}

} // namespace glim
