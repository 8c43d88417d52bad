#include "app/report_day.h"

#include "machine/day.h"
#include "model/complaint.h"

#include <catch2/catch.hpp>

using namespace glim;

TEST_CASE("a report bears no day unless somebody asks for one", "[app]")
{
    CHECK(report_day({}, {}).empty());
    CHECK(report_day({}, "").empty()); // set to nothing is as good as not set
}

TEST_CASE("what is asked for goes before the environment", "[app]")
{
    CHECK(report_day("2026-03-04", "0") == "2026-03-04");
    CHECK(report_day("2026-03-04", "nonsense") == "2026-03-04");
    CHECK(is_day(report_day("today", {})));
    CHECK(report_day({}, "1767312245") == "2026-01-02");
}

TEST_CASE("a count of seconds that is none is complained of", "[app]")
{
    for (const char* wrong :
         {"soon", "12.5", "-1", "+1", " 1", "1 ", "0x10", "253402300800", "99999999999999999999"}) {
        INFO(wrong);
        CHECK_THROWS_WITH(report_day({}, wrong),
                          Catch::StartsWith("SOURCE_DATE_EPOCH: `" + std::string(wrong) +
                                            "` is no count of seconds\n"));
    }
}
