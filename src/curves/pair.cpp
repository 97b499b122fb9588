#include "curves/pair.h"

#include "base/text.h"
#include "curves/curves.h"
#include "curves/ink.h"
#include "curves/legend.h"
#include "curves/marks.h"
#include "curves/pair_plot.h"
#include "curves/withstand.h"
#include "parts/word_column.h"
#include "picture/heading.h"
#include "picture/lower_row.h"
#include "picture/narrow_heading.h"
#include "tables/device_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::curves {

namespace {

constexpr double sign_room = 48;  ///< left of what a line means
constexpr double said_size = 12;
constexpr double time_wide = 52;  ///< of the figures left of the paper

const tables::Device* service_fuse(const PairOf& of) {
    const auto& stated = of.job.intake.service_fuse;
    if (!stated) return nullptr;
    for (const tables::Device& d : of.catalogue.devices) {
        if (d.standard == stated->standard && d.curve == stated->curve &&
            d.rating == stated->rating) {
            return &d;
        }
    }
    return nullptr;
}

/// The largest fault current where the downstream device stands.
Amperes prospective_of(const answer::FigureAnswers& f, bool at_building) {
    if (!at_building) return amperes(1000 * f.fault_current_near_ka);
    return amperes(std::max({f.far_line_neutral_a.largest, f.far_line_earth_a.largest,
                             f.far_three_lines_a.value_or(0)}));
}

PairShown pair_shown(const PairOf& of, const answer::SchemeAnswer& scheme) {
    PairShown pair;
    pair.upstream = of.upstream.empty()
                        ? service_fuse(of)
                        : tables::device_by_words(of.catalogue.devices, of.upstream);
    pair.downstream = of.downstream.empty()
                          ? scheme.scheme.device
                          : tables::device_by_words(of.catalogue.devices, of.downstream);
    pair.prospective = prospective_of(scheme.run.figures, !of.downstream.empty());
    if (pair.upstream && pair.downstream) {
        Silent silent;
        pair.said = device::selectivity(silent, device::Pair{*pair.upstream, *pair.downstream},
                                        pair.prospective);
    }
    return pair;
}

std::string device_or_not(const tables::Device* device) {
    return device ? tables::device_words(*device) : "a device not known";
}

/// The verdict in a sentence or two.
std::string said_of(const PairShown& pair) {
    if (!pair.upstream || !pair.downstream) {
        return "Not known: which device stands there is not stated, or is none that the tables "
               "hold.";
    }
    const auto& s = pair.said;
    std::string text;
    switch (s.verdict) {
        case device::Selective::selective:
            text = fmt::format("Selective at every fault up to {}",
                               ampere_words(pair.prospective.number()));
            break;
        case device::Selective::partly:
            text = fmt::format("Selective up to {} of {}", ampere_words(s.to.number()),
                               ampere_words(pair.prospective.number()));
            break;
        case device::Selective::not_selective:
            text = "Not selective";
            break;
        case device::Selective::not_known:
            text = "Not known";
            break;
    }
    text += fmt::format(": {}.", s.why);
    if (s.gap()) {
        text += fmt::format(" Of overloads of {} to {} the tables promise nothing.",
                            significant(s.gap_from.number(), 3), ampere_words(s.gap_to.number()));
    }
    return text;
}

/// A sign at the column's left, what it means beside it.
void sign_row(parts::WordColumn& column, const Style& line, const std::string& words) {
    const double y = column.y() + 0.65 * 1.3 * said_size;
    column.words(words, {.size = said_size}, 4, sign_room);
    Items sign;
    sign.emplace_back(Line{{column.left(), y}, {column.left() + 38, y}, line});
    column.placed(std::move(sign), column.y());
}

void pair_legend(const PairShown& pair, const std::vector<Withstand>& lines, bool lettered,
                 parts::WordColumn& column) {
    const auto say = [&](const std::string& words) { column.words(words, {.size = said_size}); };
    column.heading("which of the two opens");
    say(said_of(pair));
    column.heading("the two devices");
    sign_row(column, upstream_line(weight::heavy),
             device_or_not(pair.upstream) +
                 ", upstream: between its lines it may open or hold, right of them it has opened");
    sign_row(
        column, downstream_line(weight::heavy),
        device_or_not(pair.downstream) +
            ", nearer to the fault: selective where its right-hand line lies left of and below "
            "the other's left-hand one");
    const double y = column.y() + 0.65 * 1.3 * said_size;
    Items ends;
    for (const double x : {column.left(), column.left() + 38}) {
        ends.emplace_back(Line{{x, y - 5}, {x, y + 5}, stroked(palette::ink, 1.6)});
    }
    column.placed(std::move(ends), column.y());
    sign_row(column, stroked(palette::ink, weight::heavy),
             "over the paper: currents at which the downstream device is sure to be the only one");
    column.heading("what the run's conductors bear");
    for (std::size_t i = 0; i < lines.size(); ++i) {
        sign_row(column, dashed(palette::accent, 2, lines[i].dash),
                 (lettered ? line_letter(i) + ": " : std::string()) + lines[i].names + ": k²S²/I²");
    }
    column.heading("what this is not");
    say("The bands are what a standard asks of any such device from cold, not a measurement of "
        "these two.");
    if (pair.upstream) say("Upstream: " + curve_basis(*pair.upstream, true));
    if (pair.downstream) say("Downstream: " + curve_basis(*pair.downstream, true));
    say("The makers' own tables of selectivity decide; ask for them where the tables here promise "
        "nothing.");
}

Items pair_on(const LogPaper& paper, const PairShown& pair, const std::vector<Withstand>& lines) {
    Items items = ruling(paper);
    TextStyle style{.size = paper.tight() ? 10.0 : letters, .colour = palette::graphite};
    items.emplace_back(text({paper.box.left - time_wide + 2, paper.box.top - 12}, "time", style));
    style.anchor = Anchor::end;
    items.emplace_back(
        text({paper.box.left - 14, paper.box.bottom + paper.letters + 4}, "current", style));
    append(items, pair_plot(paper, pair));
    append(items, withstand_lines(paper, lines));
    return items;
}

Scene named_scene(const PairOf& of, const answer::SchemeAnswer* scheme, double wide, double high) {
    Scene scene{wide, high};
    scene.title = "Two devices in series: " + of.answer.job;
    scene.description = scheme ? said_of(pair_shown(of, *scheme)) : picture::no_scheme_words();
    return scene;
}

Scene narrow_pair(const PairOf& of, const answer::SchemeAnswer* scheme, double width) {
    const double wide = std::max(width, parts::narrowest_sheet);
    parts::WordColumn column(10, wide - 10, 10);
    column.words("Two devices in series", {.size = 12, .colour = palette::graphite}, 1);
    picture::narrow_heading(of.answer, scheme, column);
    if (scheme) {
        const PairShown pair = pair_shown(of, *scheme);
        const auto lines = withstands(of.catalogue, scheme->scheme);
        const double left = column.left() + time_wide;
        const double top = column.y() + mark_room + 6;
        const double high = std::clamp(1.4 * (column.right() - left), 380.0, 720.0);
        LogPaper paper{{left, top, column.right(), top + high}, said_size};
        if (!paper.tight()) paper.box.right -= 42;  // for minute and hour
        column.placed(pair_on(paper, pair, lines), paper.box.bottom + 30);
        pair_legend(pair, lines, paper.tight(), column);
    } else {
        picture::narrow_reasons(of.answer, column);
    }
    picture::narrow_footing(of.answer, column);
    Scene scene = named_scene(of, scheme, wide, column.y() + 10);
    scene.items = column.take();
    return scene;
}

}  // namespace

Scene pair_picture(const PairOf& of, double width) {
    const answer::SchemeAnswer* scheme =
        of.scheme_index < of.answer.schemes.size() ? &of.answer.schemes[of.scheme_index] : nullptr;
    if (width < paper_wide) return narrow_pair(of, scheme, width);
    Scene scene = named_scene(of, scheme, sheet_wide, sheet_high);
    picture::Heading head = picture::heading(of.answer, scheme);
    scene.items = std::move(head.items);
    constexpr double foot = sheet_high - 62;  // of everything above the sheet's foot
    if (scheme) {
        const PairShown pair = pair_shown(of, *scheme);
        const auto lines = withstands(of.catalogue, scheme->scheme);
        const LogPaper paper{{margin + 58, head.foot + mark_room, 936, foot - 26}};
        append(scene.items, pair_on(paper, pair, lines));
        parts::WordColumn column(990, sheet_wide - margin, head.foot - 12);
        pair_legend(pair, lines, false, column);
        append(scene.items, column.take());
    } else {
        append(scene.items, picture::reasons_row(
                                of.answer, {margin, head.foot + 20, sheet_wide - margin, foot}));
    }
    append(scene.items, picture::footing(of.answer));
    return scene;
}

}  // namespace toft::curves
