#pragma once

#include "shapes/simple_shapes.h"

namespace glim::shapes {

/// Numbers that look random and are the same on every machine: a Weyl sequence on the golden ratio.
class Sequence {
public:
    explicit Sequence(double start) : at_(start) {}
    double next(double least, double most);

private:
    double at_;
};

/// A curved lens that wraps outboard, about 100 x 50 mm, before whose right side stands clutter:
/// plates, bars and balls at 20 to 400 mm, scattered by `seed`.
TriangleMesh wrapped_lens();
std::vector<TriangleMesh> clutter(int seed, int count);

} // namespace glim::shapes
