#include "report/photometry_facts.h"

namespace glim {

PhotometryFacts photometry_facts(Photometry photometry, std::string file)
{
    PhotometryFacts facts{.file = std::move(file),
                          .photometry = {},
                          .range = measured_range(photometry.grid),
                          .peak = peak_of(photometry.grid),
                          .flux = flux_of(photometry.grid),
                          .flux_difference = {},
                          .mounting = mounting_trouble(photometry, std::nullopt)};
    if (photometry.stated_flux)
        facts.flux_difference = facts.flux / *photometry.stated_flux - 1;
    facts.photometry = std::move(photometry);
    return facts;
}

} // namespace glim
