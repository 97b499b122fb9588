#include "terrain/separation_plan.h"

#include "picture/verdict_mark.h"
#include "terrain/figures.h"
#include "terrain/ink.h"
#include "terrain/plan_lanes.h"
#include "terrain/sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::terrain {

namespace {

constexpr const char* islands_kind = "The two earths as islands";

rules::Verdict mark_of(Islands islands) {
    switch (islands) {
        case Islands::apart:
            return rules::Verdict::meets;
        case Islands::not_known:
            return rules::Verdict::not_known;
        case Islands::carried:
            return rules::Verdict::caution;
        case Islands::within_reach:
        case Islands::joined:
            return rules::Verdict::fails;
    }
    return rules::Verdict::not_known;
}

bool judged(const answer::SeparationAnswer& s) {
    return std::isfinite(s.needed_m) && s.needed_m > 0;
}

std::string sentence(const answer::SeparationAnswer& s) {
    std::string words =
        fmt::format("The outbuilding's electrode stands {} from metal on the house's earth",
                    std::isfinite(s.distance_m) ? metre_words(s.distance_m) + " or more"
                                                : "at a distance that is not known");
    if (judged(s)) {
        words += fmt::format(
            "; {} are needed for the ground there to keep to the touch voltage when the supply's "
            "neutral is lost",
            metre_words(s.needed_m));
    }
    return words + ".";
}

/// The names of what decides, one after another.
std::string deciding(const answer::SeparationAnswer& s, Islands islands, double reach) {
    std::string words;
    for (const answer::BridgeAnswer& b : s.bridges) {
        const bool known = b.distance_m && std::isfinite(*b.distance_m);
        const bool named = islands == Islands::joined         ? b.joins
                           : islands == Islands::within_reach ? known && *b.distance_m < reach
                           : islands == Islands::not_known    ? !known
                                                              : false;
        if (named) words += (words.empty() ? ": " : ", ") + b.what;
    }
    return words;
}

void verdict(const answer::SeparationAnswer& s, Metres reach, parts::WordColumn& column) {
    const Islands islands = islands_of(s, reach);
    column.gap(4);
    const Point centre{column.left() + 8, column.y() + 9};
    column.placed(picture::verdict_mark(mark_of(islands), centre, 14), column.y());
    column.words(island_words(islands) + deciding(s, islands, reach.number()),
                 {.size = 13, .weight = Weight::bold}, 4, 24);
}

void bridge_list(const answer::SeparationAnswer& s, parts::WordColumn& column) {
    column.heading("what joins them or comes near");
    if (s.bridges.empty()) {
        say(column, "Nothing was named. What nobody has looked for may still be there.");
    }
    for (std::size_t i = 0; i < s.bridges.size(); ++i) {
        const answer::BridgeAnswer& b = s.bridges[i];
        std::string head = b.what;
        if (b.joins) {
            head += ": joins the two";
        } else if (b.distance_m && std::isfinite(*b.distance_m)) {
            head += ": " + metre_words(*b.distance_m) + " away or more";
        } else {
            head += ": not known how near";
        }
        say_signed(column, bridge_sign(b, i), head, b.says);
    }
}

void lines(const answer::SeparationAnswer& s, double reach, parts::WordColumn& column) {
    column.heading("the lines");
    Items needed{Line{{0, 10}, {sign_wide, 10}, dashed(palette::accent, 2, {10, 4})}};
    if (judged(s)) {
        say_signed(column, std::move(needed), "needed: " + metre_words(s.needed_m),
                   "from the house's earth: the electrode belongs farther out");
    } else if (s.needed_m != 0) {
        say(column, "What distance is needed is not known.");
    }
    if (std::isfinite(s.house_radius_m) && s.house_radius_m > 0) {
        Items ball{Line{{0, 10}, {sign_wide, 10}, stroked(palette::earth, 1.4)}};
        say_signed(
            column, std::move(ball), "the house's earth",
            fmt::format("as the half ball of {} radius that would have its least resistance in "
                        "the worst soil; its edge is the nearest metal",
                        metre_words(s.house_radius_m)));
    }
    Items arm{Line{{0, 10}, {sign_wide, 10}, dashed(palette::graphite, 1.2, {3, 3})}};
    say_signed(column, std::move(arm), "arm's reach: " + metre_words(reach),
               "round the outbuilding: nothing on the house's earth belongs inside");
    say_small(column,
              "To scale along the line between the two earths; things across it are in "
              "order, not in their places, and the buildings' sizes are not surveyed.");
}

void ground_words(const answer::SeparationAnswer& s, parts::WordColumn& column) {
    column.heading("what the ground between carries over");
    if (std::isfinite(s.transferred_low) && std::isfinite(s.transferred_high)) {
        say(column, fmt::format("Of whatever the house's earth rises by, {} reach the ground at "
                                "the electrode; {} of the supply's voltage would be the touch "
                                "voltage.",
                                share_range_words(s.transferred_low, s.transferred_high),
                                share_words(s.allowed)));
    } else {
        say(column, "How much is not known.");
    }
    if (judged(s) && std::isfinite(s.lift_v)) {
        say(column, fmt::format("With the supply's neutral lost, that ground rises by up to {} V.",
                                figure_words(s.lift_v)));
    }
    if (s.needed_m == 0) {
        say(column,
            "No distance was judged: the neutral of the supply as surveyed is not its "
            "earth.");
    }
}

void explain(const answer::SeparationAnswer& s, Metres reach, parts::WordColumn& column) {
    ground_words(s, column);
    bridge_list(s, column);
    lines(s, reach.number(), column);
}

}  // namespace

Islands islands_of(const answer::SeparationAnswer& s, Metres reach) {
    bool near = false;
    bool unknown = !s.island;
    for (const answer::BridgeAnswer& b : s.bridges) {
        if (b.joins) return Islands::joined;
        const bool known = b.distance_m && std::isfinite(*b.distance_m);
        near = near || (known && *b.distance_m < reach.number());
        unknown = unknown || !known;
    }
    if (near) return Islands::within_reach;
    if (unknown || !std::isfinite(s.distance_m) || !std::isfinite(s.needed_m)) {
        return Islands::not_known;
    }
    return s.distance_m >= s.needed_m ? Islands::apart : Islands::carried;
}

std::string island_words(Islands islands) {
    switch (islands) {
        case Islands::apart:
            return "separate as far as is known";
        case Islands::not_known:
            return "not known whether they are separate";
        case Islands::carried:
            return "no metal joins them as far as is known, but the electrode stands too near";
        case Islands::within_reach:
            return "within reach of each other";
        case Islands::joined:
            return "joined by metal";
    }
    return "";
}

Scene separation_plan_picture(const SeparationOf& of, double width) {
    if (of.side >= of.ground.sides.size()) return no_such_side(of.job, islands_kind, width);
    const answer::GroundSideAnswer& side = of.ground.sides[of.side];
    const PlanOf plan{side.separation, building_words(of.job, side.building), of.reach.number()};
    Content content{islands_kind, plan.outbuilding, sentence(side.separation), {}, {}, {}};
    content.verdict = [&](parts::WordColumn& column) {
        verdict(side.separation, of.reach, column);
    };
    content.draw = [&](const Space& room) { return separation_plan(plan, room); };
    content.explain = [&](parts::WordColumn& column) {
        explain(side.separation, of.reach, column);
    };
    return lay_out(of.job, content, width);
}

}  // namespace toft::terrain
