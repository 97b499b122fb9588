#include "curves/pair_plot.h"

#include "base/text.h"
#include "curves/band.h"
#include "curves/ink.h"
#include "curves/marks.h"
#include "drawing/hatch.h"
#include "drawing/label.h"
#include "drawing/measure.h"
#include "tables/device_words.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace toft::curves {

namespace {

struct BandLook {
    Style slow;
    Style quick;
    Hatch inside;
    double row = 0;     ///< of its name below the paper's top
    bool left = false;  ///< its name left of its slow edge
};

Point spot(const LogPaper& paper, const tables::CurvePoint& p) {
    return paper.at(p.current.value.number(), p.time.number());
}

/// The time for which a current brings that heat.
Point spot_of_heat(const LogPaper& paper, Amperes current, AmpereSquareSeconds heat) {
    return paper.at(current.number(), (heat / squared(current)).number());
}

Items one_band(const LogPaper& paper, const tables::Device& device, bool bears,
               const BandLook& look) {
    const std::vector<Point> slow = clearing_edge(paper, device);
    const std::vector<Point> quick =
        bears ? bearing_edge(paper, device) : quick_edge(paper, device);
    Items items;
    if (slow.empty() || quick.empty()) return items;
    std::vector<Point> outline = slow;
    outline.push_back({slow.back().x, paper.box.bottom});
    outline.insert(outline.end(), quick.rbegin(), quick.rend());
    append(items, hatched(outline, look.inside));
    items.emplace_back(Polyline{quick, look.quick});
    items.emplace_back(Polyline{slow, look.slow});
    return {Group{std::move(items), {}, "", "band", tables::device_words(device)}};
}

/// Beside the slow edge: right of the upstream one, left of the other where there is room.
Item band_name(const LogPaper& paper, const tables::Device& device, const BandLook& look) {
    const std::string words = tables::device_words(device);
    TextStyle style{.size = paper.letters, .weight = Weight::bold};
    const double wide = text_width(words, style.size) * 1.15;
    const std::vector<Point> slow = clearing_edge(paper, device);
    const double begins = slow.empty() ? paper.box.left : slow.front().x;
    const double y = paper.box.top + look.row;
    if (look.left && begins - 8 - wide > paper.box.left) {
        style.anchor = Anchor::end;
        return haloed(text({begins - 8, y}, words, style));
    }
    return haloed(text({std::min(begins + 8, paper.box.right - wide - 40), y}, words, style));
}

/// Over the currents that are sure, up to the prospective one.
Items sure_bar(const LogPaper& paper, const PairShown& pair) {
    Items items;
    const double end = std::min(pair.said.to.number(), pair.prospective.number());
    if (!(end > least_amperes)) return items;
    const double y = paper.box.top - 9;
    const auto piece = [&](double from, double to) {
        items.emplace_back(
            Line{{paper.x(from), y}, {paper.x(to), y}, stroked(palette::ink, weight::heavy)});
    };
    if (pair.said.gap()) {
        piece(least_amperes, pair.said.gap_from.number());
        piece(pair.said.gap_to.number(), end);
    } else {
        piece(least_amperes, end);
    }
    for (const double amps : {least_amperes, end}) {
        items.emplace_back(
            Line{{paper.x(amps), y - 5}, {paper.x(amps), y + 5}, stroked(palette::ink, 1.6)});
    }
    return {Group{
        std::move(items), {}, "", "sure", "the downstream device is sure to be the only one"}};
}

void prospective_mark(const LogPaper& paper, const PairShown& pair, Items& items) {
    const double amps = pair.prospective.number();
    const double x = paper.x(amps);
    const double top = paper.box.top - 34;
    items.emplace_back(
        Line{{x, paper.box.bottom},
             {x, top},
             dashed(palette::ink, 1.8, {std::begin(fault_dash), std::end(fault_dash)})});
    TextStyle style{.size = paper.letters, .weight = Weight::bold, .anchor = Anchor::end};
    items.emplace_back(text({x - 5, top + 8}, "largest fault " + ampere_words(amps), style));
}

}  // namespace

Style upstream_line(double width) { return stroked(palette::ink, width); }

Style downstream_line(double width) { return dashed(palette::ink, width, {9, 4}); }

std::vector<Point> clearing_edge(const LogPaper& paper, const tables::Device& device) {
    std::vector<Point> rim = slow_edge(paper, device);
    if (rim.empty() || device.trips.empty()) return rim;
    const auto& first = device.trips.front();
    std::vector<Point> whole{paper.at(first.current.value.number(), most_seconds)};
    for (const tables::CurvePoint& p : device.trips) whole.push_back(spot(paper, p));
    if (!device.fuse()) {
        const tables::CurvePoint& last = device.trips.back();
        whole.push_back(spot_of_heat(paper, device.points.front().current.value,
                                     squared(last.current.value) * last.time));
    }
    whole.insert(whole.end(), rim.begin() + 1, rim.end());
    return whole;
}

std::vector<Point> bearing_edge(const LogPaper& paper, const tables::Device& device) {
    std::vector<Point> rim;
    for (std::size_t i = 0; i < device.holds.size(); ++i) {
        const Amperes here = device.holds[i].current.value;
        if (i == 0) {
            rim.push_back(spot(paper, device.holds[i]));
            continue;
        }
        const AmpereSquareSeconds heat = device::borne(device, here);
        rim.push_back(spot_of_heat(paper, device.holds[i - 1].current.value, heat));
        rim.push_back(spot_of_heat(paper, here, heat));
    }
    if (!rim.empty()) rim.push_back({rim.back().x, paper.box.bottom});
    return rim;
}

Items pair_plot(const LogPaper& paper, const PairShown& pair) {
    const BandLook up{
        upstream_line(weight::heavy), upstream_line(1.6), {.angle = -45, .spacing = 8}, 14, false};
    const BandLook down{downstream_line(weight::heavy),
                        downstream_line(1.6),
                        {.angle = 45, .spacing = 8},
                        29,
                        true};
    Items items;
    if (pair.upstream) append(items, one_band(paper, *pair.upstream, true, up));
    if (pair.downstream) append(items, one_band(paper, *pair.downstream, false, down));
    if (pair.upstream) items.emplace_back(band_name(paper, *pair.upstream, up));
    if (pair.downstream) items.emplace_back(band_name(paper, *pair.downstream, down));
    if (pair.upstream && pair.downstream) append(items, sure_bar(paper, pair));
    prospective_mark(paper, pair, items);
    return items;
}

}  // namespace toft::curves
