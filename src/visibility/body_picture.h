#pragma once

#include "machine/workers.h"
#include "visibility/picture_frame.h"
#include "visibility/placed_mesh.h"
#include "visibility/ray_caster.h"

#include <vector>

namespace glim {

/// What an eye sees of bodies at one sample of a picture.
struct BodySample {
    std::uint32_t part = NearestHit::nothing; ///< place in the bodies
    std::uint32_t facet = 0;                  ///< place in the part's mesh
    float depth = 0; ///< how much nearer to the eye than the frame's centre, mm
    float light = 0; ///< how bright a white surface looks there, 0 to 1
    /// The facet's normal on the side of the eye: to the right, up, to the eye.
    Eigen::Vector3f slant = Eigen::Vector3f::Zero();

    bool any() const { return part != NearestHit::nothing; }
};

struct BodyPicture {
    PictureFrame frame;
    std::vector<BodySample> samples; ///< by rows from the top
};

/// Bodies to be pictured: the same parts, in the same order, for rays and as meshes.
struct PicturedBodies {
    const Caster& caster;
    std::vector<PlacedMesh> meshes; ///< vehicle frame
    Point origin;                   ///< the scene frame's zero, vehicle frame
};

/// The bodies lit softly from all around, a little more from above the eye's left shoulder; both
/// sides of a facet are lit alike, since meshes are wound either way. The same for any number of
/// threads. Throws Stopped.
BodyPicture body_picture(const PicturedBodies& bodies, const PictureFrame& frame,
                         const Workers& workers);

} // namespace glim
