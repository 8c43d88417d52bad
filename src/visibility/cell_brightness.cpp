#include "visibility/cell_brightness.h"

#include <Eigen/Geometry>

#include <algorithm>
#include <cmath>
#include <limits>

namespace glim {

namespace {

/// Across and up, as somebody sees it who looks at the lamp from before it.
struct Seen {
    double across, up;
};

/// The picture's own plane on this lamp.
class PicturePlane {
public:
    PicturePlane(const LuminancePicture& picture, const LitFace& face) : picture_(picture)
    {
        const Vector& axis = face.axis.vector();
        across_ = face.up.vector().cross(axis).normalized();
        up_ = axis.cross(across_);
        if (face.twin)
            across_ = -across_; // so that what is outboard on the drawn lamp is outboard here
        for (std::size_t f = 0; f < face.mesh.facets.size(); ++f)
            if (area_vector(face.mesh, f).dot(axis) > 0)
                for (int corner = 0; corner < 3; ++corner)
                    widen(seen(face.mesh.corner(f, corner)));
    }

    float grey_at(const Point& p) const
    {
        const Seen s = seen(p);
        const std::size_t column =
            pixel((s.across - least_.across) / (most_.across - least_.across), picture_.columns);
        const std::size_t row = pixel((most_.up - s.up) / (most_.up - least_.up), picture_.rows);
        return picture_.grey[row * picture_.columns + column];
    }

private:
    Seen seen(const Point& p) const { return {across_.dot(Vector(p)), up_.dot(Vector(p))}; }

    void widen(const Seen& s)
    {
        least_ = {std::min(least_.across, s.across), std::min(least_.up, s.up)};
        most_ = {std::max(most_.across, s.across), std::max(most_.up, s.up)};
    }

    static std::size_t pixel(double along, std::size_t count)
    {
        const double place = std::isfinite(along) ? along * static_cast<double>(count) : 0;
        return static_cast<std::size_t>(
            std::clamp(std::floor(place), 0.0, static_cast<double>(count) - 1));
    }

    static constexpr double far = std::numeric_limits<double>::infinity();
    const LuminancePicture& picture_;
    Vector across_, up_;
    Seen least_{far, far}, most_{-far, -far};
};

Point middle_of(const LitLattice& lattice, const LitLattice::Cell& cell)
{
    const auto& v = lattice.vertices();
    return (v[cell.corners[0]] + v[cell.corners[1]] + v[cell.corners[2]]) / 3;
}

struct CellBrightness {
    const LitFace& face;

    std::vector<float> operator()(const UniformlyBright&) const { return {}; }

    std::vector<float> operator()(const BrightBySurface& by) const
    {
        std::vector<double> area(by.shares.size());
        for (std::size_t f = 0; f < face.mesh.facets.size(); ++f)
            area[face.of[f]] += area_vector(face.mesh, f).norm();
        return over_cells([&](const LitLattice::Cell& cell) {
            const std::uint32_t surface = face.of[cell.facet];
            return area[surface] > 0 ? by.shares[surface] / area[surface] : 0;
        });
    }

    std::vector<float> operator()(const LuminancePicture& picture) const
    {
        const PicturePlane plane(picture, face);
        return over_cells([&](const LitLattice::Cell& cell) {
            return plane.grey_at(middle_of(face.lattice, cell));
        });
    }

private:
    template <class Figure>
    std::vector<float> over_cells(const Figure& figure) const
    {
        std::vector<float> all;
        all.reserve(face.lattice.cells().size());
        for (const LitLattice::Cell& cell : face.lattice.cells())
            all.push_back(static_cast<float>(figure(cell)));
        return all;
    }
};

} // namespace

std::vector<float> cell_brightness(const Brightness& brightness, const LitFace& face)
{
    return std::visit(CellBrightness{face}, brightness);
}

} // namespace glim
