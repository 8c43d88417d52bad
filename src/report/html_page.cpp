#include "report/html_page.h"

#include "report/html_style.h"
#include "report/html_text.h"
#include "words/numbers.h"

#include <algorithm>

namespace glim {

namespace {

/// A picture's own pixels: half a point each, as they were painted.
constexpr double pixels_per_point = 2;

std::string element(const std::string& name, const std::string& attributes,
                    const std::string& within)
{
    return "<" + name + (attributes.empty() ? "" : " " + attributes) + ">" + within + "</" + name +
           ">";
}

std::string of_class(const std::string& name)
{
    return name.empty() ? "" : "class=\"" + name + "\"";
}

std::string class_of(Tone tone)
{
    switch (tone) {
    case Tone::met:
        return "met";
    case Tone::not_met:
        return "not-met";
    case Tone::open:
        return "open";
    case Tone::plain:
        break;
    }
    return "";
}

std::string class_of(ColumnKind kind)
{
    switch (kind) {
    case ColumnKind::figures:
        return "figures-column";
    case ColumnKind::code:
        return "code";
    case ColumnKind::words:
        break;
    }
    return "";
}

std::string joined(const std::string& a, const std::string& b)
{
    return a.empty() || b.empty() ? a + b : a + " " + b;
}

/// One picture file within the page. Never inline: ids of one SVG are those of every other one.
std::string image_element(const Figure& figure)
{
    const std::string source = figure.is_picture
                                   ? data_uri("image/png", png_of(figure.drawing, pixels_per_point))
                                   : data_uri("image/svg+xml", svg_of(figure.drawing));
    return "<img src=\"" + source + "\" alt=\"" + html_text(figure.alt) +
           "\" style=\"width: " + rounded(figure.drawing.width, 2) + "pt\">";
}

std::string figure_element(const Figure& figure)
{
    const std::string rest = caption_of(figure).substr(figure.title.size());
    const std::string caption = element("strong", "", html_text(figure.title)) + html_text(rest);
    // As wide as the picture, so that a long caption does not push its neighbour to another line.
    return element("figure", "style=\"width: " + rounded(figure.drawing.width, 2) + "pt\"",
                   image_element(figure) + "\n" + element("figcaption", "", caption)) +
           "\n";
}

std::string head_row(const Table& table)
{
    std::string cells;
    for (const TableColumn& column : table.columns)
        cells += element("th", joined("scope=\"col\"", of_class(class_of(column.kind))),
                         html_text(column.title));
    return element("thead", "", element("tr", "", cells)) + "\n";
}

std::string body_row(const Table& table, const std::vector<TableCell>& row)
{
    std::string cells;
    for (std::size_t c = 0; c < row.size(); ++c) {
        const std::string classes = joined(class_of(table.columns[c].kind), class_of(row[c].tone));
        cells +=
            element(c == 0 ? "th" : "td", joined(c == 0 ? "scope=\"row\"" : "", of_class(classes)),
                    html_text(row[c].text));
    }
    return element("tr", "", cells) + "\n";
}

class PageWriter {
public:
    PageWriter(std::size_t figures, const Progress& progress)
        : figures_(figures), progress_(progress)
    {
    }

    void operator()(const Heading& heading)
    {
        const std::string anchor = "part-" + std::to_string(++headings_);
        // The document's own title is h1.
        const std::string name = "h" + std::to_string(heading.level + 1);
        add(element(name, "id=\"" + anchor + "\"", html_text(heading.text)));
        if (heading.level <= 2)
            contents_.push_back(
                {heading.level, element("a", "href=\"#" + anchor + "\"", html_text(heading.text))});
    }

    void operator()(const Paragraph& paragraph)
    {
        const std::string classes =
            joined(paragraph.is_lead ? "lead" : "", class_of(paragraph.tone));
        add(element("p", of_class(classes), html_text(paragraph.text)));
    }

    void operator()(const BulletList& list)
    {
        std::string items;
        for (const std::string& item : list.items)
            items += element("li", "", html_text(item)) + "\n";
        add(element("ul", "", "\n" + items));
    }

    void operator()(const Terms& terms)
    {
        std::string entries;
        for (const Term& term : terms.terms) {
            entries += element("dt", "", html_text(term.label));
            for (const std::string& line : term.lines)
                entries += element("dd", "", html_text(line));
            entries += "\n";
        }
        add(element("dl", "", "\n" + entries));
    }

    void operator()(const Table& table)
    {
        std::string rows;
        for (const std::vector<TableCell>& row : table.rows)
            rows += body_row(table, row);
        const std::string caption =
            table.caption.empty() ? "" : element("caption", "", html_text(table.caption)) + "\n";
        // A wide table scrolls within its own box, which a keyboard must reach too.
        add(element("div", "class=\"wide\" tabindex=\"0\"",
                    element("table", "",
                            "\n" + caption + head_row(table) + element("tbody", "", "\n" + rows))));
    }

    void operator()(const Figures& figures)
    {
        std::string all;
        for (const Figure& figure : figures.figures) {
            all += figure_element(figure);
            if (progress_)
                progress_(++drawn_, figures_);
        }
        add(element("div", of_class("figures"), "\n" + all));
    }

    void operator()(const Notice& notice)
    {
        add(element("p", "class=\"notice\"", html_text(notice.text)));
    }

    void operator()(const PageBreak&) { add(element("div", of_class("page-break"), "")); }

    std::string body() const { return body_; }

    /// Parts of a chapter as a list within the chapter's entry.
    std::string contents() const
    {
        std::string list;
        for (std::size_t i = 0; i < contents_.size();) {
            std::string within = contents_[i++].link;
            std::string parts;
            for (; i < contents_.size() && contents_[i].level > 1; ++i)
                parts += element("li", "", contents_[i].link) + "\n";
            within += parts.empty() ? "" : "\n" + element("ul", "", "\n" + parts);
            list += element("li", "", within) + "\n";
        }
        return element("nav", "aria-label=\"Contents\"",
                       element("h2", "", "Contents") + "\n" + element("ol", "", "\n" + list));
    }

private:
    struct Entry {
        int level;
        std::string link;
    };

    void add(const std::string& block) { body_ += block + "\n"; }

    std::string body_;
    std::vector<Entry> contents_;
    int headings_ = 0;
    std::size_t drawn_ = 0;
    std::size_t figures_;
    const Progress& progress_;
};

std::size_t figures_in(const Document& document)
{
    std::size_t count = 0;
    for (const Block& block : document.blocks)
        if (const Figures* figures = std::get_if<Figures>(&block))
            count += figures->figures.size();
    return count;
}

/// The page says itself that it may ask for nothing.
std::string head(const Document& document)
{
    return "<head>\n<meta charset=\"utf-8\">\n"
           "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
           "img-src data:; style-src 'unsafe-inline'\">\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
           "<link rel=\"icon\" href=\"data:,\">\n" +
           element("title", "", html_text(document.title)) + "\n" +
           element("style", "", html_style()) + "\n</head>\n";
}

} // namespace

std::string html_page(const Document& document, const Progress& progress)
{
    PageWriter writer(figures_in(document), progress);
    for (const Block& block : document.blocks)
        std::visit(writer, block);
    const std::string date = document.date.empty()
                                 ? ""
                                 : element("p", of_class("date"), html_text(document.date)) + "\n";
    return "<!DOCTYPE html>\n<html lang=\"en\">\n" + head(document) +
           (document.is_sheet ? "<body class=\"sheet\">" : "<body>") + "\n<header>\n" +
           element("h1", "", html_text(document.title)) + "\n" + date + "</header>\n" +
           writer.contents() + "\n<main>\n" + writer.body() + "</main>\n</body>\n</html>\n";
}

} // namespace glim
