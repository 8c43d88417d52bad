#include "input/study_tolerances.h"

#include "input/name_book.h"
#include "input/study_modules.h"
#include "input/study_names.h"
#include "input/study_section.h"
#include "model/nearest_word.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// What strays farther is another design, and moves are no longer small.
constexpr double most_shift_mm = 50;
constexpr double most_turn_deg = 5;

/// 0 where it is missing or wrong.
double read_figure(TableReader& table, const ToleranceWayWord& way)
{
    const std::string key(way.key);
    const std::optional<double> figure = table.number(key, way.unit);
    if (!figure)
        return 0;
    const double most = turns(way.way) ? most_turn_deg : most_shift_mm;
    const std::string remedy = "write how far it may be off to either side, from 0 to " +
                               std::to_string(std::lround(most)) + " " + std::string(way.unit);
    if (*figure < 0)
        table.complain(key, "`" + key + "` of " + table.words() + " is below 0", remedy);
    else if (*figure > most)
        table.complain(key, "`" + key + "` of " + table.words() + " is no tolerance", remedy);
    else
        return *figure;
    return 0;
}

void read_spread(TableReader& table, Tolerance& tolerance)
{
    table.demand("distribution",
                 "write distribution = \"normal\", \"uniform\", \"triangular\" or \"limits\"");
    const SpreadWord* word = table.row_of("distribution", spread_words, &SpreadWord::key);
    const std::optional<double> sigmas = table.number("sigmas", "");
    tolerance.sigmas = sigmas.value_or(tolerance.sigmas);
    const std::string remedy =
        "write at how many standard deviations the limits stand, such as sigmas = 3";
    if (sigmas && (*sigmas <= 0 || *sigmas > 12))
        table.complain("sigmas", "`sigmas` of " + table.words() + " is not above 0 and at most 12",
                       remedy);
    if (!word)
        return;
    tolerance.spread = word->spread;
    if (word->spread == Spread::limits && !table.has("sigmas"))
        table.complain("distribution",
                       table.words() + " does not say how often its limits are passed", remedy);
    if (word->spread != Spread::limits && table.has("sigmas"))
        table.complain("sigmas",
                       "`sigmas` of " + table.words() + " says nothing: its distribution is \"" +
                           std::string(word->key) + "\"",
                       "take it away, or write distribution = \"limits\"");
}

void read_ways(TableReader& table, Tolerance& tolerance)
{
    bool any = false, turning = false;
    for (const ToleranceWayWord& way : tolerance_way_words) {
        tolerance.by[static_cast<std::size_t>(way.way)] = read_figure(table, way);
        any = any || table.has(way.key);
        turning = turning || (turns(way.way) && table.has(way.key));
    }
    if (!any)
        table.complaints().add(table.place(), table.words() + " does not say what may be off",
                               "write one of `forward`, `outboard`, `up`, `turn`, `tilt`, `roll` "
                               "and `profile` at least");
    if (const std::optional<Vector> about = table.vector("about"))
        tolerance.about = *about;
    if (turning && !table.has("about"))
        table.complaints().add(table.place(), table.words() + " turns about no point",
                               "write about = [x, y, z], the point at which it is held");
    if (!turning && any && table.has("about"))
        table.complain("about", "`about` of " + table.words() + " says nothing: nothing turns",
                       "take it away, or write `turn`, `tilt` or `roll`");
}

const Module* read_module_named(TableReader& table, const std::vector<Module>& modules)
{
    const std::optional<std::string> name = table.text("module");
    if (!name)
        return nullptr;
    std::vector<std::string> known;
    for (const Module& module : modules) {
        if (module.name == *name)
            return &module;
        known.push_back(module.name);
    }
    table.complain("module", "there is no module `" + *name + "`", did_you_mean(*name, known));
    return nullptr;
}

void read_bodies(TableReader& table, const Study& study, const std::vector<Module>& modules,
                 Tolerance& tolerance)
{
    MovingBodies bodies = moving_bodies(study, read_surfaces_named(table, "surfaces", study),
                                        read_lamps_named(table, "lamps", study));
    const Module* module = read_module_named(table, modules);
    const bool itself = table.has("surfaces") || table.has("lamps");
    if (itself == table.has("module"))
        table.complaints().add(table.place(),
                               table.words() + (itself ? " names a module and what is in it"
                                                       : " does not say of what it is"),
                               "name surfaces and lamps, or else one module");
    if (module && !itself) {
        bodies = module->bodies;
        tolerance.module = module->name;
        tolerance.level = module->level;
    }
    const auto emits = [&](SurfaceId s) { return study.surfaces[s].role == Role::emitting; };
    if (table.has("profile") && std::any_of(bodies.surfaces.begin(), bodies.surfaces.end(), emits))
        table.complain("profile", "`profile` of " + table.words() + " is of a lit surface",
                       "let it stray along its normal by `forward`, `outboard` or `up` instead");
    if (table.has("profile") && (table.has("lamps") || table.has("module")))
        table.complain("profile", "`profile` of " + table.words() + " is not of surfaces alone",
                       "give the surfaces a [[tolerance]] of their own for their profile");
    tolerance.surfaces = std::move(bodies.surfaces);
    tolerance.lamps = std::move(bodies.lamps);
}

Tolerance read_tolerance(TableReader& table, const Study& study, const std::vector<Module>& modules,
                         NameBook& names)
{
    Tolerance tolerance;
    tolerance.name = names.read_name(table);
    read_bodies(table, study, modules, tolerance);
    table.demand("origin", "write origin = \"part\" or \"installation\"");
    if (const auto* word =
            table.row_of("origin", tolerance_origin_words, &ToleranceOriginWord::key))
        tolerance.origin = word->origin;
    read_spread(table, tolerance);
    read_ways(table, tolerance);
    finish_section(table, "tolerance");
    return tolerance;
}

/// A whole number within limits, both among them; what was there after a complaint.
template <class Count>
void read_count(TableReader& table, std::string_view key, double least, double most, Count& count)
{
    const std::optional<double> number = table.number(key, "");
    if (!number)
        return;
    if (*number >= least && *number <= most && *number == std::floor(*number))
        count = static_cast<Count>(*number);
    else
        table.complain(key, "`" + std::string(key) + "` of " + table.words() + " is no such number",
                       "write a whole number from " + std::to_string(std::llround(least)) + " to " +
                           std::to_string(std::llround(most)));
}

void read_question(TableReader& table, const std::vector<Tolerance>& tolerances,
                   ToleranceTask& task)
{
    std::vector<std::string> known;
    known.reserve(tolerances.size());
    for (const Tolerance& tolerance : tolerances)
        known.push_back(tolerance.name);
    if (const std::optional<std::string> name = table.text("contributor")) {
        const auto found = std::find(known.begin(), known.end(), *name);
        if (found != known.end())
            task.asked = static_cast<std::size_t>(found - known.begin());
        else
            table.complain("contributor", "there is no tolerance `" + *name + "`",
                           did_you_mean(*name, known));
    }
    const std::optional<double> share = table.number("share", "");
    task.share = share.value_or(task.share);
    if (share && (*share <= 0 || *share > 1))
        table.complain("share", "`share` of [tolerances] is not above 0 and at most 1",
                       "write the share of builds that is to meet the checks, such as 0.997");
}

} // namespace

std::vector<Tolerance> read_tolerances(TableReader& top, const Study& study)
{
    const std::vector<Module> modules = read_modules(top, study);
    std::vector<Tolerance> tolerances;
    NameBook names("tolerance");
    for (TableReader& table : top.tables("tolerance", "[[tolerance]]"))
        tolerances.push_back(read_tolerance(table, study, modules, names));
    return tolerances;
}

ToleranceTask read_tolerance_task(TableReader& top, const Study& study,
                                  const std::vector<Tolerance>& tolerances)
{
    ToleranceTask task;
    std::optional<TableReader> table = top.table("tolerances", "[tolerances]");
    if (!table)
        return task;
    task.checks = read_checks_named(*table, "checks", study);
    read_count(*table, "builds", 64, 1e6, task.builds);
    read_count(*table, "directions", 0, 1e5, task.directions);
    read_count(*table, "seed", 0, 1e9, task.seed);
    if (const std::optional<Angle> step = table->angle("step")) {
        task.step = *step;
        if (*step <= degrees(0) || *step > degrees(45))
            table->complain("step", "`step` of [tolerances] is not above 0 and at most 45",
                            "write degrees between neighbouring directions, such as 5");
    }
    read_question(*table, tolerances, task);
    finish_section(*table, "tolerances");
    return task;
}

} // namespace glim
