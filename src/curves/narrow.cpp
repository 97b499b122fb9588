#include "curves/narrow.h"

#include "curves/ink.h"
#include "curves/legend.h"
#include "curves/marks.h"
#include "curves/plot.h"
#include "curves/ranges.h"
#include "drawing/measure.h"
#include "picture/heading.h"
#include "picture/narrow_heading.h"

#include <algorithm>

namespace toft::curves {

namespace {

constexpr double edge = 10;
constexpr double times_wide = 52;  // of the times left of the paper
constexpr double hours_wide = 42;  // of minute and hour right of paper that is not tight
constexpr double words_size = 12;

/// High enough for its decades to be near square, low enough for a screen.
double paper_high(double wide) { return std::clamp(1.4 * wide, 380.0, 720.0); }

Items narrow_axis_words(const LogPaper& paper) {
    TextStyle style{.size = 10, .colour = palette::graphite};
    Items items;
    items.emplace_back(text({edge, paper.box.top - 10}, "time", style));
    style.anchor = Anchor::end;
    items.emplace_back(
        text({paper.box.left - 13, paper.box.bottom + paper.letters + 4}, "current", style));
    return items;
}

void plot(const tables::Catalogue& catalogue, const site::Job& job,
          const answer::SchemeAnswer& scheme, parts::WordColumn& column) {
    const double left = column.left() + times_wide;
    const double top = column.y() + mark_room + 6;
    LogPaper paper{{left, top, column.right(), top + paper_high(column.right() - left)},
                   words_size};
    if (!paper.tight()) paper.box.right -= hours_wide;
    const std::vector<Range> ranges = ranges_of(scheme.run.figures);
    const std::vector<Withstand> lines = withstands(catalogue, scheme.scheme);
    Items items = ruling(paper);
    append(items, narrow_axis_words(paper));
    append(items, plotted(paper, {catalogue, job, scheme, lines}));
    const double below = paper.box.bottom + 24;
    append(items, tall_range_rows(paper, ranges, column.left(), below));
    const double foot = below + range_heading + tall_range_row * static_cast<double>(ranges.size());
    column.placed(std::move(items), foot);
    const LegendOf of{*scheme.scheme.device, scheme, lines, paper.tight()};
    Items words = legend(of, {column.left(), column.y(), column.right(), column.y()});
    const double end = box_of(words).bottom;
    column.placed(std::move(words), end);
}

}  // namespace

Scene narrow_curves(const tables::Catalogue& catalogue, const site::Job& job,
                    const answer::Answer& answer, const answer::SchemeAnswer* scheme,
                    double width) {
    const double wide = std::max(width, parts::narrowest_sheet);
    parts::WordColumn column(edge, wide - edge, edge);
    column.words("Time and current", {.size = 12, .colour = palette::graphite}, 1);
    picture::narrow_heading(answer, scheme, column);
    if (scheme) {
        plot(catalogue, job, *scheme, column);
    } else {
        picture::narrow_reasons(answer, column);
    }
    picture::narrow_footing(answer, column);
    Scene scene{wide, column.y() + edge};
    scene.title = "Time and current: " + answer.job;
    scene.description = scheme ? scheme->sentence : picture::no_scheme_words();
    scene.items = column.take();
    return scene;
}

}  // namespace toft::curves
