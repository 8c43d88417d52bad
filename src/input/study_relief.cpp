#include "input/study_relief.h"

#include "input/read_box.h"
#include "input/study_section.h"
#include "model/nearest_word.h"
#include "model/push.h"

#include <algorithm>

namespace glim {

namespace {

void check_push(const SurfaceDraft& draft, Complaints& complaints)
{
    const std::optional<Direction> push = push_of(draft.surface);
    const std::string who = "surface `" + draft.surface.name + "`";
    if (!push)
        complaints.add(draft.place,
                       "the facets of reshapeable " + who +
                           " look every way, so that no side of it "
                           "is the inside",
                       "write push = [x, y, z], the way it is to be pushed in");
    else if (share_across(draft.surface.mesh, *push) < least_push_share)
        complaints.add(draft.push_place,
                       "`push` of " + who +
                           " is parallel to the surface: it would move along itself",
                       "write the direction in which the surface is to be pushed in");
}

std::vector<std::size_t> read_check_names(TableReader& relief, const std::vector<Check>& checks)
{
    std::vector<std::string> known;
    known.reserve(checks.size());
    for (const Check& check : checks)
        known.push_back(check.name);
    std::vector<std::size_t> places;
    for (const Reference& asked : relief.texts("checks")) {
        const auto found = std::find(known.begin(), known.end(), asked.name);
        if (found != known.end())
            places.push_back(static_cast<std::size_t>(found - known.begin()));
        else
            relief.complaints().add(asked.place, "there is no [[check]] `" + asked.name + "`",
                                    did_you_mean(asked.name, known));
    }
    if (relief.holds_empty_list("checks"))
        relief.complain("checks", "`checks` of [relief] names no check",
                        "name one at least, or take the key away to have all of them met");
    std::sort(places.begin(), places.end());
    places.erase(std::unique(places.begin(), places.end()), places.end());
    return places;
}

void check_figures(TableReader& table, const ReliefWish& wish)
{
    const auto complain = [&](const char* key, const std::string& is, const std::string& remedy) {
        table.complain(key, "`" + std::string(key) + "` of [relief] " + is, remedy);
    };
    if (wish.max_depth && *wish.max_depth <= millimetres(0))
        complain("max_depth", "is not above 0", "write how far a point may be pushed in, in mm");
    if (wish.steepest <= degrees(0) || wish.steepest >= degrees(90))
        complain("steepest", "is not between 0 and 90 degrees",
                 "write the slope as an angle against the surface, such as 30");
    if (wish.blend < millimetres(0))
        complain("blend", "is below 0", "write a radius in mm; 0 leaves the rim sharp");
    if (wish.spare_area < square_millimetres(0))
        complain("spare_area", "is below 0", "write an area in mm2, 0 or more");
    if (wish.spare < millimetres(0))
        complain("spare", "is below 0", "write a distance in mm, 0 or more");
    if (wish.max_depth && *wish.max_depth > millimetres(0) && wish.spare >= *wish.max_depth)
        complain("spare", "is not less than `max_depth`: no relief can leave so much",
                 "raise `max_depth`, or ask for less to spare");
}

} // namespace

void check_pushes(const std::vector<SurfaceDraft>& surfaces, Complaints& complaints)
{
    for (const SurfaceDraft& draft : surfaces)
        if (draft.surface.reshape && !draft.facets.empty())
            check_push(draft, complaints);
}

ReliefWish read_relief(TableReader& top, const std::vector<Check>& checks)
{
    ReliefWish wish;
    std::optional<TableReader> table = top.table("relief", "[relief]");
    if (!table)
        return wish;
    wish.checks = read_check_names(*table, checks);
    wish.max_depth = table->length("max_depth");
    wish.steepest = table->angle("steepest").value_or(wish.steepest);
    wish.blend = table->length("blend").value_or(wish.blend);
    if (const std::optional<double> spare = table->number("spare_area", "mm2"))
        wish.spare_area = square_millimetres(*spare);
    wish.spare = table->length("spare").value_or(wish.spare);
    wish.untouched = read_boxes(*table, "untouched", "relief.untouched");
    finish_section(*table, "relief");
    check_figures(*table, wish);
    return wish;
}

} // namespace glim
