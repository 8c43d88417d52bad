#include "model/complaint.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace glim {

std::string Place::words() const
{
    if (byte)
        return file + ", byte " + std::to_string(*byte);
    if (line == 0)
        return file;
    std::string text = file + ":" + std::to_string(line);
    return column == 0 ? text : text + ":" + std::to_string(column);
}

InputError::InputError(std::vector<Complaint> complaints) : complaints_(std::move(complaints))
{
    for (const Complaint& c : complaints_)
        text_ += c.place.words() + ": " + c.what + "\n    " + c.remedy + "\n";
}

void refuse(Place place, std::string what, std::string remedy)
{
    std::vector<Complaint> one;
    one.push_back({std::move(place), std::move(what), std::move(remedy)});
    throw InputError(std::move(one));
}

void Complaints::add(Place place, std::string what, std::string remedy)
{
    complaints_.push_back({std::move(place), std::move(what), std::move(remedy)});
}

void Complaints::add(const InputError& error)
{
    complaints_.insert(complaints_.end(), error.complaints().begin(), error.complaints().end());
}

void Complaints::sort_by_place()
{
    std::map<std::string, std::size_t> rank_of_file;
    for (const Complaint& c : complaints_)
        rank_of_file.emplace(c.place.file, rank_of_file.size());
    const auto key = [&](const Place& p) {
        return std::tuple(rank_of_file.at(p.file), p.byte.value_or(0), p.line, p.column);
    };
    std::stable_sort(
        complaints_.begin(), complaints_.end(),
        [&](const Complaint& a, const Complaint& b) { return key(a.place) < key(b.place); });
}

void Complaints::throw_if_any() const
{
    if (!complaints_.empty())
        throw InputError(complaints_);
}

} // namespace glim
