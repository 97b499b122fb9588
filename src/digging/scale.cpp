#include "digging/scale.h"

#include "base/text.h"
#include "digging/ink.h"
#include "digging/measured.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::digging {

double fitting(const std::vector<double>& ladder, const Fit& fit) {
    const auto fits = [&](double one_to) {
        const double k = units_a_metre(one_to);
        return fit.wide_m * k <= fit.wide && fit.high_m * k <= fit.high;
    };
    for (const double one_to : ladder) {
        if (fits(one_to)) return one_to;
    }
    double one_to = ladder.back();
    for (int i = 0; i < 12 && !fits(one_to); ++i) one_to *= 10;
    return one_to;
}

const std::vector<double>& plan_scales() {
    static const std::vector<double> all{50,   100,  200,  250,   500,   1000, 1250,
                                         2000, 2500, 5000, 10000, 20000, 25000};
    return all;
}

const std::vector<double>& section_scales() {
    static const std::vector<double> all{5, 10, 20, 50};
    return all;
}

Items scale_bar(double one_to, Point left, double most) {
    constexpr int steps = 4;
    constexpr double thick = 6;
    const double k = units_a_metre(one_to);
    double step = 1e-3;
    for (double decade = 1e-3; decade < 1e7; decade *= 10) {
        for (const double times : {1.0, 2.0, 5.0}) {
            if (steps * decade * times * k <= most) step = decade * times;
        }
    }
    Items items;
    for (int i = 0; i < steps; ++i) {
        const Box box = box_at({left.x + i * step * k, left.y}, step * k, thick);
        Style style = stroked(palette::ink, weight::hair);
        style.fill = i % 2 == 0 ? palette::ink : palette::paper;
        items.emplace_back(Rect{box, style});
    }
    for (int i = 0; i <= steps; ++i) {
        if (i == 1 || i == 3) continue;
        const TextStyle style{.size = 10, .anchor = i == 0 ? Anchor::start : Anchor::middle};
        items.emplace_back(text({left.x + i * step * k, left.y + thick + 13},
                                significant(i * step, 4) + (i == steps ? " m" : ""), style));
    }
    return items;
}

std::string scale_words(double one_to, double sheet_width, bool alone) {
    const std::string on = alone ? fmt::format("where this sheet is printed {} mm wide",
                                               significant(std::round(mm_of_units(sheet_width)), 5))
                                 : std::string("on A4");
    return fmt::format("Scale 1:{} {}; at any other size go by the bar.", significant(one_to, 6),
                       on);
}

}  // namespace toft::digging
