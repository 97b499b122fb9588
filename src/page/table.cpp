#include "page/piece.h"

#include "drawing/measure.h"

#include <algorithm>
#include <numeric>

namespace toft::page {

namespace {

using drawing::Weight;
namespace palette = drawing::palette;

constexpr double row_step = 1.3;
constexpr double between = 10;     ///< two columns
constexpr double usual_pad = 3.5;  ///< over and under the words of a row
constexpr double small_pad = 1.2;
constexpr double pen_room = 24;         ///< least height of a row to write in
constexpr std::size_t most_lines = 36;  ///< of a row in one piece: half a page

struct Place {
    double left = 0;
    double right = 0;
    double width() const { return right - left; }
};

std::vector<Place> places_of(const std::vector<Column>& columns, double width) {
    const double room = width - between * static_cast<double>(columns.size() - 1);
    const double shares =
        std::accumulate(columns.begin(), columns.end(), 0.0,
                        [](double sum, const Column& column) { return sum + column.share; });
    std::vector<Place> places;
    double x = 0;
    for (const Column& column : columns) {
        const double wide = room * column.share / shares;
        places.push_back({x, x + wide});
        x += wide + between;
    }
    return places;
}

class RowSetter {
public:
    RowSetter(const Table& table, double width)
        : table_(table), width_(width), places_(places_of(table.columns, width)) {}

    Pieces rows() {
        Pieces all;
        const auto head = this->head();
        if (head) {
            Piece first = *head;
            first.above = 8;
            first.keep_next = true;
            all.push_back(std::move(first));
        }
        for (std::size_t i = 0; i < table_.rows.size(); ++i) {
            for (Piece& piece : row(table_.rows[i])) {
                piece.head = head;
                all.push_back(std::move(piece));
            }
            if (i == 0 && !head && !all.empty()) all.front().above = 8;
            // What is said over the rows of a group stands with the first of them.
            if (spans(table_.rows[i])) all.back().keep_next = true;
        }
        if (!all.empty()) all.back().keep_next = false;
        return all;
    }

private:
    double size() const { return table_.small ? smallest_size : table_size; }
    double pad() const { return table_.small ? small_pad : usual_pad; }

    using Lines = std::vector<std::string>;

    /// A lone cell takes the whole width.
    bool spans(const Row& row) const { return row.cells.size() == 1 && places_.size() > 1; }

    std::vector<Lines> broken(const std::vector<std::string>& cells, Weight weight) const {
        std::vector<Lines> all;
        const bool group = cells.size() == 1 && places_.size() > 1;
        for (std::size_t c = 0; c < cells.size() && c < places_.size(); ++c) {
            const double room = group ? width_ : places_[c].width();
            all.push_back(lines_within(cells[c], room, size(), weight));
        }
        return all;
    }

    /// Lines `from` on, at most `most_lines`, of every cell.
    Piece part(const std::vector<Lines>& cells, std::size_t from, Weight weight) const {
        Piece piece;
        std::size_t lines = 0;
        for (std::size_t c = 0; c < cells.size(); ++c) {
            const std::size_t to = std::min(cells[c].size(), from + most_lines);
            for (std::size_t n = from; n < to; ++n) {
                const double y =
                    pad() + static_cast<double>(n - from) * row_step * size() + 1.0 * size();
                const bool right = table_.columns[c].side == Side::right;
                drawing::TextStyle style{.size = size(), .weight = weight};
                style.anchor = right ? drawing::Anchor::end : drawing::Anchor::start;
                piece.items.emplace_back(drawing::text(
                    {right ? places_[c].right : places_[c].left, y}, cells[c][n], style));
                lines = std::max(lines, n - from + 1);
            }
        }
        piece.height =
            static_cast<double>(std::max(lines, std::size_t{1})) * row_step * size() + 2 * pad();
        return piece;
    }

    void rule(Piece& piece, double width, drawing::Colour colour) const {
        piece.items.emplace_back(drawing::Line{
            {0, piece.height}, {width_, piece.height}, drawing::stroked(colour, width)});
    }

    Pieces row(const Row& row) const {
        const Weight weight = row.strong ? Weight::bold : Weight::normal;
        const auto cells = broken(row.cells, weight);
        std::size_t lines = 1;
        for (const Lines& cell : cells) lines = std::max(lines, cell.size());
        Pieces all;
        for (std::size_t from = 0; from < lines; from += most_lines) {
            Piece piece = part(cells, from, weight);
            if (table_.to_write_in && !spans(row)) write_room(piece);
            if (from + most_lines >= lines) rule(piece, 0.6, palette::faint);
            all.push_back(std::move(piece));
        }
        return all;
    }

    void write_room(Piece& piece) const {
        piece.height = std::max(piece.height, pen_room);
        for (std::size_t c = 1; c < places_.size(); ++c) {
            const double x = places_[c].left - between / 2;
            piece.items.emplace_back(
                drawing::Line{{x, 0}, {x, piece.height}, drawing::stroked(palette::faint, 0.6)});
        }
    }

    std::shared_ptr<const Piece> head() const {
        std::vector<std::string> heads;
        bool any = false;
        for (const Column& column : table_.columns) {
            heads.push_back(column.head);
            any = any || !column.head.empty();
        }
        if (!any) return nullptr;
        std::vector<Lines> cells;
        for (std::size_t c = 0; c < heads.size(); ++c) {
            cells.push_back(lines_within(heads[c], places_[c].width(), size(), Weight::bold));
        }
        auto piece = std::make_shared<Piece>(part(cells, 0, Weight::bold));
        rule(*piece, 1.2, palette::ink);
        return piece;
    }

    const Table& table_;
    double width_;
    std::vector<Place> places_;
};

}  // namespace

Pieces rows_of(const Table& table, double width) {
    if (table.columns.empty()) return {};
    return RowSetter(table, width).rows();
}

}  // namespace toft::page
