#include "shapes/rough_scene.h"

#include <cmath>

namespace glim::shapes {

double Sequence::next(double least, double most)
{
    at_ = std::fmod(at_ + 0.6180339887498949, 1.0);
    return least + (most - least) * at_;
}

TriangleMesh wrapped_lens()
{
    return moved(cylinder_wall(80, 50, degrees(-10), degrees(60), 24), {-80, 0, 0});
}

std::vector<TriangleMesh> clutter(int seed, int count)
{
    Sequence s(std::fmod(seed * 0.7548776662466927, 1.0));
    std::vector<TriangleMesh> bodies;
    for (int i = 0; i < count; ++i) {
        const Vector at(s.next(20, 400), s.next(-250, 250), s.next(-100, 100));
        switch (i % 3) {
        case 0:
            bodies.push_back(moved(ball(s.next(5, 20), 24), at));
            break;
        case 1:
            bodies.push_back(
                moved(box({0, 0, 0}, {s.next(1, 5), s.next(2, 6), s.next(80, 200)}), at));
            break;
        default:
            bodies.push_back(moved(turned(plate(Point::Zero(), s.next(10, 60), s.next(10, 60), 2),
                                          degrees(s.next(-80, 80))),
                                   at));
        }
    }
    return bodies;
}

} // namespace glim::shapes
