#pragma once

#include "model/study.h"
#include "visibility/certificate.h"
#include "visibility/exact_area.h"
#include "visibility/sweep.h"

#include <optional>

namespace glim {

/// How the parts approved with a lamp count. Its own lit faces hide each other in any case.
enum class Obstacles {
    all,              ///< they stand in the way, and `approved` areas know of them
    without_approved, ///< they are taken out of the scene
    approved_too,     ///< they stand in the way like any other: `approved` areas do not know them
};

/// A lamp as it stands on the vehicle: as drawn, or its mirror image on the other side.
struct LampStanding {
    LampId lamp;
    bool twin = false;
    Obstacles obstacles = Obstacles::all;
};

/// A surface in the scene: as drawn, or its twin across the median plane.
struct Standing {
    SurfaceId surface;
    bool twin = false;
};

/// The bodies of a study, ready to be looked at: one ray tree a surface, placed once or, across the
/// median plane, twice. Changing one surface rebuilds that one only.
class PreparedScene {
public:
    /// `study` outlives the scene, its surfaces unchanged. Parts are made ready side by side.
    /// Throws Stopped.
    explicit PreparedScene(const Study& study, const Workers& workers = {});

    void replace(SurfaceId surface, TriangleMesh mesh); ///< vehicle frame
    /// Where a surface stands now: vehicle frame from where it was drawn.
    void place(SurfaceId surface, const Placement& placement);

    /// The scene frame's zero, vehicle frame.
    const Point& origin() const { return origin_; }
    /// A surface for rays, made ready once; scene frame, where it was drawn.
    const std::shared_ptr<const PreparedPart>& part_of(SurfaceId surface) const
    {
        return bodies_[surface].part;
    }
    /// Scene frame from where the surface was drawn (of a twin: from where the drawn one was), if
    /// the drawn one stands at `placement`; vehicle frame.
    Placement in_scene(const Standing& standing, const Placement& placement) const;
    /// These surfaces for rays, in this order; scene frame.
    Caster caster_of(const std::vector<Standing>& standings) const;
    /// Their meshes and where they stand, in this order; they live as long as the scene stays
    /// unchanged. Nothing is said of lamps.
    std::vector<PlacedMesh> meshes_of(const std::vector<Standing>& standings) const;

    /// Whether it is the lamp itself or was approved with it, and counts as such.
    bool is_approved(const Standing& standing, const LampStanding& lamp) const;
    /// What stands in `LampView::all` for this lamp, in the same order.
    std::vector<Standing> obstacles_of(const LampStanding& lamp) const;
    LampView view_of(const LampStanding& lamp, const Sampling& sampling) const;
    /// `view` as view_of() gives it for this lamp; see Certificate for `directions`.
    Certificate certificate_of(const LampStanding& lamp, const LampView& view,
                               std::span<const Direction> directions, const Workers& workers) const;
    ExactView exact_view_of(const LampStanding& lamp, Length touch) const;
    /// The lit surface in the vehicle frame; facets that a file repeats are there once.
    TriangleMesh lit_surface_of(const LampStanding& lamp) const;
    /// The same of some of the surfaces that the lamp emits with.
    TriangleMesh lit_surface_of(const LampStanding& lamp, std::span<const SurfaceId> of) const;
    /// The corners of a facet where it stands, vehicle frame.
    std::array<Point, 3> facet_of(const Standing& standing, std::uint32_t facet) const;

    /// Whether every surface that could tell left from right has a twin, so that a mirrored lamp
    /// must see what the drawn one sees. (`straddles` is taken as not symmetric.)
    bool is_symmetric() const;

private:
    struct Body {
        std::optional<TriangleMesh> replaced; ///< vehicle frame; else the study's own, as drawn
        Placement placement;
        std::shared_ptr<const PreparedPart> part; ///< scene frame
    };

    /// A lamp's lit surfaces as one mesh, each facet once, and whose each facet is: a place in
    /// Lamp::emits.
    struct LitSurface {
        TriangleMesh mesh;
        std::vector<std::uint32_t> of;
    };
    LitSurface lit_parts_of(const LampStanding& lamp, std::span<const SurfaceId> emits) const;
    Direction axis_of(const LampStanding& lamp) const; ///< declared; forward where it is not
    bool blocks(SurfaceId surface, LampId lamp) const;
    std::vector<PlacedMesh> placed_obstacles_of(const LampStanding& lamp) const;
    Placement placement_of(const Standing& standing) const; ///< vehicle frame
    Placement scene_placement_of(const Standing& standing) const;
    const TriangleMesh& mesh_of(SurfaceId surface) const;
    void prepare(SurfaceId surface);

    const Study& study_;
    Point origin_; ///< vehicle frame: the mean of the lit surfaces' centres
    Slots<SurfaceId, Body> bodies_;
};

} // namespace glim
