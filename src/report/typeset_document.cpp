#include "report/typeset_document.h"

#include "words/chart_words.h"

#include <utility>

namespace glim {

namespace {

/// Mostly none: names without units are not changed anyhow.
std::vector<std::string> names_at_risk(std::vector<std::string> names)
{
    std::erase_if(names, [](const std::string& name) { return typeset(name) == name; });
    return names;
}

struct Typesetter {
    std::vector<std::string> names;

    void set(std::string& words) const { words = typeset(words, names); }

    void operator()(Heading& heading) const { set(heading.text); }
    void operator()(Paragraph& paragraph) const { set(paragraph.text); }
    void operator()(Notice& notice) const { set(notice.text); }
    void operator()(BulletList& list) const
    {
        for (std::string& item : list.items)
            set(item);
    }
    void operator()(Terms& terms) const
    {
        for (Term& term : terms.terms)
            for (std::string& line : term.lines)
                set(line);
    }
    void operator()(Table& table) const
    {
        set(table.caption);
        for (std::vector<TableCell>& row : table.rows)
            for (std::size_t c = 0; c < row.size(); ++c)
                if (table.columns[c].kind != ColumnKind::code)
                    set(row[c].text);
    }
    void operator()(Figures& figures) const
    {
        for (Figure& figure : figures.figures) {
            set(figure.title);
            set(figure.caption);
        }
    }
    void operator()(PageBreak&) const {}
};

} // namespace

Document typeset_document(Document document, const std::vector<std::string>& names)
{
    const Typesetter typesetter{names_at_risk(names)};
    typesetter.set(document.title);
    for (Block& block : document.blocks)
        std::visit(typesetter, block);
    return document;
}

} // namespace glim
