#pragma once
// A picture in the making: what is drawn, what must stay clear, and the words that still seek a
// place.

#include "drawing/callout.h"
#include "drawing/scene.h"

#include <string>
#include <vector>

namespace toft::picture {

/// A callout with its words as they were before they were broken to its column.
struct Note : drawing::Callout {
    std::string head = {};
    std::vector<std::string> more = {};
};

struct Sketch {
    drawing::Items items = {};
    std::vector<drawing::Box> taken = {};
    std::vector<Note> callouts = {};  ///< the most needed first

    /// Draws `more` in front.
    void draw(drawing::Items more) { drawing::append(items, std::move(more)); }
    template <class Shape>
    void put(Shape shape) {
        items.emplace_back(std::move(shape));
    }
    /// Draws `more` as one thing of that kind, and keeps words off it.
    void thing(drawing::Items more, const char* kind, std::string title);
    void keep(const drawing::Box& box) { taken.push_back(box); }
    /// Keeps words off a line and `reach` to both sides of it.
    void keep_line(const std::vector<drawing::Point>& points, double reach);
};

/// A callout whose words are broken to a column: `head` in bold, each of `more` on lines of its
/// own.
Note note(drawing::Point target, std::string_view head, const std::vector<std::string>& more = {});

/// Sets the callouts in `frame`, clear of what is taken; those below `ground` stand on soil.
/// Returns how many found no room and are left out.
std::size_t settle_callouts(Sketch& sketch, const drawing::Box& frame, double ground);

}  // namespace toft::picture
