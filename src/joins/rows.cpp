#include "joins/rows.h"

#include "drawing/measure.h"
#include "joins/ink.h"
#include "parts/words.h"

#include <algorithm>

namespace toft::joins {

namespace {

constexpr double narrow = 480;      // rows narrower than that are tight
constexpr double least_below = 13;  // the line
constexpr std::size_t most_lines = 8;

double high(const std::vector<std::string>& lines, double size) {
    return 1.25 * size * static_cast<double>(lines.size());
}

std::vector<std::string> terminal_lines(const End& end, const Conductor& conductor, double room) {
    const Ending ending = end.side == Side::near ? conductor.near : conductor.far;
    const TextStyle style{.size = terminal_letters,
                          .weight = ending == Ending::isolated ? Weight::bold : Weight::normal};
    return broken(terminal_words(end, conductor), room, style, most_lines);
}

std::string what_words(const Conductor& conductor) {
    if (conductor.alike < 2) return conductor.words;
    return conductor.words + "; one of each of the " + std::to_string(conductor.alike) + " cables";
}

double alike_high(const Conductor& conductor) {
    return 3.5 * std::clamp(conductor.alike - 1, 0, 2);
}

}  // namespace

Frame frame_of(double left, double right) {
    const double wide = right - left;
    Frame f{left, right};
    f.tight = wide < narrow;
    const double enclosure = f.tight ? std::clamp(0.29 * wide, 95.0, 120.0) : 0.26 * wide;
    const double screw_in = f.tight ? 24 : 28;
    f.near_wall = left + enclosure;
    f.far_wall = right - enclosure;
    f.near_screw = f.near_wall - screw_in;
    f.far_screw = f.far_wall + screw_in;
    f.far_edge = f.tight ? 8 : 30;
    const double words_in = f.tight ? 4 : 42;
    f.words_left = f.near_wall + words_in;
    f.words_right = f.far_wall - words_in;
    f.letters = f.tight ? 10.5 : 11;
    return f;
}

double tag_room(const Frame& frame, const Conductor& conductor) {
    return frame.tight ? 0 : text_width(conductor.tag, frame.letters, Weight::bold) + 6;
}

std::size_t lines_of(const Frame& frame, const Row& row) {
    return frame.tight ? row.what.size() + 1 : std::max<std::size_t>(1, row.what.size());
}

double words_over(const Conductor& conductor) { return 10 + alike_high(conductor); }

std::vector<Row> rows_of(const std::vector<Conductor>& conductors, const Frame& f, const End& near,
                         const End& far, double top) {
    std::vector<Row> rows;
    for (const Conductor& conductor : conductors) {
        Row row{conductor, {}, {}, {}};
        const double room = f.words_right - f.words_left - tag_room(f, conductor);
        row.what = broken(what_words(conductor), room, {.size = f.letters}, most_lines);
        row.near = terminal_lines(near, conductor, f.near_screw - 9 - (f.left + 8));
        row.far = terminal_lines(far, conductor, f.right - f.far_edge - (f.far_screw + 9));
        const double half =
            std::max(high(row.near, terminal_letters), high(row.far, terminal_letters)) / 2 + 4;
        const double over =
            f.line() * static_cast<double>(lines_of(f, row)) + words_over(conductor);
        row.top = top;
        row.y = top + std::max(over, half);
        row.foot = row.y + std::max(least_below + alike_high(conductor), half);
        top = row.foot;
        rows.push_back(std::move(row));
    }
    return rows;
}

}  // namespace toft::joins
