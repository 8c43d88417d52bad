#include "report/sight_lines_json.h"

#include "report/csv.h"
#include "report/dxf.h"
#include "words/keys.h"
#include "words/numbers.h"
#include "words/sight_lines_words.h"

#include <algorithm>

namespace glim {

namespace {

Json mm_or_null(const std::optional<Length>& length)
{
    return length ? Json(in_mm(*length)) : Json();
}

std::string_view key_of(SightView view)
{
    return sight_view_words[static_cast<std::size_t>(view)].key;
}

Json json_of(const SightRow& row)
{
    Json::Array field, nose;
    for (const FieldRectangle& r : row.field.rectangles)
        field.push_back(
            Json::Object{{"h_deg", Json::Array{in_degrees(r.h_least), in_degrees(r.h_most)}},
                         {"v_deg", Json::Array{in_degrees(r.v_least), in_degrees(r.v_most)}}});
    for (const NoseReach& reach : row.nose)
        nose.push_back(
            Json::Object{{"y_mm", in_mm(reach.lateral)}, {"ahead_mm", mm_or_null(reach.ahead)}});
    return Json::Object{{"row", row.row.id},
                        {"provenance", key_of(row.row.citation.provenance)},
                        {"source", row.row.citation.source},
                        {"field", std::move(field)},
                        {"relaxed", row.relaxed},
                        {"needed_mm2", row.needed > Area() ? Json(in_mm2(row.needed)) : Json()},
                        {"worst_h_deg", in_degrees(row.worst.h)},
                        {"worst_v_deg", in_degrees(row.worst.v)},
                        {"least_shown_mm2", in_mm2(row.least_shown)},
                        {"lens_too_small", row.lens_too_small()},
                        {"not_needed", row.spared},
                        {"least_face_mm2", row.least_face ? Json(in_mm2(*row.least_face)) : Json()},
                        {"nose", std::move(nose)}};
}

Json json_of(const PlaceRoom& room)
{
    return Json::Object{{"row", room.row},
                        {"provenance", key_of(room.citation.provenance)},
                        {"of", room.of == PlaceRoom::Of::height ? "height" : "lateral"},
                        {"least_mm", mm_or_null(room.least)},
                        {"most_mm", mm_or_null(room.most)},
                        {"is_mm", in_mm(room.is)},
                        {"keeps", room.keeps()}};
}

Json json_of(const LimitCurve& curve, const SightLines& lines)
{
    Json::Array points;
    for (const Point2& p : curve.points)
        points.push_back(Json::Array{p.x(), p.y()});
    return Json::Object{{"row", lines.rows[curve.row].row.id},
                        {"view", key_of(curve.view)},
                        {"label", curve.label},
                        {"closed", curve.closed},
                        {"points_mm", std::move(points)}};
}

} // namespace

Json sight_lines_json(const SightLines& lines, const LampSketch& sketch, const std::string& command)
{
    Json::Array rows, places, curves;
    for (const SightRow& row : lines.rows)
        rows.push_back(json_of(row));
    for (const PlaceRoom& room : lines.places)
        places.push_back(json_of(room));
    for (const LimitCurve& curve : lines.curves)
        curves.push_back(json_of(curve, lines));
    Json::Array choices;
    for (const WaysOfRule& ways : lines.choices) {
        Json::Array each;
        for (const std::vector<std::string>& rows_of_way : ways)
            each.push_back(Json::Array(rows_of_way.begin(), rows_of_way.end()));
        choices.push_back(std::move(each));
    }
    Json::Array open;
    for (const RowLeftOpen& row : lines.left_open)
        open.push_back(Json::Object{{"row", row.row},
                                    {"hangs_on", row.hangs_on == Measured::lamp_category
                                                     ? "lamp_category"
                                                     : "vehicle_category"}});
    return Json::Object{{"caution", caution},
                        {"kept", lines.kept()},
                        {"sentence", sight_lines_sentence(lines)},
                        {"one_is_enough", std::move(choices)},
                        {"rows_left_open", std::move(open)},
                        {"sketch", sketch.study.file},
                        {"title", sketch.study.title},
                        {"command", command},
                        {"vehicle_width_mm", in_mm(*sketch.study.vehicle.overall_width)},
                        {"lens_width_mm", in_mm(sketch.width)},
                        {"lens_height_mm", in_mm(sketch.height)},
                        {"lens_face_mm2", in_mm2(lines.face)},
                        {"lens_facets", lines.facets},
                        {"lateral_mm", in_mm(sketch.lateral)},
                        {"height_mm", in_mm(sketch.above)},
                        {"rows", std::move(rows)},
                        {"places", std::move(places)},
                        {"curves", std::move(curves)}};
}

std::string curves_csv(const SightLines& lines)
{
    std::string text = csv_row({"row", "view", "curve", "point", "across_mm", "up_mm"});
    for (const LimitCurve& curve : lines.curves)
        for (std::size_t i = 0; i < curve.points.size(); ++i)
            text += csv_row({lines.rows[curve.row].row.id, std::string(key_of(curve.view)),
                             curve.label, std::to_string(i + 1), rounded(curve.points[i].x(), 3),
                             rounded(curve.points[i].y(), 3)});
    return text;
}

std::string nose_csv(const SightLines& lines)
{
    std::string text = csv_row({"row", "provenance", "y_mm", "ahead_mm"});
    for (const SightRow& row : lines.rows)
        for (const NoseReach& reach : row.nose)
            text +=
                csv_row({row.row.id, std::string(key_of(row.row.citation.provenance)),
                         csv_number(reach.lateral), reach.ahead ? csv_number(*reach.ahead) : ""});
    return text;
}

std::string view_dxf(const SightLines& lines, SightView view)
{
    std::vector<DxfLine> drawn;
    std::vector<DxfLabel> labels;
    for (const LimitCurve& curve : lines.curves) {
        if (curve.view != view)
            continue;
        const std::string words = lines.rows[curve.row].row.id + " " + curve.label;
        drawn.push_back({words, curve.points, curve.closed});
        const auto highest =
            std::max_element(curve.points.begin(), curve.points.end(),
                             [](const Point2& a, const Point2& b) { return a.y() < b.y(); });
        labels.push_back({words, words, *highest});
    }
    const auto flat = [view](const Point& p) {
        return view == SightView::plan   ? Point2(p.y(), p.x())
               : view == SightView::side ? Point2(p.x(), p.z())
                                         : Point2(p.y(), p.z());
    };
    const Point2 a = flat(lines.lens.least), b = flat(lines.lens.most);
    drawn.push_back({"lens", {a, {b.x(), a.y()}, b, {a.x(), b.y()}}, true});
    return dxf_of(drawn, labels);
}

} // namespace glim
