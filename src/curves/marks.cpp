#include "curves/marks.h"

#include "curves/ink.h"
#include "drawing/label.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace toft::curves {

namespace {

struct Mark {
    const char* below;  ///< index of the symbol I
    double amperes = 0;
    Style style;
};

double largest_of(const std::optional<double>& a) { return a.value_or(0); }

}  // namespace

double time_allowed(const tables::Catalogue& catalogue, const site::Job& job) {
    const tables::Limits& limits = catalogue.limits;
    const bool tt = job.intake.earthing == site::Earthing::tt;
    return (tt ? limits.disconnection_tt : limits.disconnection_tn).value.number();
}

Items current_marks(const LogPaper& paper, const answer::RunAnswer& run) {
    std::vector<Mark> marks = {
        {"b", run.figures.design_current_a, mark_line(design_dash, 1.6)},
        {"n", run.device.rating_a, stroked(palette::ink, 1.2)},
        {"z", run.figures.rating_a, mark_line(rating_dash, 1.2)},
    };
    std::stable_sort(marks.begin(), marks.end(),
                     [](const Mark& a, const Mark& b) { return a.amperes < b.amperes; });
    Items items;
    double rise = mark_room - 12;
    for (const Mark& mark : marks) {
        const double x = paper.x(mark.amperes);
        items.emplace_back(Line{{x, paper.box.bottom}, {x, paper.box.top - rise}, mark.style});
        Spans words = symbol("I", mark.below);
        words.push_back({" " + ampere_words(mark.amperes)});
        items.emplace_back(Text{{x + 4, paper.box.top - rise + 8},
                                words,
                                {.size = paper.letters, .weight = Weight::bold}});
        rise -= 15;
    }
    return items;
}

Items time_marks(const LogPaper& paper, const study::RunScheme& scheme, double allowed) {
    Items items;
    const double y = paper.y(allowed);
    items.emplace_back(
        Line{{paper.box.left, y}, {paper.box.right, y}, mark_line(allowed_dash, 1.8)});
    const TextStyle style{.size = paper.letters, .weight = Weight::bold};
    items.emplace_back(haloed(
        text({paper.box.left + 10, y - 5},
             (paper.tight() ? "off within " : "earth fault off within ") + second_words(allowed),
             style)));
    const auto residual = study::residual_at_head(scheme);
    if (!residual) return items;
    const double longest = residual->longest.value.number();
    const double from = residual->sensitivity.number();
    items.emplace_back(Line{paper.at(from, longest), paper.at(most_amperes, longest),
                            mark_line(residual_dash, 1.8)});
    items.emplace_back(haloed(text(
        {paper.x(from) + 10, paper.y(longest) + 13},
        (paper.tight() ? "RCD: within " : "RCD at the head: off within ") + second_words(longest),
        style)));
    return items;
}

double largest_fault(const answer::FigureAnswers& f) {
    return std::max({f.near_line_neutral_a.largest, f.near_line_earth_a.largest,
                     f.far_line_neutral_a.largest, f.far_line_earth_a.largest,
                     largest_of(f.near_three_lines_a), largest_of(f.far_three_lines_a)});
}

Items fault_marks(const LogPaper& paper, const answer::FigureAnswers& figures) {
    Items items;
    const Style dots = mark_line(fault_dash, 1.8);
    const double least = figures.earth_fault_current_far_a;
    for (const double amperes : {least, largest_fault(figures)}) {
        const double x = paper.x(amperes);
        items.emplace_back(Line{{x, paper.box.top}, {x, paper.box.bottom}, dots});
    }
    if (!figures.disconnection_s) return items;
    Style ring = stroked(palette::ink, 2);
    ring.fill = palette::paper;
    items.emplace_back(Group{{Circle{paper.at(least, *figures.disconnection_s), 5, ring}},
                             {},
                             "",
                             "operates",
                             "where the smallest earth fault meets the device"});
    return items;
}

}  // namespace toft::curves
