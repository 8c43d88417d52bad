#include "drawing/charts.h"

#include "judgement/check_study.h"
#include "judgement/made_rules.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"
#include "specimens/knife_edge.h"
#include "specimens/look_at.h"
#include "specimens/made_fields.h"
#include "words/numbers.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;
using namespace glim::test;

namespace {

/// As if "obstacle 1" took most wherever H is above 27.
BlockingMap made_map(const Findings& f, const std::string& name)
{
    BlockingMap map;
    map.surfaces = {{name, false}};
    for (const DirectionVerdict& d : f.checks[0].rows[0].lamps[0].directions)
        map.most.push_back(f.looks[0].toward[d.at].h > degrees(27) ? std::optional<std::size_t>(0)
                                                                   : std::nullopt);
    return map;
}

std::vector<Figure> charts(const Findings& f, const std::string& name = "obstacle 1")
{
    const CheckFindings& check = f.checks[0];
    return charts_of(f, check, check.rows[0], check.rows[0].lamps[0], made_map(f, name));
}

std::vector<std::string> titles(const std::vector<Figure>& figures)
{
    std::vector<std::string> all;
    for (const Figure& f : figures)
        all.push_back(f.title);
    return all;
}

using Titles = std::vector<std::string>;

} // namespace

TEST_CASE("a wide field has all charts, from the map to the cuts", "[drawing]")
{
    const std::vector<Figure> all = charts(behind_knife_edge({{rectangle(-45, 80, -15, 15)}}));
    CHECK(titles(all) == Titles{"Area in view by direction", "Margin by direction",
                                "What hides the lamp most", "Area in view about the axis",
                                "Area in view along H, level", "Area in view along H, 15 deg down",
                                "Area in view along V, 64 deg outboard"});
    int number = 0;
    for (const Figure& f : all) {
        CHECK_FALSE(f.caption.empty());
        CHECK_FALSE(f.alt.empty());
        CHECK_FALSE(f.is_picture);
        CHECK(f.drawing.width == 500);
        CHECK(f.drawing.height < 400);
        look_at("charts-" + std::to_string(++number), f.drawing);
    }
}

TEST_CASE("a field of one line has a cut only, and points have nothing", "[drawing]")
{
    CHECK(titles(charts(behind_knife_edge({{rectangle(-45, 45, 0, 0)}}))) ==
          Titles{"Area in view along H, level"});
    CHECK(titles(charts(behind_knife_edge({{rectangle(45, 45, -15, 15)}}))) ==
          Titles{"Area in view along V, 45 deg outboard"});
    CHECK(charts(behind_knife_edge({{rectangle(45, 45, 0, 0), rectangle(0, 0, 0, 0)}})).empty());
}

TEST_CASE("rows of obstacles show what is hidden", "[drawing]")
{
    const Field field{{rectangle(-45, 45, 0, 10), rectangle(-20, 45, -10, 0)}};
    const std::vector<Figure> none = charts(behind_knife_edge(field, NoObstacle{}));
    CHECK(titles(none)[0] == "Hidden area by direction");
    CHECK(titles(none)[1] == "What hides the lamp most"); // the margin would say the same again
    const std::vector<Figure> half = charts(behind_knife_edge(field, MostHidden{0.5}));
    CHECK(titles(half)[1] == "Margin by direction");
    for (const std::vector<Figure>* figures : {&none, &half})
        for (const Figure& f : *figures)
            CHECK(svg_of(f.drawing).size() > 1000);
}

TEST_CASE("the same findings give the same bytes", "[drawing]")
{
    const Findings f = behind_knife_edge({{rectangle(-45, 80, -5, 5)}});
    const std::vector<Figure> once = charts(f), again = charts(f);
    for (std::size_t i = 0; i < once.size(); ++i) {
        const bool same = svg_of(once[i].drawing) == svg_of(again[i].drawing);
        CHECK(same);
    }
}

TEST_CASE("a figure in words is that of the verdict", "[drawing]")
{
    const Findings f = behind_knife_edge({{rectangle(-45, 45, -5, 5)}});
    const LampVerdict& v = f.checks[0].rows[0].lamps[0];
    const Figure map = charts(f).front();
    CHECK(map.alt.find(area_words(v.least_visible)) != std::string::npos);
    CHECK(map.alt.find(std::to_string(v.coverage.directions_met) + " of " +
                       std::to_string(v.coverage.directions)) != std::string::npos);
}

TEST_CASE("a surface's name of any length fits on its chart", "[drawing]")
{
    const std::string name = "lower_bumper_corner_with_a_name_that_a_modelling_program_made_up_and_"
                             "nobody_ever_shortened_"
                             "afterwards_because_it_is_only_a_name";
    const Findings f = behind_knife_edge({{rectangle(-45, 80, -15, 15)}});
    const Figure chart = charts(f, name)[2];
    look_at("charts-long-name", chart.drawing);
    CHECK(chart.drawing.height < 300);
    CHECK(chart.alt.find(name + " in ") != std::string::npos);
}

TEST_CASE("a lamp that just suffices along its axis, and nowhere else, is drawn", "[drawing]")
{
    // For its mesh may err it is not met there either, so that nothing is known to be crossed.
    Study study = shapes::lamp_alone(shapes::plate(Point::Zero(), 60, 50));
    study.surfaces[SurfaceId{0}].chord.error = millimetres(0.1);
    RuleRow row = shapes::made_row("row", LeastArea{square_millimetres(3000)});
    row.field = {{rectangle(-10, 10, -10, 10)}};
    const Findings f = check_study(shapes::asking(study, "row", {row}));
    const std::vector<Bearing>& toward = f.looks[0].toward;
    const auto axis = std::find(toward.begin(), toward.end(), Bearing{});
    REQUIRE(axis != toward.end());
    REQUIRE(f.looks[0].visible(static_cast<std::size_t>(axis - toward.begin())) ==
            square_millimetres(3000));
    REQUIRE(f.checks[0].rows[0].lamps[0].crossings.empty());
    CHECK(subject_of(f)->threshold.empty());
    for (const Figure& figure : charts(f))
        CHECK_FALSE(svg_of(figure.drawing).empty());
}
