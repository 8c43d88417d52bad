#include "geometry/weld.h"

#include <bit>
#include <cassert>

namespace glim {

namespace {

constexpr std::uint32_t nowhere = std::numeric_limits<std::uint32_t>::max();
constexpr std::size_t least_slots = 64;

/// The finishing steps of a 64-bit mixer: every bit of the input reaches every bit of the result.
std::uint64_t mixed(std::uint64_t bits)
{
    bits = (bits ^ (bits >> 32)) * 0xd6e8feb86659fd93U;
    bits = (bits ^ (bits >> 32)) * 0xd6e8feb86659fd93U;
    return bits ^ (bits >> 32);
}

std::uint64_t hash_of(const Point& p)
{
    std::uint64_t hash = 0;
    for (const double x : {p.x(), p.y(), p.z()})
        hash = mixed(std::rotl(hash, 21) ^ std::bit_cast<std::uint64_t>(x));
    return hash;
}

std::uint32_t tag_of(std::uint64_t hash) { return static_cast<std::uint32_t>(hash >> 32); }

} // namespace

PointTable::PointTable(std::size_t expected)
{
    points_.reserve(expected);
    set_size(std::bit_ceil(std::max(least_slots, 2 * expected)));
}

std::uint32_t PointTable::add(const Point& p)
{
    assert(p.allFinite() && points_.size() < nowhere);
    const Point unsigned_zeros = p.array() + 0.0; // -0 + 0 is 0
    const std::uint64_t hash = hash_of(unsigned_zeros);
    Slot& slot = slots_[slot_for(unsigned_zeros, hash)];
    if (slot.place != nowhere)
        return slot.place;

    const auto place = static_cast<std::uint32_t>(points_.size());
    slot = {place, tag_of(hash)};
    points_.push_back(unsigned_zeros);
    if (2 * points_.size() > slots_.size())
        set_size(2 * slots_.size());
    return place;
}

std::vector<Point> PointTable::take_points()
{
    std::vector<Point> points;
    points.swap(points_);
    set_size(least_slots);
    return points;
}

void PointTable::set_size(std::size_t slots)
{
    slots_.assign(slots, Slot{nowhere, 0});
    for (std::size_t i = 0; i < points_.size(); ++i) {
        const std::uint64_t hash = hash_of(points_[i]);
        slots_[slot_for(points_[i], hash)] = {static_cast<std::uint32_t>(i), tag_of(hash)};
    }
}

std::size_t PointTable::slot_for(const Point& p, std::uint64_t hash) const
{
    const std::size_t mask = slots_.size() - 1;
    for (std::size_t i = hash & mask;; i = (i + 1) & mask) {
        const Slot& slot = slots_[i];
        if (slot.place == nowhere || (slot.tag == tag_of(hash) && points_[slot.place] == p))
            return i;
    }
}

TriangleMesh welded(const TriangleMesh& mesh)
{
    PointTable table(mesh.points.size());
    std::vector<std::uint32_t> place_of(mesh.points.size(), nowhere);

    TriangleMesh result;
    result.facets = mesh.facets;
    for (Facet& facet : result.facets)
        for (std::uint32_t& corner : facet) {
            std::uint32_t& place = place_of[corner];
            if (place == nowhere)
                place = table.add(mesh.points[corner]);
            corner = place;
        }
    result.points = table.take_points();
    return result;
}

} // namespace glim
