#include "curves/legend.h"

#include "base/text.h"
#include "curves/ink.h"
#include "curves/marks.h"
#include "drawing/hatch.h"
#include "parts/words.h"
#include "picture/use_bars.h"
#include "picture/verdict_mark.h"

#include <fmt/format.h>

#include <iterator>

namespace toft::curves {

namespace {

constexpr double sign_wide = 38;
constexpr double row = 15.5;
constexpr double size = 12;

/// Sets one thing under another.
class Column {
public:
    Column(const Box& box, std::size_t most) : box_(box), most_(most), y_(box.top) {}

    void heading(const std::string& words) {
        y_ += 20;
        items_.emplace_back(text({box_.left, y_}, words, {.size = 14, .weight = Weight::bold}));
        y_ += 5;
    }
    void line(Style style, const Spans& symbol, const std::string& words) {
        const double y = y_ + row - 4.5;
        sign({Line{{box_.left, y}, {box_.left + sign_wide, y}, std::move(style)}}, symbol, words);
    }
    /// A sign in the column's left, its symbol and words right of it.
    void sign(Items sign, const Spans& symbol, const std::string& words) {
        append(items_, std::move(sign));
        const double left = box_.left + sign_wide + 10;
        double first = left;
        if (!symbol.empty()) {
            const TextStyle bold{.size = size, .weight = Weight::bold};
            items_.emplace_back(Text{{left, y_ + row}, symbol, bold});
            first += 24;
        }
        for (const std::string& part : parts::paragraph(words, box_.right - first, size, 3)) {
            y_ += row;
            items_.emplace_back(text({first, y_}, part, {.size = size}));
        }
        y_ += 2.5;
    }
    void verdict(const answer::FindingAnswer& finding) {
        y_ += row + 3;
        append(items_, picture::verdict_words(finding.verdict, {box_.left, y_}, size));
        items_.emplace_back(
            Text{{box_.left + 92, y_}, picture::rule_words(finding.rule), {.size = size}});
        words(figures(finding), 92);
        if (!finding.says.empty()) words(finding.says, 92);
    }
    void words(const std::string& sentence, double indent = 0) {
        for (const std::string& part :
             parts::paragraph(sentence, box_.right - box_.left - indent, size, most_)) {
            y_ += row;
            items_.emplace_back(text({box_.left + indent, y_}, part, {.size = size}));
        }
        y_ += 2;
    }
    double y() const { return y_; }
    double left() const { return box_.left; }
    Items take() { return std::move(items_); }

private:
    static std::string figures(const answer::FindingAnswer& f) {
        if (!f.value || !f.limit) return "";
        if (f.unit.empty()) {
            return fmt::format("{} % of what is withstood", significant(100 * *f.value, 3));
        }
        return fmt::format("{} {}, at most {} {}", significant(*f.value, 3), f.unit,
                           significant(*f.limit, 3), f.unit);
    }

    Box box_;
    std::size_t most_;  ///< lines of one sentence
    double y_ = 0;
    Items items_;
};

std::string device_words(const answer::DeviceAnswer& device) {
    const std::string rating = significant(device.rating_a, 6);
    if (device.curve.empty()) return fmt::format("{} A {} fuse", rating, device.standard);
    return fmt::format("{} A {} type {}", rating, device.standard, device.curve);
}

void device_signs(const LegendOf& of, Column& column) {
    column.line(stroked(palette::ink, weight::heavy), {},
                device_words(of.scheme.run.device) + ": sure to have operated");
    if (of.device.holds.empty()) {
        column.words("How long it is sure to hold is not in the tables.", sign_wide + 10);
        return;
    }
    column.line(stroked(palette::ink, 1.6), {}, "sure to hold up to here");
    const Box patch = box_at({column.left(), column.y() + 3.5}, sign_wide, row - 3);
    Items sign;
    sign.emplace_back(Rect{patch, filled(palette::wash)});
    append(sign, hatched(patch, {.angle = -45, .spacing = 7}));
    column.sign(std::move(sign), {}, "in between it may do either");
}

void current_signs(const LegendOf& of, Column& column) {
    column.line(mark_line(design_dash, 1.6), symbol("I", "b"), "design current, what is drawn");
    column.line(stroked(palette::ink, 1.2), symbol("I", "n"), "rated current of the device");
    column.line(mark_line(rating_dash, 1.2), symbol("I", "z"), "rating of the cable as it lies");
    column.line(mark_line(fault_dash, 1.8), {},
                "smallest earth fault at the far end, and the largest fault of all");
    if (!of.scheme.run.figures.disconnection_s) return;
    Style ring = stroked(palette::ink, 2);
    ring.fill = palette::paper;
    const Point centre{column.left() + sign_wide / 2, column.y() + row - 4.5};
    column.sign({Circle{centre, 5, ring}}, {},
                fmt::format("there that fault is sure to be off: {} at {}",
                            second_words(*of.scheme.run.figures.disconnection_s),
                            ampere_words(of.scheme.run.figures.earth_fault_current_far_a)));
}

void time_signs(const LegendOf& of, Column& column) {
    column.line(mark_line(allowed_dash, 1.8), {}, "time allowed for an earth fault of the run");
    if (study::residual_at_head(of.scheme.scheme)) {
        column.line(mark_line(residual_dash, 1.8), {}, "RCD at the head, earth faults only");
    }
    for (std::size_t i = 0; i < of.withstands.size(); ++i) {
        const Withstand& one = of.withstands[i];
        column.line(dashed(palette::accent, 2, one.dash),
                    of.lettered ? plain(line_letter(i)) : Spans{}, one.names + ": k²S²/I²");
    }
}

void verdicts(const LegendOf& of, Column& column) {
    for (const answer::FindingAnswer& f : of.scheme.findings) {
        if (f.rule == "disconnection" || f.rule == "fault-heat") column.verdict(f);
    }
}

}  // namespace

std::string curve_basis(const tables::Device& device, bool overloads) {
    int recalled = 0;
    int all = 0;
    for (const auto* list : {&device.points, &device.holds, &device.trips}) {
        if (list == &device.trips && !overloads) continue;
        for (const tables::CurvePoint& p : *list) {
            ++all;
            recalled += p.current.citation == nullptr || p.current.citation->basis == Basis::memory;
        }
    }
    if (recalled == 0) return fmt::format("None of its {} points is from memory.", all);
    return fmt::format("{} of its {} points are from memory: check them.", recalled, all);
}

Items legend(const LegendOf& of, const Box& box) {
    Column column(box, of.lettered ? 12 : 5);
    column.heading("the device");
    device_signs(of, column);
    column.heading("currents");
    current_signs(of, column);
    column.heading("times, and what the cable bears");
    time_signs(of, column);
    column.heading("what the rules say");
    verdicts(of, column);
    column.heading("what this is not");
    column.words(
        "The edges are what a standard asks of any such device from cold, not a "
        "measurement of this one. " +
        curve_basis(of.device) + " The maker's own curve decides.");
    return column.take();
}

}  // namespace toft::curves
