#include "generator/panel_edges.h"

#include "generator/body_panels.h"
#include "generator/loft.h"

namespace glim::demo {
namespace {

bool touches(const ShutLine& line, const Point2& uv)
{
    const double off = line.along == Along::u ? uv.y() : uv.x();
    const double on = line.along == Along::u ? uv.x() : uv.y();
    return off == line.at && on >= line.extent.x() && on <= line.extent.y();
}

Point2 drawn_back(const Skin& skin, const std::vector<ShutLine>& lines, const Point2& uv)
{
    Point2 moved = uv;
    for (const ShutLine& line : lines) {
        if (!touches(line, uv))
            continue;
        const int axis = line.along == Along::u ? 1 : 0;
        const double distance = shut_gap / 2 + shut_hem.radius;
        moved[axis] += line.side * distance / skin.slopes(uv).col(axis).norm();
    }
    return moved;
}

} // namespace

TriangleMesh panel(const Skin& skin, const ChartMesh& chart, const std::vector<ShutLine>& lines,
                   const std::function<std::optional<Hem>(const Point2& middle)>& hem)
{
    const Lift bare = from_skin(skin);
    const Lift lift = [&](const Point2& uv) { return bare(drawn_back(skin, lines, uv)); };
    TriangleMesh mesh = lifted(chart, lift);
    append(mesh, hemmed(chart, lift, hem));
    return mesh;
}

} // namespace glim::demo
