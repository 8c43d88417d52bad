#include "floors/floors.h"

#include "floors/floor_plan.h"
#include "floors/includes.h"

#include <algorithm>
#include <map>

namespace glim::test {

namespace fs = std::filesystem;

namespace {

std::string room_of(const std::string& path)
{
    const std::size_t slash = path.find('/');
    return slash == std::string::npos ? std::string() : path.substr(0, slash);
}

/// What is wrong with a file of `room` including something of `other`; empty if nothing is.
std::string wrong_arrow(const std::string& room, const std::string& other)
{
    const std::optional<int> from = floor_of(room);
    const std::optional<int> to = floor_of(other);
    if (!to)
        return "gives no path from src, or its room is not in the plan";
    if (!from || room == other)
        return "";
    if (*to == *from)
        return "goes sideways, from " + room + " to " + other;
    if (*to > *from)
        return "goes up, from " + room + " to " + other;
    return other == "input" && room != "app" ? "reaches input, which only app may know" : "";
}

bool opens(const Door& door, const std::string& path)
{
    return std::ranges::any_of(door.open_for, [&](std::string_view open) {
        return open.ends_with('/') ? path.starts_with(open) : path == std::string(open) + ".cpp";
    });
}

/// What is wrong with the file `path` including `<header>`; empty if nothing is.
std::string wrong_door(const std::string& path, const std::string& header)
{
    if (is_standard(header))
        return "";
    if (floor_of(room_of(header)))
        return "stands in angle brackets, which are for what is not ours";
    const Door* const door = door_of(header);
    if (door == nullptr)
        return "is of a library that has no door";
    return opens(*door, path) ? ""
                              : "brings in " + std::string(door->library) + " beyond its doors";
}

std::string wrong_include(const std::string& path, const Include& include)
{
    if (include.bracket == '"')
        return wrong_arrow(room_of(path), room_of(include.header));
    if (include.bracket == '<')
        return wrong_door(path, include.header);
    return "cannot be followed: it has no brackets";
}

std::vector<std::string> wrong_includes(const std::vector<SourceFile>& sources)
{
    std::vector<std::string> findings;
    for (const SourceFile& source : sources)
        for (const Include& include : source.includes)
            if (const std::string wrong = wrong_include(source.path, include); !wrong.empty())
                findings.push_back(source.path + ":" + std::to_string(include.line) + ": " +
                                   include.header + " " + wrong);
    return findings;
}

/// Walks from file to file along the includes and notes where it comes back to its own way.
class CircleWalk {
public:
    explicit CircleWalk(const std::vector<SourceFile>& sources)
    {
        for (const SourceFile& source : sources)
            files_.emplace(source.path, File{&source, State::unseen});
    }

    std::vector<std::string> circles()
    {
        for (auto& [path, file] : files_)
            visit(path, file);
        return circles_;
    }

private:
    enum class State { unseen, on_the_way, done };
    struct File {
        const SourceFile* source;
        State state;
    };
    std::map<std::string, File> files_;
    std::vector<std::string> way_;
    std::vector<std::string> circles_;

    void visit(const std::string& path, File& file)
    {
        if (file.state == State::on_the_way)
            circles_.push_back(circle_to(path));
        if (file.state != State::unseen)
            return;
        file.state = State::on_the_way;
        way_.push_back(path);
        for (const Include& include : file.source->includes)
            if (const auto next = files_.find(include.header); next != files_.end())
                visit(next->first, next->second);
        way_.pop_back();
        file.state = State::done;
    }

    std::string circle_to(const std::string& path) const
    {
        std::string text = path + ": includes itself";
        for (auto step = std::ranges::find(way_, path); step != way_.end(); ++step)
            if (*step != path)
                text += ", by " + *step;
        return text;
    }
};

std::vector<std::string> not_in_a_room(const fs::path& src, const std::vector<SourceFile>& sources)
{
    std::vector<std::string> findings;
    for (const fs::directory_entry& entry : fs::directory_iterator(src))
        if (const std::string name = entry.path().filename().string();
            entry.is_directory() && !floor_of(name))
            findings.push_back(name + ": is a folder without a floor");
    for (const SourceFile& source : sources)
        if (room_of(source.path).empty())
            findings.push_back(source.path + ": is in no room");
    return findings;
}

} // namespace

std::vector<std::string> broken_floors(const fs::path& src)
{
    const std::vector<SourceFile> sources = read_sources(src);
    std::vector<std::string> findings = not_in_a_room(src, sources);
    std::ranges::copy(wrong_includes(sources), std::back_inserter(findings));
    std::ranges::copy(CircleWalk(sources).circles(), std::back_inserter(findings));
    std::ranges::sort(findings);
    return findings;
}

} // namespace glim::test
