#include "curves/curves.h"

#include "curves/ink.h"
#include "curves/legend.h"
#include "curves/marks.h"
#include "curves/narrow.h"
#include "curves/plot.h"
#include "curves/ranges.h"
#include "picture/heading.h"
#include "picture/lower_row.h"

namespace toft::curves {

namespace {

constexpr double paper_left = margin + 58;
constexpr double paper_right = 936;
constexpr double sheet_foot = 928;  ///< of everything above the sheet's foot
constexpr double column_left = 990;

/// What stands over each edge of the plot.
Items axis_words(const LogPaper& paper) {
    const TextStyle style{.size = letters, .colour = palette::graphite};
    TextStyle ending = style;
    ending.anchor = Anchor::end;
    Items items;
    items.emplace_back(text({margin, paper.box.top - 12}, "time", style));
    items.emplace_back(text({paper.box.left - 16, paper.box.bottom + 14}, "current", ending));
    return items;
}

Items plot(const tables::Catalogue& catalogue, const site::Job& job,
           const answer::SchemeAnswer& scheme, double top) {
    const std::vector<Range> ranges = ranges_of(scheme.run.figures);
    const double rows = range_row * static_cast<double>(ranges.size());
    const LogPaper paper{{paper_left, top + mark_room, paper_right, sheet_foot - rows - 26}};
    const std::vector<Withstand> lines = withstands(catalogue, scheme.scheme);
    Items items = ruling(paper);
    append(items, axis_words(paper));
    append(items, plotted(paper, {catalogue, job, scheme, lines}));
    append(items, range_rows(paper, ranges, paper.box.bottom + 24, paper.box.right + 340));
    const Box column{column_left, top - 12, sheet_wide - margin, paper.box.bottom + 20};
    append(items, legend({*scheme.scheme.device, scheme, lines}, column));
    return items;
}

}  // namespace

static_assert(paper_wide == sheet_wide);

Scene curves_picture(const tables::Catalogue& catalogue, const site::Job& job,
                     const answer::Answer& answer, std::size_t scheme_index, double width) {
    const answer::SchemeAnswer* scheme =
        scheme_index < answer.schemes.size() ? &answer.schemes[scheme_index] : nullptr;
    if (width < paper_wide) return narrow_curves(catalogue, job, answer, scheme, width);
    Scene scene;
    scene.width = sheet_wide;
    scene.height = sheet_high;
    scene.title = "Time and current: " + answer.job;
    scene.description = scheme ? scheme->sentence : picture::no_scheme_words();
    picture::Heading head = picture::heading(answer, scheme);
    scene.items = std::move(head.items);
    if (scheme) {
        append(scene.items, plot(catalogue, job, *scheme, head.foot));
    } else {
        append(scene.items, picture::reasons_row(
                                answer, {margin, head.foot + 20, sheet_wide - margin, sheet_foot}));
    }
    append(scene.items, picture::footing(answer));
    return scene;
}

}  // namespace toft::curves
