#pragma once

#include "shapes/random_scene.h"

#include <functional>

namespace glim::shapes {

using Fails = std::function<bool(const RandomScene&)>;

/// As little of the scene as still fails: of directions, bodies and facets none can be left out
/// alone. At least one direction and one lit facet stay. Requires: `fails(scene)`; asked often.
RandomScene shrunk(RandomScene scene, const Fails& fails);

} // namespace glim::shapes
