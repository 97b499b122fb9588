#include "paper/client_picture.h"

#include "drawing/measure.h"
#include "picture/lengths.h"
#include "picture/place.h"

namespace toft::paper {

namespace {

constexpr double client_wide = 860;  ///< so that its words are read once it fits a page

drawing::Scene client_section(const site::Job& job, const answer::SchemeAnswer* scheme) {
    const picture::Stage stage = picture::set_stage(job, scheme, client_wide);
    picture::Sketch sketch = picture::whole_section(stage);
    picture::draw_lengths(stage, stage.chain + 70, sketch);
    const drawing::Box box = drawing::grown(drawing::box_of(sketch.items), 2);
    drawing::Scene scene;
    scene.width = box.width();
    scene.height = box.height();
    scene.items.emplace_back(drawing::Group{std::move(sketch.items), {-box.left, -box.top}});
    return scene;
}

}  // namespace

std::vector<drawing::Scene> client_pictures(const Subject& s) {
    std::vector<drawing::Scene> scenes;
    if (s.job.runs.empty()) return scenes;
    if (s.scheme >= s.answer.schemes.size()) {
        scenes.push_back(client_section(s.job, nullptr));
        return scenes;
    }
    const site::Job built = answer::as_built(s.job, s.answer.schemes[s.scheme]);
    for (const answer::SchemeAnswer* part : runs_of(s)) {
        if (!part->run.feeder.empty() || scenes.size() == most_pictures) continue;
        scenes.push_back(client_section(answer::seen_from(built, part->run.id), part));
    }
    return scenes;
}

}  // namespace toft::paper
