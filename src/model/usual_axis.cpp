#include "model/usual_axis.h"

namespace glim {

ReferenceAxis usual_axis(LampFunction function)
{
    switch (function) {
    case LampFunction::rear_indicator:
    case LampFunction::rear_position:
    case LampFunction::stop:
    case LampFunction::high_stop:
    case LampFunction::rear_fog:
    case LampFunction::reversing:
        return ReferenceAxis::rearward;
    case LampFunction::side_indicator:
    case LampFunction::side_marker:
        return ReferenceAxis::outboard;
    case LampFunction::front_indicator:
    case LampFunction::front_position:
    case LampFunction::daytime_running:
    case LampFunction::end_outline:
    case LampFunction::parking:
    case LampFunction::front_fog:
    case LampFunction::cornering:
    case LampFunction::dipped_beam:
    case LampFunction::main_beam:
        break;
    }
    return ReferenceAxis::forward;
}

} // namespace glim
