#include "shapes/random_scene.h"

#include "geometry/weld.h"
#include "shapes/random_bodies.h"
#include "shapes/simple_shapes.h"
#include "units/trig.h"

#include <Eigen/Geometry>

#include <cmath>

namespace glim::shapes {

namespace {

LampFrame frame_of(const LampStanding& lamp)
{
    return {Direction::x(), lamp.twin ? -Direction::y() : Direction::y(), Direction::z()};
}

/// Makes one scene about the origin, then sets it where it stands on the vehicle.
class SceneMaker {
public:
    explicit SceneMaker(std::uint64_t seed) : random_(seed) { scene_.seed = seed; }

    RandomScene make()
    {
        scene_.feature = millimetres(random_.magnitude(0.6, 3));
        if (random_.percent(30))
            scene_.touch = millimetres(random_.magnitude(0.01, 0.3));
        snapped_ = random_.percent(30);
        add_lit();
        for (int i = 0; i < 2; ++i)
            directions_.push_back(random_.percent(40) ? on_symmetry() : grazing_or_any());
        const int obstacles = random_.whole(1, 5);
        for (int i = 0; i < obstacles; ++i)
            add_obstacle();
        directions_.push_back(random_.percent(50) ? over_corners() : grazing_or_any());
        set_on_vehicle();
        return std::move(scene_);
    }

private:
    void add_lit()
    {
        const int count = random_.percent(70) ? 1 : random_.whole(2, 3);
        for (int i = 0; i < count; ++i) {
            const LitKind& kind = random_.one_of(lit_kinds());
            TriangleMesh mesh = kind.make(random_);
            if (i > 0)
                mesh = moved(mesh, Vector(random_.sides(-12, 12)));
            add(kind.name, BodyPart::lit, roughened(std::move(mesh)));
            lit_ = joined(lit_, scene_.bodies.back().mesh);
        }
    }

    void add_obstacle()
    {
        const ObstacleKind& kind = random_.one_of(obstacle_kinds());
        TriangleMesh mesh = kind.make(random_, some_spot());
        add(kind.name, random_.percent(20) ? BodyPart::approved : BodyPart::opaque,
            roughened(std::move(mesh)));
    }

    void add(std::string_view kind, BodyPart part, TriangleMesh mesh)
    {
        scene_.bodies.push_back(
            {.name = std::string(kind) + "-" + std::to_string(scene_.bodies.size()),
             .part = part,
             .mesh = std::move(mesh)});
    }

    Spot some_spot()
    {
        std::size_t facet = 0;
        do
            facet = static_cast<std::size_t>(random_.whole(0, int(lit_.facets.size()) - 1));
        while (area_vector(lit_, facet).norm() == 0);
        const Vector share = some_share();
        const Point at = share[0] * lit_.corner(facet, 0) + share[1] * lit_.corner(facet, 1) +
                         share[2] * lit_.corner(facet, 2);
        return {.at = at,
                .normal = area_vector(lit_, facet).normalized(),
                .toward = random_.one_of(directions_),
                .pitch_mm = in_mm(scene_.feature),
                .touch_mm = in_mm(scene_.touch),
                .lit = &lit_};
    }

    /// Of a facet's three corners in a point of it: anywhere, on an edge, or at a corner.
    Vector some_share()
    {
        Vector share = random_.sides(0, 1);
        if (random_.percent(30))
            share[0] = 0;
        if (random_.percent(10))
            share = Vector::UnitZ();
        return share / share.sum();
    }

    /// As files have it: snapped to a grid, joined or not, repeated, turned over.
    TriangleMesh roughened(TriangleMesh mesh)
    {
        if (snapped_)
            mesh = snapped(mesh);
        if (random_.percent(40))
            mesh = welded(mesh);
        else if (random_.percent(20))
            mesh = unwelded(mesh);
        if (random_.percent(15))
            mesh.facets.push_back(random_.one_of(mesh.facets));
        if (random_.percent(15))
            turn_some_over(mesh);
        return mesh;
    }

    /// Where nothing would be left of it, as it was.
    static TriangleMesh snapped(const TriangleMesh& mesh)
    {
        TriangleMesh snapped = mesh;
        for (Point& p : snapped.points)
            p = (p / snap_mm).array().round() * snap_mm;
        return in_mm2(area_of(snapped)) > 0 ? snapped : mesh;
    }

    static TriangleMesh unwelded(const TriangleMesh& mesh)
    {
        TriangleMesh apart;
        for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
            const auto first = static_cast<std::uint32_t>(apart.points.size());
            for (int i = 0; i < 3; ++i)
                apart.points.push_back(mesh.corner(f, i));
            apart.facets.push_back({first, first + 1, first + 2});
        }
        return apart;
    }

    void turn_some_over(TriangleMesh& mesh)
    {
        for (Facet& facet : mesh.facets)
            if (random_.percent(30))
                std::swap(facet[1], facet[2]);
    }

    Direction on_symmetry()
    {
        constexpr std::array h = {0, 0, 45, -45, 90, -90};
        constexpr std::array v = {0, 0, 0, 0, 45, -45, 90};
        const Bearing b{.h = degrees(random_.one_of(h)), .v = degrees(random_.one_of(v))};
        return direction_of(b, LampFrame{});
    }

    Direction grazing_or_any()
    {
        if (random_.percent(40))
            return grazing();
        const double h = random_.real(-80, 80);
        return direction_of({degrees(h), degrees(random_.real(-35, 35))}, LampFrame{});
    }

    /// Along a lit facet, or up to 4 degrees off it: about where the skip stops growing.
    Direction grazing()
    {
        const auto facet = static_cast<std::size_t>(random_.whole(0, int(lit_.facets.size()) - 1));
        const Vector area = area_vector(lit_, facet);
        if (area.norm() == 0)
            return Direction::x();
        const Direction normal = Direction::along(area);
        const double off = random_.percent(20) ? 0 : random_.magnitude(1e-6, 0.07);
        return Direction::along(random_.across(normal).vector() + off * normal.vector());
    }

    /// From a lit corner straight over a corner of something else.
    Direction over_corners()
    {
        const Point from = random_.one_of(lit_.points);
        const SceneBody& body = random_.one_of(scene_.bodies);
        const Vector way = random_.one_of(body.mesh.points) - from;
        return way.norm() > 0 ? Direction::along(way) : Direction::x();
    }

    /// On the left of the vehicle, where the lamp looks ahead; or, with a twin, on the right.
    void set_on_vehicle()
    {
        Placement place = Placement::shift({0, 600, 0});
        if (!snapped_ && random_.percent(50)) {
            const Direction axis = random_.direction();
            place = place * Placement::turn(Point::Zero(), axis, degrees(random_.real(-40, 40)));
        }
        if (random_.percent(30))
            place = Placement::shift({2000, 50, 600}) * place;
        for (SceneBody& body : scene_.bodies)
            body.mesh = placed(body.mesh, place);
        for (const Direction& d : directions_)
            scene_.bearings.push_back(bearing_of(place(d), LampFrame{}));
        draw_elsewhere();
    }

    /// Some bodies are drawn on the other side and come here as twins; the lamp itself may be one.
    void draw_elsewhere()
    {
        const Placement across = Placement::mirror(Point::Zero(), Direction::y());
        scene_.twin = random_.percent(15);
        for (SceneBody& body : scene_.bodies) {
            body.mirrored = scene_.twin || random_.percent(body.part == BodyPart::lit ? 10 : 25);
            if (body.mirrored && !scene_.twin && body.part == BodyPart::opaque)
                body.mesh = placed(body.mesh, across);
        }
    }

    static constexpr double snap_mm = 0.5;

    RandomNumbers random_;
    RandomScene scene_;
    bool snapped_ = false;
    TriangleMesh lit_; ///< all lit bodies in one
    std::vector<Direction> directions_;
};

} // namespace

RandomScene random_scene(std::uint64_t seed) { return SceneMaker(seed).make(); }

Study study_of(const RandomScene& scene)
{
    Study study;
    study.file = "scene of seed " + std::to_string(scene.seed);
    study.vehicle.forward = Direction::x();
    study.sampling.feature = scene.feature;
    study.sampling.touch = scene.touch;
    Lamp lamp;
    lamp.name = "lamp";
    lamp.side = Side::left;
    lamp.paired = scene.twin;
    for (const SceneBody& body : scene.bodies) {
        const SurfaceId id =
            study.surfaces.add({.name = body.name,
                                .role = body.part == BodyPart::lit ? Role::emitting : Role::opaque,
                                .mirror = body.mirrored ? MirrorRule::yes : MirrorRule::no,
                                .mesh = body.mesh,
                                .clear_for = {}});
        if (body.part == BodyPart::lit)
            lamp.emits.push_back(id);
        if (body.part == BodyPart::approved)
            lamp.approved_with.push_back(id);
    }
    study.lamps.add(std::move(lamp));
    return study;
}

LampStanding lamp_of(const RandomScene& scene) { return {LampId{0}, scene.twin}; }

Direction toward(const LampStanding& lamp, const Bearing& bearing)
{
    return direction_of(bearing, frame_of(lamp));
}

} // namespace glim::shapes
