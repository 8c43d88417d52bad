#include "remedy/lamp_cover.h"

#include <algorithm>
#include <bit>
#include <cstdint>

namespace glim {

namespace {

/// So many pairs or triples are tried; beyond it the greedy choice stands.
constexpr double most_tries = 2e7;

/// One bit a thing.
using Bits = std::vector<std::uint64_t>;

struct Named {
    std::size_t place;
    Bits bits;
};

Bits bits_of(const std::vector<bool>& set)
{
    Bits bits((set.size() + 63) / 64);
    for (std::size_t t = 0; t < set.size(); ++t)
        if (set[t])
            bits[t / 64] |= std::uint64_t{1} << t % 64;
    return bits;
}

int count(const Bits& bits)
{
    int sum = 0;
    for (const std::uint64_t word : bits)
        sum += std::popcount(word);
    return sum;
}

bool holds(const Bits& a, const Bits& b)
{
    for (std::size_t i = 0; i < a.size(); ++i)
        if ((b[i] & ~a[i]) != 0)
            return false;
    return true;
}

Bits united(Bits a, const Bits& b)
{
    for (std::size_t i = 0; i < a.size(); ++i)
        a[i] |= b[i];
    return a;
}

/// Those that no other holds; of alike ones the first.
std::vector<Named> undominated(const std::vector<std::vector<bool>>& sets)
{
    std::vector<Named> named;
    for (std::size_t i = 0; i < sets.size(); ++i)
        named.push_back({i, bits_of(sets[i])});
    std::stable_sort(named.begin(), named.end(),
                     [](const Named& a, const Named& b) { return count(a.bits) > count(b.bits); });
    std::vector<Named> kept;
    for (Named& one : named)
        if (std::none_of(kept.begin(), kept.end(),
                         [&](const Named& k) { return holds(k.bits, one.bits); }))
            kept.push_back(std::move(one));
    return kept;
}

std::optional<std::vector<std::size_t>> exactly(const std::vector<Named>& sets, const Bits& all,
                                                const Bits& so_far, std::size_t from, int left)
{
    for (std::size_t i = from; i < sets.size(); ++i) {
        const Bits with = united(so_far, sets[i].bits);
        if (holds(with, all))
            return std::vector{sets[i].place};
        if (left == 1)
            continue;
        if (auto rest = exactly(sets, all, with, i + 1, left - 1)) {
            rest->push_back(sets[i].place);
            return rest;
        }
    }
    return std::nullopt;
}

std::vector<std::size_t> greedy(const std::vector<Named>& sets, const Bits& all)
{
    std::vector<std::size_t> chosen;
    Bits held(all.size());
    while (!holds(held, all)) {
        const auto best =
            std::max_element(sets.begin(), sets.end(), [&](const Named& a, const Named& b) {
                return count(united(held, a.bits)) < count(united(held, b.bits));
            });
        held = united(held, best->bits);
        chosen.push_back(best->place);
    }
    return chosen;
}

} // namespace

std::optional<SetCover> fewest_sets(const std::vector<std::vector<bool>>& sets)
{
    if (sets.empty())
        return std::nullopt;
    const Bits all = bits_of(std::vector<bool>(sets.front().size(), true));
    const std::vector<Named> few = undominated(sets);
    Bits reach(all.size());
    for (const Named& one : few)
        reach = united(reach, one.bits);
    if (!holds(reach, all))
        return std::nullopt;
    double tries = 1;
    SetCover cover{{}, true};
    for (int size = 1; size <= 3 && cover.sets.empty(); ++size) {
        tries *= static_cast<double>(few.size()) / size;
        if (tries > most_tries)
            break;
        cover.sets = exactly(few, all, Bits(all.size()), 0, size).value_or(cover.sets);
    }
    if (cover.sets.empty())
        cover = {greedy(few, all), false};
    std::sort(cover.sets.begin(), cover.sets.end());
    return cover;
}

} // namespace glim
