#pragma once

#include "geometry/direction.h"

#include <cstddef>
#include <memory>
#include <vector>

namespace glim::bench {

/// The very rays that the program asks, caught on their way to the tracer, to be asked again by a
/// bare loop: the same rays of the same scenes in the same packets of 16.
///
/// The linker puts our own function in the tracer's place (`--wrap`), for this program only; while
/// nothing is recorded it costs one comparison a packet.
class RecordedRays {
public:
    /// Records until stop() or the end of its life. One at a time, and one thread may ask
    /// meanwhile.
    RecordedRays();
    ~RecordedRays();
    RecordedRays(const RecordedRays&) = delete;
    RecordedRays& operator=(const RecordedRays&) = delete;

    void stop();
    std::size_t count() const;
    /// Asks all of them once more and does nothing else; how many are hidden. Requires: the scenes
    /// are still there.
    std::size_t ask_again() const;

    struct Ray {
        Point from; ///< beyond its skip, scene frame
        Direction toward;
        bool hidden; ///< as the tracer answered
    };
    /// At most so many, spread evenly over those of the scene that was asked first.
    std::vector<Ray> some(std::size_t at_most) const;

private:
    struct Packets;
    std::unique_ptr<Packets> packets_;
};

} // namespace glim::bench
