#include "input/study_lamps.h"

#include "input/read_trim.h"
#include "input/study_section.h"

#include "units/trig.h"
#include <algorithm>

#include <cmath>

namespace glim {

namespace {

/// A reference axis is level within 3 degrees; what is steeper than this was meant otherwise, and H
/// could not be counted from it.
constexpr Angle steepest_axis = degrees(45);

std::optional<Direction> named_axis(TableReader& table, Side side, const Vehicle& vehicle)
{
    const AxisWord* row = table.row_of("axis", axis_words, &AxisWord::word);
    if (!row)
        return std::nullopt;
    if (row->axis == ReferenceAxis::forward)
        return vehicle.forward;
    if (row->axis == ReferenceAxis::rearward)
        return -vehicle.forward;
    if (side != Side::median)
        return vehicle.outboard(side);
    table.complain("axis", "a lamp on the median plane has no outboard side",
                   "write \"forward\", \"rearward\" or [x, y, z]");
    return std::nullopt;
}

std::optional<Direction> read_axis(TableReader& table, Side side, const Vehicle& vehicle)
{
    if (table.holds_text("axis"))
        return named_axis(table, side, vehicle);
    const std::optional<Vector> axis = table.vector("axis");
    if (!axis)
        return std::nullopt;
    if (axis->norm() > 0) {
        const Direction direction = Direction::along(*axis);
        if (std::abs(direction.dot(vehicle.up)) <= sin(steepest_axis))
            return direction;
        table.complain("axis", "`axis` of " + table.words() + " points up or down",
                       "write the way the lamp shines: [x, y, z] within 45 degrees of level");
        return std::nullopt;
    }
    table.complain("axis", "`axis` of " + table.words() + " has no length",
                   "write a direction, such as [-1, 0, 0]");
    return std::nullopt;
}

std::vector<SurfaceId> read_emits(TableReader& table, const std::vector<SurfaceDraft>& surfaces,
                                  const NameBook& surface_names)
{
    const std::string remedy = "name the lit surfaces: emits = [\"lens\"]";
    const bool said = table.demand("emits", remedy);
    const std::vector<Reference> references = table.texts("emits");
    if (said && table.holds_empty_list("emits"))
        table.complain("emits", table.words() + " emits from no surface", remedy);
    std::vector<SurfaceId> lit;
    for (const Reference& reference : references) {
        const auto place = surface_names.find(reference, table.complaints());
        if (place && surfaces[*place].role_known && surfaces[*place].surface.role != Role::emitting)
            table.complaints().add(reference.place,
                                   table.words() + " emits from `" + reference.name +
                                       "`, which is not emitting",
                                   "write role = \"emitting\" for that surface, or name another");
        if (place && std::find(lit.begin(), lit.end(), SurfaceId{*place}) == lit.end())
            lit.push_back(SurfaceId{*place});
    }
    return lit;
}

void read_side(TableReader& table, LampDraft& draft)
{
    table.demand("side", "write \"left\", \"right\" or \"median\", as seated");
    const SideWord* side = table.row_of("side", side_words, &SideWord::word);
    draft.side_known = side != nullptr;
    draft.lamp.side = side ? side->side : Side::left;
    draft.side_place = table.place_of("side");
    draft.lamp.paired = table.truth("pair").value_or(false);
    draft.lamp.optional = table.truth("optional").value_or(false);
    if (draft.lamp.paired && draft.lamp.side == Side::median)
        table.complain("pair", "a lamp on the median plane has no twin",
                       "take `pair` away, or write the side where this lamp stands");
}

LampDraft read_one(TableReader& table, const Vehicle& vehicle,
                   const std::vector<SurfaceDraft>& surfaces, const NameBook& surface_names,
                   NameBook& names)
{
    LampDraft draft;
    draft.place = table.place();
    draft.lamp.name = names.read_name(table);
    table.demand("function", "say what it signals, such as function = \"front_indicator\"");
    if (const auto* row = table.row_of("function", function_words, &FunctionWord::key))
        draft.lamp.function = row->function;
    else
        draft.function_known = false;
    draft.lamp.category = table.text("category").value_or("");
    read_side(table, draft);
    draft.lamp.emits = read_emits(table, surfaces, surface_names);
    for (const std::uint32_t i :
         surface_names.find(table.texts("approved_with"), table.complaints()))
        draft.lamp.approved_with.push_back(SurfaceId{i});
    draft.lamp.axis = read_axis(table, draft.lamp.side, vehicle);
    if (const std::optional<Vector> centre = table.vector("centre"))
        draft.lamp.centre = *centre;
    if (const auto* row =
            table.row_of("surface_basis", surface_basis_words, &SurfaceBasisWord::key))
        draft.lamp.surface_basis = row->basis;
    draft.trim_place = table.place_of("trim");
    if (std::optional<TrimDraft> trim = read_trim(table)) {
        draft.lamp.trim = std::move(trim->trim);
        draft.trim_file = std::move(trim->curve_file);
    }
    draft.light = read_light(table, draft.lamp);
    finish_section(table, "lamp");
    return draft;
}

} // namespace

std::vector<LampDraft> read_lamps(TableReader& study, const std::optional<Vehicle>& vehicle,
                                  const std::vector<SurfaceDraft>& surfaces,
                                  const NameBook& surface_names, NameBook& names)
{
    study.demand("lamp", "add a [[lamp]] for each function to be looked at");
    std::vector<LampDraft> drafts;
    for (TableReader& table : study.tables("lamp", "[[lamp]]"))
        drafts.push_back(
            read_one(table, vehicle.value_or(Vehicle{}), surfaces, surface_names, names));
    return drafts;
}

} // namespace glim
