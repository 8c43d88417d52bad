#include "bench/bench_files.h"

#include "bench/body.h"
#include "machine/whole_file.h"

#include <charconv>
#include <cstring>

namespace glim::bench {

namespace {

/// A tenth of a micrometre, as CAD systems like to write.
constexpr int decimals = 4;

void add_number(std::string& text, double value)
{
    char digits[32];
    const auto [end, error] =
        std::to_chars(digits, digits + sizeof digits, value, std::chars_format::fixed, decimals);
    text.append(digits, end);
}

void add_obj(std::string& text, const TriangleMesh& mesh, const std::string& group,
             std::size_t& points_before)
{
    for (const Point& p : mesh.points) {
        text += 'v';
        for (int axis = 0; axis < 3; ++axis) {
            text += ' ';
            add_number(text, p[axis]);
        }
        text += '\n';
    }
    text += "g " + group + "\n";
    for (const Facet& f : mesh.facets) {
        text += 'f';
        for (const std::uint32_t corner : f)
            text += ' ' + std::to_string(points_before + corner + 1);
        text += '\n';
    }
    points_before += mesh.points.size();
}

std::string part_name(std::size_t part) { return "part" + std::to_string(part); }

std::string obj_of(const std::vector<TriangleMesh>& parts)
{
    std::string text;
    std::size_t points = 0;
    for (std::size_t i = 0; i < parts.size(); ++i)
        add_obj(text, parts[i], part_name(i), points);
    return text;
}

template <class T>
void add_bytes(std::string& bytes, const T& value)
{
    char raw[sizeof value];
    std::memcpy(raw, &value, sizeof value);
    bytes.append(raw, sizeof value);
}

void add_stl(std::string& bytes, const TriangleMesh& mesh)
{
    for (std::size_t f = 0; f < mesh.facets.size(); ++f) {
        for (int i = 0; i < 3; ++i)
            add_bytes(bytes, 0.0F); // normals may be left to the reader
        for (int i = 0; i < 3; ++i)
            for (int axis = 0; axis < 3; ++axis)
                add_bytes(bytes, static_cast<float>(mesh.corner(f, i)[axis]));
        add_bytes(bytes, std::uint16_t{0});
    }
}

/// Binary STL: 80 bytes of title, the count, 50 bytes a triangle.
std::string stl_of(const std::vector<TriangleMesh>& parts)
{
    std::uint32_t count = 0;
    for (const TriangleMesh& part : parts)
        count += static_cast<std::uint32_t>(part.facets.size());
    std::string bytes(80, ' ');
    add_bytes(bytes, count);
    for (const TriangleMesh& part : parts)
        add_stl(bytes, part);
    return bytes;
}

constexpr const char* table_text = R"(format = 1
regulation = "a measure of speed, no regulation"

[[row]]
id = "area"
provenance = "memory"
source = "chosen for the measure; it stems from no regulation"
field = { h = [-45, 80], v = [-15, 15] }
criterion = { kind = "least_area", mm2 = 600 }

[[row]]
id = "clear"
provenance = "memory"
source = "chosen for the measure; it stems from no regulation"
field = { h = [-45, 80], v = [-15, 15] }
criterion = { kind = "no_obstacle" }
)";

constexpr const char* study_head = R"(format = 1
title = "A made-up front"

[vehicle]
forward = "+x"
up = "+z"
modelled_side = "both"
overall_width = 1800

[ground.design]
height = 0

[[mesh]]
name = "body"
file = "body.obj"
unit = "mm"
up = "+z"
forward = "+x"

[[mesh]]
name = "lens"
file = "lens.obj"
unit = "mm"
up = "+z"
forward = "+x"

[[surface]]
name = "lens"
mesh = "lens"
role = "emitting"

[[lamp]]
name = "indicator"
function = "front_indicator"
side = "left"
emits = ["lens"]

[sampling]
feature = 1.6
)";

std::string key_line(const std::string& key, const std::string& value)
{
    return key + " = " + value + "\n";
}

std::string in_quotes(std::string_view word) { return "\"" + std::string(word) + "\""; }

std::string study_text(const BenchStudy& study, int step_deg)
{
    std::string text = study_head;
    text += key_line("step", std::to_string(step_deg));
    text += key_line("certify", in_quotes(study.certify));
    if (!study.between)
        text += key_line("finest", std::to_string(step_deg));
    text += "\n[[check]]\n" + key_line("name", in_quotes(study.rule)) +
            key_line("table", in_quotes("speed")) + key_line("rule", in_quotes(study.rule)) +
            key_line("lamp", in_quotes("indicator"));
    for (std::size_t i = 0; i < part_count; ++i)
        text += "\n[[surface]]\n" + key_line("name", in_quotes(part_name(i))) +
                key_line("mesh", in_quotes("body")) +
                key_line("select", "{ group = " + in_quotes(part_name(i)) + " }") +
                key_line("role", in_quotes("opaque"));
    return text;
}

/// An overlay on the study as by default.
constexpr const char* two_lamps_text = R"(format = 1
base = "default.toml"
title = "A made-up front, two lamps"

[[lamp]]
name = "position"
function = "front_position"
side = "left"
emits = ["lens"]

[[check]]
name = "area"
table = "speed"
rule = "area"
lamps = ["indicator", "position"]
)";

} // namespace

BenchFiles bench_files_in(const std::filesystem::path& folder)
{
    return {.obj = folder / "body.obj",
            .stl = folder / "body.stl",
            .lens = folder / "lens.obj",
            .table = folder / "speed.toml"};
}

std::vector<Figure> write_bench_files(std::size_t triangles, int step_deg, const BenchFiles& files)
{
    const Body body = body_of(triangles);
    write_file_atomically(files.obj, obj_of(body.parts));
    write_file_atomically(files.stl, stl_of(body.parts));
    write_file_atomically(files.lens, obj_of({body.lens}));
    write_file_atomically(files.table, table_text);
    for (const BenchStudy& study : bench_studies)
        write_file_atomically(files.of(study), study_text(study, step_deg));
    write_file_atomically(files.two_lamps_study(), two_lamps_text);
    std::size_t count = 0;
    for (const TriangleMesh& part : body.parts)
        count += part.facets.size();
    return {{.measure = "triangles of the body", .unit = "", .value = double(count)},
            {.measure = "lit surface", .unit = "mm2", .value = in_mm2(area_of(body.lens))},
            {.measure = "OBJ file", .unit = "MB", .value = double(file_size(files.obj)) / 1e6},
            {.measure = "STL file", .unit = "MB", .value = double(file_size(files.stl)) / 1e6}};
}

} // namespace glim::bench
