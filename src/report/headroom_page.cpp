#include "report/headroom_page.h"

#include "drawing/headroom_colours.h"
#include "remedy/way_to_space.h"
#include "report/headroom_json.h"
#include "report/mesh_files.h"
#include "words/headroom_words.h"
#include "words/numbers.h"

namespace glim {

namespace {

std::string painted_ply(const std::vector<Headroom>& headroom)
{
    TriangleMesh all;
    PointFigures painted{"headroom_mm", {}, {}};
    for (const Headroom& h : headroom) {
        const auto first = static_cast<std::uint32_t>(all.points.size());
        all.points.insert(all.points.end(), h.mesh.points.begin(), h.mesh.points.end());
        for (const Facet& f : h.mesh.facets)
            all.facets.push_back({first + f[0], first + f[1], first + f[2]});
        for (const Length figure : h.figures) {
            painted.figures.push_back(in_mm(figure));
            painted.colours.push_back(headroom_band(figure).colour);
        }
    }
    return ply_of(
        all, painted,
        "cornerglim: headroom along the normal to keep-clear spaces; mm, vehicle frame; " +
            rounded(in_mm(farthest_way_in), 0) + " stands for that and more");
}

/// A column's unit stands before no figure, which is how typesetting would know it.
std::string in_print(std::string title)
{
    const std::string plain = "mm2";
    if (const std::size_t at = title.find(plain); at != std::string::npos)
        title.replace(at, plain.size(), "mm\u00b2");
    return title;
}

Table headroom_table(const std::vector<std::vector<std::string>>& cells)
{
    Table table{.caption =
                    "Headroom of each surface, the tightest first: the numbers are those of "
                    "the picture. Below zero: so far inside. Areas are those that have less.",
                .columns = {{"no.", ColumnKind::figures}},
                .rows = {}};
    for (std::size_t c = 0; c < cells.front().size(); ++c)
        table.columns.push_back(
            {in_print(cells.front()[c]), c == 0 || c == 2 || c + 1 == cells.front().size()
                                             ? ColumnKind::words
                                             : ColumnKind::figures});
    for (std::size_t r = 1; r < cells.size(); ++r) {
        std::vector<TableCell> row{{std::to_string(r)}};
        for (const std::string& cell : cells[r])
            row.push_back({cell});
        table.rows.push_back(std::move(row));
    }
    return table;
}

} // namespace

std::vector<Block> headroom_chapter(const HeadroomShown& headroom, const KeepClear& found,
                                    const Study& study)
{
    if (headroom.surfaces.empty())
        return {};
    std::vector<Block> blocks{
        Heading{1, "Headroom"}, Paragraph{headroom_sentence(headroom.surfaces, study)},
        Paragraph{"Headroom is how far a place of a surface may come out along its normal before "
                  "it meets a space that has to stay empty and that the surface counts for."}};
    if (headroom.picture)
        blocks.push_back(Figures{{*headroom.picture}});
    blocks.push_back(headroom_table(headroom_cells(headroom.surfaces, found, study)));
    return blocks;
}

void put_headroom(const HeadroomShown& headroom, const KeepClear& found, const Study& study,
                  NewFolder& folder)
{
    if (headroom.surfaces.empty())
        return;
    folder.put("headroom.ply", painted_ply(headroom.surfaces));
    if (headroom.picture)
        folder.put("headroom.png", png_of(headroom.picture->drawing));
    folder.put("headroom.csv", headroom_csv(headroom.surfaces, found, study));
    folder.put("headroom-by-space.csv", headroom_by_space_csv(headroom.surfaces, found, study));
}

} // namespace glim
