#include "judgement/sobol_sequence.h"

#include <cstddef>

namespace glim {

namespace {

/// S. Vigna's splitmix64: every bit of the answer hangs on every bit of the question.
std::uint64_t scrambled(std::uint64_t x)
{
    x += 0x9E3779B97F4A7C15U;
    x = (x ^ (x >> 30U)) * 0xBF58476D1CE4E5B9U;
    x = (x ^ (x >> 27U)) * 0x94D049BB133111EBU;
    return x ^ (x >> 31U);
}

int degree_of(std::uint32_t polynomial)
{
    int degree = -1;
    for (; polynomial != 0; polynomial >>= 1U)
        ++degree;
    return degree;
}

/// Over the numbers 0 and 1: whether x runs through all nonzero remainders before it returns to 1.
bool is_primitive(std::uint32_t polynomial)
{
    const int degree = degree_of(polynomial);
    const std::uint32_t top = 1U << static_cast<unsigned>(degree);
    std::uint32_t power = 1;
    for (std::uint32_t order = 1; order < top; ++order) {
        power <<= 1U;
        if ((power & top) != 0)
            power ^= polynomial;
        if (power == 1)
            return order == top - 1;
    }
    return false;
}

/// The next primitive polynomial above; bit i is the coefficient of the i-th power.
std::uint32_t next_primitive(std::uint32_t polynomial)
{
    do
        polynomial += 2; // without the constant term x would divide it
    while (!is_primitive(polynomial));
    return polynomial;
}

/// `free` draws the numbers that may be chosen.
std::vector<std::uint32_t> directions_of(std::uint32_t polynomial, std::uint64_t free, int digits)
{
    const int degree = degree_of(polynomial);
    std::vector<std::uint32_t> v(static_cast<std::size_t>(digits));
    for (int i = 0; i < digits; ++i) {
        const auto at = static_cast<std::size_t>(i);
        if (i < degree) {
            // An odd number below 2^(i + 1), put at the top.
            const auto drawn = static_cast<std::uint32_t>(
                scrambled(free + static_cast<std::uint64_t>(i)) % (1ULL << (at + 1)));
            v[at] = (drawn | 1U) << static_cast<unsigned>(digits - 1 - i);
            continue;
        }
        const std::uint32_t before = v[static_cast<std::size_t>(i - degree)];
        v[at] = before ^ (before >> static_cast<unsigned>(degree));
        for (int k = 1; k < degree; ++k)
            if ((polynomial >> static_cast<unsigned>(degree - k) & 1U) != 0)
                v[at] ^= v[static_cast<std::size_t>(i - k)];
    }
    return v;
}

} // namespace

SobolSequence::SobolSequence(std::size_t dimensions, std::uint64_t seed) : seed_(seed)
{
    std::uint32_t polynomial = 1;
    for (std::size_t d = 0; d < dimensions; ++d) {
        if (d == 0) { // the plain reflection of the number's digits
            Directions plain;
            for (int i = 0; i < digits; ++i)
                plain.push_back(1U << static_cast<unsigned>(digits - 1 - i));
            directions_.push_back(std::move(plain));
            continue;
        }
        polynomial = d == 1 ? 3 : next_primitive(polynomial);
        directions_.push_back(directions_of(polynomial, 1000 * d, digits));
    }
}

std::vector<double> SobolSequence::point(std::uint32_t shift, std::uint32_t number) const
{
    std::vector<double> coordinates;
    coordinates.reserve(directions_.size());
    for (std::size_t d = 0; d < directions_.size(); ++d) {
        auto x =
            static_cast<std::uint32_t>(scrambled(scrambled(scrambled(seed_) + shift) + d) >> 32U);
        for (std::size_t i = 0; number >> i != 0; ++i)
            if ((number >> i & 1U) != 0)
                x ^= directions_[d][i];
        coordinates.push_back((x + 0.5) / 4294967296.0);
    }
    return coordinates;
}

} // namespace glim
