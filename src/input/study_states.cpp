#include "input/study_states.h"

#include "geometry/placement.h"
#include "input/load_states.h"
#include "input/name_book.h"
#include "input/read_ground.h"
#include "input/study_section.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// What goes further is no state of the same vehicle.
constexpr double most_rise_mm = 500;

/// How a state differs from a ground that the study gives.
struct Change {
    Length rise;
    Angle pitch;
    Point about = Point::Zero();
};

/// The body goes up by the rise and its nose by the pitch: in its own frame the ground sinks, and
/// turns the other way about the point that stays at its height.
Ground changed(const Ground& ground, const Change& change, const Vehicle& vehicle)
{
    const Placement nose_down = Placement::turn(change.about, vehicle.left(), change.pitch);
    return {nose_down(Point(ground.on)) - in_mm(change.rise) * nose_down(ground.up).vector(),
            nose_down(ground.up)};
}

bool says_change(const TableReader& table)
{
    return table.has("from") || table.has("rise") || table.has("pitch") || table.has("about");
}

void complain_of_ways(TableReader& table)
{
    const int grounds = grounds_given(table);
    if (grounds > 0 && says_change(table))
        table.complaints().add(table.place(),
                               table.words() +
                                   " says where the ground is, and how it differs from another",
                               "leave `from`, `rise`, `pitch` and `about`, or the ground itself");
    else if (grounds > 1)
        table.complaints().add(table.place(),
                               table.words() + " says more than once where the ground is",
                               "write one of " + std::string(ways_to_give_ground));
    else if (grounds == 0 && !table.has("rise") && !table.has("pitch"))
        table.complaints().add(table.place(), table.words() + " does not say how it differs",
                               "write rise = (mm, the body higher above the ground) or pitch = "
                               "(degrees, nose up), or where the ground is");
}

Length read_rise(TableReader& table)
{
    const Length rise = table.length("rise").value_or(Length());
    if (std::abs(in_mm(rise)) > most_rise_mm)
        table.complain("rise", "`rise` of " + table.words() + " is no ride height",
                       "write how much higher (lower: below 0) the body stands, from -500 to 500 "
                       "mm");
    return rise;
}

Angle read_pitch(TableReader& table)
{
    const Angle pitch = table.angle("pitch").value_or(Angle());
    if (std::abs(in_degrees(pitch)) > in_degrees(most_ground_tilt))
        table.complain("pitch", "`pitch` of " + table.words() + " is more than 10 degrees",
                       "write how far the nose is up (down: below 0), in degrees");
    return pitch;
}

Change read_change(TableReader& table)
{
    Change change{read_rise(table), read_pitch(table)};
    change.about = table.vector("about").value_or(Vector::Zero());
    if (table.has("pitch") && !table.has("about"))
        table.complaints().add(table.place(), table.words() + " pitches about no point",
                               "write about = [x, y, z], a point that stays at its height: the "
                               "front axle's, if the rear sinks");
    if (!table.has("pitch") && table.has("about"))
        table.complain("about", "`about` of " + table.words() + " says nothing: nothing pitches",
                       "take it away, or write `pitch`");
    return change;
}

/// The ground that is changed; the first one if the state does not say.
const GroundState* read_from(TableReader& table, const Study& study)
{
    const std::optional<std::size_t> word = table.choice("from", load_states);
    if (!word)
        return study.grounds.empty() || table.has("from") ? nullptr : &study.grounds.front();
    const GroundState* from = study.ground_in(load_states[*word]);
    if (!from)
        table.complain(
            "from", "the study does not say where the ground is at " + load_states[*word] + " load",
            "add [ground." + load_states[*word] + "], or start from another state");
    return from;
}

std::optional<GroundState> read_state(TableReader& table, const Study& study,
                                      const std::optional<Vehicle>& vehicle)
{
    complain_of_ways(table);
    const std::optional<Ground> given = read_ground(table, "state", vehicle);
    const GroundState* from = read_from(table, study);
    const Change change = read_change(table);
    finish_section(table, "state");
    if (given)
        return GroundState{{}, *given, StateOrigin{}};
    if (!from || !vehicle)
        return std::nullopt;
    return GroundState{{},
                       changed(from->ground, change, *vehicle),
                       StateOrigin{from->state, change.rise, change.pitch}};
}

void complain_of_ruled_name(TableReader& table, const std::string& name)
{
    if (std::find(load_states.begin(), load_states.end(), name) != load_states.end())
        table.complain("name", "`" + name + "` is a state that rules know",
                       "write it as [ground." + name + "], or call this state otherwise");
}

} // namespace

std::vector<GroundState> read_states(TableReader& top, const Study& study,
                                     const std::optional<Vehicle>& vehicle)
{
    std::vector<GroundState> states;
    NameBook names("state");
    for (TableReader& table : top.tables("state", "[[state]]")) {
        const std::string name = names.read_name(table);
        complain_of_ruled_name(table, name);
        if (std::optional<GroundState> state = read_state(table, study, vehicle)) {
            state->state = name;
            states.push_back(std::move(*state));
        }
    }
    return states;
}

} // namespace glim
