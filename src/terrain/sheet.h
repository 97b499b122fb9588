#pragma once
// The sheet that the pictures of the ground share: head, drawing, words, who decides. On a wide
// sheet the words stand beside the drawing, on others below it; a phone's is laid out for its
// width.

#include "drawing/scene.h"
#include "parts/word_column.h"
#include "site/job.h"

#include <functional>
#include <string>

namespace toft::terrain {

/// Up to this width (user units) a sheet is laid out for a phone.
inline constexpr double phone_wide = 480;
/// From this width on the words stand beside the drawing.
inline constexpr double beside_wide = 1000;
/// The sheet for paper, and the widest there is.
inline constexpr double paper_wide = 1400;

/// Where a drawing goes: between `left` and `right` from `top` down.
struct Space {
    double left = 0;
    double right = 0;
    double top = 0;
    bool phone = false;
    bool beside = false;  ///< the words stand beside it

    double width() const { return right - left; }
    double letters() const { return phone ? 11.5 : 12; }
};

/// What was drawn, and the lowest line that nothing of it reaches below.
struct Drawn {
    drawing::Items items = {};
    double foot = 0;
};

struct Content {
    std::string kind;      ///< "The ground's resistance and the rod": what the picture shows
    std::string building;  ///< whose
    std::string sentence;  ///< the answer first
    std::function<void(parts::WordColumn&)> verdict;  ///< below the sentence; may be empty
    std::function<Drawn(const Space&)> draw;          ///< may be empty: no drawing
    std::function<void(parts::WordColumn&)> explain;  ///< may be empty
};

/// Widths are taken into 320 to 1400 user units.
drawing::Scene lay_out(const site::Job& job, const Content& content, double width);

/// The sheet for a building that the answer does not hold.
drawing::Scene no_such_side(const site::Job& job, const std::string& kind, double width);

/// The building's name, its id where it has none, or `named` itself when the job has no such.
std::string building_words(const site::Job& job, const std::string& named);

/// Ordinary words of the column, and those of second rank.
void say(parts::WordColumn& column, const std::string& words);
void say_small(parts::WordColumn& column, const std::string& words);

/// A sign at the column's left, up to `sign_wide` and as high as a line below its origin, and
/// words right of it; the first of them bold.
void say_signed(parts::WordColumn& column, drawing::Items sign, const std::string& head,
                const std::string& words);
inline constexpr double sign_wide = 42;

}  // namespace toft::terrain
