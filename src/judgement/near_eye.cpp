#include "judgement/near_eye.h"

#include "geometry/normal_offset.h"
#include "machine/stop.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// So many cells a lit face is looked at with: areas are then off by some mm2 at corners of
/// shadows, nearly the same as drawn and as built.
constexpr double cells_for_areas = 1200;
/// Where anything hidden counts.
constexpr double cells_for_hidden = 6000;

/// Surfaces that the same tolerances move, together.
std::vector<std::vector<SurfaceId>> by_movers(const std::vector<SurfaceId>& surfaces,
                                              const BuildMoves& moves)
{
    std::vector<std::vector<SurfaceId>> groups;
    for (const SurfaceId s : surfaces) {
        const auto same = std::find_if(groups.begin(), groups.end(), [&](const auto& group) {
            return moves.movers(group.front()) == moves.movers(s);
        });
        if (same == groups.end())
            groups.push_back({s});
        else
            same->push_back(s);
    }
    return groups;
}

/// Standings that nothing moves apart, in order of the first of each; those with a profile stand
/// alone. What is too much for a look goes to the last.
std::vector<std::vector<Standing>> by_companions(const std::vector<Standing>& standings,
                                                 const BuildMoves& moves)
{
    std::vector<std::vector<Standing>> groups;
    for (const Standing& s : standings) {
        const auto same = std::find_if(groups.begin(), groups.end(), [&](const auto& group) {
            const Standing& first = group.front();
            return first.twin == s.twin && !moves.has_profile(first.surface) &&
                   !moves.has_profile(s.surface) &&
                   moves.movers(first.surface) == moves.movers(s.surface);
        });
        if (same != groups.end())
            same->push_back(s);
        else if (groups.size() == NearLook::most_flocks)
            groups.back().push_back(s);
        else
            groups.push_back({s});
    }
    return groups;
}

/// The box around a box that was moved, a little larger.
Box box_where(const Box& box, const Placement& placement, Length larger)
{
    Box moved;
    for (int corner = 0; corner < 8 && !box.empty(); ++corner) {
        Point p = box.least;
        for (int axis = 0; axis < 3; ++axis)
            if ((corner >> axis & 1) != 0)
                p[axis] = box.most[axis];
        moved.add(placement(p));
    }
    moved.least -= Vector::Constant(in_mm(larger));
    moved.most += Vector::Constant(in_mm(larger));
    return moved;
}

Length pitch_for(const TriangleMesh& lit, bool hidden_too, Length feature)
{
    const double cells = hidden_too ? cells_for_hidden : cells_for_areas;
    return std::max(feature, millimetres(std::sqrt(2 * in_mm2(area_of(lit)) / cells)));
}

} // namespace

NearEye::NearEye(const BuildGround& ground, const LampStanding& lamp,
                 const std::vector<Direction>& toward, bool hidden_too, const Workers& workers)
    : ground_(ground), toward_(toward)
{
    const PreparedScene& scene = ground.scene;
    for (const std::vector<SurfaceId>& surfaces :
         by_movers(ground.study.lamps[lamp.lamp].emits, ground.moves)) {
        Piece piece = piece_of(lamp, surfaces);
        const TriangleMesh lit =
            glim::placed(scene.lit_surface_of(lamp, surfaces), Placement::shift(-scene.origin()));
        const Length pitch = pitch_for(lit, hidden_too, ground.study.sampling.feature);
        piece.looks = looks_of(piece, {lit, pitch}, piece.obstacles, workers);
        if (hidden_too)
            piece.approved_looks = looks_of(piece, {lit, pitch}, piece.approved, workers);
        pieces_.push_back(std::move(piece));
    }
}

NearEye::Piece NearEye::piece_of(const LampStanding& lamp,
                                 const std::vector<SurfaceId>& surfaces) const
{
    Piece piece;
    piece.stands = {surfaces.front(), lamp.twin};
    const std::vector<Standing> obstacles = ground_.scene.obstacles_of(lamp);
    std::vector<Standing> approved;
    std::copy_if(obstacles.begin(), obstacles.end(), std::back_inserter(approved),
                 [&](const Standing& s) { return ground_.scene.is_approved(s, lamp); });
    piece.obstacles = by_companions(obstacles, ground_.moves);
    piece.approved = by_companions(approved, ground_.moves);
    return piece;
}

bool NearEye::moves_with(const Piece& piece, const Standing& standing) const
{
    return standing.twin == piece.stands.twin && !ground_.moves.has_profile(standing.surface) &&
           ground_.moves.movers(standing.surface) == ground_.moves.movers(piece.stands.surface);
}

Flock NearEye::flock_of(const Piece& piece, const Companions& companions) const
{
    const BuildMoves& moves = ground_.moves;
    const PreparedScene& scene = ground_.scene;
    Flock flock{{}, scene.caster_of(companions), Length()};
    for (const Standing& s : companions) {
        const Placement drawn = scene.in_scene(s, Placement()) * Placement::shift(-scene.origin());
        flock.boxes.push_back(
            box_where(box_of(ground_.study.surfaces[s.surface].mesh), drawn,
                      most_offset_stretch * moves.widest_offset(s.surface, ground_.widest)));
        flock.reach = std::max(flock.reach, moves.reach(s, piece.stands, ground_.widest));
    }
    flock.with_lit_face = std::all_of(companions.begin(), companions.end(),
                                      [&](const Standing& s) { return moves_with(piece, s); });
    return flock;
}

std::vector<NearLook> NearEye::looks_of(const Piece& piece, const Lattice& lattice,
                                        const std::vector<Companions>& obstacles,
                                        const Workers& workers) const
{
    const PreparedScene& scene = ground_.scene;
    const auto view = [&](Length pitch) {
        return LampView{LitLattice(lattice.lit, pitch),
                        LitOutline(lattice.lit),
                        scene.caster_of({}),
                        scene.caster_of({}),
                        scene.caster_of({}),
                        ground_.study.sampling.touch};
    };
    const LampView fine = view(ground_.study.sampling.feature), coarse = view(lattice.pitch);
    std::vector<Flock> flocks;
    flocks.reserve(obstacles.size());
    for (const Companions& companions : obstacles)
        flocks.push_back(flock_of(piece, companions));
    const Angle turn = ground_.moves.widest_turn(piece.stands.surface, ground_.widest);
    std::vector<std::optional<NearLook>> looks(toward_.size());
    const bool whole =
        for_each_index(toward_.size(), workers.silent(), [&](std::size_t i, unsigned) {
            looks[i].emplace(NearLook::Prepared{fine, coarse, flocks, turn}, toward_[i]);
        });
    if (!whole)
        throw Stopped();
    std::vector<NearLook> all;
    all.reserve(looks.size());
    for (std::optional<NearLook>& look : looks)
        all.push_back(std::move(*look));
    return all;
}

Straying NearEye::straying_of(const Standing& standing, const BuildPlaces& places) const
{
    const PreparedScene& scene = ground_.scene;
    return Straying(scene.in_scene(standing, places.at[standing.surface]) *
                    scene.in_scene(standing, Placement()).inverse());
}

StrayedBodies NearEye::strayed(const Piece& piece, const std::vector<Companions>& obstacles,
                               const BuildPlaces& places) const
{
    StrayedBodies bodies;
    bodies.lit = straying_of(piece.stands, places);
    bodies.lit_from_scene = bodies.lit.moved.inverse();
    for (const Companions& companions : obstacles) {
        StrayedFlock& flock = bodies.flocks.emplace_back();
        for (const Standing& s : companions) {
            const Placement part_in_scene = ground_.scene.in_scene(s, places.at[s.surface]);
            flock.bodies.push_back({ground_.parts.part(s.surface, places.offset_by[s.surface]),
                                    (bodies.lit_from_scene * part_in_scene).inverse(),
                                    straying_of(s, places)});
            flock.widened =
                std::max(flock.widened, most_offset_stretch *
                                            ground_.moves.widest_offset(s.surface, places.extents));
        }
    }
    return bodies;
}

NearEye::Before NearEye::before(const BuildPlaces& places) const
{
    Before before;
    before.pieces.reserve(pieces_.size());
    for (const Piece& piece : pieces_)
        before.pieces.push_back(
            {strayed(piece, piece.obstacles, places), strayed(piece, piece.approved, places)});
    return before;
}

Area NearEye::visible(const Before& before, std::size_t direction, RimSearch search) const
{
    Area sum;
    for (std::size_t i = 0; i < pieces_.size(); ++i)
        sum += pieces_[i].looks[direction].visible(before.pieces[i].all, search);
    return sum;
}

Area NearEye::surely_visible(const Before& before, std::size_t direction) const
{
    Area sum;
    for (std::size_t i = 0; i < pieces_.size(); ++i)
        sum += pieces_[i].looks[direction].surely_visible(before.pieces[i].all);
    return sum;
}

Area NearEye::approved(const Before& before, std::size_t direction, RimSearch search) const
{
    Area sum;
    for (std::size_t i = 0; i < pieces_.size(); ++i)
        sum += pieces_[i].approved_looks[direction].visible(before.pieces[i].approved, search);
    return sum;
}

} // namespace glim
