#include "picture/place.h"

#include "picture/heading.h"
#include "picture/house.h"
#include "picture/ink.h"
#include "picture/lengths.h"
#include "picture/lower_row.h"
#include "picture/narrow_place.h"
#include "picture/outbuilding.h"
#include "picture/route.h"
#include "picture/stage.h"

namespace toft::picture {

namespace {

constexpr double lengths_foot = 684;
constexpr double lower_top = 696;
constexpr double lower_foot = 932;

/// House, ground, run and outbuilding.
Items section(const Stage& stage, double top) {
    Sketch sketch = whole_section(stage);
    const Box frame{margin, top, sheet_wide - margin, stage.soil_foot - 2};
    const std::size_t left_out = settle_callouts(sketch, frame, stage.ground);
    if (left_out > 0) {
        TextStyle style{.size = 11, .colour = palette::accent};
        sketch.put(text({margin, top}, "some notes found no room here: read the answer", style));
    }
    draw_lengths(stage, lengths_foot, sketch);
    draw_scales(stage, {margin, stage.soil_foot + 6, 228, lengths_foot}, sketch);
    return std::move(sketch.items);
}

}  // namespace

Sketch whole_section(const Stage& stage) {
    Sketch sketch;
    draw_ground(stage, sketch);
    draw_outbuilding_shell(stage, sketch);
    draw_house(stage, sketch);
    draw_route(stage, sketch);
    draw_head_rcd(stage, sketch);
    draw_outbuilding_fittings(stage, sketch);
    return sketch;
}

Scene place_picture(const site::Job& job, const answer::Answer& answer, std::size_t scheme_index,
                    double width) {
    const answer::SchemeAnswer* scheme =
        scheme_index < answer.schemes.size() ? &answer.schemes[scheme_index] : nullptr;
    if (width < sheet_wide) return narrow_place(job, answer, scheme, width);
    const Stage stage = set_stage(job, scheme);
    Scene scene;
    scene.width = sheet_wide;
    scene.height = sheet_high;
    scene.title = answer.job;
    scene.description = scheme ? scheme->sentence : no_scheme_words();
    Heading head = heading(answer, scheme);
    scene.items = std::move(head.items);
    append(scene.items, section(stage, head.foot));
    const Box row{margin, lower_top, sheet_wide - margin, lower_foot};
    append(scene.items, scheme ? scheme_row(stage, row) : reasons_row(answer, row));
    append(scene.items, footing(answer));
    return scene;
}

}  // namespace toft::picture
