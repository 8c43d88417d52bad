#include "model/complaint.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("complaints are sorted file by file, each from its top to its end", "[model]")
{
    Complaints complaints;
    complaints.add({"study", 9, 1, {}}, "fourth", "r");
    complaints.add({"mesh", 0, 0, 80}, "sixth", "r");
    complaints.add({"study", 2, 7, {}}, "second", "r");
    complaints.add({"mesh", 0, 0, 8}, "fifth", "r");
    complaints.add({"study", 2, 7, {}}, "third", "r");
    complaints.add({"study", 2, 1, {}}, "first", "r");
    complaints.sort_by_place();
    try {
        complaints.throw_if_any();
        FAIL("there are complaints");
    } catch (const InputError& error) {
        std::string order;
        for (const Complaint& complaint : error.complaints())
            order += complaint.what + " ";
        CHECK(order == "first second third fourth fifth sixth ");
    }
}
