#include "rules/corner_for_row.h"

#include "geometry/bearing.h"
#include "judgement/lamp_frame.h"
#include "shapes/made_light.h"
#include "shapes/simple_shapes.h"
#include "units/trig.h"

#include <algorithm>

namespace glim::shapes {

namespace {

constexpr double height = 800;     ///< mm, of the lamp's centre above the ground
constexpr double half_width = 850; ///< mm, of a vehicle narrower than 2032
constexpr double lamp_y = 650;     ///< mm, of the lamp's centre to the left

/// A word that satisfies a condition.
std::string word_for(const Condition& c)
{
    if (!c.one_of.empty())
        return c.one_of.front();
    return c.none_of.empty() ? "" : "N2";
}

struct Facts {
    Length width = millimetres(2 * half_width);
    std::string vehicle_category = "M1";
    std::string lamp_category;
    bool optional = false;
};

Facts facts_for(const RuleRow& row)
{
    Facts facts;
    for (const Condition& c : row.when) {
        if (c.quantity == Measured::overall_width && !c.holds(facts.width))
            facts.width = c.at_least ? *c.at_least + millimetres(50) : *c.below - millimetres(50);
        if (c.quantity == Measured::vehicle_category)
            facts.vehicle_category = word_for(c);
        if (c.quantity == Measured::lamp_category)
            facts.lamp_category = word_for(c);
        if (c.quantity == Measured::optional_lamp)
            facts.optional = word_for(c) == "yes";
    }
    return facts;
}

/// The middle of the row's field; the axis itself for rows of place.
Bearing middle_of(const RuleRow& row)
{
    if (row.field.rectangles.empty())
        return {};
    const FieldRectangle& r = row.field.rectangles.front();
    return {(r.h_least + r.h_most) / 2, Angle()};
}

/// 200 wide, 100 high, facing `toward`, which is level.
TriangleMesh facing_plate(const Point& centre, const Direction& toward, double width)
{
    const Vector across = Vector::UnitZ().cross(toward.vector());
    TriangleMesh mesh;
    for (const auto& [a, z] : {std::pair(-1, -1), {1, -1}, {1, 1}, {-1, 1}})
        mesh.points.push_back(centre + a * width / 2 * across + z * 50.0 * Vector::UnitZ());
    mesh.facets = {{0, 1, 2}, {0, 2, 3}};
    return mesh;
}

LampFunction function_for(const RuleRow& row)
{
    return row.functions.empty() ? LampFunction::front_indicator : row.functions.front();
}

LampId add_lamp(Study& study, const std::string& name, LampFunction function, TriangleMesh lit)
{
    Surface lens;
    lens.name = name + " lens";
    lens.role = Role::emitting;
    lens.mirror = MirrorRule::yes;
    lens.mesh = std::move(lit);
    Lamp lamp;
    lamp.name = name;
    lamp.function = function;
    lamp.side = Side::left;
    lamp.paired = true;
    lamp.emits = {study.surfaces.add(std::move(lens))};
    return study.lamps.add(std::move(lamp));
}

struct Corner {
    Study study;
    LampId lamp;
    Direction facing = Direction::x();
    Point centre = Point::Zero();
};

Corner corner_for(const RuleTable& table, const RuleRow& row)
{
    const Facts facts = facts_for(row);
    Corner corner;
    Study& study = corner.study;
    study.vehicle.forward = Direction::x();
    study.vehicle.overall_width = facts.width;
    study.vehicle.category = facts.vehicle_category;
    study.grounds.push_back({row.state.empty() ? "curb" : row.state, {.on = {0, 0, -height}}});
    study.sampling.step = degrees(15);
    study.sampling.feature = millimetres(10);
    study.tables.push_back(table);
    study.checks.push_back({"ask", 0, row.id, {}});

    const double y = std::max(lamp_y, in_mm(facts.width) / 2 - 200);
    corner.centre = {0, y, 0};
    const LampFrame frame = lamp_frame(study.vehicle, study.grounds.front().ground, Side::left,
                                       axis_of(study.vehicle, Side::left, row.axis), row.axis);
    corner.facing = direction_of(middle_of(row), frame);
    corner.lamp =
        add_lamp(study, "lamp", function_for(row), facing_plate(corner.centre, corner.facing, 200));
    study.lamps[corner.lamp].category = facts.lamp_category;
    study.lamps[corner.lamp].optional = facts.optional;
    study.checks.front().lamps = {corner.lamp};
    return corner;
}

/// What spoils a row, criterion by criterion.
struct Spoil {
    Corner& corner;

    Surface& lens() const
    {
        return corner.study.surfaces[corner.study.lamps[corner.lamp].emits.front()];
    }
    /// A wall 50 mm before the lamp; 200 mm wide it leaves a quarter free.
    void hide(double width = 200) const
    {
        Surface wall;
        wall.name = "wall";
        wall.role = Role::opaque;
        wall.mirror = MirrorRule::yes;
        const Vector across = Vector::UnitZ().cross(corner.facing.vector());
        wall.mesh = facing_plate(corner.centre + 50 * corner.facing.vector() + 50 * across,
                                 corner.facing, width);
        corner.study.surfaces.add(std::move(wall));
    }
    void operator()(const LeastArea&) const
    {
        lens().mesh = facing_plate(corner.centre, corner.facing, 20);
        hide();
    }
    void operator()(const NoObstacle&) const { hide(20); }
    void operator()(const MostHidden&) const { hide(); }
    void shine(double cd) const
    {
        corner.study.lights = {made_light([cd](double, double) { return cd; }, corner.lamp)};
    }
    /// Less than any rule asks of any lamp.
    void operator()(const LeastIntensity&) const { shine(0.01); }
    void operator()(const LightTable&) const { shine(0.01); }
    void operator()(const MostIntensity& c) const { shine(in_candelas(c.most) + 1); }
    /// 100 mm above the ground is too low for every rule.
    void operator()(const HeightLimits&) const
    {
        corner.study.grounds.front().ground.on.z() = -100;
    }
    void operator()(const ToOuterEdge& c) const
    {
        corner.study.vehicle.extreme_outer_edge = millimetres(corner.centre.y() + 101) + c.at_most;
    }
    void operator()(const BetweenInnerEdges&) const
    {
        lens().mesh = facing_plate({0, 110, 0}, corner.facing, 200);
    }
    /// The dipped beam 10 mm away, which a lamp of the first category may not be.
    void operator()(const GapToLamp& c) const
    {
        Lamp& lamp = corner.study.lamps[corner.lamp];
        lamp.category = c.steps.front().follows;
        for (const SurfaceId s : corner.study.lamps[LampId{1}].emits)
            corner.study.surfaces[s].mesh =
                facing_plate(corner.centre - Vector(0, 210, 0), corner.facing, 200);
    }
    void operator()(const LevelAxis& c) const
    {
        const Angle tilt = c.within + degrees(1);
        corner.study.lamps[corner.lamp].axis =
            Direction::along(cos(tilt) * corner.facing.vector() + sin(tilt) * Vector::UnitZ());
    }
    /// Two small plates far apart, high and low.
    void operator()(const OneLamp& c) const
    {
        const Vector up = (in_mm(c.widest_gap) + 200) * Vector::UnitZ();
        lens().mesh = joined(facing_plate(corner.centre, corner.facing, 30),
                             facing_plate(corner.centre + up, corner.facing, 30));
    }
};

/// More than any rule asks, or less than one allows.
void add_light(Corner& corner, const RuleRow& row)
{
    if (!asks_light(row.criterion))
        return;
    const double cd = std::holds_alternative<MostIntensity>(row.criterion) ? 1 : 5000;
    corner.study.lights = {made_light([cd](double, double) { return cd; }, corner.lamp)};
}

/// What a gap is measured to: 100 mm inboard of the lamp's edge, from the centroid 200.
void add_neighbour(Corner& corner, const RuleRow& row)
{
    if (const auto* gap = std::get_if<GapToLamp>(&row.criterion))
        add_lamp(corner.study, "neighbour", gap->to.front(),
                 facing_plate(corner.centre - Vector(0, 300, 0), corner.facing, 200));
}

} // namespace

Study corner_that_meets(const RuleTable& table, const RuleRow& row)
{
    Corner corner = corner_for(table, row);
    add_neighbour(corner, row);
    add_light(corner, row);
    return std::move(corner.study);
}

Study corner_that_fails(const RuleTable& table, const RuleRow& row)
{
    Corner corner = corner_for(table, row);
    add_neighbour(corner, row);
    std::visit(Spoil{corner}, row.criterion);
    return std::move(corner.study);
}

} // namespace glim::shapes
