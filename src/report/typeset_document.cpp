#include "report/typeset_document.h"

#include "report/chart_words.h"

#include <utility>

namespace glim {

namespace {

void set(std::string& words) { words = typeset(std::move(words)); }

struct Typesetter {
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

Document typeset_document(Document document)
{
    set(document.title);
    for (Block& block : document.blocks)
        std::visit(Typesetter{}, block);
    return document;
}

} // namespace glim
