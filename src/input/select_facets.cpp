#include "input/select_facets.h"

#include "geometry/components.h"
#include "geometry/facet_distance.h"
#include "input/glob.h"
#include "model/nearest_word.h"

#include <algorithm>

namespace glim {

namespace {

/// The whole name or one of its words: a file may put a face into several groups at once.
bool fits_name(const std::string& pattern, const std::string& name)
{
    if (fits_glob(pattern, name))
        return true;
    for (std::size_t at = 0; at < name.size();) {
        const std::size_t end = std::min(name.find(' ', at), name.size());
        if (fits_glob(pattern, std::string_view(name).substr(at, end - at)))
            return true;
        at = end + 1;
    }
    return false;
}

bool fits_one(const std::vector<Reference>& patterns, const std::string& name)
{
    return patterns.empty() ||
           std::any_of(patterns.begin(), patterns.end(),
                       [&](const Reference& pattern) { return fits_name(pattern.name, name); });
}

std::vector<bool> parts_chosen(const std::vector<MeshPart>& parts, const Selection& selection)
{
    std::vector<bool> chosen;
    chosen.reserve(parts.size());
    for (const MeshPart& part : parts)
        chosen.push_back(fits_one(selection.objects, part.object) &&
                         fits_one(selection.groups, part.group) &&
                         fits_one(selection.materials, part.material));
    return chosen;
}

Point centroid(const TriangleMesh& mesh, std::size_t facet)
{
    return (mesh.corner(facet, 0) + mesh.corner(facet, 1) + mesh.corner(facet, 2)) / 3;
}

bool lies_right(const TriangleMesh& mesh, std::size_t facet, const Selection& selection,
                const Vehicle& vehicle)
{
    const Point middle = centroid(mesh, facet);
    if (selection.side) {
        const bool is_left = vehicle.lateral(middle) >= millimetres(0);
        if (is_left != (*selection.side == Side::left))
            return false;
    }
    if (selection.box && !selection.box->holds(middle))
        return false;
    return !selection.facing || area_vector(mesh, facet).dot(*selection.facing) > 0;
}

std::vector<std::uint32_t> component_nearest(const TriangleMesh& mesh,
                                             const std::vector<std::uint32_t>& facets,
                                             const Point& point)
{
    const TriangleMesh part = part_of(mesh, facets);
    const std::vector<std::uint32_t> component = components_of(part);
    std::size_t nearest = 0;
    Length least = distance_to_facet(part, 0, point);
    for (std::size_t i = 1; i < facets.size(); ++i)
        if (const Length distance = distance_to_facet(part, i, point); distance < least) {
            least = distance;
            nearest = i;
        }
    std::vector<std::uint32_t> chosen;
    for (std::size_t i = 0; i < facets.size(); ++i)
        if (component[i] == component[nearest])
            chosen.push_back(facets[i]);
    return chosen;
}

/// The distinct names of one kind that the file gives, without the empty one.
std::vector<std::string> names_of(const std::vector<MeshPart>& parts, std::string MeshPart::*kind)
{
    std::vector<std::string> names;
    for (const MeshPart& part : parts)
        if (const std::string& name = part.*kind;
            !name.empty() && std::find(names.begin(), names.end(), name) == names.end())
            names.push_back(name);
    return names;
}

struct NameKind {
    std::string_view word;
    std::vector<Reference> Selection::*patterns;
    std::string MeshPart::*name;
};
constexpr std::array name_kinds = {
    NameKind{"object", &Selection::objects, &MeshPart::object},
    NameKind{"group", &Selection::groups, &MeshPart::group},
    NameKind{"material", &Selection::materials, &MeshPart::material},
};

} // namespace

std::vector<std::uint32_t> selected_facets(const NamedMesh& mesh, const Selection& selection,
                                           const Vehicle& vehicle)
{
    const std::vector<bool> chosen = parts_chosen(mesh.parts, selection);
    std::vector<std::uint32_t> facets;
    for (std::uint32_t i = 0; i < mesh.mesh.facets.size(); ++i)
        if (chosen[mesh.part_of_facet[i]] && lies_right(mesh.mesh, i, selection, vehicle))
            facets.push_back(i);
    if (selection.component_at && !facets.empty())
        return component_nearest(mesh.mesh, facets, *selection.component_at);
    return facets;
}

std::size_t complain_of_idle_patterns(const NamedMesh& mesh, const Selection& selection,
                                      Complaints& complaints)
{
    const std::size_t before = complaints.size();
    for (const NameKind& kind : name_kinds)
        for (const Reference& pattern : selection.*kind.patterns) {
            const std::vector<std::string> names = names_of(mesh.parts, kind.name);
            const bool fits = std::any_of(names.begin(), names.end(), [&](const std::string& name) {
                return fits_name(pattern.name, name);
            });
            const std::string word(kind.word);
            if (!fits)
                complaints.add(pattern.place,
                               "no " + word + " of this mesh fits \"" + pattern.name + "\"",
                               names.empty() ? "this file names no " + word + "s; select otherwise"
                                             : did_you_mean(pattern.name, names));
        }
    return complaints.size() - before;
}

} // namespace glim
