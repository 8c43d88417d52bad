#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <vector>

namespace glim {

/// A place in a table of one kind of thing; places of different kinds cannot be swapped.
template <class Kind>
struct SlotId {
    std::uint32_t index = 0;
    friend auto operator<=>(SlotId, SlotId) = default;
};

/// A vector that is asked by the right kind of place: `seen[3]` does not compile.
template <class Id, class Value>
class Slots {
public:
    Slots() = default;
    explicit Slots(std::size_t size, Value value = {}) : values_(size, value) {}

    Value& operator[](Id id) { return values_[id.index]; }
    const Value& operator[](Id id) const { return values_[id.index]; }
    Id add(Value value)
    {
        values_.push_back(std::move(value));
        return Id{static_cast<std::uint32_t>(values_.size() - 1)};
    }
    std::size_t size() const { return values_.size(); }
    bool empty() const { return values_.empty(); }
    auto begin() const { return values_.begin(); }
    auto end() const { return values_.end(); }
    auto begin() { return values_.begin(); }
    auto end() { return values_.end(); }

    std::vector<Id> ids() const
    {
        std::vector<Id> all;
        for (std::uint32_t i = 0; i < values_.size(); ++i)
            all.push_back(Id{i});
        return all;
    }

private:
    std::vector<Value> values_;
};

} // namespace glim
