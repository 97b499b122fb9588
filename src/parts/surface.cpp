#include "parts/surface.h"

#include "drawing/hatch.h"
#include "parts/ink.h"

namespace toft::parts {

namespace {

const Style blade = stroked(palette::earth, weight::hair);

/// Tufts of three blades; `high` above the ground line.
Items tufts(const Box& strip, double ground, double spacing, double high) {
    Items items;
    for (double x = strip.left + 5; x < strip.right - 4; x += spacing) {
        for (const double lean : {-0.45, 0.0, 0.45}) {
            items.emplace_back(Line{
                {x, ground}, {x + lean * high, ground - high * (lean == 0 ? 1 : 0.75)}, blade});
        }
    }
    return items;
}

Items mounds(const Box& strip, double ground) {
    Items items;
    for (double x = strip.left + 2; x + 14 <= strip.right; x += 14) {
        items.emplace_back(
            PathBuilder({x, ground}).quad({x + 7, ground - 9}, {x + 14, ground}).inked(blade));
    }
    return items;
}

/// Slabs or asphalt cut through, just below the ground line.
Items paved(const Box& strip, double ground, const Hatch& hatch) {
    Items items;
    const Box slab{strip.left, ground, strip.right, strip.bottom};
    Style cut = stroked(palette::earth, weight::thin);
    cut.fill = palette::stone;
    items.emplace_back(Rect{slab, cut});
    append(items, hatched(slab, hatch));
    return items;
}

Items joints(const Box& strip, double ground) {
    Items items;
    for (double x = strip.left + 22; x < strip.right; x += 22) {
        items.emplace_back(
            Line{{x, ground}, {x, strip.bottom}, stroked(palette::earth, weight::thin)});
    }
    return items;
}

}  // namespace

Items surface_items(site::Surface surface, const Box& strip) {
    const double ground = strip.bottom - 8;
    switch (surface) {
        case site::Surface::lawn:
            return tufts(strip, ground, 9, 5);
        case site::Surface::field:
            return tufts(strip, ground, 15, 9);
        case site::Surface::bed:
            return mounds(strip, ground);
        case site::Surface::drive:
        case site::Surface::road:
            return paved(strip, ground, concrete);
        case site::Surface::path:
        case site::Surface::shared_path:
        case site::Surface::patio: {
            Items items = paved(strip, ground, {.angle = 0, .spacing = 100});
            append(items, joints(strip, ground));
            return items;
        }
    }
    return {};
}

Items fence(const Box& box) {
    Items items;
    const Style thin = stroked(palette::pencil, weight::thin);
    for (const double y : {box.top - 8, box.top + 14}) {
        items.emplace_back(Line{{box.left, y}, {box.right, y}, thin});
    }
    for (double x = box.left + 8; x < box.right; x += 44) {
        items.emplace_back(Line{{x, box.top - 14}, {x, box.bottom}, stroked(palette::pencil, 2)});
    }
    return items;
}

}  // namespace toft::parts
