#include "input/read_lamp_sketch.h"

#include "input/shipped_tables.h"
#include "input/sketched_lens.h"
#include "input/text_file.h"
#include "model/nearest_word.h"

#include <cmath>

namespace glim {

namespace {

constexpr double widest_vehicle_mm = 5000;
constexpr double farthest_mm = 5000;
/// Curves are drawn through places this exact.
constexpr Length curve_error = millimetres(1);
constexpr std::array ground_states = {"unladen", "curb", "design"};

std::string millimetres_words(double mm) { return std::to_string(std::lround(mm)) + " mm"; }

/// A length between 0 and `most`, which is demanded unless there is a `fallback`.
std::optional<double> read_length(TableReader& table, const char* key, double most,
                                  std::optional<double> fallback = {})
{
    const std::string remedy =
        "write " + std::string(key) + " = mm, above 0 and at most " + millimetres_words(most);
    if (!fallback)
        table.demand(key, remedy);
    const std::optional<Length> length = table.length(key);
    if (!length)
        return fallback;
    if (*length > Length() && in_mm(*length) <= most)
        return in_mm(*length);
    table.complain(key, "`" + std::string(key) + "` of " + table.words() + " is out of range",
                   remedy);
    return std::nullopt;
}

std::optional<TableReader> section(TableReader& top, const char* key)
{
    top.demand(key, "add [" + std::string(key) + "]; docs/sight-lines.md has an example");
    return top.table(key, "[" + std::string(key) + "]");
}

void read_vehicle(TableReader& top, LampSketch& sketch)
{
    Vehicle& vehicle = sketch.study.vehicle;
    vehicle.forward = Direction::x();
    vehicle.up = Direction::z();
    std::optional<TableReader> table = section(top, "vehicle");
    if (!table)
        return;
    if (const auto width = read_length(*table, "width", widest_vehicle_mm))
        vehicle.overall_width = millimetres(*width);
    vehicle.category = table->text("category").value_or("");
    table->complain_of_unknown_keys();
}

void read_lamp(TableReader& top, LampSketch& sketch)
{
    std::optional<TableReader> table = section(top, "lamp");
    if (!table)
        return;
    Lamp lamp;
    lamp.name = "lamp";
    lamp.side = Side::left;
    lamp.paired = true;
    lamp.emits = {SurfaceId{0}};
    table->demand("function", "write what the lamp is, such as function = \"front_indicator\"");
    if (const auto* row = table->row_of("function", function_words, &FunctionWord::key))
        lamp.function = row->function;
    lamp.category = table->text("category").value_or("");
    sketch.lateral = millimetres(read_length(*table, "lateral", widest_vehicle_mm / 2).value_or(0));
    sketch.above = millimetres(read_length(*table, "height", farthest_mm).value_or(0));
    lamp.centre = Point(0, in_mm(sketch.lateral), in_mm(sketch.above));
    sketch.study.lamps.add(std::move(lamp));
    table->complain_of_unknown_keys();
}

std::vector<std::string> ids_of(const RuleTable& table)
{
    std::vector<std::string> ids;
    for (const Rule& rule : table.rules)
        ids.push_back(rule.id);
    for (const RuleRow& row : table.rows)
        ids.push_back(row.id);
    return ids;
}

void read_rule(TableReader& top, LampSketch& sketch)
{
    std::optional<TableReader> table = section(top, "rule");
    if (!table)
        return;
    table->demand("table", "name the requirement table, such as table = \"un-r48\"");
    table->demand("rule", "name a rule or a row of the table; `cornerglim tables` lists them");
    const std::optional<std::string> name = table->text("table");
    const std::optional<std::string> rule = table->text("rule");
    if (const auto* row = table->row_of("favour", favoured_edge_words, &FavouredEdgeWord::key))
        sketch.study.keep_clear.favour = row->edge;
    table->complain_of_unknown_keys();
    if (!name || !rule)
        return;
    try {
        sketch.study.tables.push_back(
            find_rule_table(*name, table->folder_of("table"), table->place_of("table")));
    } catch (const InputError& error) {
        table->complaints().add(error);
        return;
    }
    if (rows_under(sketch.study.tables.front(), *rule).empty())
        table->complain("rule", "table `" + *name + "` has no rule or row `" + *rule + "`",
                        did_you_mean(*rule, ids_of(sketch.study.tables.front())));
    Check check;
    check.name = *rule;
    check.rule = *rule;
    check.lamps = {LampId{0}};
    sketch.study.checks.push_back(std::move(check));
}

void read_drawing(TableReader& top, LampSketch& sketch)
{
    sketch.ahead = millimetres(1000);
    if (std::optional<TableReader> table = top.table("drawing", "[drawing]")) {
        sketch.ahead = millimetres(read_length(*table, "ahead", farthest_mm, 1000).value_or(1000));
        table->complain_of_unknown_keys();
    }
}

/// The lens where it stands, on this vehicle.
void put_lens(TableReader& top, TriangleMesh lens, LampSketch& sketch)
{
    for (Point& p : lens.points)
        p += Point(0, in_mm(sketch.lateral), in_mm(sketch.above));
    const Box box = box_of(lens);
    sketch.width = millimetres(box.size().y());
    sketch.height = millimetres(box.size().z());
    const Place place = top.place_of("lens");
    if (const auto& width = sketch.study.vehicle.overall_width) {
        const double beyond = box.most.y() - in_mm(*width) / 2;
        if (sketch.width > *width)
            top.complaints().add(
                place,
                "the lens is larger than the vehicle: " + millimetres_words(in_mm(sketch.width)) +
                    " across, where the "
                    "vehicle has " +
                    millimetres_words(in_mm(*width)),
                "check the units of lens and vehicle, both mm");
        else if (beyond > 0)
            top.complaints().add(place,
                                 "the lens reaches " + millimetres_words(std::ceil(beyond)) +
                                     " beyond the side of the vehicle",
                                 "move it inboard: `lateral` of [lamp], or make it smaller");
    }
    if (box.least.z() < 0)
        top.complaints().add(place, "the lens reaches below the ground",
                             "raise it: `height` of [lamp] is that of its middle");
    Surface surface;
    surface.name = "lens";
    surface.role = Role::emitting;
    surface.mirror = MirrorRule::yes;
    surface.mesh = std::move(lens);
    sketch.study.surfaces.add(std::move(surface));
}

} // namespace

LampSketch read_lamp_sketch(const std::filesystem::path& file)
{
    const TomlTable text = parse_toml(read_text_file(file), file.string());
    Complaints complaints;
    TableReader top(text, "the sketch", complaints);
    LampSketch sketch;
    sketch.study.file = file.string();
    top.demand("format", "write format = 1 at the top");
    if (const std::optional<double> format = top.number("format", ""); format && *format != 1)
        top.complain("format", "this sketch has a format that is not known", "write format = 1");
    sketch.study.title = top.text("title").value_or("");
    read_vehicle(top, sketch);
    read_lamp(top, sketch);
    if (std::optional<SketchedLens> lens = read_sketched_lens(top); lens && complaints.empty()) {
        sketch.facets_of_file = lens->facets_of_file;
        put_lens(top, std::move(lens->mesh), sketch);
    }
    read_rule(top, sketch);
    read_drawing(top, sketch);
    top.complain_of_unknown_keys();
    complaints.sort_by_place();
    complaints.throw_if_any();
    for (const char* state : ground_states)
        sketch.study.grounds.push_back({state, Ground{}});
    sketch.study.keep_clear.chord_error = curve_error;
    return sketch;
}

} // namespace glim
