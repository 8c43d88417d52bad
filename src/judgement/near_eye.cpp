#include "judgement/near_eye.h"

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

Length pitch_for(const TriangleMesh& lit, bool hidden_too, Length feature)
{
    const double cells = hidden_too ? cells_for_hidden : cells_for_areas;
    return std::max(feature, millimetres(std::sqrt(2 * in_mm2(area_of(lit)) / cells)));
}

} // namespace

NearEye::NearEye(const BuildGround& ground, const LampStanding& lamp,
                 const std::vector<Direction>& toward, bool hidden_too, const Workers& workers)
    : ground_(ground), hidden_too_(hidden_too), toward_(toward)
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
    piece.obstacles = ground_.scene.obstacles_of(lamp);
    std::copy_if(piece.obstacles.begin(), piece.obstacles.end(), std::back_inserter(piece.approved),
                 [&](const Standing& s) { return ground_.scene.is_approved(s, lamp); });
    return piece;
}

Length NearEye::reach_of(const Piece& piece, const Extents& extents) const
{
    Length reach;
    for (const Standing& s : piece.obstacles)
        reach = std::max(reach, ground_.moves.reach(s, piece.stands, extents));
    return reach;
}

std::vector<Standing> NearEye::strangers_to(const Piece& piece) const
{
    std::vector<Standing> strangers;
    std::copy_if(piece.obstacles.begin(), piece.obstacles.end(), std::back_inserter(strangers),
                 [&](const Standing& s) {
                     return s.twin != piece.stands.twin || ground_.moves.has_profile(s.surface) ||
                            ground_.moves.movers(s.surface) !=
                                ground_.moves.movers(piece.stands.surface);
                 });
    return strangers;
}

std::vector<NearLook> NearEye::looks_of(const Piece& piece, const Lattice& lattice,
                                        const std::vector<Standing>& obstacles,
                                        const Workers& workers) const
{
    const PreparedScene& scene = ground_.scene;
    const auto view = [&](Length pitch) {
        return LampView{LitLattice(lattice.lit, pitch),
                        LitOutline(lattice.lit),
                        scene.caster_of(obstacles),
                        scene.caster_of({}),
                        scene.caster_of({}),
                        ground_.study.sampling.touch};
    };
    const LampView fine = view(ground_.study.sampling.feature), coarse = view(lattice.pitch);
    const Caster strangers = scene.caster_of(strangers_to(piece));
    const Nearby nearby{.reach = reach_of(piece, ground_.widest),
                        .turn = ground_.moves.widest_turn(piece.stands.surface, ground_.widest)};
    std::vector<std::optional<NearLook>> looks(toward_.size());
    const bool whole =
        for_each_index(toward_.size(), workers.silent(), [&](std::size_t i, unsigned) {
            looks[i].emplace(NearLook::Prepared{fine, coarse, strangers}, toward_[i], nearby);
        });
    if (!whole)
        throw Stopped();
    std::vector<NearLook> all;
    all.reserve(looks.size());
    for (std::optional<NearLook>& look : looks)
        all.push_back(std::move(*look));
    return all;
}

NearEye::Before NearEye::as_drawn() const
{
    Before before;
    for (const Piece& piece : pieces_) {
        before.pieces.push_back({ground_.scene.caster_of(piece.obstacles), std::nullopt});
        if (hidden_too_)
            before.pieces.back().approved = ground_.scene.caster_of(piece.approved);
    }
    return before;
}

void NearEye::place(Before& before, const BuildPlaces& places) const
{
    for (std::size_t i = 0; i < pieces_.size(); ++i) {
        const Piece& piece = pieces_[i];
        Before::Piece& stands = before.pieces[i];
        const Placement drawn = ground_.scene.in_scene(piece.stands, Placement());
        const Placement built =
            ground_.scene.in_scene(piece.stands, places.at[piece.stands.surface]);
        stands.from_scene = drawn * built.inverse();
        stands.reach = reach_of(piece, places.extents);
        stands.all.place(placed(piece.obstacles, places, stands.from_scene));
        if (stands.approved)
            stands.approved->place(placed(piece.approved, places, stands.from_scene));
    }
}

std::vector<PlacedPart> NearEye::placed(const std::vector<Standing>& standings,
                                        const BuildPlaces& places,
                                        const Placement& from_scene) const
{
    std::vector<PlacedPart> parts;
    parts.reserve(standings.size());
    for (const Standing& s : standings)
        parts.push_back({ground_.parts.part(s.surface, places.offset_by[s.surface]),
                         from_scene * ground_.scene.in_scene(s, places.at[s.surface])});
    return parts;
}

Area NearEye::visible(const Before& before, std::size_t direction, RimSearch search) const
{
    Area sum;
    for (std::size_t i = 0; i < pieces_.size(); ++i)
        sum += pieces_[i].looks[direction].visible(before.pieces[i].from_scene(toward_[direction]),
                                                   before.pieces[i].all, before.pieces[i].reach,
                                                   search);
    return sum;
}

Area NearEye::approved(const Before& before, std::size_t direction, RimSearch search) const
{
    Area sum;
    for (std::size_t i = 0; i < pieces_.size(); ++i)
        sum += pieces_[i].approved_looks[direction].visible(
            before.pieces[i].from_scene(toward_[direction]), *before.pieces[i].approved,
            before.pieces[i].reach, search);
    return sum;
}

} // namespace glim
