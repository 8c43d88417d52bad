#include "drawing/option_views.h"

#include "drawing/charted_lamps.h"
#include "drawing/eye_view.h"
#include "drawing/vehicle_view.h"
#include "words/look_words.h"

#include <algorithm>

namespace glim {

namespace {

std::optional<std::size_t> check_named(const Findings& findings, const std::string& name)
{
    for (std::size_t i = 0; i < findings.checks.size(); ++i)
        if (findings.checks[i].name == name)
            return i;
    return std::nullopt;
}

Figure of_option(Figure figure, const std::string& option)
{
    figure.title = option + ": " + figure.title;
    return figure;
}

OptionView view_of(const Session& session, const Findings& findings, const ComparedView& wanted,
                   const Workers& workers)
{
    const auto check = check_named(findings, wanted.checks.front());
    const auto foremost = check ? foremost_charted(findings, *check) : std::nullopt;
    if (!foremost)
        return {};
    const LampVerdict& verdict = verdict_at(findings, *foremost);
    const LampLook& look = findings.looks[verdict.look];
    const Bearing toward =
        look.axis == wanted.axis ? wanted.toward : look.toward[worst_at(verdict)];
    return {EyeView(session.study(), session.scene(), look).toward(toward, workers),
            vehicle_view(session, look, verdict, workers)};
}

bool looks_alike(const ComparedView& a, const ComparedView& b)
{
    return a.lamp == b.lamp && a.twin == b.twin && a.axis == b.axis && a.toward == b.toward;
}

} // namespace

std::vector<ComparedView> compared_views(const Findings& findings)
{
    std::vector<ComparedView> views;
    for (std::size_t check = 0; check < findings.checks.size(); ++check) {
        const auto foremost = foremost_charted(findings, check);
        if (!foremost)
            continue;
        const LampVerdict& verdict = verdict_at(findings, *foremost);
        const LampLook& look = findings.looks[verdict.look];
        const ComparedView view{{findings.checks[check].name},
                                look.name,
                                look.twin,
                                look.axis,
                                look.toward[worst_at(verdict)]};
        const auto known = std::find_if(views.begin(), views.end(), [&](const ComparedView& other) {
            return looks_alike(view, other);
        });
        if (known == views.end())
            views.push_back(view);
        else
            known->checks.push_back(view.checks.front());
    }
    return views;
}

std::vector<OptionView> option_views(const Session& session, const Findings& findings,
                                     const std::vector<ComparedView>& views,
                                     const std::string& option, const Workers& workers)
{
    const Workers silent = workers.silent();
    std::vector<OptionView> shown;
    for (const ComparedView& view : views) {
        OptionView seen = view_of(session, findings, view, silent);
        if (seen.eye)
            seen = {of_option(*std::move(seen.eye), option),
                    of_option(*std::move(seen.vehicle), option)};
        shown.push_back(std::move(seen));
        if (workers.progress)
            workers.progress(shown.size(), views.size());
    }
    return shown;
}

} // namespace glim
