#include "joins/joins.h"

#include "base/text.h"
#include "joins/earth_bar.h"
#include "joins/ink.h"
#include "joins/panel.h"
#include "joins/terminals.h"
#include "parts/cable_words.h"
#include "parts/words.h"
#include "picture/heading.h"
#include "picture/narrow_heading.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::joins {

namespace {

constexpr double roomy = 640;
constexpr double body_letters = 12;

std::string stretch_title(const answer::RunAnswer& run, std::size_t i) {
    const answer::StretchAnswer& s = run.stretches[i];
    std::string words =
        fmt::format("{} {}, {} m", size_words(s), family_words(s), significant(s.length_m, 4));
    const std::string thin = thin_core_words(s);
    if (!thin.empty()) words += ", " + thin;
    if (!s.laid.empty()) words += ": " + s.laid;
    if (run.stretches.size() < 2) return words;
    return fmt::format("stretch {} of {}: {}", i + 1, run.stretches.size(), words);
}

void set_words(const std::vector<std::string>& lines, WordColumn& column) {
    for (const std::string& line : lines) column.words(line, {.size = body_letters}, 8);
}

void set_stretches(const picture::Stage& stage, WordColumn& column) {
    const answer::RunAnswer& run = stage.scheme->run;
    for (std::size_t i = 0; i < run.stretches.size(); ++i) {
        column.gap(6);
        column.words(capital(stretch_title(run, i)), {.size = body_letters, .weight = Weight::bold},
                     4);
        column.gap(4);
        Panel one = panel(stage, i, {column.left(), column.y(), column.right(), column.y()});
        column.placed(std::move(one.items), one.foot);
    }
}

void set_earths(const picture::Stage& stage, WordColumn& column) {
    const bool house = stage.scheme->run.feeder.empty();
    column.heading(house ? "main earthing terminal of the house"
                         : "earth bar of " + near_name(stage));
    set_taps(near_taps(stage), column);
    column.heading("earth bar of " + name_or(stage.far->name, stage.far->id));
    column.words(source_words(stage), {.size = body_letters, .weight = Weight::bold}, 4);
    set_taps(far_taps(stage), column);
    set_words(unbonded_words(stage), column);
}

void set_run(const picture::Stage& stage, bool lists, WordColumn& column) {
    if (lists) {
        column.heading("near end: " + near_name(stage));
        set_words(head_words(stage), column);
    }
    set_stretches(stage, column);
    if (!lists) return;
    column.gap(4);
    column.words(
        "Every conductor bears its word. A sleeve goes on at each end. A cross in a gap: cut back, "
        "insulated, joined to nothing. Not to scale.",
        {.size = 10.5, .colour = palette::graphite}, 4);
    column.heading("far end: board of " + name_or(stage.far->name, stage.far->id));
    set_words(far_board_words(stage), column);
    set_earths(stage, column);
}

}  // namespace

Scene conductors_picture(const site::Job& job, const answer::Answer& answer,
                         std::size_t scheme_index, double width) {
    const double wide = std::max(width, narrowest_sheet);
    const double edge = wide < roomy ? 10 : 40;
    const answer::SchemeAnswer* scheme =
        scheme_index < answer.schemes.size() ? &answer.schemes[scheme_index] : nullptr;
    WordColumn column(edge, wide - edge, wide < roomy ? edge : 28);
    column.words("Conductors and earthing of the run", {.size = 12, .colour = palette::graphite},
                 1);
    picture::narrow_heading(answer, scheme, column);
    if (scheme) {
        set_run(picture::set_stage(job, scheme), true, column);
    } else {
        picture::narrow_reasons(answer, column);
    }
    picture::narrow_footing(answer, column);
    Scene scene{wide, column.y() + edge};
    scene.title = "Conductors and earthing of the run: " + answer.job;
    scene.description = scheme ? scheme->sentence : picture::no_scheme_words();
    scene.items = column.take();
    return scene;
}

Scene run_conductors(const site::Job& job, const answer::SchemeAnswer& part, double width,
                     bool lists) {
    const double wide = std::max(width, narrowest_sheet);
    WordColumn column(2, wide - 2, 0);
    set_run(picture::set_stage(job, &part), lists, column);
    Scene scene{wide, column.y() + 2};
    scene.title = "Conductors and earthing of " + part.run.id;
    scene.description = part.sentence;
    scene.paper.reset();
    scene.items = column.take();
    return scene;
}

}  // namespace toft::joins
