#pragma once
// Words and drawings set one under another down a narrow sheet, so that nothing can cover anything
// however long the words are.

#include "drawing/scene.h"

#include <string>

namespace toft::parts {

/// Narrower sheets are not laid out.
inline constexpr double narrowest_sheet = 320;

class WordColumn {
public:
    /// From `top` down, between `left` and `right`, user units.
    WordColumn(double left, double right, double top) : left_(left), right_(right), y_(top) {}

    double left() const { return left_; }
    double right() const { return right_; }
    double width() const { return right_ - left_; }
    /// Nothing set so far reaches below.
    double y() const { return y_; }

    /// `words` broken at spaces into at most `most` lines, `indent` in from the left; cut with "…"
    /// where those do not hold them.
    void words(const std::string& words, const drawing::TextStyle& style, std::size_t most = 12,
               double indent = 0);
    /// The name of what follows, with room above it.
    void heading(const std::string& words);
    /// Things already placed, which reach down to `foot`.
    void placed(drawing::Items items, double foot);
    void gap(double by) { y_ += by; }

    drawing::Items take() { return std::move(items_); }

private:
    double left_;
    double right_;
    double y_;
    drawing::Items items_;
};

}  // namespace toft::parts
