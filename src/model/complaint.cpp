#include "model/complaint.h"

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

void Complaints::add(Place place, std::string what, std::string remedy)
{
    complaints_.push_back({std::move(place), std::move(what), std::move(remedy)});
}

void Complaints::add(const InputError& error)
{
    complaints_.insert(complaints_.end(), error.complaints().begin(), error.complaints().end());
}

void Complaints::throw_if_any() const
{
    if (!complaints_.empty())
        throw InputError(complaints_);
}

} // namespace glim
