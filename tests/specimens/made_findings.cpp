#include "specimens/made_findings.h"

namespace glim::test {

namespace {

SeenArea seen(double lens, double visible, double low, double high, double error)
{
    return {.lens = square_millimetres(lens),
            .approved = square_millimetres(lens),
            .visible = square_millimetres(visible),
            .low = square_millimetres(low),
            .high = square_millimetres(high),
            .hidden_low = square_millimetres(lens - high),
            .hidden_high = square_millimetres(lens - low),
            .expected_error = square_millimetres(error)};
}

Field level(double h_least, double h_most)
{
    return {{{degrees(h_least), degrees(h_most), degrees(0), degrees(0)}}};
}

LampLook made_look()
{
    LampLook look;
    look.name = "indicator";
    look.lit_face = square_millimetres(3000);
    look.axis_height = millimetres(742);
    look.toward = {
        {degrees(-45), degrees(0)}, {degrees(-40), degrees(0)}, {degrees(0), degrees(0)}};
    look.seen = {seen(2000, 701, 690, 712, 3), seen(2100, 1249, 1240, 1260, 2.5),
                 seen(3000, 3000, 3000, 3000, 0)};
    look.exact = {ExactArea{square_millimetres(700.25), square_millimetres(0.01)}, std::nullopt,
                  std::nullopt};
    look.exact_hidden.resize(3);
    look.mesh_error.resize(3);
    look.state = "curb";
    return look;
}

RuleRow made_row(const std::string& id, const Field& field, double needed)
{
    RuleRow row;
    row.id = id;
    row.title = "a made row";
    row.citation = {Provenance::memory, "made by hand", "clause 1"};
    row.field = field;
    row.criterion = LeastArea{square_millimetres(needed)};
    return row;
}

struct Mm2 {
    double alone_at_worst, jointly_at_worst, mean_alone, mean_jointly;
};

Blocker made_blocker(const std::string& surface, bool twin, Mm2 mm2, std::vector<FacetShare> facets)
{
    return {.surface = surface,
            .twin = twin,
            .alone_at_worst = square_millimetres(mm2.alone_at_worst),
            .jointly_at_worst = square_millimetres(mm2.jointly_at_worst),
            .mean_alone = square_millimetres(mm2.mean_alone),
            .mean_jointly = square_millimetres(mm2.mean_jointly),
            .facets = std::move(facets),
            .patch = {}};
}

LampVerdict inboard_verdict()
{
    LampVerdict v;
    v.outcome = Outcome::not_met;
    v.field = level(-45, -40);
    v.needed = square_millimetres(1250);
    v.directions = {{0, {}, Outcome::not_met}, {1, {}, Outcome::not_met}};
    v.least_visible = square_millimetres(700.25);
    v.hidden = square_millimetres(1299.75);
    v.between = Between::not_met_anyway;
    v.margin = square_millimetres(-549.75);
    v.coverage = {.directions_met = 0, .directions = 2, .solid_angle_met = {}, .solid_angle = {}};
    v.uncovered = {{.h_least = degrees(-45),
                    .h_most = degrees(-40),
                    .v_least = degrees(0),
                    .v_most = degrees(0),
                    .directions = 2,
                    .solid_angle = {},
                    .least_visible = square_millimetres(700.25)}};
    v.blockers = {
        made_blocker("nose", true, {1200, 99.75, 1000, 0},
                     {{.facet = 7,
                       .at_worst = {square_millimetres(1299.75), square_millimetres(1200)},
                       .mean = FacetArea{square_millimetres(990), square_millimetres(980.5)},
                       .centre = {212.5, -655, 640}},
                      {.facet = 3,
                       .at_worst = {},
                       .mean = FacetArea{square_millimetres(10), square_millimetres(0)},
                       .centre = {215, -660, 650}}}),
        made_blocker("badge, \"glim\"", false, {0, 99.75, 0, 50},
                     {{.facet = 0,
                       .at_worst = {square_millimetres(99.75), square_millimetres(99.75)},
                       .mean = FacetArea{square_millimetres(50), square_millimetres(50)},
                       .centre = {180, 0, 700}}})};
    v.blockers[0].patch = {.least = {210.2, -699, 639.5}, .most = {260, -655, 702}};
    v.blockers[1].patch = {.least = {170, -10, 690}, .most = {190, 10, 710}};
    return v;
}

LampVerdict ahead_verdict()
{
    LampVerdict v;
    v.outcome = Outcome::undecided;
    v.because = Because::numerical_bounds;
    v.field = level(-40, 0);
    v.needed = square_millimetres(2200);
    v.directions = {{1, steradians(0.1), Outcome::undecided}, {2, steradians(0.3), Outcome::met}};
    v.least_visible = square_millimetres(1249);
    v.margin = square_millimetres(-951);
    v.coverage = {.directions_met = 1,
                  .directions = 2,
                  .solid_angle_met = steradians(0.3),
                  .solid_angle = steradians(0.4)};
    return v;
}

} // namespace

Findings made_findings()
{
    CheckFindings check;
    check.name = "across";
    check.table = "made";
    check.regulation = "no regulation";
    check.rule = "both";
    check.rule_title = "both rows";
    check.outcome = Outcome::not_met;
    check.rows = {{made_row("inboard", level(-45, -40), 1250), {inboard_verdict()}, {}},
                  {made_row("ahead", level(-40, 0), 2200), {ahead_verdict()}, {}}};
    check.deciding = Deciding{.row = 0, .lamp = 0, .together = false};
    return {.study_file = "some/where/made.toml",
            .title = "A made study",
            .sampling = {.step = degrees(5)},
            .looks = {made_look()},
            .checks = {check}};
}

Study made_study()
{
    const auto facet_at = [](const Point& p) {
        return TriangleMesh{{p, p + Vector(10, 0, 0), p + Vector(0, 0, 10)}, {{0, 1, 2}}};
    };
    Study study;
    Surface nose;
    nose.name = "nose";
    nose.mirror = MirrorRule::yes;
    for (std::uint32_t i = 0; i < 10; ++i) {
        const TriangleMesh one = facet_at({220, 660, 600 + 10.0 * i});
        nose.mesh.points.insert(nose.mesh.points.end(), one.points.begin(), one.points.end());
        nose.mesh.facets.push_back({3 * i, 3 * i + 1, 3 * i + 2});
    }
    Surface badge;
    badge.name = "badge, \"glim\"";
    badge.mesh = facet_at({175, 0, 695});
    study.surfaces.add(std::move(nose));
    study.surfaces.add(std::move(badge));
    return study;
}

RunFacts made_facts()
{
    RunFacts facts;
    facts.program_version = "0.1.0";
    facts.command = "cornerglim check made.toml";
    facts.study = "made.toml";
    facts.ground_states = {"curb"};
    MeshSource mesh{"corner", "corner.obj", "mm", "+z", "-x", {}};
    mesh.health.facets = 12;
    mesh.health.points = 8;
    facts.meshes.push_back(mesh);
    facts.files = {{FileUse::study, "made.toml", {310, std::string(64, 'a')}},
                   {FileUse::mesh, "corner.obj", {4096, std::string(64, 'b')}}};
    const Place place{"made.toml", 3, 1, std::nullopt};
    facts.warnings.push_back({place, "something is odd", "look at it"});
    return facts;
}

} // namespace glim::test
