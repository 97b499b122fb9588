#include "client/client_picture.h"

#include "drawing/measure.h"
#include "drawing/scaled.h"
#include "page/piece.h"
#include "paper/users_sheet.h"
#include "picture/lengths.h"
#include "picture/place.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::paper {

namespace {

using drawing::Anchor;
using drawing::Point;

constexpr double client_wide = 1000;  ///< of the section before it is made smaller
constexpr double client_scale = 0.5;
constexpr double name_size = 10.5;
constexpr double name_step = 13;
constexpr double widest_name = 200;
constexpr double number_apart = 9;  ///< numbers nearer than that would run together

void add_name(drawing::Items& items, const std::string& name, Point foot, double room) {
    const auto lines = page::lines_within(name, room, name_size, drawing::Weight::bold);
    double y = foot.y - name_step * static_cast<double>(lines.empty() ? 0 : lines.size() - 1);
    for (const std::string& line : lines) {
        items.emplace_back(drawing::text(
            {foot.x, y}, line,
            {.size = name_size, .weight = drawing::Weight::bold, .anchor = Anchor::middle}));
        y += name_step;
    }
}

void add_numbers(drawing::Items& items, const picture::Stage& stage) {
    double last = -number_apart;
    for (std::size_t i = 0; i < stage.route.legs.size(); ++i) {
        const double x = stage.route.legs[i].middle() * client_scale;
        if (x - last < number_apart) continue;
        last = x;
        items.emplace_back(drawing::text({x, stage.chain * client_scale + 15},
                                         std::to_string(i + 1),
                                         {.size = name_size, .anchor = Anchor::middle}));
    }
}

ClientPicture client_section(const Subject& s, const site::Job& job,
                             const answer::SchemeAnswer* scheme) {
    const picture::Stage stage = picture::set_stage(job, scheme, client_wide);
    picture::Sketch sketch = picture::whole_section(stage);
    picture::draw_lengths(stage, stage.chain + 70, sketch);
    drawing::Items items = drawing::scaled_without_words(sketch.items, client_scale);
    const double roofs = drawing::box_of(items).top;
    const Point house = stage.house_box.centre() * client_scale;
    const Point far = stage.far_box.centre() * client_scale;
    const double room = std::min(widest_name, far.x - house.x - name_size);
    add_name(items, "House", {house.x, roofs - 6}, room);
    add_name(items, building_name(s, stage.far->id), {far.x, roofs - 6}, room);
    add_numbers(items, stage);
    ClientPicture picture;
    const drawing::Box box = drawing::grown(drawing::box_of(items), 2);
    picture.scene.width = box.width();
    picture.scene.height = box.height();
    picture.scene.items.emplace_back(drawing::Group{std::move(items), {-box.left, -box.top}});
    for (std::size_t i = 0; i < stage.run->legs.size(); ++i) {
        picture.legs +=
            fmt::format("{}{}: {}.", i > 0 ? " " : "", i + 1, leg_plain(stage.run->legs[i]));
    }
    return picture;
}

}  // namespace

std::vector<ClientPicture> client_pictures(const Subject& s) {
    std::vector<ClientPicture> all;
    if (s.job.runs.empty()) return all;
    if (s.scheme >= s.answer.schemes.size()) {
        all.push_back(client_section(s, s.job, nullptr));
        return all;
    }
    const site::Job built = answer::as_built(s.job, s.answer.schemes[s.scheme]);
    for (const answer::SchemeAnswer* part : runs_of(s)) {
        if (!part->run.feeder.empty() || all.size() == most_pictures) continue;
        all.push_back(client_section(s, answer::seen_from(built, part->run.id), part));
    }
    return all;
}

}  // namespace toft::paper
