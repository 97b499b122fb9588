#include "picture/cable_ends.h"

#include "drawing/measure.h"
#include "parts/cable_words.h"
#include "parts/gland.h"
#include "parts/words.h"
#include "picture/ink.h"

namespace toft::picture {

namespace {

/// The longest stretch that has armour; null where none has.
const answer::StretchAnswer* longest_armoured(const std::vector<answer::StretchAnswer>& stretches) {
    const answer::StretchAnswer* best = nullptr;
    for (const answer::StretchAnswer& one : stretches) {
        if (one.armoured && (!best || one.length_m > best->length_m)) best = &one;
    }
    return best;
}

ArmourEnd end_of(bool earthed) { return earthed ? ArmourEnd::earthed : ArmourEnd::insulated; }

Items glands(const Stage& s, const answer::StretchAnswer& stretch, const Box& box) {
    const std::vector<answer::StretchAnswer>& all = s.scheme->run.stretches;
    const std::string near = &stretch == &all.front() ? capital(name_or(s.house->name, s.house->id))
                                                      : "Joint box at its start";
    const std::string far =
        &stretch == &all.back() ? capital(name_or(s.far->name, s.far->id)) : "Joint box at its end";
    const double half = box.height() / 2;
    Items items = gland_detail(end_of(stretch.armour_near), near,
                               {box.left, box.top, box.right, box.top + half - 4});
    append(items, gland_detail(end_of(stretch.armour_far), far,
                               {box.left, box.top + half + 4, box.right, box.bottom}));
    return items;
}

Items without_armour(const Stage& s, const Box& box) {
    std::vector<std::string> says{
        "No armour: each entry grips the sheath and closes the hole; sheath runs on into the "
        "enclosure."};
    const answer::StretchAnswer& first = s.scheme->run.stretches.front();
    const answer::StretchAnswer& last = s.scheme->run.stretches.back();
    if (core_serves(first)) says.push_back("House: protective core to the earth terminal.");
    if (earth_stops(*s.scheme)) {
        says.push_back("Outbuilding: protective core insulated, joined to nothing there.");
    } else if (core_serves(last)) {
        says.push_back("Outbuilding: protective core to the earth terminal there.");
    }
    Items items;
    double y = box.top + 16;
    for (const std::string& one : says) {
        for (const std::string& line : paragraph(one, box.width(), plain_letters, 4)) {
            items.emplace_back(text({box.left, y}, line, TextStyle{.size = plain_letters}));
            y += line_spacing * plain_letters;
        }
        y += 8;
    }
    return {Group{std::move(items), {}, "", "no-armour", ""}};
}

}  // namespace

std::string ends_title(const Stage& s) {
    const std::vector<answer::StretchAnswer>& all = s.scheme->run.stretches;
    if (!longest_armoured(all)) return "how the cable ends";
    return all.size() > 1 ? "how the armour ends" : "how its armour ends";
}

Items cable_ends(const Stage& s, const Box& box) {
    const answer::StretchAnswer* armoured = longest_armoured(s.scheme->run.stretches);
    return armoured ? glands(s, *armoured, box) : without_armour(s, box);
}

}  // namespace toft::picture
