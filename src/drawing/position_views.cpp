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

Figure view_of(LampId lamp, const Study& study, const PreparedScene& scene, const Workers& workers)
{
    const LampLook look =
        new_look(study, scene, {{lamp}}, usual_axis(study.lamps[lamp].function), "");
    return EyeView(study, scene, look).toward(Bearing{}, workers);
}

} // namespace

std::vector<Figure> position_views(const Study& study, const Workers& workers)
{
    std::vector<Figure> views;
    for (std::size_t p = 0; p < study.moved_parts.size(); ++p)
        for (std::size_t i = 0; i < study.moved_parts[p].positions.size(); ++i) {
            const Study there = in_position(study, {p, i});
            const PreparedScene scene(there, workers.silent());
            for (const LampId lamp : lamps_asked(study)) {
                Figure view = view_of(lamp, there, scene, workers.silent());
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
