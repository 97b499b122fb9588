#include "paper/label_sheet.h"

#include "drawing/measure.h"
#include "page/piece.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace toft::paper {

namespace {

using drawing::Anchor;
using drawing::Box;
using drawing::Items;
using drawing::Line;
using drawing::Point;
using drawing::Rect;
using drawing::TextStyle;
using drawing::units_of_mm;
using drawing::Weight;
namespace palette = drawing::palette;

constexpr double label_step = 1.25;
constexpr double caption_size = 8.5;
constexpr double caption_step = 10.5;
const double label_pad = units_of_mm(3);
const double warning_band = units_of_mm(4);  ///< at the side of a warning
const double field_room = units_of_mm(8);    ///< for a pen
const double label_gap = units_of_mm(5);
const double ruler_room = units_of_mm(9);

/// Sets words and rules downwards.
class LabelColumn {
public:
    LabelColumn(double left, double right, double top) : left_(left), right_(right), y_(top) {}

    void words(const std::string& words, double size, Weight weight) {
        for (const std::string& line : page::lines_within(words, right_ - left_, size, weight)) {
            items_.emplace_back(drawing::text({left_, y_ + drawing::ascent * size}, line,
                                              {.size = size, .weight = weight}));
            y_ += label_step * size;
        }
    }

    void field(const std::string& name, double size) {
        y_ += field_room - label_step * size;
        const double room = 0.55 * (right_ - left_);
        const auto lines = page::lines_within(name, room, size);
        double wide = 0;
        for (const std::string& line : lines) {
            items_.emplace_back(
                drawing::text({left_, y_ + drawing::ascent * size}, line, {.size = size}));
            wide = std::max(wide, drawing::text_width(line, size));
            y_ += label_step * size;
        }
        items_.emplace_back(Line{{left_ + wide + 6, y_ - 2},
                                 {right_, y_ - 2},
                                 drawing::stroked(palette::ink, drawing::weight::hair)});
    }

    void row(const ChartRow& cells, double size, Weight weight) {
        // Shares of the width: number, circuit, device, cable, RCD.
        constexpr double share[] = {0.07, 0.41, 0.20, 0.16, 0.16};
        double x = left_;
        double lowest = y_;
        for (std::size_t c = 0; c < std::size(share); ++c) {
            const double wide = share[c] * (right_ - left_);
            double y = y_ + 3;
            const std::string cell = c < cells.size() ? cells[c] : "";
            for (const std::string& line : page::lines_within(cell, wide - 6, size, weight)) {
                items_.emplace_back(drawing::text({x, y + drawing::ascent * size}, line,
                                                  {.size = size, .weight = weight}));
                y += label_step * size;
            }
            lowest = std::max(lowest, y);
            x += wide;
        }
        const double least = cells.empty() ? y_ + field_room : y_ + 6 + label_step * size;
        y_ = std::max(lowest + 3, least);
        items_.emplace_back(
            Line{{left_, y_}, {right_, y_}, drawing::stroked(palette::ink, drawing::weight::hair)});
    }

    void leave(double room) { y_ += room; }
    double y() const { return y_; }
    Items take() { return std::move(items_); }

private:
    double left_;
    double right_;
    double y_;
    Items items_;
};

void fill_label(LabelColumn& column, const Label& label, const LetterSizes& sizes) {
    column.words(label.big, sizes.big, Weight::bold);
    if (!label.small.empty()) {
        column.leave(3);
        column.words(label.small, sizes.small, Weight::normal);
    }
    if (!label.rows.empty()) {
        column.leave(4);
        column.row({"No.", "Circuit", "Device", "Cable mm²", "RCD"}, sizes.small, Weight::bold);
        for (const ChartRow& row : label.rows) column.row(row, sizes.small, Weight::normal);
    }
    for (const std::string& name : label.fields) column.field(name, sizes.small);
}

Items label_frame(const Box& box, bool warning) {
    Items items;
    items.emplace_back(Rect{box, drawing::dashed(palette::pencil, 0.7, {5, 4})});
    const Box inner = drawing::grown(box, -4);
    items.emplace_back(Rect{inner, drawing::stroked(palette::ink, warning ? 2.4 : 1.0)});
    if (warning) {
        items.emplace_back(Rect{{inner.left, inner.top, inner.left + warning_band, inner.bottom},
                                drawing::filled(palette::ink)});
    }
    return items;
}

void add_ruler(drawing::Scene& sheet, double y) {
    const double end = units_of_mm(100);
    const auto style = drawing::stroked(palette::graphite, 0.8);
    sheet.items.emplace_back(Line{{0, y}, {end, y}, style});
    for (const double x : {0.0, end}) sheet.items.emplace_back(Line{{x, y - 4}, {x, y + 4}, style});
    sheet.items.emplace_back(drawing::text({end + 8, y + 3},
                                           "100 mm: if a ruler says otherwise, print at full size",
                                           {.size = caption_size, .colour = palette::graphite}));
}

struct Shelf {
    std::size_t sheet = 0;
    double top = 0;
    double high = 0;
    double used = 0;  ///< from the left
};

/// Puts labels on the first shelf that has room for them, else on a new one.
class Shelves {
public:
    Shelves(double width, double height) : width_(width), foot_(height - ruler_room) {}

    void add(const drawing::Scene& label) {
        Shelf& shelf = room_for(label);
        sheets_[shelf.sheet].items.emplace_back(
            drawing::Group{label.items, {shelf.used, shelf.top}, "", "label"});
        shelf.used += label.width + label_gap;
    }

    std::vector<drawing::Scene> take() {
        for (std::size_t i = 0; i < sheets_.size(); ++i) {
            add_ruler(sheets_[i], feet_[i] + ruler_room / 2);
            sheets_[i].width = width_;
            sheets_[i].height = feet_[i] + ruler_room;
        }
        return std::move(sheets_);
    }

private:
    Shelf& room_for(const drawing::Scene& label) {
        for (Shelf& shelf : shelves_) {
            if (shelf.used + label.width <= width_ && label.height <= shelf.high) return shelf;
        }
        std::size_t sheet = 0;
        while (sheet < sheets_.size() && feet_[sheet] + label_gap + label.height > foot_) ++sheet;
        if (sheet == sheets_.size()) {
            sheets_.emplace_back();
            feet_.push_back(0);
        }
        const double top = feet_[sheet] > 0 ? feet_[sheet] + label_gap : 0;
        feet_[sheet] = top + label.height;
        shelves_.push_back({sheet, top, label.height, 0});
        return shelves_.back();
    }

    double width_;
    double foot_;
    std::vector<Shelf> shelves_;
    std::vector<double> feet_;  ///< of what stands on each sheet
    std::vector<drawing::Scene> sheets_;
};

}  // namespace

LetterSizes letter_sizes(double big_mm, double small_mm) {
    return {units_of_mm(big_mm) / drawing::cap_height, units_of_mm(small_mm) / drawing::cap_height};
}

drawing::Scene label_scene(const Label& label, const LetterSizes& sizes) {
    drawing::Scene scene;
    scene.width = label.width;
    double top = 0;
    for (const std::string& line : page::lines_within(label.caption, label.width, caption_size)) {
        scene.items.emplace_back(drawing::text(
            {0, top + caption_size}, line, {.size = caption_size, .colour = palette::graphite}));
        top += caption_step;
    }
    top += 2;
    LabelColumn column(label_pad + (label.warning ? warning_band + 4 : 0), label.width - label_pad,
                       top + label_pad);
    fill_label(column, label, sizes);
    scene.height = column.y() + label_pad;
    drawing::append(scene.items, label_frame({0, top, label.width, scene.height}, label.warning));
    drawing::append(scene.items, column.take());
    return scene;
}

std::vector<drawing::Scene> label_scenes(const Label& label, const LetterSizes& sizes,
                                         double most_height) {
    std::vector<drawing::Scene> scenes;
    std::size_t from = 0;
    do {
        Label part = label;
        std::size_t to = label.rows.size();
        for (;; --to) {
            part.rows.assign(label.rows.begin() + static_cast<std::ptrdiff_t>(from),
                             label.rows.begin() + static_cast<std::ptrdiff_t>(to));
            if (from > 0) part.big = label.big + ", continued";
            if (to < label.rows.size())
                part.fields.clear();
            else
                part.fields = label.fields;
            drawing::Scene scene = label_scene(part, sizes);
            if (scene.height <= most_height || to <= from + 1) {
                scenes.push_back(std::move(scene));
                break;
            }
        }
        from = to;
    } while (from < label.rows.size());
    return scenes;
}

std::vector<drawing::Scene> label_sheets(const std::vector<drawing::Scene>& labels, double width,
                                         double height) {
    if (labels.empty()) return {};
    std::vector<const drawing::Scene*> highest_first;
    for (const drawing::Scene& label : labels) highest_first.push_back(&label);
    std::stable_sort(highest_first.begin(), highest_first.end(),
                     [](const auto* a, const auto* b) { return a->height > b->height; });
    Shelves shelves(width, height);
    for (const drawing::Scene* label : highest_first) shelves.add(*label);
    return shelves.take();
}

}  // namespace toft::paper
