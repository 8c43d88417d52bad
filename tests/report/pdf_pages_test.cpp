#include "report/pdf_pages.h"

#include "report/made_document.h"

#include <catch2/catch.hpp>

using namespace glim;

namespace {

std::size_t count_of(const std::string& what, const std::string& in)
{
    std::size_t count = 0;
    for (std::size_t at = in.find(what); at != std::string::npos; at = in.find(what, at + 1))
        ++count;
    return count;
}

/// A table of so many rows.
Document long_table(int rows)
{
    Table table{"Long", {{"Name"}, {"Figure", ColumnKind::figures}}, {}};
    for (int i = 0; i < rows; ++i)
        table.rows.push_back({{"row"}, {std::to_string(i)}});
    return {"Long", "", {Heading{1, "Table"}, std::move(table)}};
}

} // namespace

TEST_CASE("a page break, the title and a long table make pages", "[report]")
{
    CHECK(count_of("/Type /Page %", pdf_pages(test::made_document())) == 2);
    CHECK(count_of("/Type /Page %", pdf_pages(long_table(200))) == 4);
}

TEST_CASE("a sheet lies across on one page, as long as it can be read", "[report]")
{
    const auto pages_across = [](Document document) {
        document.is_sheet = true;
        const std::string pdf = pdf_pages(document);
        CHECK(count_of("/MediaBox [ 0 0 841.89 595.276 ]", pdf) == count_of("/Type /Page %", pdf));
        return count_of("/Type /Page %", pdf);
    };
    CHECK(count_of("/Type /Page %", pdf_pages(long_table(52))) == 2);
    CHECK(pages_across(long_table(10)) == 1);
    CHECK(pages_across(long_table(52)) == 1);
    CHECK(pages_across(long_table(300)) > 2);
}

TEST_CASE("every heading is a bookmark", "[report]")
{
    const std::string pdf = pdf_pages(test::made_document());
    CHECK(count_of("/Title (First)", pdf) == 1);
    CHECK(count_of("/Title (Within)", pdf) == 1);
}

TEST_CASE("the same document gives the same PDF", "[report]")
{
    const bool same = pdf_pages(test::made_document()) == pdf_pages(test::made_document());
    CHECK(same);
}

TEST_CASE("names without end and texts longer than a page do no harm", "[report]")
{
    const std::string name(3000, 'n');
    const std::string text = [] {
        std::string words;
        for (int i = 0; i < 3000; ++i)
            words += "word ";
        return words;
    }();
    Document document{name, "", {Heading{1, "A"}, Paragraph{text}, Notice{text}}};
    document.blocks.push_back(Table{name, {{"Name"}, {"Text"}}, {{{name}, {text}}}});
    document.blocks.push_back(Terms{{{name, {text}}}});
    document.blocks.push_back(BulletList{{text}});
    CHECK(count_of("/Type /Page %", pdf_pages(document)) >= 10);
}

TEST_CASE("whoever wants to know hears of every page", "[report]")
{
    std::size_t last = 0, all = 0;
    pdf_pages(test::made_document(), [&](std::size_t done, std::size_t of) {
        CHECK(done == last + 1);
        last = done;
        all = of;
    });
    CHECK(last == 2);
    CHECK(all == 2);
}
