#include "page/pages.h"

#include "drawing/measure.h"
#include "drawing/scaled.h"
#include "page/piece.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::page {

namespace {

using drawing::Anchor;
using drawing::Items;
using drawing::Weight;
namespace palette = drawing::palette;

constexpr double foot_size = 9;  ///< of date and edition

struct Sheet {
    Items items;
    bool lying = false;
};

double scale_in(const drawing::Scene& scene, const drawing::Box& box) {
    return std::min({1.0, box.width() / scene.width, box.height() / scene.height});
}

/// The drawing as large as the sheet lets it be, in the middle.
Sheet sheet_alone(const drawing::Scene& scene) {
    Sheet sheet;
    sheet.lying = scale_in(scene, lying_field) > scale_in(scene, field);
    const drawing::Box& box = sheet.lying ? lying_field : field;
    const double scale = scale_in(scene, box);
    sheet.items.emplace_back(
        drawing::Group{drawing::scaled(scene.items, scale),
                       {box.left + (box.width() - scene.width * scale) / 2, box.top}});
    return sheet;
}

/// Sets pieces one under another and begins a page where the next ones have no room.
class Setter {
public:
    std::vector<Sheet> set(const Pieces& pieces) {
        for (std::size_t i = 0; i < pieces.size(); ++i) {
            if (pieces[i].alone) {
                sheets_.push_back(sheet_alone(*pieces[i].alone));
                open_ = false;
            } else if (pieces[i].new_page) {
                open_ = open_ && !used_;
            } else {
                set_one(pieces, i);
            }
        }
        if (sheets_.empty()) begin();
        return std::move(sheets_);
    }

private:
    static constexpr double rounding = 1e-6;

    void set_one(const Pieces& pieces, std::size_t i) {
        if (!open_) begin();
        if (used_ && y_ + needed(pieces, i) > field.bottom + rounding) begin();
        if (!used_ && pieces[i].head) put(*pieces[i].head);
        put(pieces[i]);
    }

    void begin() {
        sheets_.emplace_back();
        y_ = field.top;
        used_ = false;
        open_ = true;
    }

    /// Room for the piece and all that it must stand with, but never more than a page has.
    static double needed(const Pieces& pieces, std::size_t i) {
        double high = pieces[i].above + pieces[i].height;
        while (pieces[i].keep_next && i + 1 < pieces.size() && !pieces[i + 1].new_page) {
            ++i;
            const double more = pieces[i].above + pieces[i].height;
            if (high + more > field.height()) break;
            high += more;
        }
        return high;
    }

    void put(const Piece& piece) {
        if (used_) y_ += piece.above;
        if (!piece.items.empty()) {
            sheets_.back().items.emplace_back(drawing::Group{piece.items, {field.left, y_}});
            used_ = true;
        }
        y_ += piece.height;
    }

    std::vector<Sheet> sheets_;
    double y_ = field.top;
    bool open_ = false;  ///< the last sheet takes more
    bool used_ = false;  ///< something stands on it
};

/// Shortened from its end until it fits.
std::string fitted(std::string words, double width, double size, Weight weight) {
    const auto lines = lines_within(words, width, size, weight);
    if (lines.size() < 2) return words;
    const auto shorter =
        lines_within(words, width - drawing::text_width("…", size, weight), size, weight);
    return shorter.front() + "…";
}

drawing::Text small(drawing::Point at, std::string words, Anchor anchor = Anchor::start,
                    Weight weight = Weight::normal) {
    return drawing::text(
        at, std::move(words),
        {.size = small_size, .weight = weight, .anchor = anchor, .colour = palette::graphite});
}

Items around(const Paper& paper, const drawing::Box& field, std::size_t number, std::size_t count) {
    Items items;
    const double top = field.top - 16;
    const double foot = field.bottom + 14;
    const double half = field.width() / 2 - 8;
    const auto rule = [&](double y) {
        items.emplace_back(drawing::Line{
            {field.left, y}, {field.right, y}, drawing::stroked(palette::faint, 0.8)});
    };
    items.emplace_back(
        small({field.left, top - 7}, fitted(paper.job, half, small_size, Weight::normal)));
    items.emplace_back(small({field.right, top - 7},
                             fitted(paper.name, half, small_size, Weight::bold), Anchor::end,
                             Weight::bold));
    rule(top);
    rule(foot);
    const std::string count_words = fmt::format("page {} of {}", number, count);
    const double room = field.width() - drawing::text_width("page 888 of 888", small_size) - 16;
    items.emplace_back(
        small({field.left, foot + 15}, fitted(paper.caution, room, small_size, Weight::normal)));
    const auto made = lines_within(paper.date + (paper.edition.empty() ? "" : ", ") + paper.edition,
                                   room, foot_size);
    for (std::size_t i = 0; i < made.size() && i < 2; ++i) {
        drawing::Text line = small({field.left, foot + 28 + 12 * static_cast<double>(i)},
                                   i == 1 && made.size() > 2 ? made[i] + " …" : made[i]);
        line.style.size = foot_size;
        items.emplace_back(std::move(line));
    }
    items.emplace_back(small({field.right, foot + 30}, count_words, Anchor::end));
    return items;
}

}  // namespace

void mark_sheet(drawing::Scene& sheet, std::size_t number, std::size_t count) {
    const drawing::Box& box = sheet.width > sheet.height ? lying_field : field;
    sheet.items.emplace_back(small({box.right, box.bottom + 29},
                                   fmt::format("sheet {} of {}", number, count), Anchor::end));
}

std::vector<drawing::Scene> pages(const Paper& paper) {
    Pieces pieces;
    for (const Block& block : paper.blocks) {
        for (Piece& piece : pieces_of(block, field.width())) pieces.push_back(std::move(piece));
    }
    std::vector<Sheet> sheets = Setter().set(pieces);
    std::vector<drawing::Scene> scenes;
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        const bool lying = sheets[i].lying;
        drawing::Scene scene;
        scene.width = lying ? sheet_height : sheet_width;
        scene.height = lying ? sheet_width : sheet_height;
        scene.title = fmt::format("{}: {}", paper.name, paper.job);
        scene.description = fmt::format("page {} of {}", i + 1, sheets.size());
        scene.items = around(paper, lying ? lying_field : field, i + 1, sheets.size());
        drawing::append(scene.items, std::move(sheets[i].items));
        scenes.push_back(std::move(scene));
    }
    return scenes;
}

}  // namespace toft::page
