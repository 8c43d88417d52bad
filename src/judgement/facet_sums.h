#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <vector>

namespace glim {

/// Sums by facet of a surface that may have millions, of which few are ever asked for: memory goes
/// by the neighbourhoods that are. `Sum` begins as `Sum{}`.
template <class Sum>
class FacetSums {
public:
    Sum& operator[](std::uint32_t facet)
    {
        const std::size_t page = facet / page_size;
        if (page >= pages_.size())
            pages_.resize(page + 1);
        if (!pages_[page])
            pages_[page] = std::make_unique<Page>();
        return (*pages_[page])[facet % page_size];
    }

    /// Calls `act(facet, sum)` by facet for those that were asked for, and for some about them.
    template <class Act>
    void visit(const Act& act) const
    {
        for (std::size_t page = 0; page < pages_.size(); ++page)
            for (std::size_t i = 0; pages_[page] && i < page_size; ++i)
                act(static_cast<std::uint32_t>(page * page_size + i), (*pages_[page])[i]);
    }

private:
    /// Neighbours in a file are mostly neighbours in space.
    static constexpr std::size_t page_size = 256;
    using Page = std::array<Sum, page_size>;
    std::vector<std::unique_ptr<Page>> pages_;
};

} // namespace glim
