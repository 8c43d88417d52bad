#include "floors/floor_plan.h"

#include <algorithm>

namespace glim::test {

namespace {

struct Room {
    std::string_view name;
    int floor;
};

// DEVELOPERS.md tells what each room is for.
const std::vector<Room> rooms = {
    {"app", 10},     {"desk", 9},      {"report", 8},  {"drawing", 7},    {"words", 6},
    {"remedy", 5},   {"judgement", 4}, {"input", 3},   {"visibility", 3}, {"model", 2},
    {"geometry", 1}, {"units", 0},     {"machine", 0},
};

const std::vector<Door> doors = {
    {"Eigen",
     {"Eigen/"},
     {"geometry/", "model/", "input/", "visibility/", "judgement/", "remedy/", "words/", "drawing/",
      "report/", "desk/", "app/"}},
    {"Embree", {"embree3/", "embree4/"}, {"visibility/ray_caster"}},
    {"Clipper", {"polyclipping/", "clipper"}, {"geometry/polygons"}},
    {"OpenMesh", {"OpenMesh/"}, {"input/read_mesh_openmesh"}},
    {"OpenCASCADE", {"opencascade/"}, {"input/read_mesh_step"}},
    {"toml++", {"toml++/"}, {"input/toml_table"}},
    {"Nettle", {"nettle/"}, {"input/file_digest"}},
    {"libpng", {"png", "libpng"}, {"input/grey_map"}},
    {"nlohmann-json", {"nlohmann/"}, {"report/json"}},
    {"Cairo and Pango", {"cairo", "pango"}, {"drawing/canvas"}},
    {"cpp-httplib", {"httplib"}, {"desk/server"}},
    {"CLI11", {"CLI/"}, {"app/command_line"}},
    {"POSIX and the processor",
     {"sys/", "unistd.h", "fcntl.h", "signal.h", "semaphore.h", "time.h", "termios.h", "poll.h",
      "xmmintrin.h"},
     {"machine/"}},
};

} // namespace

std::optional<int> floor_of(std::string_view room)
{
    const auto found = std::ranges::find(rooms, room, &Room::name);
    return found == rooms.end() ? std::nullopt : std::optional(found->floor);
}

const Door* door_of(std::string_view header)
{
    const auto found = std::ranges::find_if(doors, [&](const Door& door) {
        return std::ranges::any_of(
            door.headers, [&](std::string_view start) { return header.starts_with(start); });
    });
    return is_standard(header) || found == doors.end() ? nullptr : &*found;
}

bool is_standard(std::string_view header)
{
    return header.find_first_of("./") == std::string_view::npos;
}

} // namespace glim::test
