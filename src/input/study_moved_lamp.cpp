#include "input/study_moved_lamp.h"

#include "input/study_names.h"
#include "input/study_section.h"

#include <algorithm>
#include <cmath>

namespace glim {

namespace {

/// A lamp that goes farther is another design.
constexpr double most_shift_mm = 1000;
constexpr double most_turn_deg = 45;

std::optional<MoveLimits> read_limits(TableReader& table, const MoveWayWord& way)
{
    const std::string key(way.key);
    const double most = turns(way.way) ? most_turn_deg : most_shift_mm;
    const std::string remedy = "write " + key + " = [least, most] in " + std::string(way.unit) +
                               ": 0 between them, at most " + std::to_string(std::lround(most)) +
                               " either way";
    const auto numbers = table.numbers(key, 2, remedy);
    if (!numbers)
        return std::nullopt;
    const MoveLimits limits{(*numbers)[0], (*numbers)[1]};
    if (limits.least <= 0 && limits.most >= 0 && limits.least >= -most && limits.most <= most)
        return limits;
    table.complain(key, "`" + key + "` of " + table.words() + " holds no limits of a move", remedy);
    return std::nullopt;
}

std::array<MoveWay, 2> read_map(TableReader& table, std::array<MoveWay, 2> fallback)
{
    std::vector<std::string> known;
    known.reserve(move_way_words.size());
    for (const MoveWayWord& word : move_way_words)
        known.emplace_back(word.key);
    const std::size_t before = table.complaints().size();
    const std::vector<std::size_t> ways = table.choices("map", known);
    if (!table.has("map") || table.complaints().size() > before)
        return fallback;
    if (ways.size() == 2 && ways[0] != ways[1])
        return {move_way_words[ways[0]].way, move_way_words[ways[1]].way};
    table.complain("map", "`map` of " + table.words() + " does not name two different ways",
                   "write map = [\"forward\", \"outboard\"] or the like");
    return fallback;
}

} // namespace

std::optional<MoveLampTask> read_move_lamp(TableReader& top, const Study& study)
{
    std::optional<TableReader> table = top.table("move_lamp", "[move_lamp]");
    if (!table)
        return std::nullopt;
    MoveLampTask task;
    task.lamp = read_lamp_named(*table, "lamp", study);
    task.checks = read_checks_named(*table, "checks", study);
    bool any = false;
    for (const MoveWayWord& way : move_way_words) {
        MoveLimits& limits = task.limits[static_cast<std::size_t>(way.way)];
        limits = read_limits(*table, way).value_or(limits);
        any = any || limits.least < limits.most;
    }
    if (!any)
        table->complaints().add(table->place(),
                                table->words() + " lets the lamp move no way at all",
                                "leave one of the five ways open");
    task.map = read_map(*table, task.map);
    finish_section(*table, "move_lamp");
    return task;
}

} // namespace glim
