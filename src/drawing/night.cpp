#include "drawing/night.h"

namespace toft::drawing {

namespace {

void darken(Colour& colour) {
    for (const auto& [day, night] : palette::day_and_night) {
        if (colour == day) {
            colour = night;
            return;
        }
    }
}

void darken(std::optional<Colour>& colour) {
    if (colour) darken(*colour);
}

void darken(Items& items);

struct Darken {
    void operator()(Text& text) const {
        darken(text.style.colour);
        darken(text.style.halo);
    }
    void operator()(Group& group) const { darken(group.items); }
    template <class OneShape>
    void operator()(OneShape& shape) const {
        darken(shape.style.stroke);
        darken(shape.style.fill);
    }
};

void darken(Items& items) {
    for (Item& item : items) std::visit(Darken{}, item.shape);
}

}  // namespace

Scene at_night(Scene scene) {
    darken(scene.paper);
    darken(scene.items);
    return scene;
}

}  // namespace toft::drawing
