#include "remedy/headroom.h"

#include "geometry/facet_tree.h"
#include "geometry/point_normals.h"
#include "geometry/weld.h"
#include "machine/stop.h"
#include "remedy/near_facets.h"
#include "remedy/refine_surface.h"
#include "remedy/way_to_space.h"

#include <algorithm>

namespace glim {

namespace {

/// 12 halvings make 2 m facets 0.5 mm small.
constexpr int most_rounds = 24;
/// Places are looked at side by side, so many at a time: what one lot finds spares the next.
constexpr std::size_t places_a_lot = 2048;
constexpr double between_share = 0.005;

enum State : std::uint32_t {
    unknown, ///< not looked at yet
    far,     ///< all of it has `farthest_way_in` or more
    fine     ///< divided finely enough
};

double size_of(const TriangleMesh& mesh, std::size_t f)
{
    double size = 0;
    for (int i = 0; i < 3; ++i)
        size = std::max(size, (mesh.corner(f, i) - mesh.corner(f, (i + 1) % 3)).norm());
    return size;
}

/// The share of a triangle, figures straight between its corners, that is below `level`.
double share_below(std::array<double, 3> at, double level)
{
    std::sort(at.begin(), at.end());
    if (level <= at[0])
        return 0;
    if (level >= at[2])
        return 1;
    if (level <= at[1])
        return (level - at[0]) * (level - at[0]) / ((at[1] - at[0]) * (at[2] - at[0]));
    return 1 - (at[2] - level) * (at[2] - level) / ((at[2] - at[0]) * (at[2] - at[1]));
}

/// A space that the surface counts for.
struct Asked {
    std::size_t place; ///< in KeepClear::spaces
    const ClearSpace* space;
    FacetTree lit;
};

/// Finds the headroom of one surface.
class SurfaceHeadroom {
public:
    SurfaceHeadroom(const Standing& surface, const KeepClear& found, const Workers& workers);

    Headroom find(const TriangleMesh& mesh);

private:
    void divide();
    void divide_at_the_tightest();
    bool halve(const std::vector<std::uint8_t>& marked);
    void look_at_places();
    void look_at(std::size_t first, std::size_t last, const std::vector<Vector>& normals);
    std::optional<Length> look_at(const Asked& asked, std::uint32_t place, const Vector& normal,
                                  Length within) const;
    void take(std::size_t asked, std::uint32_t place, Length figure, const Vector& normal);
    bool is_spared(std::size_t facet) const;
    void add_areas();
    std::vector<std::uint8_t> for_facets(State state,
                                         const std::function<std::uint8_t(std::size_t)>& look);

    Workers workers_;
    std::vector<Asked> asked_;
    SpaceList spaces_;
    NumberedMesh near_;           ///< welded; numbers are states
    std::vector<Length> figures_; ///< of its points, as far as they were looked at
    Headroom found_;
};

SurfaceHeadroom::SurfaceHeadroom(const Standing& surface, const KeepClear& found,
                                 const Workers& workers)
    : workers_(workers)
{
    found_.surface = surface;
    for (std::size_t s = 0; s < found.asked.size(); ++s)
        for (const Standing& counted : found.asked[s].counted)
            if (counted.surface == surface.surface && counted.twin == surface.twin) {
                asked_.push_back({s, &found.asked[s], FacetTree(found.asked[s].lit)});
                spaces_.push_back(&found.asked[s]);
                found_.by_space.push_back({s, std::nullopt});
            }
}

/// What `look` says of each facet of that state; 0 for the rest.
std::vector<std::uint8_t>
SurfaceHeadroom::for_facets(State state, const std::function<std::uint8_t(std::size_t)>& look)
{
    std::vector<std::uint8_t> said(near_.of.size(), 0);
    const bool done = for_each_index(said.size(), workers_, [&](std::size_t f, unsigned) {
        if (near_.of[f] == state)
            said[f] = look(f);
    });
    if (!done)
        throw Stopped();
    return said;
}

/// Whether anything was marked.
bool SurfaceHeadroom::halve(const std::vector<std::uint8_t>& marked)
{
    if (std::find(marked.begin(), marked.end(), 1) == marked.end())
        return false;
    near_ = with_halved_edges(near_, marked, Direction::z());
    return true;
}

void SurfaceHeadroom::divide()
{
    for (int round = 0; round < most_rounds; ++round) {
        const std::vector<Vector> normals = point_normals(near_.mesh);
        const auto sweeps = [&](std::size_t f, Length by) {
            return may_meet(spaces_, SweptFacet{near_.mesh, f, normals, by});
        };
        constexpr std::uint8_t is_far = 2;
        std::vector<std::uint8_t> marked = for_facets(unknown, [&](std::size_t f) -> std::uint8_t {
            const double size = size_of(near_.mesh, f);
            if (!sweeps(f, farthest_way_in))
                return is_far;
            return size > in_mm(headroom_far_grain) ||
                           (size > in_mm(headroom_grain) && sweeps(f, headroom_near))
                       ? 1
                       : 0;
        });
        for (std::size_t f = 0; f < marked.size(); ++f) {
            if (near_.of[f] == unknown && marked[f] != 1)
                near_.of[f] = marked[f] == is_far ? far : fine;
            marked[f] = marked[f] == 1 ? 1 : 0;
        }
        if (!halve(marked))
            return;
    }
}

std::optional<Length> SurfaceHeadroom::look_at(const Asked& asked, std::uint32_t place,
                                               const Vector& normal, Length within) const
{
    const ClearSpace& space = *asked.space;
    const Point from = space.frame.into(near_.mesh.points[place]);
    const Vector way = space.frame.way_into(normal);
    const auto spared = [&](const Point& p) {
        return asked.lit.nearest(p, space.skipped).has_value();
    };
    if (space.set.holds(from) && !spared(from))
        return Length() - way_out(from, -way, space.set);
    return way_in(from, way, space.set, within, spared);
}

void SurfaceHeadroom::take(std::size_t asked, std::uint32_t place, Length figure,
                           const Vector& normal)
{
    SpaceHeadroom& of_space = found_.by_space[asked];
    const Point& at = near_.mesh.points[place];
    if (!of_space.least || figure < *of_space.least)
        of_space = {of_space.space, figure, at};
    if (!found_.least || figure < *found_.least) {
        found_.least = figure;
        found_.tightest = at;
        found_.way = normal;
        found_.space = of_space.space;
    }
    figures_[place] = std::min(figures_[place], figure);
}

/// Places from `first` to before `last` that a facet uses which is near.
void SurfaceHeadroom::look_at(std::size_t first, std::size_t last,
                              const std::vector<Vector>& normals)
{
    std::vector<std::optional<Length>> seen((last - first) * asked_.size());
    const bool done = for_each_index(last - first, workers_, [&](std::size_t i, unsigned) {
        const auto place = static_cast<std::uint32_t>(first + i);
        if (normals[place].isZero(0))
            return;
        Length least = farthest_way_in;
        for (std::size_t a = 0; a < asked_.size(); ++a) {
            // What is neither the place's own least nor the space's need not be known.
            const Length within =
                std::max(least, found_.by_space[a].least.value_or(farthest_way_in));
            seen[i * asked_.size() + a] = look_at(asked_[a], place, normals[place], within);
            least = std::min(least, seen[i * asked_.size() + a].value_or(farthest_way_in));
        }
    });
    if (!done)
        throw Stopped();
    for (std::size_t i = 0; i < seen.size(); ++i) {
        const auto place = static_cast<std::uint32_t>(first + i / asked_.size());
        if (seen[i])
            take(i % asked_.size(), place, *seen[i], normals[place]);
    }
}

/// At all that are new.
void SurfaceHeadroom::look_at_places()
{
    std::vector<Vector> normals = point_normals(near_.mesh);
    std::vector<std::uint8_t> is_near(near_.mesh.points.size(), 0);
    for (std::size_t f = 0; f < near_.of.size(); ++f)
        for (const std::uint32_t p : near_.mesh.facets[f])
            is_near[p] |= near_.of[f] == fine ? 1 : 0;
    for (std::size_t p = 0; p < normals.size(); ++p)
        if (is_near[p] == 0)
            normals[p].setZero();
    std::size_t first = figures_.size();
    figures_.resize(normals.size(), farthest_way_in);
    for (; first < normals.size(); first += places_a_lot)
        look_at(first, std::min(first + places_a_lot, normals.size()), normals);
}

/// Whether its middle lies where a lamp's rays skip what they meet.
bool SurfaceHeadroom::is_spared(std::size_t f) const
{
    const TriangleMesh& mesh = near_.mesh;
    const Point middle = (mesh.corner(f, 0) + mesh.corner(f, 1) + mesh.corner(f, 2)) / 3;
    return std::any_of(asked_.begin(), asked_.end(), [&](const Asked& asked) {
        return asked.lit.nearest(asked.space->frame.into(middle), asked.space->skipped).has_value();
    });
}

void SurfaceHeadroom::divide_at_the_tightest()
{
    for (int round = 0; round < most_rounds; ++round) {
        const Length least = found_.least.value_or(headroom_near);
        const Length by = least - std::max(headroom_between, between_share * least);
        if (by <= Length())
            return;
        const std::vector<Vector> normals = point_normals(near_.mesh);
        const bool any = halve(for_facets(fine, [&](std::size_t f) -> std::uint8_t {
            return size_of(near_.mesh, f) > in_mm(headroom_least_grain) && !is_spared(f) &&
                           may_meet(spaces_, SweptFacet{near_.mesh, f, normals, by})
                       ? 1
                       : 0;
        }));
        if (!any)
            return;
        look_at_places();
    }
}

void SurfaceHeadroom::add_areas()
{
    for (std::size_t f = 0; f < near_.of.size(); ++f) {
        const Facet& facet = near_.mesh.facets[f];
        const double size = area_vector(near_.mesh, f).norm();
        for (std::size_t i = 0; i < headroom_levels.size(); ++i)
            found_.within[i] += square_millimetres(
                size * share_below({in_mm(figures_[facet[0]]), in_mm(figures_[facet[1]]),
                                    in_mm(figures_[facet[2]])},
                                   in_mm(headroom_levels[i])));
    }
}

Headroom SurfaceHeadroom::find(const TriangleMesh& mesh)
{
    NearFacets parted = near_facets(welded(mesh), spaces_, workers_);
    near_.mesh = std::move(parted.near);
    for (const std::uint8_t is_near : parted.is_near)
        near_.of.push_back(is_near != 0 ? unknown : far);
    divide();
    look_at_places();
    divide_at_the_tightest();
    add_areas();
    found_.mesh = std::move(near_.mesh);
    found_.figures = std::move(figures_);
    const auto first = static_cast<std::uint32_t>(found_.mesh.points.size());
    found_.mesh.points.insert(found_.mesh.points.end(), parted.rest.points.begin(),
                              parted.rest.points.end());
    for (const Facet& f : parted.rest.facets)
        found_.mesh.facets.push_back({first + f[0], first + f[1], first + f[2]});
    found_.figures.resize(found_.mesh.points.size(), farthest_way_in);
    return std::move(found_);
}

std::vector<Standing> counted_surfaces(const KeepClear& found)
{
    std::vector<Standing> surfaces;
    for (const ClearSpace& space : found.asked)
        surfaces.insert(surfaces.end(), space.counted.begin(), space.counted.end());
    const auto key = [](const Standing& s) { return std::pair(s.surface.index, s.twin); };
    std::sort(surfaces.begin(), surfaces.end(),
              [&](const Standing& a, const Standing& b) { return key(a) < key(b); });
    surfaces.erase(
        std::unique(surfaces.begin(), surfaces.end(),
                    [&](const Standing& a, const Standing& b) { return key(a) == key(b); }),
        surfaces.end());
    return surfaces;
}

} // namespace

std::vector<Headroom> headroom_over(const Session& session, const KeepClear& found,
                                    const Workers& workers)
{
    const std::vector<Standing> surfaces = counted_surfaces(found);
    const std::vector<PlacedMesh> meshes = session.scene().meshes_of(surfaces);
    std::vector<Headroom> headroom;
    for (std::size_t i = 0; i < surfaces.size(); ++i) {
        const TriangleMesh mesh = placed(*meshes[i].mesh, meshes[i].placement);
        headroom.push_back(SurfaceHeadroom(surfaces[i], found, workers.silent()).find(mesh));
        if (workers.progress)
            workers.progress(i + 1, surfaces.size());
    }
    std::stable_sort(headroom.begin(), headroom.end(), [](const Headroom& a, const Headroom& b) {
        return a.least.value_or(farthest_way_in) < b.least.value_or(farthest_way_in);
    });
    return headroom;
}

} // namespace glim
