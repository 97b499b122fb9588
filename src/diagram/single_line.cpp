#include "diagram/single_line.h"

#include "diagram/far_board.h"
#include "diagram/far_earth.h"
#include "diagram/feeder.h"
#include "diagram/house_end.h"
#include "diagram/intake.h"
#include "diagram/run.h"
#include "diagram/title.h"
#include "parts/words.h"
#include "picture/heading.h"

#include <algorithm>

namespace toft::diagram {

namespace {

void draw_scheme(const picture::Stage& stage, Ladder& ladder) {
    const RunLine run = run_line(stage);
    draw_house_end(stage, ladder);
    draw_zone("the run", ladder);
    draw_run(run, *stage.scheme, ladder);
    draw_zone(parts::name_or(stage.far->name, stage.far->id), ladder);
    draw_far_earth(stage, !run.earth_stops, ladder);
    draw_far_board(stage, ladder);
}

}  // namespace

Scene single_line(const site::Job& job, const answer::Answer& answer, std::size_t scheme_index,
                  double width) {
    const Columns columns = columns_for(std::max(width, narrowest_sheet));
    const answer::SchemeAnswer* scheme =
        scheme_index < answer.schemes.size() ? &answer.schemes[scheme_index] : nullptr;
    const picture::Stage stage = picture::set_stage(job, scheme);
    SetTitle title = set_title(answer, scheme, columns);
    Ladder ladder(columns, title.foot);
    if (fed_from_building(stage)) {
        draw_feeder(stage, ladder);
    } else {
        draw_intake(stage, ladder);
    }
    if (scheme) {
        draw_scheme(stage, ladder);
    } else {
        draw_house_board_alone(stage, ladder);
        ladder.row({"no sound scheme: no run is drawn", {}, {}}, 24);
    }
    const double edge = columns.figures_beside() ? 24 : 8;
    SetTitle foot = set_footing(answer, scheme, columns, ladder.y() + 6);
    double high = foot.foot + edge;
    if (columns.figures_beside())
        high = std::max(high, std::max(width, narrowest_sheet) * paper_high / paper_wide);
    Scene scene{std::max(width, narrowest_sheet), high};
    scene.title = answer.job + ": single-line diagram";
    scene.description = scheme ? scheme->sentence : picture::no_scheme_words();
    scene.items = std::move(title.items);
    append(scene.items, ladder.take());
    append(scene.items, std::move(foot.items));
    return scene;
}

}  // namespace toft::diagram
