#include "picture/narrow_place.h"

#include "drawing/measure.h"
#include "parts/cable_section.h"
#include "parts/cable_words.h"
#include "picture/cable_ends.h"
#include "picture/heading.h"
#include "picture/ink.h"
#include "picture/narrow_heading.h"
#include "picture/narrow_section.h"
#include "picture/use_bars.h"

#include <algorithm>

namespace toft::picture {

namespace {

constexpr double edge = 10;
constexpr double widest_detail = 420;
constexpr double name_room = 72;  // height that each part of the cable is given for its name

/// A detail of that height over the width that suits it.
Box detail_box(const WordColumn& column, double high) {
    return box_at({column.left(), column.y()}, std::min(column.width(), widest_detail), high);
}

void place_detail(Items items, const Box& box, WordColumn& column) {
    const double foot = std::max(box.bottom, box_of(items).bottom);
    column.placed(std::move(items), foot + 4);
}

void cable(const Stage& s, WordColumn& column) {
    const bool changes = s.scheme->run.stretches.size() > 1;
    column.heading(changes ? "the cable of the longest stretch, cut through"
                           : "the cable cut through");
    const answer::StretchAnswer& longest = longest_stretch(s.scheme->run);
    const auto parts = static_cast<double>(longest.core_list.size()) + 1 +
                       (longest.separate_mm2 ? 1 : 0) + (longest.parallel > 1 ? 1 : 0);
    const Box across = detail_box(column, std::max(190.0, name_room * parts));
    place_detail(cable_section(longest, across), across, column);
    column.heading(ends_title(s));
    const Box ends = detail_box(column, ends_title(s) == "how the cable ends" ? 0 : 210);
    place_detail(cable_ends(s, ends), ends, column);
}

void limits(const answer::SchemeAnswer& scheme, WordColumn& column) {
    column.heading("use of each limit");
    const std::vector<UseBar> bars = bars_of(scheme);
    const double high = tall_bar_row * static_cast<double>(bars.size());
    const Box box = detail_box(column, high);
    column.placed(tall_use_bars(bars, box), box.bottom + 6);
    const Box below{column.left(), column.y(), column.right(), column.y()};
    Items plain = plain_verdicts(plain_verdicts_of(scheme), below);
    if (plain.empty()) return;
    const double foot = box_of(plain).bottom;
    column.placed(std::move(plain), foot);
}

}  // namespace

Scene narrow_place(const site::Job& job, const answer::Answer& answer,
                   const answer::SchemeAnswer* scheme, double width) {
    const double wide = std::max(width, narrowest_sheet);
    const Stage stage = set_stage(job, scheme, wide);
    WordColumn column(edge, wide - edge, edge);
    narrow_heading(answer, scheme, column);
    column.gap(8);
    narrow_section(stage, column);
    if (scheme) {
        cable(stage, column);
        limits(*scheme, column);
    } else {
        narrow_reasons(answer, column);
    }
    narrow_footing(answer, column);
    Scene scene{wide, column.y() + edge};
    scene.title = answer.job;
    scene.description = scheme ? scheme->sentence : no_scheme_words();
    scene.items = column.take();
    return scene;
}

}  // namespace toft::picture
