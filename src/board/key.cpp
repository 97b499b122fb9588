#include "board/key.h"

#include "board/ink.h"
#include "board/wires.h"
#include "drawing/measure.h"

#include <functional>
#include <string>

namespace toft::board {

namespace {

constexpr double key_letters = 10.5;
constexpr double sign_wide = 30;
constexpr double row_high = 20;

struct Entry {
    std::string words;
    std::function<Items(Point)> draw;  ///< from the left end of a stroke
};

Entry wire_entry(const std::string& words, Items (*wire)(const std::vector<Point>&)) {
    return {words, [wire](Point at) { return wire({at, at + Point{24, 0}}); }};
}

std::vector<Entry> entries_for(int phases, bool gives) {
    std::vector<Entry> list;
    const char* colours[] = {"brown", "black", "grey"};
    for (int k = 0; k < phases; ++k) {
        const std::string line = phases == 3 ? "L" + std::to_string(k + 1) : "line L";
        list.push_back({line + ", " + colours[k], [k](Point at) {
                            return line_wire({at, at + Point{24, 0}}, k);
                        }});
    }
    list.push_back(wire_entry("neutral N, blue", neutral_wire));
    list.push_back(wire_entry("protective, green-and-yellow", earth_wire));
    list.push_back({"number of the way, and of its terminals", [](Point at) {
                        return numbered_ring(1, at + Point{12, 0});
                    }});
    if (gives) {
        list.push_back({"feeds the board", [](Point at) {
                            return Items{
                                Polygon{{at + Point{7, -4}, at + Point{17, -4}, at + Point{12, 4}},
                                        filled(palette::ink)}};
                        }});
    }
    return list;
}

}  // namespace

void set_key(int phases, bool gives, WordColumn& column) {
    Items items;
    double x = column.left();
    double y = column.y() + 12;
    const TextStyle style{.size = key_letters};
    for (const Entry& entry : entries_for(phases, gives)) {
        const double wide = sign_wide + text_width(entry.words, key_letters);
        if (x > column.left() && x + wide > column.right()) {
            x = column.left();
            y += row_high;
        }
        append(items, entry.draw({x, y}));
        items.emplace_back(text({x + sign_wide, y + 3.6}, entry.words, style));
        x += wide + 18;
    }
    column.placed(std::move(items), y + 10);
}

}  // namespace toft::board
