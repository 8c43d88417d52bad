#include "drawing/vehicle_drawing.h"

#include "drawing/colour_ramp.h"
#include "drawing/picture_colours.h"
#include "drawing/picture_legend.h"
#include "drawing/scale_bar.h"

#include <algorithm>
#include <cmath>
#include <memory>

namespace glim {

namespace {

constexpr double width = 400, height = 250;
constexpr double pixels_a_point = vehicle_pixels_a_point;
constexpr Rect painted_part{0, 20, width, vehicle_raster_height / pixels_a_point};
constexpr double scale_bar_width = 70;
constexpr double text_size = vehicle_label_size;
constexpr Colour line_colour{0, 60, 130};

/// A line that is seen on any ground.
void draw_line(Canvas& canvas, const Point2& a, const Point2& b, bool dashed)
{
    canvas.stroke(segment(a, b), {.colour = white, .width = 3.4, .opacity = 0.85});
    Pen pen{.colour = line_colour, .width = 1.5};
    if (dashed)
        pen.dashes = {4, 2.5};
    canvas.stroke(segment(a, b), pen);
}

void draw_arrow_head(Canvas& canvas, const Point2& tip, const Point2& along)
{
    constexpr double length = 8, half_width = 3.2;
    const Point2 back = tip - length * along;
    const Point2 across(-along.y(), along.x());
    canvas.fill(Path().add({tip, back + half_width * across, back - half_width * across}, true),
                {line_colour});
}

void draw_mark(Canvas& canvas, const Point2& at)
{
    canvas.fill(circle_at(at, 4), {white});
    canvas.stroke(circle_at(at, 4), {.colour = line_colour, .width = 1.5});
    canvas.fill(circle_at(at, 1.6), {line_colour});
}

Text line_text(const std::string& words)
{
    constexpr double widest = 230;
    Text text{.words = words, .size = text_size, .bold = true, .colour = line_colour};
    text.width = std::min(extent_of(text).width + 1, widest);
    text.most_lines = 2;
    text.halo = white;
    return text;
}

/// Of text near `at`, moved so far that it stays on the painted picture.
Rect room_of(const Point2& at, const std::string& words)
{
    constexpr double rim = 4;
    const Extent extent = extent_of(line_text(words));
    return {std::clamp(at.x(), rim, width - extent.width - rim),
            std::clamp(at.y(), painted_part.y + rim, painted_part.bottom() - extent.height - rim),
            extent.width, extent.height};
}

/// The sight line on the drawing, in points.
class DrawnLine {
public:
    DrawnLine(const PictureFrame& frame, const SightLine& line)
        : frame_(frame), from_(on_drawing(line.from)), meets_(line.meets.has_value()),
          turn_(on_drawing(line.meets.value_or(line.from))), end_(on_drawing(far_end(line)))
    {
    }

    void draw(Canvas& canvas) const
    {
        const double length = (end_ - turn_).norm();
        if (length > 0)
            draw_line(canvas, turn_, end_, true);
        if (meets_)
            draw_line(canvas, from_, turn_, false);
        canvas.fill(circle_at(from_, 2.4), {line_colour});
        if (length > 0)
            draw_arrow_head(canvas, end_, (end_ - turn_) / length);
        if (meets_)
            draw_mark(canvas, turn_);
    }

    Rect eye_room(const std::string& words) const
    {
        const bool to_the_right = end_.x() > turn_.x();
        const double wide = *line_text(words).width;
        return room_of({end_.x() + (to_the_right ? -wide - off : off), end_.y() + off}, words);
    }
    /// Squares that cover the line.
    std::vector<Rect> squares() const
    {
        constexpr double half = 4;
        std::vector<Rect> all;
        for (const auto& [a, b] : {std::pair(from_, turn_), std::pair(turn_, end_)}) {
            const int count = static_cast<int>((b - a).norm() / half) + 1;
            for (int i = 0; i <= count; ++i) {
                const Point2 p = a + (b - a) * i / count;
                all.push_back({p.x() - half, p.y() - half, 2 * half, 2 * half});
            }
        }
        return all;
    }
    Rect meets_room(const std::string& words) const
    {
        return room_of(turn_ + Point2(off, off), words);
    }

private:
    static constexpr double off = 6;

    Point2 on_drawing(const Point& p) const
    {
        return frame_.place_of(p) / pixels_a_point + Point2(painted_part.x, painted_part.y);
    }

    /// The line goes on to near the picture's rim, or so far that its direction can be told.
    Point far_end(const SightLine& line) const
    {
        constexpr double rim = 14, farthest_mm = 5000, step_mm = 5;
        const Point begin = line.meets.value_or(line.from);
        double way = 0;
        for (; way < farthest_mm; way += step_mm) {
            const Point2 p = on_drawing(begin + (way + step_mm) * line.toward.vector());
            if (p.x() < rim || p.x() > width - rim || p.y() < painted_part.y + rim ||
                p.y() > painted_part.bottom() - rim)
                break;
        }
        return begin + way * line.toward.vector();
    }

    const PictureFrame& frame_;
    Point2 from_;
    bool meets_;
    Point2 turn_, end_;
};

void draw_words(Canvas& canvas, const Rect& room, const std::string& words)
{
    canvas.text({room.x, room.y}, line_text(words));
}

void draw_labels(Canvas& canvas, const std::vector<PartLabel>& labels)
{
    for (const PartLabel& label : labels) {
        const Text text{
            .words = label.words, .size = text_size, .align = Align::centre, .halo = white};
        const Point2 middle = label.centre / pixels_a_point;
        canvas.text({middle.x(), painted_part.y + middle.y() - extent_of(text).height / 2}, text);
    }
}

/// "little [ramp] much", and what takes how much.
void draw_ramp(Canvas& canvas, const Rect& room, const std::string& words)
{
    constexpr double bar_width = 60, bar_height = 8;
    constexpr int steps = 120;
    const Extent little = canvas.text({room.x, room.y}, {.words = "takes little", .size = 8});
    const Rect bar{room.x + little.width + 4, room.y + (little.height - bar_height) / 2, bar_width,
                   bar_height};
    Raster ramp(steps, 1);
    for (int i = 0; i < steps; ++i)
        ramp.at(i, 0) = ramp_colour(painted_strength((i + 0.5) / steps));
    canvas.image(ramp, bar);
    canvas.stroke(path_of(bar), {.width = 0.6});
    canvas.text({bar.right() + 4, room.y}, {.words = "much; " + words,
                                            .size = 8,
                                            .width = room.right() - bar.right() - 4,
                                            .most_lines = 1});
}

} // namespace

double painted_strength(double strength)
{
    constexpr double least = 0.4; // far enough from the quiet colours
    return least + (1 - least) * std::sqrt(std::clamp(strength, 0.0, 1.0));
}

std::vector<Rect> rooms_taken(const PictureFrame& frame, const VehicleOverlay& overlay)
{
    std::vector<Rect> rooms;
    if (!overlay.line)
        return rooms;
    const DrawnLine line(frame, *overlay.line);
    rooms = line.squares();
    rooms.push_back(line.eye_room(overlay.eye_words));
    if (!overlay.meets_words.empty())
        rooms.push_back(line.meets_room(overlay.meets_words));
    for (Rect& room : rooms)
        room = {(room.x - painted_part.x) * pixels_a_point,
                (room.y - painted_part.y) * pixels_a_point, room.width * pixels_a_point,
                room.height * pixels_a_point};
    return rooms;
}

Drawing vehicle_drawing(const PictureFrame& frame, Raster raster, VehicleOverlay overlay)
{
    const auto pixels = std::make_shared<const Raster>(std::move(raster));
    const auto draw = [pixels, frame, overlay = std::move(overlay)](Canvas& canvas) {
        draw_title(canvas, {0, 0, width, painted_part.y}, overlay.title, overlay.figures);
        canvas.image(*pixels, painted_part);
        draw_labels(canvas, overlay.labels);
        draw_border(canvas, painted_part);
        if (overlay.line) {
            const DrawnLine line(frame, *overlay.line);
            line.draw(canvas);
            draw_words(canvas, line.eye_room(overlay.eye_words), overlay.eye_words);
            if (!overlay.meets_words.empty())
                draw_words(canvas, line.meets_room(overlay.meets_words), overlay.meets_words);
        }
        const double below = painted_part.bottom() + 1.5;
        const double legend_width = width - scale_bar_width - 12;
        draw_legend(canvas, {2, below, legend_width, 13}, {{lit_colour, {}, overlay.lit_words}});
        if (!overlay.taken_words.empty())
            draw_ramp(canvas, {2, below + 12, legend_width, 12}, overlay.taken_words);
        draw_scale_bar(canvas,
                       {width - scale_bar_width - 2, below, scale_bar_width, height - below - 3},
                       pixels_a_point * frame.pixel);
    };
    return {width, height, draw};
}

} // namespace glim
