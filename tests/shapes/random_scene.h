#pragma once

#include "visibility/prepared_scene.h"

#include <cstdint>

namespace glim::shapes {

/// What one body of a random scene is to the lamp.
enum class BodyPart { lit, approved, opaque };

struct SceneBody {
    std::string name; ///< its kind and its number
    BodyPart part = BodyPart::opaque;
    bool mirrored = false; ///< has a twin across the median plane
    TriangleMesh mesh;     ///< vehicle frame
};

/// A small scene in which much goes wrong: bodies about one lamp, and directions to look from.
/// x ahead, y left, z up; the lamp stands on the left and looks about ahead.
struct RandomScene {
    std::uint64_t seed = 0;
    std::vector<SceneBody> bodies;
    bool twin = false; ///< the lamp's mirror image is the one looked at; lit bodies are mirrored
    Length feature = millimetres(1);
    Length touch = millimetres(0.05);
    std::vector<Bearing> bearings; ///< +H is outboard of the lamp that is looked at
};

/// The scene of a seed, the same on every machine but for the last bits of sines.
RandomScene random_scene(std::uint64_t seed);

/// One lamp, made of the lit bodies, in the midst of the others.
Study study_of(const RandomScene& scene);
LampStanding lamp_of(const RandomScene& scene);
/// In the frame of the lamp that is looked at.
Direction toward(const LampStanding& lamp, const Bearing& bearing);

} // namespace glim::shapes
