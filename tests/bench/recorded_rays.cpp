#include "bench/recorded_rays.h"

#include "machine/flush_to_zero.h"

#include <embree3/rtcore.h>

#include <algorithm>
#include <array>
#include <cassert>
#include <vector>

namespace glim::bench {

namespace {

constexpr std::size_t lanes = 16;

/// The rays of a packet run parallel, so that their direction is kept once.
struct KeptPacket {
    RTCScene scene;
    float dx, dy, dz, reach;
    std::size_t live;
    std::array<float, lanes> x, y, z, skip;
    std::array<bool, lanes> hidden;
};

struct alignas(64) Packet {
    RTCRay16 rays;
    int valid[lanes];
};

void fill(Packet& p, const KeptPacket& kept)
{
    for (std::size_t i = 0; i < lanes; ++i) {
        p.valid[i] = i < kept.live ? -1 : 0;
        p.rays.org_x[i] = kept.x[i];
        p.rays.org_y[i] = kept.y[i];
        p.rays.org_z[i] = kept.z[i];
        p.rays.tnear[i] = kept.skip[i];
        p.rays.dir_x[i] = kept.dx;
        p.rays.dir_y[i] = kept.dy;
        p.rays.dir_z[i] = kept.dz;
        p.rays.time[i] = 0;
        p.rays.tfar[i] = kept.reach;
        p.rays.mask[i] = ~0U;
        p.rays.id[i] = 0;
        p.rays.flags[i] = 0;
    }
}

/// The tracer marks a ray that meets something by a negative reach.
bool is_hidden(const RTCRay16& rays, std::size_t lane) { return rays.tfar[lane] < 0; }

std::vector<KeptPacket>* recording = nullptr;

KeptPacket kept(const int* valid, RTCScene scene, const RTCRay16& rays)
{
    KeptPacket k{.scene = scene,
                 .dx = rays.dir_x[0],
                 .dy = rays.dir_y[0],
                 .dz = rays.dir_z[0],
                 .reach = rays.tfar[0],
                 .live = 0,
                 .x = {},
                 .y = {},
                 .z = {},
                 .skip = {},
                 .hidden = {}};
    k.live = static_cast<std::size_t>(std::count(valid, valid + lanes, -1));
    std::copy_n(rays.org_x, lanes, k.x.begin());
    std::copy_n(rays.org_y, lanes, k.y.begin());
    std::copy_n(rays.org_z, lanes, k.z.begin());
    std::copy_n(rays.tnear, lanes, k.skip.begin());
    return k;
}

} // namespace

// The two names are the linker's: what calls rtcOccluded16 comes to the first, the second is it.
// NOLINTNEXTLINE(bugprone-reserved-identifier,readability-identifier-naming)
extern "C" void __real_rtcOccluded16(const int*, RTCScene, RTCIntersectContext*, RTCRay16*);
// NOLINTNEXTLINE(bugprone-reserved-identifier,readability-identifier-naming)
extern "C" void __wrap_rtcOccluded16(const int* valid, RTCScene scene, RTCIntersectContext* context,
                                     RTCRay16* rays)
{
    // Who gives a filter asks something else than whether a ray is hidden.
    if (recording == nullptr || context->filter != nullptr)
        return __real_rtcOccluded16(valid, scene, context, rays);
    KeptPacket packet = kept(valid, scene, *rays);
    __real_rtcOccluded16(valid, scene, context, rays);
    for (std::size_t i = 0; i < packet.live; ++i)
        packet.hidden[i] = is_hidden(*rays, i);
    recording->push_back(packet);
}

struct RecordedRays::Packets {
    std::vector<KeptPacket> all;
};

RecordedRays::RecordedRays() : packets_(std::make_unique<Packets>())
{
    assert(recording == nullptr);
    recording = &packets_->all;
}

RecordedRays::~RecordedRays() { stop(); }

void RecordedRays::stop()
{
    if (recording == &packets_->all)
        recording = nullptr;
}

std::size_t RecordedRays::count() const
{
    std::size_t sum = 0;
    for (const KeptPacket& p : packets_->all)
        sum += p.live;
    return sum;
}

std::size_t RecordedRays::ask_again() const
{
    const FlushToZero flush;
    std::size_t hidden = 0;
    Packet p;
    for (const KeptPacket& kept : packets_->all) {
        fill(p, kept);
        RTCIntersectContext context;
        rtcInitIntersectContext(&context);
        __real_rtcOccluded16(p.valid, kept.scene, &context, &p.rays);
        for (std::size_t i = 0; i < kept.live; ++i)
            hidden += is_hidden(p.rays, i) ? 1 : 0;
    }
    return hidden;
}

std::vector<RecordedRays::Ray> RecordedRays::some(std::size_t at_most) const
{
    std::vector<Ray> rays;
    for (const KeptPacket& p : packets_->all)
        for (std::size_t i = 0; p.scene == packets_->all.front().scene && i < p.live; ++i) {
            const Direction toward = Direction::along(Vector(p.dx, p.dy, p.dz));
            const Point start(p.x[i], p.y[i], p.z[i]);
            rays.push_back({start + double(p.skip[i]) * toward.vector(), toward, p.hidden[i]});
        }
    const std::size_t every =
        std::max<std::size_t>(1, rays.size() / std::max<std::size_t>(1, at_most));
    std::vector<Ray> kept;
    for (std::size_t i = 0; i < rays.size(); i += every)
        kept.push_back(rays[i]);
    return kept;
}

} // namespace glim::bench
