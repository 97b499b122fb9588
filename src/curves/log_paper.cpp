#include "curves/log_paper.h"

#include "base/text.h"
#include "curves/ink.h"

#include <cmath>

namespace toft::curves {

namespace {

/// Share of the way from `low` to `high` on a scale of decades, 0 to 1.
double share(double value, double low, double high) {
    const double clamped = std::clamp(value, low, high);
    return std::log(clamped / low) / std::log(high / low);
}

Style rule_style(int digit) {
    return digit == 1 ? stroked(palette::pencil, weight::hair) : stroked(palette::faint, 0.5);
}

void verticals(const LogPaper& paper, Items& items) {
    TextStyle figure{.size = paper.letters - 1, .anchor = Anchor::middle};
    figure.colour = palette::graphite;
    for (double decade = least_amperes; decade <= most_amperes; decade *= 10) {
        for (int digit = 1; digit < 10 && digit * decade <= most_amperes; ++digit) {
            const double x = paper.x(digit * decade);
            items.emplace_back(Line{{x, paper.box.top}, {x, paper.box.bottom}, rule_style(digit)});
            if (digit != 1 && (paper.tight() || (digit != 2 && digit != 5))) continue;
            figure.weight = digit == 1 ? Weight::bold : Weight::normal;
            items.emplace_back(text({x, paper.box.bottom + paper.letters + 4},
                                    ampere_words(digit * decade), figure));
        }
    }
}

void levels(const LogPaper& paper, Items& items) {
    TextStyle figure{.size = paper.letters - 1, .weight = Weight::bold, .anchor = Anchor::end};
    figure.colour = palette::graphite;
    for (double decade = least_seconds; decade <= most_seconds; decade *= 10) {
        for (int digit = 1; digit < 10 && digit * decade <= most_seconds * 1.001; ++digit) {
            const double y = paper.y(digit * decade);
            items.emplace_back(Line{{paper.box.left, y}, {paper.box.right, y}, rule_style(digit)});
        }
        items.emplace_back(
            text({paper.box.left - 6, paper.y(decade) + 3.5}, second_words(decade), figure));
    }
}

}  // namespace

double LogPaper::x(double amperes) const {
    return box.left + box.width() * share(amperes, least_amperes, most_amperes);
}

double LogPaper::y(double seconds) const {
    return box.bottom - box.height() * share(seconds, least_seconds, most_seconds);
}

std::string ampere_words(double amperes) {
    if (amperes >= 1000) return significant(amperes / 1000, 3) + " kA";
    return significant(amperes, 3) + " A";
}

std::string second_words(double seconds) { return significant(seconds, 3) + " s"; }

Items ruling(const LogPaper& paper) {
    Items items;
    verticals(paper, items);
    levels(paper, items);
    TextStyle named{.size = paper.letters - 1, .colour = palette::graphite};
    Point shift{5, 3.5};
    if (paper.tight()) {
        shift = {-4, 3.5};
        named.anchor = Anchor::end;
        named.halo = palette::paper;
    }
    items.emplace_back(text(Point{paper.box.right, paper.y(60)} + shift, "1 min", named));
    items.emplace_back(text(Point{paper.box.right, paper.y(3600)} + shift, "1 h", named));
    items.emplace_back(Rect{paper.box, stroked(palette::ink, weight::thin)});
    return items;
}

}  // namespace toft::curves
