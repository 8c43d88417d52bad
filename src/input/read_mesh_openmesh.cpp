#include "input/read_mesh_openmesh.h"

#include <OpenMesh/Core/IO/importer/BaseImporter.hh>
#include <OpenMesh/Core/IO/reader/PLYReader.hh>
#include <OpenMesh/Core/System/omstream.hh>

#include <sstream>

namespace glim {

namespace {

using namespace OpenMesh;

/// While it lives, OpenMesh writes nothing to standard error.
class Silence {
public:
    Silence() : spoke_(omerr().is_enabled()) { omerr().disable(); }
    ~Silence()
    {
        if (spoke_)
            omerr().enable();
    }
    Silence(const Silence&) = delete;
    Silence& operator=(const Silence&) = delete;

private:
    bool spoke_;
};

/// Notes points and faces. The rest of the interface is for what plain PLY does not hold.
class SoupCollector : public IO::BaseImporter {
public:
    VertexHandle add_vertex() override
    {
        soup.points.emplace_back(Point::Zero());
        return VertexHandle(static_cast<int>(soup.points.size()) - 1);
    }
    VertexHandle add_vertex(const Vec3f& p) override
    {
        const VertexHandle vertex = add_vertex();
        set_point(vertex, p);
        return vertex;
    }
    void set_point(VertexHandle vertex, const Vec3f& p) override
    {
        soup.points[static_cast<std::size_t>(vertex.idx())] = {p[0], p[1], p[2]};
    }
    FaceHandle add_face(const VHandles& corners) override
    {
        for (const VertexHandle corner : corners)
            soup.corners.push_back(static_cast<std::uint32_t>(corner.idx()));
        soup.sizes.push_back(static_cast<std::uint32_t>(corners.size()));
        return FaceHandle(static_cast<int>(soup.sizes.size()) - 1);
    }
    size_t n_vertices() const override { return soup.points.size(); }
    size_t n_faces() const override { return soup.sizes.size(); }
    size_t n_edges() const override { return 0; }

    HalfedgeHandle add_edge(VertexHandle, VertexHandle) override { return HalfedgeHandle(); }
    FaceHandle add_face(HalfedgeHandle) override { return FaceHandle(); }
    void add_face_texcoords(FaceHandle, VertexHandle, const std::vector<Vec2f>&) override {}
    void add_face_texcoords(FaceHandle, VertexHandle, const std::vector<Vec3f>&) override {}
    void add_texture_information(int, std::string) override {}
    void set_face_texindex(FaceHandle, int) override {}
    void set_halfedge(VertexHandle, HalfedgeHandle) override {}
    void set_next(HalfedgeHandle, HalfedgeHandle) override {}
    void set_face(HalfedgeHandle, FaceHandle) override {}
    void request_face_texcoords2D() override {}
    void set_normal(VertexHandle, const Vec3f&) override {}
    void set_normal(VertexHandle, const Vec3d&) override {}
    void set_normal(FaceHandle, const Vec3f&) override {}
    void set_normal(FaceHandle, const Vec3d&) override {}
    void set_texcoord(VertexHandle, const Vec2f&) override {}
    void set_texcoord(VertexHandle, const Vec3f&) override {}
    void set_texcoord(HalfedgeHandle, const Vec2f&) override {}
    void set_texcoord(HalfedgeHandle, const Vec3f&) override {}
    void set_color(VertexHandle, const Vec3uc&) override {}
    void set_color(VertexHandle, const Vec4uc&) override {}
    void set_color(VertexHandle, const Vec3f&) override {}
    void set_color(VertexHandle, const Vec4f&) override {}
    void set_color(EdgeHandle, const Vec3uc&) override {}
    void set_color(EdgeHandle, const Vec4uc&) override {}
    void set_color(EdgeHandle, const Vec3f&) override {}
    void set_color(EdgeHandle, const Vec4f&) override {}
    void set_color(FaceHandle, const Vec3uc&) override {}
    void set_color(FaceHandle, const Vec4uc&) override {}
    void set_color(FaceHandle, const Vec3f&) override {}
    void set_color(FaceHandle, const Vec4f&) override {}
    void set_status(VertexHandle, const Attributes::StatusInfo&) override {}
    void set_status(HalfedgeHandle, const Attributes::StatusInfo&) override {}
    void set_status(EdgeHandle, const Attributes::StatusInfo&) override {}
    void set_status(FaceHandle, const Attributes::StatusInfo&) override {}

    PolygonSoup soup;
};

} // namespace

PolygonSoup read_with_openmesh(const std::string& ply)
{
    const Silence silence;
    std::istringstream in(ply);
    SoupCollector collector;
    IO::Options options;
    const bool ok = IO::PLYReader().read(in, collector, options);
    return ok ? std::move(collector.soup) : PolygonSoup{};
}

} // namespace glim
