#include "report/html_page.h"

#include "report/made_document.h"

#include <catch2/catch.hpp>

#include <algorithm>

using namespace glim;

namespace {

std::size_t count_of(const std::string& what, const std::string& in)
{
    std::size_t count = 0;
    for (std::size_t at = in.find(what); at != std::string::npos; at = in.find(what, at + 1))
        ++count;
    return count;
}

bool holds(const std::string& page, const std::string& what)
{
    return page.find(what) != std::string::npos;
}

} // namespace

TEST_CASE("a page needs nothing but itself", "[report]")
{
    const std::string page = html_page(test::made_document());
    CHECK_FALSE(holds(page, "<script"));
    CHECK_FALSE(holds(page, "http:"));
    CHECK_FALSE(holds(page, "https:"));
    CHECK_FALSE(holds(page, "@import"));
    CHECK_FALSE(holds(page, "url("));
    CHECK(holds(page, "default-src 'none'; img-src data:"));
}

TEST_CASE("charts are vector files and pictures pixels, each with its words", "[report]")
{
    const std::string page = html_page(test::made_document());
    CHECK(count_of("src=\"data:image/svg+xml;base64,", page) == 1);
    CHECK(count_of("src=\"data:image/png;base64,", page) == 1);
    CHECK(holds(page, "alt=\"blue &quot;all over&quot;\""));
    CHECK(count_of("<img ", page) == count_of(" alt=\"", page));
    CHECK(holds(page, "<figcaption><strong>A chart</strong>. Read it so</figcaption>"));
}

TEST_CASE("tables have a head, and rows begin with theirs", "[report]")
{
    const std::string page = html_page(test::made_document());
    CHECK(holds(page, "<caption>What it shows</caption>"));
    CHECK(holds(page, "<th scope=\"col\">Name</th>"));
    CHECK(holds(page, "<th scope=\"row\">nose</th>"
                      "<td class=\"figures-column open\">12 mm2</td>"));
}

TEST_CASE("the list of contents leads to every heading down to the second level", "[report]")
{
    const std::string page = html_page(test::made_document());
    CHECK(holds(page, "<a href=\"#part-1\">First</a>"));
    CHECK(holds(page, "<h2 id=\"part-1\">First</h2>"));
    CHECK(holds(page, "<a href=\"#part-2\">Within</a>"));
    CHECK(holds(page, "<h3 id=\"part-2\">Within</h3>"));
}

TEST_CASE("a sheet says so, for it is printed across on one page", "[report]")
{
    Document sheet = test::made_document();
    CHECK(html_page(sheet).find("<body class=\"sheet\">") == std::string::npos);
    sheet.is_sheet = true;
    CHECK(html_page(sheet).find("<body class=\"sheet\">") != std::string::npos);
}

TEST_CASE("a page without a day shows none", "[report]")
{
    Document document = test::made_document();
    CHECK(holds(html_page(document), "<p class=\"date\">2026-01-02</p>"));
    document.date.clear();
    CHECK_FALSE(holds(html_page(document), "<p class=\"date\">"));
}

TEST_CASE("whoever wants to know hears of every figure that is drawn", "[report]")
{
    std::vector<std::pair<std::size_t, std::size_t>> heard;
    html_page(test::made_document(),
              [&](std::size_t done, std::size_t all) { heard.emplace_back(done, all); });
    CHECK(heard == std::vector<std::pair<std::size_t, std::size_t>>{{1, 2}, {2, 2}});
}
