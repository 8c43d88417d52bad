#include "visibility/ray_caster.h"

#include <embree3/rtcore.h>

#include <algorithm>
#include <array>
#include <limits>
#include <stdexcept>
#include <string>
#include <type_traits>

namespace glim {

namespace {

struct Release {
    void operator()(RTCDevice device) const { rtcReleaseDevice(device); }
    void operator()(RTCScene scene) const { rtcReleaseScene(scene); }
    void operator()(RTCGeometry geometry) const { rtcReleaseGeometry(geometry); }
};
using Device = std::unique_ptr<std::remove_pointer_t<RTCDevice>, Release>;
using SceneHandle = std::unique_ptr<std::remove_pointer_t<RTCScene>, Release>;
using Geometry = std::unique_ptr<std::remove_pointer_t<RTCGeometry>, Release>;

[[noreturn]] void fail(RTCError code, const char* words)
{
    throw std::runtime_error("the ray tracer failed (code " + std::to_string(code) + "): " + words);
}

/// One device for the process; it is never given back, so that no static dies before its user.
RTCDevice device()
{
    static const RTCDevice made = [] {
        RTCDevice fresh = rtcNewDevice(nullptr);
        if (fresh == nullptr)
            fail(rtcGetDeviceError(nullptr), "no device");
        return fresh;
    }();
    return made;
}

void throw_if_failed()
{
    if (const RTCError code = rtcGetDeviceError(device()); code != RTC_ERROR_NONE)
        fail(code, "while preparing a mesh");
}

/// ROBUST, or rays aimed at shared edges leak; the filter is given with each question, not here.
SceneHandle new_scene()
{
    SceneHandle scene(rtcNewScene(device()));
    rtcSetSceneFlags(scene.get(), RTC_SCENE_FLAG_ROBUST | RTC_SCENE_FLAG_CONTEXT_FILTER_FUNCTION);
    return scene;
}

Geometry triangles(const TriangleMesh& mesh, const Vector& into_scene)
{
    Geometry geometry(rtcNewGeometry(device(), RTC_GEOMETRY_TYPE_TRIANGLE));
    auto* corner = static_cast<float*>(
        rtcSetNewGeometryBuffer(geometry.get(), RTC_BUFFER_TYPE_VERTEX, 0, RTC_FORMAT_FLOAT3,
                                3 * sizeof(float), mesh.points.size()));
    auto* index = static_cast<std::uint32_t*>(
        rtcSetNewGeometryBuffer(geometry.get(), RTC_BUFFER_TYPE_INDEX, 0, RTC_FORMAT_UINT3,
                                3 * sizeof(std::uint32_t), mesh.facets.size()));
    throw_if_failed();
    for (const Point& p : mesh.points)
        for (int axis = 0; axis < 3; ++axis)
            *corner++ = static_cast<float>(p[axis] + into_scene[axis]);
    for (const Facet& facet : mesh.facets)
        index = std::copy(facet.begin(), facet.end(), index);
    rtcCommitGeometry(geometry.get());
    return geometry;
}

void place(RTCGeometry geometry, RTCScene of, const Placement& placement)
{
    rtcSetGeometryInstancedScene(geometry, of);
    const Eigen::Matrix<float, 3, 4> move = placement.matrix().matrix().topRows<3>().cast<float>();
    rtcSetGeometryTransform(geometry, 0, RTC_FORMAT_FLOAT3X4_COLUMN_MAJOR, move.data());
    rtcCommitGeometry(geometry);
}

Eigen::AlignedBox3f box_of(RTCScene scene)
{
    RTCBounds b{};
    rtcGetSceneBounds(scene, &b);
    return {Eigen::Vector3f(b.lower_x, b.lower_y, b.lower_z),
            Eigen::Vector3f(b.upper_x, b.upper_y, b.upper_z)};
}

/// A scene and how far its rays go.
struct TracedScene {
    SceneHandle handle = new_scene();
    float reach = 0; ///< beyond everything

    void commit()
    {
        rtcCommitScene(handle.get());
        throw_if_failed();
        // Starts lie among the parts or near them; twice the scene is beyond everything.
        const Eigen::Vector3f size = box_of(handle.get()).sizes();
        reach = 2 * (size.allFinite() ? size.norm() : 0) + 1e5F;
    }
};

constexpr std::size_t packet = 16;
static_assert(sizeof(RTCRay16) == packet * 12 * sizeof(float));

struct alignas(64) Packet {
    RTCRay16 rays;
    int valid[packet];
};

/// What is asked: parallel rays.
struct Bundle {
    const Direction& toward;
    std::span<const RayStart> starts;
    float reach;
};

void fill(RTCRay16& rays, int* valid, const Bundle& bundle, std::size_t first)
{
    const Eigen::Vector3f d = bundle.toward.vector().cast<float>();
    const std::span<const RayStart> starts = bundle.starts;
    for (std::size_t lane = 0; lane < packet; ++lane) {
        const bool live = first + lane < starts.size();
        const RayStart& s = starts[live ? first + lane : first];
        valid[lane] = live ? -1 : 0;
        rays.org_x[lane] = s.x;
        rays.org_y[lane] = s.y;
        rays.org_z[lane] = s.z;
        rays.tnear[lane] = s.skip;
        rays.dir_x[lane] = d.x();
        rays.dir_y[lane] = d.y();
        rays.dir_z[lane] = d.z();
        rays.time[lane] = 0;
        rays.tfar[lane] = bundle.reach;
        rays.mask[lane] = ~0U;
        rays.id[lane] = static_cast<unsigned>(lane);
        rays.flags[lane] = 0;
    }
}

std::vector<std::uint8_t> occluded_in(RTCScene scene, const Bundle& bundle)
{
    std::vector<std::uint8_t> hidden(bundle.starts.size());
    Packet p;
    for (std::size_t first = 0; first < hidden.size(); first += packet) {
        fill(p.rays, p.valid, bundle, first);
        RTCIntersectContext context;
        rtcInitIntersectContext(&context);
        rtcOccluded16(p.valid, scene, &context, &p.rays);
        const std::size_t live = std::min(packet, hidden.size() - first);
        for (std::size_t lane = 0; lane < live; ++lane)
            hidden[first + lane] = p.rays.tfar[lane] < 0 ? 1 : 0;
    }
    return hidden;
}

/// What each ray of a packet meets, in no order.
using Met = std::array<std::vector<FacetHit>, packet>;

/// A context that notes what each ray meets and lets it pass, until the ray has met enough. The
/// context comes first, because the tracer hands back a pointer to it.
struct Recorder {
    RTCIntersectContext context;
    Met* met;
    std::size_t enough;
    bool under_instances;
};

void record(const RTCFilterFunctionNArguments* a)
{
    const auto* recorder = reinterpret_cast<const Recorder*>(a->context);
    for (unsigned i = 0; i < a->N; ++i) {
        if (a->valid[i] == 0)
            continue;
        const unsigned part = recorder->under_instances ? RTCHitN_instID(a->hit, a->N, i, 0)
                                                        : RTCHitN_geomID(a->hit, a->N, i);
        std::vector<FacetHit>& met = (*recorder->met)[RTCRayN_id(a->ray, a->N, i)];
        met.push_back({part, RTCHitN_primID(a->hit, a->N, i), RTCRayN_tfar(a->ray, a->N, i)});
        if (met.size() < recorder->enough)
            a->valid[i] = 0;
    }
}

constexpr std::size_t never_enough = std::numeric_limits<std::size_t>::max();

/// Adds to `met` what the rays meet, in any order.
void ask(RTCScene scene, Packet& p, Met& met, std::size_t enough, bool under_instances)
{
    Recorder recorder{
        .context = {}, .met = &met, .enough = enough, .under_instances = under_instances};
    rtcInitIntersectContext(&recorder.context);
    recorder.context.filter = record;
    rtcOccluded16(p.valid, scene, &recorder.context, &p.rays);
}

/// Leaves only the rays that were stopped, ended a little beyond the nearest facet known: two ties
/// beyond, because a part whose nearest facet lies one tie behind the nearest of all may have a
/// lower one yet a tie behind that. False if none was stopped.
bool end_at_the_nearest(Packet& p, const Met& met, std::size_t enough, float tie)
{
    bool any = false;
    for (std::size_t lane = 0; lane < packet; ++lane) {
        const bool stopped = met[lane].size() >= enough;
        p.valid[lane] = stopped ? -1 : 0;
        any = any || stopped;
        float nearest = p.rays.tfar[lane];
        if (stopped)
            nearest = std::min_element(met[lane].begin(), met[lane].end(), is_nearer)->distance;
        p.rays.tfar[lane] = nearest + 2 * tie;
    }
    return any;
}

/// A context that keeps, of facets at one distance, the lowest. The context comes first, as above.
struct LowestKeeper {
    RTCIntersectContext context;
    std::array<NearestHit, packet> best;
    bool under_instances;
};

/// Refuses a hit at the distance of the best so far unless it is of a lower part or facet.
void keep_lowest(const RTCFilterFunctionNArguments* a)
{
    auto* keeper = reinterpret_cast<LowestKeeper*>(a->context);
    for (unsigned i = 0; i < a->N; ++i) {
        if (a->valid[i] == 0)
            continue;
        const NearestHit hit{keeper->under_instances ? RTCHitN_instID(a->hit, a->N, i, 0)
                                                     : RTCHitN_geomID(a->hit, a->N, i),
                             RTCHitN_primID(a->hit, a->N, i), RTCRayN_tfar(a->ray, a->N, i)};
        NearestHit& best = keeper->best[RTCRayN_id(a->ray, a->N, i)];
        if (best.any() && hit.distance == best.distance &&
            std::pair(best.part, best.facet) < std::pair(hit.part, hit.facet))
            a->valid[i] = 0;
        else
            best = hit;
    }
}

void clear(Met& met)
{
    for (std::vector<FacetHit>& lane : met)
        lane.clear();
}

} // namespace

struct PreparedPart::Scene : TracedScene {};

PreparedPart::PreparedPart(const TriangleMesh& mesh, const Vector& into_scene)
    : scene_(std::make_unique<Scene>())
{
    rtcAttachGeometry(scene_->handle.get(), triangles(mesh, into_scene).get());
    scene_->commit();
}

PreparedPart::~PreparedPart() = default;

std::vector<std::uint8_t> PreparedPart::occluded(const Direction& toward,
                                                 std::span<const RayStart> starts) const
{
    return occluded_in(scene_->handle.get(), {toward, starts, scene_->reach});
}

struct Caster::Scene : TracedScene {
    std::vector<PlacedPart> parts; ///< kept alive while the tracer points to them
    std::size_t part_count = 0;
    bool under_instances = true;
};

Caster::Caster() : scene_(std::make_unique<Scene>()) {}
Caster::~Caster() = default;
Caster::Caster(Caster&&) noexcept = default;
Caster& Caster::operator=(Caster&&) noexcept = default;

Caster::Caster(std::vector<PlacedPart> parts) : Caster()
{
    for (const PlacedPart& part : parts) {
        const Geometry instance(rtcNewGeometry(device(), RTC_GEOMETRY_TYPE_INSTANCE));
        place(instance.get(), part.part->scene_->handle.get(), part.placement);
        rtcAttachGeometryByID(scene_->handle.get(), instance.get(),
                              static_cast<unsigned>(scene_->part_count++));
    }
    scene_->parts = std::move(parts);
    scene_->commit();
}

Caster Caster::flat(std::span<const TriangleMesh> meshes)
{
    Caster caster;
    caster.scene_->under_instances = false;
    for (const TriangleMesh& mesh : meshes)
        rtcAttachGeometryByID(caster.scene_->handle.get(), triangles(mesh, Vector::Zero()).get(),
                              static_cast<unsigned>(caster.scene_->part_count++));
    caster.scene_->commit();
    return caster;
}

std::size_t Caster::part_count() const { return scene_->part_count; }

Length Caster::extent() const
{
    const Eigen::AlignedBox3f box = box_of(scene_->handle.get());
    return millimetres(box.isEmpty() ? 0
                                     : box.min().cwiseAbs().cwiseMax(box.max().cwiseAbs()).norm());
}

std::vector<std::uint8_t> Caster::occluded(const Direction& toward,
                                           std::span<const RayStart> starts) const
{
    return occluded(toward, starts, millimetres(scene_->reach));
}

std::vector<std::uint8_t> Caster::occluded(const Direction& toward,
                                           std::span<const RayStart> starts, Length reach) const
{
    return occluded_in(scene_->handle.get(), {toward, starts, static_cast<float>(in_mm(reach))});
}

std::vector<NearestHit> Caster::nearest_hit(const Direction& toward,
                                            std::span<const RayStart> starts) const
{
    std::vector<NearestHit> nearest(starts.size());
    RTCRayHit16 p;
    alignas(64) int valid[packet];
    for (std::size_t first = 0; first < starts.size(); first += packet) {
        fill(p.ray, valid, {toward, starts, scene_->reach}, first);
        std::fill(std::begin(p.hit.geomID), std::end(p.hit.geomID), RTC_INVALID_GEOMETRY_ID);
        LowestKeeper keeper{.context = {}, .best = {}, .under_instances = scene_->under_instances};
        rtcInitIntersectContext(&keeper.context);
        keeper.context.flags = RTC_INTERSECT_CONTEXT_FLAG_COHERENT;
        keeper.context.filter = keep_lowest;
        rtcIntersect16(valid, scene_->handle.get(), &keeper.context, &p);
        const std::size_t live = std::min(packet, starts.size() - first);
        std::copy_n(keeper.best.begin(), live,
                    nearest.begin() + static_cast<std::ptrdiff_t>(first));
    }
    return nearest;
}

// Most rays meet a few facets or none, and are done when they have met them all: that is quicker
// than asking the tracer for the nearest one, which also leaves ties to chance. Only where a ray
// meets many is it asked again, as far as the nearest of those.
FacetHits Caster::first_hit(const Direction& toward, std::span<const RayStart> starts,
                            Length tie) const
{
    constexpr std::size_t enough =
        4; // 2 would stop between the skins of a double shell; 8 gains nothing
    FacetHits hits;
    hits.expect(starts.size());
    const auto tie_mm = static_cast<float>(in_mm(tie));
    Packet p;
    Met met;
    for (std::size_t first = 0; first < starts.size(); first += packet) {
        fill(p.rays, p.valid, {toward, starts, scene_->reach}, first);
        clear(met);
        ask(scene_->handle.get(), p, met, enough, scene_->under_instances);
        if (end_at_the_nearest(p, met, enough, tie_mm))
            ask(scene_->handle.get(), p, met, never_enough, scene_->under_instances);
        const std::size_t live = std::min(packet, starts.size() - first);
        for (std::size_t lane = 0; lane < live; ++lane) {
            keep_first_of_every_part(met[lane], tie_mm);
            hits.add_ray(only_first(met[lane], tie_mm));
        }
    }
    return hits;
}

FacetHits Caster::first_hit_of_every_part(const Direction& toward, std::span<const RayStart> starts,
                                          Length tie) const
{
    FacetHits hits;
    hits.expect(starts.size());
    const auto tie_mm = static_cast<float>(in_mm(tie));
    Packet p;
    Met met;
    for (std::size_t first = 0; first < starts.size(); first += packet) {
        fill(p.rays, p.valid, {toward, starts, scene_->reach}, first);
        clear(met);
        ask(scene_->handle.get(), p, met, never_enough, scene_->under_instances);
        const std::size_t live = std::min(packet, starts.size() - first);
        for (std::size_t lane = 0; lane < live; ++lane) {
            keep_first_of_every_part(met[lane], tie_mm);
            hits.add_ray(met[lane]);
        }
    }
    return hits;
}

} // namespace glim
