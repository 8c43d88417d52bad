#include "report/write_report.h"

#include "machine/file_size_limit.h"
#include "machine/stop.h"
#include "machine/temporary_folder.h"
#include "specimens/made_findings.h"

#include <catch2/catch.hpp>

#include <optional>

using namespace glim;

namespace {

Figure figure()
{
    return {{10, 10, [](Canvas&) {}}, "A figure", "", "made for a test", true};
}

/// Writes a made report with two figures into `folder`.
void write(const std::filesystem::path& folder, const ReportProgress& progress)
{
    Findings findings = test::made_findings();
    for (CheckFindings& check : findings.checks) // blockers ask for surfaces of the study
        for (RowFindings& row : check.rows)
            for (LampVerdict& verdict : row.lamps)
                verdict.blockers.clear();
    const RunFacts facts = test::made_facts();
    ReportFigures figures;
    figures.charts = {{{0, 0, 0}, {figure(), figure()}}};
    NewFolder target(folder);
    write_report({findings, facts, figures}, Study(), target, progress);
}

} // namespace

TEST_CASE("the writing of a report ends when asked, and leaves nothing", "[report]")
{
    const test::TemporaryFolder home;
    const std::filesystem::path folder = home / "report";
    std::stop_source of_figures, of_pages;
    std::size_t figures = 0, pages = 0;
    const auto stopping = [](std::stop_source& source, std::size_t& count) {
        return [&](std::size_t done, std::size_t) {
            count = done;
            source.request_stop();
        };
    };
    CHECK_THROWS_AS(write(folder, {.figures = stopping(of_figures, figures),
                                   .pages = stopping(of_figures, pages),
                                   .stop = of_figures.get_token()}),
                    Stopped);
    CHECK(figures == 1);
    CHECK(pages == 0);
    CHECK_THROWS_AS(
        write(folder, {.pages = stopping(of_pages, pages), .stop = of_pages.get_token()}), Stopped);
    CHECK(pages == 1);
    CHECK_FALSE(std::filesystem::exists(folder));
    write(folder, {});
    CHECK(std::filesystem::exists(folder / "report.pdf"));
}

TEST_CASE("a disk that is full at the PDF leaves no report", "[report]")
{
    const test::TemporaryFolder home;
    write(home / "whole", {});
    REQUIRE(std::filesystem::file_size(home / "whole" / "report.pdf") > 1000);
    std::optional<test::FileSizeLimit> full;
    const ReportProgress filling{.pages = [&](std::size_t, std::size_t) { full.emplace(1000); }};
    CHECK_THROWS_WITH(write(home / "report", filling), Catch::Contains("report.pdf"));
    full.reset();
    CHECK_FALSE(std::filesystem::exists(home / "report"));
}
