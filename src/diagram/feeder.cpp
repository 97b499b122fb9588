#include "diagram/feeder.h"

#include "parts/fittings.h"
#include "parts/words.h"
#include "symbol/board.h"
#include "symbol/earth.h"

namespace toft::diagram {

namespace {

constexpr double feeder_bar_at = 13;

void arriving_row(const picture::Stage& stage, Ladder& ladder) {
    const answer::SchemeAnswer& scheme = *stage.scheme;
    Note note{"from the run that feeds " + scheme.run.feeder,
              {"supply, house and that run stand on the diagram of it"}};
    if (scheme.incoming) {
        note.figures = {
            {"earth fault loop there, at most", drawing::symbol("Z", "s"),
             significant(scheme.incoming->ze_working.number(), 4) + " Ω"},
            {"voltage lost up to there", {}, significant(scheme.incoming->drop, 4) + " %"}};
    }
    const Row row = ladder.row(note, 34);
    const Point at = ladder.on_live(row.top + 16);
    ladder.draw(onward(ladder.on_live(row.top), at, pen_existing()));
    ladder.live(row.top + 16, row.foot);
}

void earth_row(const picture::Stage& stage, Ladder& ladder) {
    const bool island = stage.scheme->incoming && stage.scheme->incoming->island;
    const Note note{"earth terminal of " + stage.scheme->run.feeder,
                    {island ? "on that building's own electrode" : "on the earth brought to it"}};
    const Row row = ladder.row(note, 34);
    ladder.live(row.top, row.foot);
    const double y = row.top + feeder_bar_at;
    ladder.earth_from(y);
    ladder.draw(protective_earth(ladder.on_earth(y) - Point{28, 0}, ladder.pen()));
    const Columns& c = ladder.columns();
    ladder.draw({Group{parts::terminal_bar({c.earth - 15, y - 4.5, c.earth + 15, y + 4.5}),
                       {},
                       "",
                       "feeder-terminal",
                       "earth terminal of the board that feeds the run"}});
}

}  // namespace

bool fed_from_building(const picture::Stage& stage) {
    return stage.scheme && !stage.scheme->run.feeder.empty();
}

std::string near_place(const answer::RunAnswer& run) {
    return run.feeder.empty() ? "the house" : run.feeder;
}

void draw_feeder(const picture::Stage& stage, Ladder& ladder) {
    ladder.use(pen_existing());
    arriving_row(stage, ladder);
    earth_row(stage, ladder);
}

}  // namespace toft::diagram
