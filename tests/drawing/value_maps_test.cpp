#include "drawing/value_maps.h"

#include "drawing/map_frame.h"
#include "specimens/knife_edge.h"
#include "specimens/look_at.h"
#include "specimens/made_fields.h"
#include "specimens/svg_lines.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace glim;
using namespace glim::test;

namespace {

const Field front{{rectangle(-45, 80, -15, 15)}};

/// As drawn: the threshold is the only line of its width but for its samples in bar and legend, and
/// the first; the field's outline likewise.
Path::Line threshold_on(const std::string& svg) { return lines_stroked(svg, "1.4").front(); }
Rect field_on(const std::string& svg) { return box_of({lines_stroked(svg, "1").front()}); }

} // namespace

TEST_CASE("the threshold is drawn where the knife edge has it, within a pixel", "[drawing]")
{
    const std::string svg =
        look_at("knife-area", value_map(subject_of(behind_knife_edge(front))).drawing);
    const Path::Line line = threshold_on(svg);
    // The drawing itself says how degrees lie on it: the field ends where its outline does.
    const Rect field = field_on(svg);
    const double points_a_degree = field.width / (80 + 45);
    REQUIRE(field.height / 30 == Approx(points_a_degree));
    REQUIRE(line.points.size() > 20);
    constexpr double pixel = 0.5; // at two pixels a point
    bool crosses_the_axis = false;
    for (const Point2& p : line.points) {
        const double h = -45 + (p.x() - field.x) / points_a_degree;
        const double v = 15 - (p.y() - field.y) / points_a_degree;
        CHECK(std::abs(h - knife_edge_h_deg(v)) * points_a_degree < pixel);
        if (std::abs(v) < 1e-3) {
            crosses_the_axis = true;
            CHECK(h == Approx(42.9852).margin(pixel / points_a_degree));
        }
    }
    CHECK(crosses_the_axis);
    // From the upper edge to the lower one.
    CHECK(box_of({line}).height == Approx(field.height));
}

TEST_CASE("the region that fails is as large as on paper", "[drawing]")
{
    const auto s = subject_of(behind_knife_edge(front));
    double by_paper = 0; // degrees squared, the trapezium rule in V
    for (int i = 0; i < 300; ++i)
        by_paper += 0.1 * (80 - knife_edge_h_deg(-15 + 0.1 * (i + 0.5)));
    double drawn = 0;
    for (const ChartSubject::Region& r : s->regions)
        drawn += area_of(r.lines);
    CHECK(drawn == Approx(by_paper).epsilon(5e-3));
}

TEST_CASE("a map tells in words what it shows", "[drawing]")
{
    const Figure f = value_map(subject_of(behind_knife_edge({{rectangle(-45, 45, -5, 5)}})));
    CHECK(f.alt.find("least in view: ") != std::string::npos);
    CHECK(f.alt.find("45 deg outboard") != std::string::npos);
    CHECK_FALSE(f.is_picture);
    CHECK(f.caption.find("outboard to the right") != std::string::npos);
}

TEST_CASE("the polar map has every direction at its distance from the axis", "[drawing]")
{
    const std::string svg =
        look_at("knife-polar", polar_value_map(subject_of(behind_knife_edge(front))).drawing);
    const MapFrame frame = polar_frame(front, {}, {0, 0, 416, 270});
    const Point2 axis = frame.point_of({});
    const double points_a_degree = (frame.point_of({degrees(80), degrees(0)}) - axis).x() / 80;
    for (const Bearing b : {Bearing{degrees(80), degrees(15)}, {degrees(-45), degrees(-15)}}) {
        // cos of the angle from the axis is cosV cosH.
        const double from_axis =
            std::acos(direction_of(b, LampFrame{}).vector().x()) * 180 / std::acos(-1.0);
        CHECK((frame.point_of(b) - axis).norm() == Approx(points_a_degree * from_axis));
        const Bearing back = *frame.bearing_at(frame.point_of(b));
        CHECK(in_degrees(back.h) == Approx(in_degrees(b.h)));
        CHECK(in_degrees(back.v) == Approx(in_degrees(b.v)));
    }
    const Point2 on_line = threshold_on(svg).points.front();
    const Bearing b = *frame.bearing_at(on_line);
    CHECK(in_degrees(b.h) ==
          Approx(knife_edge_h_deg(in_degrees(b.v))).margin(0.5 / points_a_degree));
}

TEST_CASE("the margin map shows the same threshold", "[drawing]")
{
    const auto s = subject_of(behind_knife_edge(front));
    const std::string svg = look_at("knife-margin", margin_map(s).drawing);
    CHECK(threshold_on(svg).points.size() ==
          threshold_on(svg_of(value_map(s).drawing)).points.size());
}
