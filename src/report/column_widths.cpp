#include "report/column_widths.h"

namespace glim {

std::vector<double> column_widths(const std::vector<ColumnNeeds>& needs, double available)
{
    double least = 0, natural = 0;
    for (const ColumnNeeds& n : needs) {
        least += n.least;
        natural += n.natural;
    }
    std::vector<double> widths;
    for (const ColumnNeeds& n : needs)
        if (natural <= available)
            widths.push_back(n.natural * available / natural);
        else if (least <= available)
            widths.push_back(n.least +
                             (n.natural - n.least) * (available - least) / (natural - least));
        else
            widths.push_back(n.least * available / least);
    return widths;
}

} // namespace glim
