#include "judgement/blame_tally.h"

#include <algorithm>

namespace glim {

namespace {

/// Less than this is the grain of lattice corners, not a surface in the way.
constexpr Area least_told = square_millimetres(0.01);

void add(TakenArea& sum, const TakenArea& more)
{
    sum.alone += more.alone;
    sum.jointly += more.jointly;
}

void add(FacetArea& sum, const SurfaceTaken::OfFacet& more)
{
    sum.taken += more.area;
    if (more.first)
        sum.first += more.area;
}

Area ranking_area(const FacetShare& f) { return f.mean ? f.mean->taken : f.at_worst.taken; }

bool takes_more(const FacetShare& a, const FacetShare& b)
{
    if (ranking_area(a) != ranking_area(b))
        return ranking_area(a) > ranking_area(b);
    if (a.at_worst.taken != b.at_worst.taken)
        return a.at_worst.taken > b.at_worst.taken;
    return a.facet < b.facet;
}

bool takes_more(const Blocker& a, const Blocker& b)
{
    const Area mean_a = a.taken_on_mean().value_or(Area());
    const Area mean_b = b.taken_on_mean().value_or(Area());
    return mean_a != mean_b ? mean_a > mean_b : a.taken_at_worst() > b.taken_at_worst();
}

Box patch_of(const std::vector<FacetShare>& ranked, const Standing& standing,
             const PreparedScene& scene)
{
    Area all, gathered;
    for (const FacetShare& f : ranked)
        all += ranking_area(f);
    Box patch;
    for (const FacetShare& f : ranked) {
        if (gathered >= patch_share * all)
            break;
        gathered += ranking_area(f);
        for (const Point& corner : scene.facet_of(standing, f.facet))
            patch.add(corner);
    }
    return patch;
}

} // namespace

void BlameTally::add(Counts counts, const std::vector<SurfaceTaken>& taken)
{
    surfaces_.resize(taken.size());
    failing_ += counts.fails ? 1 : 0;
    for (std::size_t i = 0; i < taken.size(); ++i) {
        OfSurface& surface = surfaces_[i];
        surface.standing = taken[i].standing;
        if (counts.worst)
            glim::add(surface.at_worst, taken[i].area);
        if (counts.fails)
            glim::add(surface.failing, taken[i].area);
        add_facets(surface, counts, taken[i]);
    }
}

void BlameTally::add_facets(OfSurface& surface, Counts counts, const SurfaceTaken& taken) const
{
    for (const SurfaceTaken::OfFacet& f : taken.facets) {
        OfFacet& sums = surface.facets[f.facet];
        if (counts.worst)
            glim::add(sums.at_worst, f);
        if (counts.fails)
            glim::add(sums.failing, f);
    }
}

std::vector<Blocker> BlameTally::blockers(const Study& study, const PreparedScene& scene) const
{
    std::vector<Blocker> all;
    for (const OfSurface& surface : surfaces_) {
        Blocker b = blocker(surface);
        if (b.taken_at_worst() + b.taken_on_mean().value_or(Area()) <= least_told)
            continue;
        b.surface = study.surfaces[surface.standing.surface].name;
        b.facets = ranked_facets(surface, scene);
        b.patch = patch_of(b.facets, surface.standing, scene);
        all.push_back(std::move(b));
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Blocker& a, const Blocker& b) { return takes_more(a, b); });
    return all;
}

Blocker BlameTally::blocker(const OfSurface& surface) const
{
    Blocker b;
    b.twin = surface.standing.twin;
    b.alone_at_worst = surface.at_worst.alone;
    b.jointly_at_worst = surface.at_worst.jointly;
    if (failing_ > 0) {
        b.mean_alone = surface.failing.alone / double(failing_);
        b.mean_jointly = surface.failing.jointly / double(failing_);
    }
    return b;
}

std::vector<FacetShare> BlameTally::ranked_facets(const OfSurface& surface,
                                                  const PreparedScene& scene) const
{
    std::vector<FacetShare> ranked;
    surface.facets.visit([&](std::uint32_t facet, const OfFacet& sums) {
        if (sums.at_worst.taken + sums.failing.taken <= Area())
            return;
        const std::array<Point, 3> corners = scene.facet_of(surface.standing, facet);
        FacetShare share{.facet = facet,
                         .at_worst = sums.at_worst,
                         .mean = {},
                         .centre = (corners[0] + corners[1] + corners[2]) / 3};
        if (failing_ > 0)
            share.mean = FacetArea{sums.failing.taken / double(failing_),
                                   sums.failing.first / double(failing_)};
        ranked.push_back(share);
    });
    std::sort(ranked.begin(), ranked.end(),
              [](const FacetShare& a, const FacetShare& b) { return takes_more(a, b); });
    return ranked;
}

} // namespace glim
