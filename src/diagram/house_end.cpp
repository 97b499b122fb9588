#include "diagram/house_end.h"

#include "diagram/feeder.h"
#include "diagram/run_figures.h"
#include "diagram/wording.h"
#include "parts/device_words.h"
#include "symbol/board.h"
#include "symbol/contact.h"
#include "symbol/fuse.h"
#include "symbol/residual.h"

namespace toft::diagram {

namespace {

constexpr double bar_row = 26;
constexpr double bar_at = 12;  // below the row's top

/// A bar on the live line with a way off it to things that are not part of this job.
void bar_with_others(const Note& note, Ladder& ladder) {
    const Row row = ladder.row(note, bar_row);
    ladder.live(row.top, row.foot);
    const double y = row.top + bar_at;
    const double x = ladder.columns().live;
    ladder.draw(busbar({x - 16, y}, {x + 20, y}));
    ladder.draw(onward({x + 14, y}, {x + 14, y + 16}, pen_existing()));
}

/// The enclosure around what was drawn since `top`.
void enclose(double top, Ladder& ladder) {
    const double x = ladder.columns().live;
    ladder.draw_behind(enclosure({x - 27, top - 3, x + residual_reach + 5, ladder.y() - 5}));
}

void residual_in_front(const site::HouseBoard& board, Ladder& ladder) {
    if (!board.behind_rcd.known) return;
    const double amperes = board.behind_rcd.high.number();
    if (amperes <= 0) return;
    ladder.device({"residual current device (RCD)",
                   {"in front of the ways", significant(amperes * 1000, 4) + " mA"}},
                  residual_length, residual_switch);
}

Note house_board_note(const site::HouseBoard& board) {
    Note note{"the house's board: main switch"};
    if (!board.behind_rcd.known) note.lines.push_back("whether an RCD follows it: not known");
    return note;
}

/// "circuit breaker, new", "rewirable fuse, new", "RCBO, new".
std::string head_words(const answer::DeviceAnswer& device) {
    if (parts::opens_on_residual(device)) return "RCBO, new";
    if (device.curve.empty()) return (device.kind.empty() ? "fuse" : device.kind) + ", new";
    const bool moulded = device.kind.rfind("moulded", 0) == 0;
    return moulded ? "moulded-case circuit breaker, new" : "circuit breaker, new";
}

Note device_note(const answer::RunAnswer& run, const std::string& head) {
    const answer::DeviceAnswer& d = run.device;
    std::string rating = rating_words(d.standard, d.curve, d.rating_a);
    if (run.phases == 3) rating = d.curve.empty() ? "three, " + rating : rating + ", three-pole";
    Note note{head, {rating}, near_figures(run)};
    if (run.rcd && parts::opens_on_residual(d)) {
        note.lines.push_back("residual current " + residual_words(*run.rcd));
        note.lines.push_back("guards the whole run");
    }
    return note;
}

/// The overcurrent device at the head, with its residual part where it has one.
void draw_device(const answer::RunAnswer& run, const std::string& where, Ladder& ladder) {
    const Note note = device_note(run, head_words(run.device) + where);
    if (parts::opens_on_residual(run.device)) {
        ladder.device(note, residual_length, residual_breaker);
    } else if (run.device.curve.empty()) {
        ladder.device(note, fuse_length, fuse);
    } else {
        ladder.device(note, contact_length, circuit_breaker);
    }
}

/// A way of the board of a building, which may be as new as the run itself.
void draw_way_of_building(const answer::RunAnswer& run, Ladder& ladder) {
    const double top = ladder.y();
    ladder.device({"the board of " + run.feeder + ": main switch"}, contact_length,
                  switch_disconnector);
    bar_with_others({"", {"its other ways"}}, ladder);
    ladder.use(pen_new());
    draw_device(run, ", in a way of that board", ladder);
    enclose(top, ladder);
}

void draw_spare_way(const picture::Stage& stage, Ladder& ladder) {
    const site::HouseBoard& board = stage.job->intake.board;
    const double top = ladder.y();
    ladder.device(house_board_note(board), contact_length, switch_disconnector);
    residual_in_front(board, ladder);
    bar_with_others({"", {"the house's other ways"}}, ladder);
    ladder.use(pen_new());
    draw_device(stage.scheme->run, ", in a spare way", ladder);
    enclose(top, ladder);
}

/// The tails divide; the house's board hangs on one side.
void divide_tails(Ladder& ladder) {
    const Row row = ladder.row({"connector blocks on the tails, new",
                                {"the arrow: to the house's own board, as it stands"}},
                               30);
    ladder.use(pen_existing());
    ladder.live(row.top, row.top + bar_at);
    ladder.use(pen_new());
    ladder.live(row.top + bar_at, row.foot);
    const Point at = ladder.on_live(row.top + bar_at);
    const Point turn = at + Point{22, 0};
    ladder.draw({Line{at, turn, pen_existing()}});
    ladder.draw(onward(turn, turn + Point{0, 17}, pen_existing()));
    ladder.draw({Group{joint(at, pen_new()), {}, "", "connector-block", "connector blocks"}});
}

/// A box of its own on the tails: a switch-fuse, or another device alone.
void draw_box_on_tails(const answer::RunAnswer& run, Ladder& ladder) {
    divide_tails(ladder);
    ladder.skip(4);
    ladder.live(ladder.y() - 4, ladder.y());
    const double top = ladder.y();
    if (run.device.curve.empty()) {
        ladder.device(device_note(run, "switch-fuse, new"), switch_fuse_length, switch_fuse);
    } else {
        draw_device(run, ", in a box of its own", ladder);
    }
    enclose(top, ladder);
}

void draw_new_board(const answer::RunAnswer& run, Ladder& ladder) {
    divide_tails(ladder);
    ladder.skip(4);
    ladder.live(ladder.y() - 4, ladder.y());
    const double top = ladder.y();
    ladder.device({"new small board: main switch", {"isolates the run"}}, contact_length,
                  switch_disconnector);
    draw_device(run, "", ladder);
    enclose(top, ladder);
}

}  // namespace

void draw_house_end(const picture::Stage& stage, Ladder& ladder) {
    const answer::RunAnswer& run = stage.scheme->run;
    ladder.use(pen_existing());
    ladder.live(ladder.y() - 1, ladder.y());
    if (fed_from_building(stage)) {
        draw_way_of_building(run, ladder);
    } else if (run.fed_from == "tails") {
        draw_box_on_tails(run, ladder);
    } else if (run.fed_from == "new board") {
        draw_new_board(run, ladder);
    } else {
        draw_spare_way(stage, ladder);
    }
    if (!run.rcd || parts::opens_on_residual(run.device)) return;
    ladder.device(
        {"residual current device (RCD), new", {residual_words(*run.rcd), "guards the whole run"}},
        residual_length, residual_switch);
}

void draw_house_board_alone(const picture::Stage& stage, Ladder& ladder) {
    ladder.use(pen_existing());
    const double top = ladder.y();
    const site::HouseBoard& board = stage.job->intake.board;
    ladder.device(house_board_note(board), contact_length, switch_disconnector);
    residual_in_front(board, ladder);
    const Row row = ladder.row({"", {"the house's ways"}}, bar_row + 8);
    ladder.live(row.top, row.top + bar_at);
    const double x = ladder.columns().live;
    ladder.draw(busbar({x - 16, row.top + bar_at}, {x + 20, row.top + bar_at}));
    for (const double across : {-10.0, 2.0, 14.0}) {
        ladder.draw(onward({x + across, row.top + bar_at}, {x + across, row.top + bar_at + 16},
                           pen_existing()));
    }
    enclose(top, ladder);
}

}  // namespace toft::diagram
