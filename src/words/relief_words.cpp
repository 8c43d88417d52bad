#include "words/relief_words.h"

#include "model/asked_checks.h"
#include "model/rule.h"
#include "words/bearing_words.h"
#include "words/look_words.h"
#include "words/name_list.h"
#include "words/numbers.h"
#include "words/row_words.h"
#include "words/rule_source_words.h"

#include <algorithm>

namespace glim {

namespace {

constexpr int indent = 2;
constexpr double mm2_in_cm2 = 100, mm3_in_cm3 = 1000;

std::string mm(Length length) { return rounded(in_mm(length), 2) + " mm"; }

std::string cm2(Area area) { return rounded(in_mm2(area) / mm2_in_cm2, 1) + " cm2"; }

std::string cm3(Volume volume) { return rounded(in_mm3(volume) / mm3_in_cm3, 1) + " cm3"; }

std::string at(const Point& p)
{
    return "(" + rounded(p.x(), 1) + ", " + rounded(p.y(), 1) + ", " + rounded(p.z(), 1) + ")";
}

std::string seen_from(const Relief& relief, const ReliefSight& sight)
{
    const LampLook& look = relief.before.looks[sight.look];
    return label_of(look) + ", seen from " + bearing_words(sight.toward, speech_of(look)) + " (" +
           bearing_figures(sight.toward) + ")";
}

std::string surface_names(const Relief& relief, const Study& study)
{
    std::vector<std::string> names;
    for (const ReshapedSurface& surface : relief.shape.surfaces)
        names.push_back(quoted(study.surfaces[surface.surface].name));
    return name_list(names);
}

std::string bound_words(const LeastDepth& least)
{
    std::vector<std::string> why;
    if (!least.height_field)
        why.emplace_back("the surface folds over itself along the push");
    if (!least.nothing_seen_from_under)
        why.emplace_back("light passes below what would have to sink");
    if (why.empty())
        return "no relief does it with less; one of this depth does, were its slopes free";
    return "no relief does it with less; that one of this depth does is not proved, because " +
           name_list(why);
}

std::vector<Labelled> bound_entries(const Relief& relief, const Study& study)
{
    if (!relief.least)
        return {};
    const LeastDepth& least = *relief.least;
    const ReliefSight& sight = relief.sights[least.sight];
    std::vector<Labelled> entries = {{"least depth", mm(least.depth) + ": " + bound_words(least)}};
    if (least.for_sure > least.depth)
        entries.push_back({"for sure", mm(least.for_sure) +
                                           ": the same, and verdicts that stand whatever the "
                                           "meshes may be off"});
    entries.insert(
        entries.end(),
        {{"because of", seen_from(relief, sight) + ": " + area_words(sight.seen) + " in view, " +
                            area_words(sight.needed) + " wanted; " + quoted(least.surface) +
                            " has to sink that much at " + at(least.place)},
         {"asked by", quoted(study.checks[sight.check].name) + ", row " + sight.row + "; in " +
                          counted(relief.sights.size(), "direction") + " too little was seen"}});
    return entries;
}

std::string slope_words(const Relief& relief, const Study& study)
{
    return "at most " + angle_words(relief.shape.steepest) + " where " +
           angle_words(study.relief.steepest) + " are allowed; slope and blend cost " +
           mm(relief.slope_cost.depth) + " of depth, " + cm2(relief.slope_cost.touched) + " and " +
           cm3(relief.slope_cost.volume);
}

std::string room_words(const std::optional<RoomBehind>& room)
{
    return room ? mm(room->distance) + " along the push to " + quoted(room->part) + ", from " +
                      at(room->from)
                : "nothing of the study lies behind it along the push";
}

std::vector<Labelled> shape_entries(const Relief& relief, const Study& study)
{
    const ReliefShape& shape = relief.shape;
    if (shape.surfaces.empty())
        return {};
    std::string deepest = mm(shape.deepest) + " on " + quoted(shape.deepest_surface) + ", from " +
                          at(shape.deepest_before) + " to " + at(shape.deepest_after);
    if (relief.least && relief.least->depth > Length())
        deepest += "; " + rounded(shape.deepest / relief.least->depth, 3) + " x the least depth";
    return {{"relief of", surface_names(relief, study)},
            {"deepest", deepest},
            {"size", cm2(shape.touched) + " touched, " + cm3(shape.volume) + " taken away; from " +
                         at(shape.box.least) + " to " + at(shape.box.most)},
            {"slope", slope_words(relief, study)},
            {"rims", shape.deepest_edge > Length()
                         ? "an edge moves by up to " + mm(shape.deepest_edge)
                         : "no edge moves"},
            {"room behind", room_words(shape.nearest_behind)}};
}

std::string barrier_words(const ReliefLimit& limit)
{
    switch (limit.barrier) {
    case ReliefBarrier::fixed_part:
        return limit.part.empty() ? "what may not be reshaped hides too much"
                                  : quoted(limit.part) + " may not be reshaped and hides too much";
    case ReliefBarrier::max_depth:
        return "`max_depth` ends it";
    case ReliefBarrier::edges:
        return "fixed edges or untouched boxes hold the surface, with no steeper slope than "
               "`steepest`";
    case ReliefBarrier::room_behind:
        return "what is pushed runs into " + quoted(limit.part);
    case ReliefBarrier::proof_only:
        break;
    }
    return "the relief was made, and a check of it says that it does not suffice";
}

std::vector<Labelled> limit_entries(const Relief& relief)
{
    std::vector<Labelled> entries;
    for (const ReliefLimit& limit : relief.limits) {
        const ReliefSight& sight = relief.sights[limit.sight];
        entries.push_back({entries.empty() ? "limits" : "",
                           barrier_words(limit) + ", in " + counted(limit.directions, "direction") +
                               "; worst: " + seen_from(relief, sight) + ", at best " +
                               area_words(limit.reachable) + " of " + area_words(sight.needed) +
                               " wanted"});
    }
    return entries;
}

std::string answer_words(const CheckFindings& check)
{
    std::string words = quoted(check.name) + " " + short_words(check.outcome);
    if (check.deciding && applies(check.deciding_verdict()))
        words += ", " + margin_words(check.deciding_verdict());
    return words;
}

std::vector<Labelled> proof_entries(const Relief& relief)
{
    if (!relief.after)
        return {};
    std::vector<Labelled> entries;
    for (std::size_t i = 0; i < relief.after->checks.size(); ++i)
        entries.push_back({i == 0 ? "check" : "",
                           answer_words(relief.after->checks[i]) +
                               " (before: " + answer_words(relief.before.checks[i]) + ")"});
    entries.push_back(
        {"gained", counted(relief.directions_gained, "direction") +
                       " that were asked for and not met before; made and checked in " +
                       counted(static_cast<std::size_t>(relief.rounds), "round")});
    return entries;
}

void append(std::vector<Labelled>& entries, std::vector<Labelled> more)
{
    entries.insert(entries.end(), std::make_move_iterator(more.begin()),
                   std::make_move_iterator(more.end()));
}

} // namespace

std::string relief_sentence(const Relief& relief, const Study& study)
{
    if (relief.sights.empty())
        return "Nothing to do: in no direction is too little seen.";
    if (relief.shape.surfaces.empty())
        return "Not found: no relief of what may be reshaped helps.";
    const std::string size = "a relief of " + surface_names(relief, study) + ", at most " +
                             mm(relief.shape.deepest) + " deep";
    return relief.found() ? "Found: " + size + ", meets what was asked."
                          : "Not found: the best within the limits is " + size +
                                ", and does not meet what was asked.";
}

std::string relief_words(const Relief& relief, const Study& study, const TextStyle& style)
{
    std::vector<Labelled> entries;
    append(entries, bound_entries(relief, study));
    append(entries, shape_entries(relief, study));
    append(entries, limit_entries(relief));
    append(entries, proof_entries(relief));
    return wrapped(relief_sentence(relief, study), style.columns) + "\n" +
           labelled_block(entries, indent, style) + "\n" +
           rule_sources_words(asked_rows(study, asked_checks(study, study.relief.checks)), style) +
           "\n" + wrapped(caution, style.columns) + "\n";
}

} // namespace glim
