#include "picture/house.h"

#include "base/text.h"
#include "drawing/conductor_colours.h"
#include "drawing/measure.h"
#include "parts/device_words.h"
#include "parts/fittings.h"
#include "parts/texture.h"
#include "parts/words.h"
#include "picture/ink.h"

#include <fmt/format.h>

namespace toft::picture {

namespace {

constexpr double intake_x = 88;
constexpr double unit_right = 226;

bool fed_from_tails(const Stage& stage) {
    return stage.scheme && stage.scheme->run.fed_from != "spare way";
}

Box cut_out_box(const Stage& s) {
    return {intake_x - 14, s.ground - 56, intake_x + 14, s.ground - 22};
}
Box meter_box(const Stage& s) {
    return {intake_x - 16, s.ground - 108, intake_x + 16, s.ground - 76};
}
Box house_terminal_box(const Stage& s) { return {132, s.ground - 50, 200, s.ground - 42}; }

/// The run's device takes a place for each of its poles.
void mark_chosen(const answer::RunAnswer& run, int way, Board& board) {
    board.chosen = way;
    board.residual = opens_on_residual(run.device);
    if (run.phases != 3) return;
    if (board.ways > 4) {
        board.ways -= 2;
        board.chosen -= 2;
    }
    board.poles.assign(static_cast<std::size_t>(board.ways), 1);
    board.poles[static_cast<std::size_t>(board.chosen)] = 3;
}

Board house_board(const Stage& s) {
    const double right = fed_from_tails(s) ? 174 : unit_right;
    Board board{.box = {118, s.indoors() - 22, right, s.indoors() + 22}};
    board.ways = fed_from_tails(s) ? 4 : 7;
    if (!s.scheme || fed_from_tails(s)) return board;
    mark_chosen(s.scheme->run, board.ways - 1, board);
    return board;
}

Board new_unit(const Stage& s) {
    Board board{.box = {184, s.indoors() - 22, unit_right, s.indoors() + 22}};
    board.ways = s.scheme->run.fed_from == "tails" ? 1 : 2;
    board.main_switch = true;
    mark_chosen(s.scheme->run, 0, board);
    return board;
}

struct Tail {
    double side;  ///< of the intake's middle
    Colour colour;
};

/// Lines and neutral between cut-out, meter and boards.
std::vector<Tail> tails_of(const Stage& s) {
    if (s.job->intake.phases == 1) return {{-4, conductor::brown}, {4, conductor::blue}};
    return {{-7.5, conductor::brown},
            {-2.5, conductor::black},
            {2.5, conductor::grey},
            {7.5, conductor::blue}};
}

/// Cable of the supply, cut-out, meter.
Items intake(const Stage& s) {
    Items items;
    const Box cut_out = cut_out_box(s);
    const Box meter = meter_box(s);
    append(
        items,
        pipe({{margin, s.ground + 64}, {intake_x, s.ground + 64}, {intake_x, cut_out.bottom}}, 7));
    Style box = stroked(palette::ink, weight::firm);
    box.fill = palette::wash;
    for (const Tail& tail : tails_of(s)) {
        items.emplace_back(Line{{intake_x + tail.side, cut_out.top},
                                {intake_x + tail.side, meter.bottom},
                                stroked(tail.colour, 2.4)});
    }
    items.emplace_back(Rect{cut_out, box, 2});
    items.emplace_back(
        Rect{{cut_out.left + 5, cut_out.top + 6, cut_out.left + 13, cut_out.bottom - 8},
             stroked(palette::ink, 1)});
    items.emplace_back(Rect{meter, box, 2});
    items.emplace_back(Circle{meter.centre() - Point{0, 3}, 9, stroked(palette::ink, 1)});
    TextStyle style{.size = 7, .anchor = Anchor::middle};
    items.emplace_back(text(meter.centre() - Point{0, 0.5}, "kWh", style));
    return items;
}

/// Tails from the meter to the board, and to a new unit beside it.
Items tails(const Stage& s) {
    Items items;
    const Box meter = meter_box(s);
    for (const Tail& tail : tails_of(s)) {
        const double over = s.indoors() - 36 + tail.side * 0.8;
        std::vector<double> ends{130 - tail.side};
        if (fed_from_tails(s)) ends.push_back(196 - tail.side);
        for (const double end : ends) {
            items.emplace_back(Polyline{{{intake_x + tail.side, meter.top},
                                         {intake_x + tail.side, over},
                                         {end, over},
                                         {end, s.indoors() - 22}},
                                        stroked(tail.colour, 2.4)});
        }
    }
    return items;
}

void draw_wire(const std::vector<Point>& points, Sketch& sketch) {
    sketch.draw(protective_line(points));
    sketch.keep_line(points, 3);
}

/// How the terminal gets its earth.
void draw_supply_earth(const Stage& s, Sketch& sketch) {
    const Box bar = house_terminal_box(s);
    const double y = bar.centre().y;
    switch (s.job->intake.earthing) {
        case site::Earthing::tn_s:
            draw_wire({{bar.left, y}, {112, y}, {112, s.ground - 14}, {intake_x, s.ground - 14}},
                      sketch);
            sketch.put(Circle{{intake_x, s.ground - 14}, 3.2, filled(palette::ink)});
            break;
        case site::Earthing::tn_c_s:
            draw_wire({{bar.left, y}, {cut_out_box(s).right - 4, y}}, sketch);
            sketch.put(Circle{{cut_out_box(s).right - 4, y}, 3.2, filled(palette::ink)});
            break;
        case site::Earthing::tt:
            draw_wire({{bar.left + 8, bar.bottom}, {bar.left + 8, s.ground + 12}}, sketch);
            sketch.thing(rod({bar.left + 8, s.ground + 8}, 96), "house-rod",
                         "the house's earth electrode");
            break;
    }
    sketch.thing(terminal_bar(bar), "house-terminal", "the house's earth terminal");
}

std::string ohms_words(const site::Fact<Ohms>& fact) {
    if (!fact.known) return "not known";
    if (fact.single()) return significant(fact.high.number(), 3) + " Ω";
    return fmt::format("{} to {} Ω", significant(fact.low.number(), 3),
                       significant(fact.high.number(), 3));
}

void note_supply(const Stage& s, Sketch& sketch) {
    const site::Intake& in = s.job->intake;
    std::vector<std::string> more;
    Point target{60, s.ground + 64};
    switch (in.earthing) {
        case site::Earthing::tn_s:
            more = {"earth through the supply cable's sheath", "Ze " + ohms_words(in.ze)};
            break;
        case site::Earthing::tn_c_s:
            more = {"earth joined to the supply's neutral at the intake",
                    "Ze " + ohms_words(in.ze)};
            break;
        case site::Earthing::tt:
            more = {"no earth from the supply; the house's own electrode " +
                    ohms_words(in.electrode)};
            target = {house_terminal_box(s).left + 8, s.ground + 60};
            break;
    }
    if (!in.ze.known && in.ze_declared.known && in.earthing != site::Earthing::tt) {
        more.back() = "Ze declared " + ohms_words(in.ze_declared) + ", not measured";
    }
    const std::string phases = in.phases == 3 ? ", three-phase" : "";
    sketch.callouts.push_back(note(target, "supply " + site::word(in.earthing) + phases, more));
    const std::string fuse =
        in.service_fuse ? fmt::format("{} A {}", significant(in.service_fuse->rating.number(), 4),
                                      in.service_fuse->standard)
                        : "rating not known";
    sketch.callouts.push_back(note({intake_x - 6, s.ground - 40}, "operator's fuse", {fuse}));
}

void note_feed(const Stage& s, Sketch& sketch) {
    if (!s.scheme) {
        sketch.callouts.push_back(note(house_board(s).box.centre(), "house's board"));
        return;
    }
    const answer::RunAnswer& run = s.scheme->run;
    const bool fused = run.device.curve.empty();
    const std::string head = run.fed_from == "tails"
                                 ? (fused ? "new switch-fuse on the tails" : "new box on the tails")
                             : run.fed_from == "new board" ? "new small board on the tails"
                                                           : "house's board, a spare way";
    std::vector<std::string> more{device_words(run.device, run.phases)};
    if (run.rcd && opens_on_residual(run.device)) {
        more.push_back(own_residual_words(*run.rcd));
    } else if (run.rcd) {
        more.push_back(rcd_words(*run.rcd) + " at the head of the run");
    }
    const Board unit = fed_from_tails(s) ? new_unit(s) : house_board(s);
    sketch.callouts.insert(sketch.callouts.begin(),
                           note(way_centre(unit, unit.chosen) - Point{0, 13}, head, more));
    std::vector<std::string> first;
    for (const std::string& work : s.scheme->house_work) {
        first.push_back("first: " + work.substr(0, work.find(" (")));
    }
    sketch.callouts.push_back(note({house_terminal_box(s).right - 10, house_terminal_box(s).bottom},
                                   "house's earth terminal", first));
}

}  // namespace

Point feed_point(const Stage& s) { return {unit_right, s.indoors()}; }

Point house_terminal(const Stage& s) {
    const Box bar = house_terminal_box(s);
    return {bar.right, bar.centre().y};
}

void draw_house(const Stage& s, Sketch& sketch) {
    const Box& outer = s.house_box;
    sketch.draw(building_shell(outer, 11, 58));
    sketch.keep_line(roof_line(outer, 58), 3);
    sketch.keep({outer.left, outer.top - 1, outer.right, outer.top + 1});
    sketch.thing({Item(building_name(name_or(s.house->name, s.house->id), outer, 58))}, "name", "");
    sketch.keep({outer.left, outer.top - 2, outer.left + 12, outer.bottom});
    sketch.keep({outer.right - 12, outer.top - 2, outer.right, outer.bottom});
    sketch.thing(tails(s), "tails", "");
    sketch.thing(intake(s), "intake", "supply cable, cut-out and meter");
    draw_supply_earth(s, sketch);
    const Board board = house_board(s);
    draw_wire({{150, board.box.bottom}, {150, house_terminal_box(s).top}}, sketch);
    sketch.thing(board_items(board), "board", "the house's board");
    if (fed_from_tails(s)) {
        draw_wire({{194, board.box.bottom}, {194, house_terminal_box(s).top}}, sketch);
        sketch.thing(board_items(new_unit(s)), "board", "the new unit that feeds the run");
    }
    note_feed(s, sketch);
    note_supply(s, sketch);
}

void draw_head_rcd(const Stage& s, Sketch& sketch) {
    if (!s.scheme || !s.scheme->run.rcd || opens_on_residual(s.scheme->run.device)) return;
    const Box box{unit_right + 1, s.indoors() - 10, unit_right + 23, s.indoors() + 10};
    Style style = stroked(palette::ink, weight::firm);
    style.fill = palette::paper;
    TextStyle letters{.size = 8, .weight = Weight::bold, .anchor = Anchor::middle};
    sketch.thing(
        {Item(Rect{box, style, 2}), Item(text(box.centre() + Point{0, 3}, "RCD", letters))},
        "head-rcd", "residual current device at the head of the run");
}

}  // namespace toft::picture
