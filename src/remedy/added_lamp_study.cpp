#include "remedy/added_lamp_study.h"

#include <algorithm>

namespace glim {

namespace {

template <class Things>
std::string free_name(const Things& things, const std::string& wish)
{
    const auto taken = [&](const std::string& name) {
        return std::any_of(things.begin(), things.end(),
                           [&](const auto& thing) { return thing.name == name; });
    };
    std::string name = wish;
    for (int i = 2; taken(name); ++i)
        name = wish + " " + std::to_string(i);
    return name;
}

/// The lens has a twin where its lamp has one, whatever the carrier does.
Surface surface_of(const Study& study, const Lamp& lamp, const AddedLens& lens)
{
    Surface surface;
    surface.name = free_surface_name(study, lamp.name + " lens");
    surface.role = Role::emitting;
    surface.mirror = lamp.paired ? MirrorRule::yes : MirrorRule::no;
    surface.mesh = lens.mesh;
    // It stands for the same surface, by the same facets.
    surface.chord = study.surfaces[lens.carrier].chord;
    return surface;
}

} // namespace

std::string free_lamp_name(const Study& study, const std::string& wish)
{
    return free_name(study.lamps, wish);
}

std::string free_surface_name(const Study& study, const std::string& wish)
{
    return free_name(study.surfaces, wish);
}

Lamp lamp_to_add(const Study& study, const AddLampTask& task, LampId helped)
{
    const Lamp& other = study.lamps[helped];
    Lamp lamp;
    lamp.name = free_lamp_name(study, "added lamp");
    lamp.function = task.signal.value_or(other.function);
    lamp.side = other.side;
    lamp.paired = other.paired;
    if (lamp.function == other.function) {
        lamp.category = other.category;
        lamp.axis = other.axis;
    }
    return lamp;
}

StudyWithLamp with_added_lamp(const Study& study, const Lamp& lamp, const AddedLens& lens,
                              std::span<const std::size_t> checks, WhoAnswers who)
{
    StudyWithLamp with{study, {}, {}};
    with.lens = with.study.surfaces.add(surface_of(study, lamp, lens));
    Lamp added = lamp;
    added.emits = {with.lens};
    with.lamp = with.study.lamps.add(std::move(added));
    for (const std::size_t c : checks) {
        Check& check = with.study.checks[c];
        if (who == WhoAnswers::added_alone)
            check.lamps = {with.lamp};
        else
            check.lamps.push_back(with.lamp);
    }
    return with;
}

} // namespace glim
