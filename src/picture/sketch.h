#pragma once
// A picture in the making: what is drawn, what must stay clear, and the words that still seek a place.

#include "drawing/callout.h"
#include "drawing/scene.h"

#include <string>
#include <vector>

namespace toft::picture {

struct Sketch {
    drawing::Items items = {};
    std::vector<drawing::Box> taken = {};
    std::vector<drawing::Callout> callouts = {};  ///< the most needed first

    /// Draws `more` in front.
    void draw(drawing::Items more) { drawing::append(items, std::move(more)); }
    template <class Shape>
    void put(Shape shape) {
        items.emplace_back(std::move(shape));
    }
    /// Draws `more` as one thing of that kind, and keeps words off it.
    void thing(drawing::Items more, const char* kind, std::string title);
    void keep(const drawing::Box& box) { taken.push_back(box); }
};

/// A callout whose words are broken to a column: `head` in bold, each of `more` on lines of its own.
drawing::Callout note(drawing::Point target, std::string_view head,
                      const std::vector<std::string>& more = {},
                      drawing::Colour under = drawing::palette::paper);

/// Sets the callouts in `frame`, clear of what is taken; returns how many found no room and are left
/// out.
std::size_t settle_callouts(Sketch& sketch, const drawing::Box& frame);

}  // namespace toft::picture
