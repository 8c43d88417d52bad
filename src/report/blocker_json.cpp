#include "report/blocker_json.h"

namespace glim {

namespace {

Json or_null(const std::optional<Area>& area) { return area ? Json(in_mm2(*area)) : Json(); }

Json point_json(const Point& p) { return Json::Array{p.x(), p.y(), p.z()}; }

Json box_json(const Box& box)
{
    if (box.empty())
        return {};
    return Json::Object{{"least", point_json(box.least)}, {"most", point_json(box.most)}};
}

Json facets_json(const Blocker& blocker)
{
    Json::Array facet, worst, worst_first, mean, mean_first, x, y, z;
    for (const FacetShare& share : blocker.facets) {
        facet.push_back(share.facet);
        worst.push_back(in_mm2(share.at_worst.taken));
        worst_first.push_back(in_mm2(share.at_worst.first));
        if (share.mean) {
            mean.push_back(in_mm2(share.mean->taken));
            mean_first.push_back(in_mm2(share.mean->first));
        }
        x.push_back(share.centre.x());
        y.push_back(share.centre.y());
        z.push_back(share.centre.z());
    }
    const bool fails = blocker.mean_alone.has_value();
    return Json::Object{{"facet", std::move(facet)},
                        {"at_worst_mm2", std::move(worst)},
                        {"first_at_worst_mm2", std::move(worst_first)},
                        {"mean_mm2", fails ? Json(std::move(mean)) : Json()},
                        {"mean_first_mm2", fails ? Json(std::move(mean_first)) : Json()},
                        {"centre_x_mm", std::move(x)},
                        {"centre_y_mm", std::move(y)},
                        {"centre_z_mm", std::move(z)}};
}

} // namespace

Json blocker_json(const Blocker& b)
{
    return Json::Object{{"surface", b.surface},
                        {"twin", b.twin},
                        {"alone_at_worst_mm2", in_mm2(b.alone_at_worst)},
                        {"jointly_at_worst_mm2", in_mm2(b.jointly_at_worst)},
                        {"mean_alone_mm2", or_null(b.mean_alone)},
                        {"mean_jointly_mm2", or_null(b.mean_jointly)},
                        {"patch_mm", box_json(b.patch)},
                        {"facets", facets_json(b)}};
}

} // namespace glim
