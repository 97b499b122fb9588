#include "page/piece.h"

#include "drawing/measure.h"
#include "drawing/scaled.h"
#include "drawing/utf8.h"

#include <algorithm>

namespace toft::page {

namespace {

using drawing::Colour;
using drawing::Items;
using drawing::Point;
using drawing::TextStyle;
using drawing::Weight;
namespace palette = drawing::palette;

constexpr double step = 1.36;  ///< from line to line, in sizes
constexpr double mark_room = 22;

/// A word cut into parts that fit.
std::vector<std::string> cut(const std::string& word, double width, double size, Weight weight) {
    std::vector<std::string> parts;
    std::string part;
    for (const char32_t character : drawing::drawable(word)) {
        std::string more = part;
        drawing::append_utf8(more, character);
        if (!part.empty() && drawing::text_width(more, size, weight) > width) {
            parts.push_back(std::move(part));
            part.clear();
            drawing::append_utf8(part, character);
        } else {
            part = std::move(more);
        }
    }
    if (!part.empty()) parts.push_back(std::move(part));
    return parts;
}

/// One line of words as a piece, its baseline where letters of that size want it.
Piece line_piece(const std::string& words, double x, const TextStyle& style) {
    Piece piece;
    piece.height = step * style.size;
    piece.items.emplace_back(drawing::text({x, style.size * 1.02}, words, style));
    return piece;
}

/// First and last line of a paragraph never stand alone on a page.
void hold_together(Pieces& lines) {
    if (lines.size() < 2) return;
    lines.front().keep_next = true;
    lines[lines.size() - 2].keep_next = true;
}

struct Maker {
    double width;

    Pieces operator()(const Heading& heading) const {
        const bool chapter = heading.level == Level::chapter;
        const TextStyle style{.size = chapter ? 19.0 : 14.0, .weight = Weight::bold};
        Pieces lines;
        for (const std::string& line :
             lines_within(heading.words, width, style.size, style.weight)) {
            lines.push_back(line_piece(line, 0, style));
            lines.back().keep_next = true;
        }
        if (lines.empty()) return lines;
        lines.front().above = chapter ? 10 : 16;
        lines.back().height += chapter ? 8 : 3;
        return lines;
    }

    Pieces operator()(const Words& words) const {
        const TextStyle style{.size = words.small ? small_size : body_size,
                              .weight = words.strong ? Weight::bold : Weight::normal,
                              .colour = words.small ? palette::graphite : palette::ink};
        const double x = words.mark.empty() ? 0 : mark_room;
        Pieces lines;
        for (const std::string& line :
             lines_within(words.words, width - x, style.size, style.weight)) {
            lines.push_back(line_piece(line, x, style));
        }
        if (lines.empty()) return lines;
        if (!words.mark.empty()) {
            auto& first = lines.front().items;
            first.insert(first.begin(), drawing::text({2, style.size * 1.02}, words.mark, style));
        }
        lines.front().above = words.mark.empty() ? 5 : 2;
        hold_together(lines);
        return lines;
    }

    Pieces operator()(const Table& table) const { return rows_of(table, width); }

    Pieces operator()(const Picture& picture) const {
        const drawing::Scene& scene = picture.scene;
        if (!(scene.width > 0) || !(scene.height > 0)) return {};
        const double scale =
            std::min({1.0, width / scene.width, picture.most_height / scene.height});
        Piece piece;
        piece.above = 8;
        piece.height = scene.height * scale + 6;
        piece.items.emplace_back(drawing::Group{drawing::scaled(scene.items, scale),
                                                {(width - scene.width * scale) / 2, 0}});
        Pieces all{std::move(piece)};
        if (picture.under.empty()) return all;
        all.front().keep_next = true;
        for (Piece& line : operator()(Words{picture.under, {}, false, true})) {
            all.push_back(std::move(line));
        }
        return all;
    }

    Pieces operator()(const WholePage& page) const {
        if (!(page.scene.width > 0) || !(page.scene.height > 0)) return {};
        Piece piece;
        piece.alone = std::make_shared<const drawing::Scene>(page.scene);
        return {piece};
    }

    Pieces operator()(const Field& field) const {
        constexpr double high = 25;
        const TextStyle name{.size = table_size, .colour = palette::graphite};
        const double from = std::min(width * 0.34, 190.0);
        Piece piece;
        piece.height = high;
        double y = high - 7;
        const auto names = lines_within(field.name, from - 10, name.size);
        const auto known = lines_within(field.known, width - from, body_size);
        const std::size_t lines = std::max({names.size(), known.size(), std::size_t{1}});
        piece.height += static_cast<double>(lines - 1) * step * body_size;
        for (std::size_t i = 0; i < lines; ++i) {
            if (i < names.size()) piece.items.emplace_back(drawing::text({0, y}, names[i], name));
            if (i < known.size()) {
                piece.items.emplace_back(drawing::text({from, y}, known[i], {.size = body_size}));
            }
            if (i + 1 < lines) y += step * body_size;
        }
        piece.items.emplace_back(
            drawing::Line{{from, y + 4}, {width, y + 4}, drawing::stroked(palette::pencil, 0.6)});
        return {piece};
    }

    Pieces operator()(const Caution& caution) const {
        constexpr double inset = 10;
        const TextStyle style{.size = body_size};
        Piece piece;
        piece.above = 8;
        double y = inset;
        Items words;
        for (const std::string& line :
             lines_within(caution.words, width - 2 * inset - 6, style.size)) {
            words.emplace_back(drawing::text({inset + 6, y + style.size * 1.02}, line, style));
            y += step * style.size;
        }
        piece.height = y + inset;
        const drawing::Box frame{0.7, 0.7, width - 0.7, piece.height - 0.7};
        piece.items.emplace_back(drawing::Rect{frame, drawing::stroked(palette::accent, 1.4)});
        piece.items.emplace_back(
            drawing::Rect{{0, 0, 5, piece.height}, drawing::filled(palette::accent)});
        drawing::append(piece.items, std::move(words));
        piece.height += 4;
        return {piece};
    }

    Pieces operator()(const Gap& gap) const {
        Piece piece;
        piece.above = gap.height;
        return {piece};
    }

    Pieces operator()(const NewPage&) const {
        Piece piece;
        piece.new_page = true;
        return {piece};
    }
};

}  // namespace

std::vector<std::string> lines_within(const std::string& words, double width, double size,
                                      Weight weight) {
    std::vector<std::string> lines;
    for (const std::string& line : drawing::wrap(words, width, size, weight)) {
        if (drawing::text_width(line, size, weight) <= width) {
            lines.push_back(line);
            continue;
        }
        for (std::string& part : cut(line, width, size, weight)) lines.push_back(std::move(part));
    }
    return lines;
}

Pieces pieces_of(const Block& block, double width) { return std::visit(Maker{width}, block); }

}  // namespace toft::page
