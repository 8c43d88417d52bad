#include "report/added_lamp_json.h"

#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"

#include <catch2/catch.hpp>

using namespace glim;
using namespace glim::shapes;

namespace {

AddedPlace made_place()
{
    AddedPlace place;
    place.lens = {plate(Point::Zero(), 50, 25), SurfaceId{1}};
    place.seat.centre = Point(5, -300, 12.34);
    place.width = millimetres(50);
    place.height = millimetres(25);
    place.face = square_millimetres(1250.5);
    place.outcomes = {Outcome::met};
    return place;
}

} // namespace

TEST_CASE("the table of places has a row for each, with its figures", "[report]")
{
    const Study study = lamp_behind(plate(Point::Zero(), 60, 40), {wall(5, -600, -60, -300, 300)});
    AddedLampAnswer answer;
    answer.alone = {made_place()};
    answer.filling = {made_place()};
    CHECK(places_csv(answer, study) ==
          "answers,surface,x_mm,y_mm,z_mm,width_mm,height_mm,lens_mm2,along_surface_mm,"
          "behind_nose_mm,in_sight_mm2\n"
          "alone,obstacle 1,5,-300,12.34,50,25,1250.5,0,0,0\n"
          "only_together,obstacle 1,5,-300,12.34,50,25,1250.5,0,0,0\n");
}

TEST_CASE("where nothing has to be added, the answer as data says so and no more", "[report]")
{
    const std::string text =
        text_of(added_lamp_json({}, lamp_alone(plate(Point::Zero(), 60, 40)), {}));
    CHECK(text.find("no lamp has to be added") != std::string::npos);
    CHECK(text.find("\"alone\"") == std::string::npos);
}
