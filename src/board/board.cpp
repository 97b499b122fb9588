#include "board/board.h"

#include "board/front.h"
#include "board/house_end.h"
#include "board/ink.h"
#include "board/joined.h"
#include "board/key.h"
#include "board/way_list.h"
#include "parts/cable_words.h"
#include "parts/words.h"
#include "picture/heading.h"
#include "picture/narrow_heading.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::board {

namespace {

constexpr double roomy = 640;          // from here on the house stands beside the board
constexpr double house_wide = 168;     // of its column there
constexpr double cable_lane = 16;      // left of the enclosure
constexpr double over_enclosure = 30;  // for its words and the electrode's conductor

/// What the parts of the sheet share.
struct Sheet {
    const picture::Stage& stage;
    const answer::Answer& answer;
    std::vector<Way> ways;
    std::vector<Joined> joined;
    bool wide = false;

    int phases() const { return stage.scheme->run.phases; }
    int spare() const {
        const auto& asked = stage.far->spare_ways;
        return asked.known ? std::clamp(static_cast<int>(asked.high + 0.5), 0, 40) : 0;
    }
};

FrontOf front_of(const Sheet& sheet) {
    const bool stops = earth_stops(*sheet.stage.scheme);
    return {sheet.ways,    sheet.phases(),
            sheet.spare(), earth_screws(sheet.joined, sheet.ways.size()),
            !stops,        sheet.stage.own_electrode()};
}

/// The words over the enclosure: what the conductor there leads to.
void over_words(const Sheet& sheet, double right, double top, Items& items) {
    if (!sheet.stage.own_electrode()) return;
    TextStyle style{.size = 10.5, .anchor = Anchor::end};
    items.emplace_back(text({right - 20, top - 12}, "from its own earth electrode", style));
}

/// House above the board, the cable down the left edge.
void fronts_stacked(const Sheet& sheet, WordColumn& column) {
    const HouseEnd house =
        house_end(sheet.stage, column.left(), column.right(), column.y() + 8, false);
    const double top = house.foot + over_enclosure;
    const Front board = front(front_of(sheet), column.left() + cable_lane, column.right(), top);
    const double x = column.left() + 4;
    const double turn = house.exit.y + 10;
    Items items =
        cable_line(sheet.stage.scheme->run.stretches.back(),
                   {house.exit, {house.exit.x, turn}, {x, turn}, {x, board.entry.y}, board.entry});
    append(items, house.items);
    append(items, board.items);
    over_words(sheet, board.right, top, items);
    column.placed(std::move(items), board.foot);
}

/// House at the left, the cable across to the board.
void fronts_beside(const Sheet& sheet, WordColumn& column) {
    const double top = column.y() + over_enclosure;
    const double left = column.left() + house_wide + 2 * cable_lane;
    const HouseEnd house = house_end(sheet.stage, column.left() - 14, column.left() + house_wide,
                                     column.y() + 4, true);
    const Front board = front(front_of(sheet), left, column.right(), top);
    const double x = left - cable_lane;
    const double turn = house.exit.y + 12;
    Items items =
        cable_line(sheet.stage.scheme->run.stretches.back(),
                   {house.exit, {house.exit.x, turn}, {x, turn}, {x, board.entry.y}, board.entry});
    append(items, house.items);
    append(items, board.items);
    over_words(sheet, board.right, top, items);
    column.placed(std::move(items), std::max(board.foot, house.foot));
}

/// "9 places: main switch 2, ways 5, spare 2".
std::string places_words(const Sheet& sheet) {
    const auto& asked = sheet.stage.far->spare_ways;
    const std::string spare = !asked.known         ? "spare ways: not stated, leave room"
                              : sheet.spare() == 0 ? "no spare ways asked for"
                              : sheet.spare() == 1
                                  ? "1 spare way asked for"
                                  : fmt::format("{} spare ways asked for", sheet.spare());
    const int places = places_of(rails_of(sheet.ways, {sheet.phases(), sheet.spare(), 1000}));
    return fmt::format(
        "At least {} places of one pole each, more where a maker's devices are "
        "wider; {}.",
        places, spare);
}

void joined_lists(const Sheet& sheet, WordColumn& column) {
    const std::string& name = name_or(sheet.stage.far->name, sheet.stage.far->id);
    column.heading("earth terminal of " + name);
    column.words(earth_source_words(sheet.stage), {.size = 12});
    column.gap(4);
    set_joined(sheet.joined, column);
    column.gap(4);
    const std::string near = near_end_words(sheet.stage.scheme->run);
    column.heading((sheet.stage.scheme->run.feeder.empty() ? "main earthing terminal of "
                                                           : "earth terminal of ") +
                   near);
    set_joined(house_joined(sheet.stage), column);
}

void draw_board(const Sheet& sheet, WordColumn& column) {
    const std::string& name = name_or(sheet.stage.far->name, sheet.stage.far->id);
    column.heading("board of " + name + ", cover off, not to scale");
    column.words(places_words(sheet), {.size = 12}, 6);
    if (sheet.wide) {
        fronts_beside(sheet, column);
    } else {
        fronts_stacked(sheet, column);
    }
    column.gap(4);
    const bool source = std::any_of(sheet.ways.begin(), sheet.ways.end(), gives);
    set_key(sheet.phases(), source, column);
    column.heading("ways");
    if (sheet.phases() == 3) {
        column.words(
            "The places come by L1, L2, L3 in turn; single-phase ways are put on them so "
            "that the lines are loaded as evenly as they allow.",
            {.size = 12}, 6);
    }
    const Box box{column.left(), column.y(), column.right(), column.y()};
    WayList list =
        way_list({sheet.ways, sheet.phases(), sheet.answer.assumed}, box, sheet.wide ? 2 : 1);
    column.placed(std::move(list.items), list.foot);
    joined_lists(sheet, column);
}

}  // namespace

Scene board_picture(const site::Job& job, const answer::Answer& answer, std::size_t scheme_index,
                    double width) {
    const double wide = std::max(width, narrowest_sheet);
    const double edge = wide < roomy ? 10 : 40;
    const answer::SchemeAnswer* scheme =
        scheme_index < answer.schemes.size() ? &answer.schemes[scheme_index] : nullptr;
    const picture::Stage stage = picture::set_stage(job, scheme);
    WordColumn column(edge, wide - edge, wide < roomy ? edge : 28);
    column.words("The outbuilding's board", {.size = 12, .colour = palette::graphite}, 1);
    picture::narrow_heading(answer, scheme, column);
    if (scheme) {
        Sheet sheet{stage, answer, ways_of(job, *stage.far, *scheme), {}, wide >= roomy};
        sheet.joined = far_joined(stage, sheet.ways);
        draw_board(sheet, column);
    } else {
        picture::narrow_reasons(answer, column);
    }
    picture::narrow_footing(answer, column);
    Scene scene{wide, column.y() + edge};
    scene.title = "The outbuilding's board: " + answer.job;
    scene.description = scheme ? scheme->sentence : picture::no_scheme_words();
    scene.items = column.take();
    return scene;
}

}  // namespace toft::board
