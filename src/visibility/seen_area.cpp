#include "visibility/seen_area.h"

namespace glim {

SeenArea& SeenArea::operator+=(const SeenArea& other)
{
    lens += other.lens;
    approved += other.approved;
    visible += other.visible;
    low += other.low;
    high += other.high;
    expected_error += other.expected_error; // linear: errors of neighbours may share their cause
    return *this;
}

} // namespace glim
