#include "input/capped_complaints.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

std::string text_of(const CappedComplaints& complaints)
{
    try {
        complaints.throw_if_any();
    } catch (const InputError& error) {
        return error.what();
    }
    return "";
}

} // namespace

TEST_CASE("of each kind twenty are told, and the others counted", "[input]")
{
    CappedComplaints complaints("f");
    int made = 0;
    for (int line = 1; line <= 25; ++line)
        complaints.add("pears", [&] {
            ++made;
            return Complaint{{"f", line, 0, {}}, "a pear", "eat it"};
        });
    complaints.add("plums", [] { return Complaint{{"f", 99, 0, {}}, "a plum", "keep it"}; });

    CHECK(made == 20);
    const std::string text = text_of(complaints);
    CHECK(text.find("f:20: a pear\n    eat it\nf:99: a plum\n    keep it\n"
                    "f: and 5 more pears\n    the first 20 are told above\n") != std::string::npos);
    CHECK(text.find("f:21:") == std::string::npos);
}

TEST_CASE("exactly twenty leave nothing over", "[input]")
{
    CappedComplaints complaints("f");
    for (int line = 1; line <= 20; ++line)
        complaints.add("pears", [&] { return Complaint{{"f", line, 0, {}}, "a pear", "eat it"}; });
    CHECK(text_of(complaints).find("more") == std::string::npos);
    CHECK_FALSE(complaints.empty());
}

TEST_CASE("without a complaint nothing is thrown", "[input]")
{
    const CappedComplaints complaints("f");
    CHECK(complaints.empty());
    CHECK_NOTHROW(complaints.throw_if_any());
}
