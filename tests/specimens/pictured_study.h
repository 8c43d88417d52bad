#pragma once

#include "judgement/session.h"
#include "shapes/simple_shapes.h"
#include "shapes/small_study.h"

namespace glim::test {

/// A lens of 60 x 40 mm at 600 mm to the left, its twin on the right, behind a wall 100 mm ahead
/// whose edge is at the lens's middle; asked for 1000 mm2 from 45 inboard to 80 outboard, with the
/// notch below the horizontal. The lens is surface 0, the wall, named "flank", surface 1.
inline Study pictured_study()
{
    using namespace shapes;
    Study study = lamp_behind(moved(plate(Point::Zero(), 60, 40), {0, 600, 0}),
                              {wall(100, 300, 600, -150, 150)}, MirrorRule::yes);
    study.surfaces[SurfaceId{0}].mirror = MirrorRule::yes;
    study.surfaces[SurfaceId{1}].name = "flank";
    study.lamps[LampId{0}].paired = true;
    RuleTable table;
    table.name = "test";
    table.regulation = "invented for this test";
    RuleRow row;
    row.id = "notched";
    row.title = "notched";
    row.citation = {Provenance::memory, "invented for this test", ""};
    row.field = {{{degrees(-45), degrees(80), degrees(0), degrees(15)},
                  {degrees(-20), degrees(80), degrees(-15), degrees(0)}}};
    row.criterion = LeastArea{square_millimetres(1000)};
    table.rows = {row};
    study.tables.push_back(table);
    study.checks.push_back({"ask", 0, "notched", {LampId{0}}});
    study.checks.push_back({"ask again", 0, "notched", {LampId{0}}});
    return study;
}

inline Findings findings_of(const Session& session)
{
    return session.check(session.all_checks(), degrees(5), {});
}

} // namespace glim::test
