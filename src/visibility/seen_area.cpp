#include "visibility/seen_area.h"

namespace glim {

SeenArea& SeenArea::operator+=(const SeenArea& other)
{
    lens += other.lens;
    approved += other.approved;
    visible += other.visible;
    low += other.low;
    high += other.high;
    hidden_low += other.hidden_low;
    hidden_high += other.hidden_high;
    expected_error += other.expected_error; // linear: errors of neighbours may share their cause
    missed += other.missed;
    rim += other.rim;
    outline += other.outline;
    weighed_approved += other.weighed_approved;
    weighed_visible += other.weighed_visible;
    certified = certified && other.certified;
    return *this;
}

} // namespace glim
