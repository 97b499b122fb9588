#include "print/white.h"

namespace toft::print {

namespace {

using drawing::Colour;

constexpr Colour white{0xFFFFFF};

void whiten(Colour& colour) {
    if (colour == drawing::palette::paper) colour = white;
}

void whiten(std::optional<Colour>& colour) {
    if (colour) whiten(*colour);
}

void whiten(drawing::Items& items);

struct Whiten {
    void operator()(drawing::Text& text) const {
        whiten(text.style.colour);
        whiten(text.style.halo);
    }
    void operator()(drawing::Group& group) const { whiten(group.items); }
    template <class OneShape>
    void operator()(OneShape& shape) const {
        whiten(shape.style.stroke);
        whiten(shape.style.fill);
    }
};

void whiten(drawing::Items& items) {
    for (drawing::Item& item : items) std::visit(Whiten{}, item.shape);
}

}  // namespace

drawing::Scene on_white(drawing::Scene scene) {
    scene.paper.reset();
    whiten(scene.items);
    return scene;
}

}  // namespace toft::print
