#include "input/capped_complaints.h"

namespace glim {

void CappedComplaints::add(const std::string& kind, const std::function<Complaint()>& make)
{
    if (++count_of_kind_[kind] > most_complaints_of_a_kind)
        return;
    Complaint complaint = make();
    told_.add(std::move(complaint.place), std::move(complaint.what), std::move(complaint.remedy));
}

void CappedComplaints::refuse(Complaint last)
{
    told_.add(last.place, last.what, last.remedy);
    throw_if_any();
    throw InputError({std::move(last)}); // not reached: there is one at least
}

void CappedComplaints::throw_if_any() const
{
    Complaints all = told_;
    for (const auto& [kind, count] : count_of_kind_)
        if (count > most_complaints_of_a_kind)
            all.add({.file = file_, .line = 0, .column = 0, .byte = {}},
                    "and " + std::to_string(count - most_complaints_of_a_kind) + " more " + kind,
                    "the first " + std::to_string(most_complaints_of_a_kind) + " are told above");
    all.throw_if_any();
}

} // namespace glim
