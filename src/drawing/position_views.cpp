#include "drawing/position_views.h"

#include "drawing/eye_view.h"
#include "judgement/new_look.h"
#include "model/usual_axis.h"
#include "visibility/prepared_scene.h"

#include <algorithm>

namespace glim {

namespace {

std::vector<LampId> lamps_asked(const Study& study)
{
    std::vector<LampId> lamps;
    for (const Check& check : study.checks)
        for (const LampId lamp : check.lamps)
            if (std::find(lamps.begin(), lamps.end(), lamp) == lamps.end())
                lamps.push_back(lamp);
    return lamps;
}

bool is_there(const Situation& s, const MovedTo& moved)
{
    return s.moved && s.moved->part == moved.part && s.moved->position == moved.position;
}

/// As rows of moved parts were judged of them; no lamp twice.
std::vector<LampLook> looks_judged(const SituationFindings& found, const MovedTo& moved)
{
    std::vector<LampLook> looks;
    for (std::size_t i = 0; i < found.situations.size(); ++i) {
        if (!found.situations[i].is_verdict || !is_there(found.situations[i], moved))
            continue;
        for (const LampVerdict& verdict : found.at(i).rows.front().lamps) {
            const LampLook& look = found.found.looks[verdict.look];
            const bool known = std::any_of(looks.begin(), looks.end(),
                                           [&](const LampLook& l) { return l.name == look.name; });
            if (!look.twin && !known)
                looks.push_back(look);
        }
    }
    return looks;
}

std::vector<LampLook> looks_of(const SituationFindings& found, const MovedTo& moved,
                               const Study& there, const PreparedScene& scene)
{
    std::vector<LampLook> looks = looks_judged(found, moved);
    if (looks.empty())
        for (const LampId lamp : lamps_asked(there))
            looks.push_back(
                new_look(there, scene, {{lamp}}, usual_axis(there.lamps[lamp].function), ""));
    return looks;
}

} // namespace

std::vector<Figure> position_views(const SituationFindings& found, const Study& study,
                                   const Workers& workers)
{
    std::vector<Figure> views;
    for (std::size_t p = 0; p < study.moved_parts.size(); ++p)
        for (std::size_t i = 0; i < study.moved_parts[p].positions.size(); ++i) {
            const Study there = in_position(study, {p, i});
            const PreparedScene scene(there, workers.silent());
            for (const LampLook& look : looks_of(found, {p, i}, there, scene)) {
                Figure view = EyeView(there, scene, look).toward(Bearing{}, workers.silent());
                const std::string where = study.moved_parts[p].name + ": " +
                                          study.moved_parts[p].positions[i].name + ". ";
                view.title = where + view.title;
                view.caption = where + view.caption;
                views.push_back(std::move(view));
            }
        }
    return views;
}

} // namespace glim
