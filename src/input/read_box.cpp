#include "input/read_box.h"

#include "input/study_section.h"

namespace glim {

std::optional<Box> read_corners(TableReader& box, std::string_view section)
{
    box.demand("least", "write least = [x, y, z], the corner with the least coordinates");
    box.demand("most", "write most = [x, y, z], the corner with the greatest coordinates");
    const std::optional<Vector> least = box.vector("least");
    const std::optional<Vector> most = box.vector("most");
    finish_section(box, section);
    if (!least || !most)
        return std::nullopt;
    if ((least->array() > most->array()).any()) {
        box.complain("least", "`least` exceeds `most` in " + box.words(),
                     "write the lesser coordinate of each axis in `least`");
        return std::nullopt;
    }
    return Box{*least, *most};
}

std::optional<Box> read_box(TableReader& table, std::string_view section)
{
    std::optional<TableReader> box = table.table("box", "`box` of " + table.words());
    return box ? read_corners(*box, section) : std::nullopt;
}

std::vector<Box> read_boxes(TableReader& table, std::string_view key, std::string_view section)
{
    std::vector<Box> boxes;
    const std::string words = "a box in `" + std::string(key) + "` of " + table.words();
    for (TableReader& corners : table.tables(key, words))
        if (const std::optional<Box> box = read_corners(corners, section))
            boxes.push_back(*box);
    return boxes;
}

} // namespace glim
