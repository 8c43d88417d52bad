#pragma once

#include "judgement/findings.h"
#include "remedy/rows_to_answer.h"

#include <map>

namespace glim {

/// A direction in which an added lamp is looked at: as drawn, and as its mirror image.
struct NeedLook {
    Direction toward = Direction::x(); ///< vehicle frame
    Direction twin_toward = Direction::x();
    Bearing bearing;
};

/// How much of it has to be in view there. 0 of a row of obstacles: it is in view as a whole.
struct AreaNeed {
    std::uint32_t look = 0; ///< place among the looks
    Area area;
};

/// Everything that an added lamp would have to show, and what is missing without it.
class AddedLampNeeds {
public:
    /// `findings` are those of `checks` (places in the study's) without the lamp; `helped` is the
    /// lamp whose failing directions count. Looks every `step`. `study` outlives the needs.
    struct From {
        const Study& study;
        const Findings& findings;
        std::span<const std::size_t> checks;
        LampId helped;
        const Lamp& lamp;
    };
    AddedLampNeeds(const From& from, Angle step);

    const std::vector<NeedLook>& looks() const { return looks_; }
    /// The failing directions, with what is missing there; those of rows of area and of obstacles.
    const std::vector<AreaNeed>& missing() const { return missing_; }
    /// What a lamp with this centre must show to meet every row alone, row by row: fields depend on
    /// the height.
    std::vector<std::span<const AreaNeed>> whole(const Point& centre) const;
    /// Whether the rows of place leave room for a lamp with this centre, as far as a point can
    /// tell.
    bool may_stand(const Point& centre) const;

    const std::vector<RowsToAnswer>& rows() const { return rows_; } ///< one a check
    const Lamp& lamp() const { return lamp_; }

private:
    struct Field {
        const RuleRow* row;
        LampFrame frame, twin_frame;
        const Ground* ground;
        std::vector<std::vector<AreaNeed>> needs; ///< the row's own field's, then its relaxations'
    };
    void add_row(const Check& check, const RuleRow& row, Angle step);
    void add_missing(const From& from, const CheckFindings& check, Angle step);
    void add_place_row(const Check& check, const RuleRow& row);
    std::uint32_t look_at(const LampFrame& frame, const LampFrame& twin, const Bearing& bearing);
    /// Place in Field::needs; nothing where the row does not ask a lamp so high.
    std::optional<std::size_t> choice(const Field& field, const Point& centre) const;

    const Study& study_;
    Lamp lamp_;
    std::vector<RowsToAnswer> rows_;
    std::vector<Field> fields_;
    std::vector<NeedLook> looks_;
    std::map<std::array<double, 6>, std::uint32_t> known_looks_;
    std::vector<AreaNeed> missing_;
    struct PlaceRow {
        const RuleRow* row;
        const Ground* ground;
        std::vector<Point> lamps; ///< corners of lit facets that a gap is measured to
    };
    std::vector<PlaceRow> place_rows_;
};

} // namespace glim
