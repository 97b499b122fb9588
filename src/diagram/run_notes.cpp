#include "diagram/run_notes.h"

#include "base/text.h"
#include "parts/cable_words.h"
#include "parts/core_section.h"
#include "parts/words.h"

#include <fmt/format.h>

namespace toft::diagram {

namespace {

template <class List, class Word>
std::string listed(const List& list, Word word) {
    std::string words;
    for (const auto& one : list) words += (words.empty() ? "" : "; ") + word(one);
    return words;
}

std::string armour_words(const answer::CableAnswer& cable) {
    if (!parts::armour_serves(cable)) return "armour (dashed): covering only";
    if (cable.armour_far) return "armour (dashed): protective conductor";
    return "armour (dashed): earthed at its near end only, to guard the cable itself";
}

std::string end_words(bool earthed) {
    return earthed ? "armour earthed here" : "armour insulated here: joined to nothing";
}

}  // namespace

Note stretch_note(const Stretch& s) {
    const answer::StretchAnswer& cable = s.cable;
    Note note;
    note.head = parts::size_words(cable) + " " + parts::family_words(cable);
    note.figures = {{"length", {}, significant(cable.length_m, 4) + " m"}};
    note.lines.push_back(listed(s.legs, [](const std::string& leg) { return leg; }));
    note.lines.push_back("cores: " + listed(cable.core_list, [](const answer::CoreAnswer& core) {
                             return core.use + " " + parts::core_words(core);
                         }));
    if (cable.parallel > 1) note.lines.push_back("side by side, of one length");
    const std::string thin = parts::thin_core_words(cable);
    if (!thin.empty()) note.lines.push_back(thin);
    if (parts::aluminium(cable)) note.lines.push_back("aluminium: glands and lugs made for it");
    if (cable.armoured) note.lines.push_back(armour_words(cable));
    if (cable.separate_mm2) {
        note.lines.push_back("beside it: protective conductor " + parts::mm2(*cable.separate_mm2) +
                             " copper, green-and-yellow");
    }
    return note;
}

Note near_note(const RunLine& run) {
    const answer::StretchAnswer& first = run.stretches.front().cable;
    if (!first.armoured) return {"cable leaves " + run.near};
    return {(first.parallel > 1 ? "glands at " : "gland at ") + run.near,
            {end_words(first.armour_near)}};
}

Note far_note(const RunLine& run) {
    const answer::StretchAnswer& last = run.stretches.back().cable;
    Note note{"cable enters the outbuilding"};
    if (last.armoured) {
        note.head = last.parallel > 1 ? "glands at the outbuilding" : "gland at the outbuilding";
        note.lines.push_back(end_words(last.armour_far));
    }
    if (run.earth_stops && parts::core_serves(last)) {
        note.lines.push_back("protective core insulated here: joined to nothing");
    }
    return note;
}

Note joint_note(const answer::StretchAnswer& before, const answer::StretchAnswer& after) {
    const auto cable = [](const answer::StretchAnswer& one) {
        return parts::size_words(one) + " " + one.family;
    };
    Note note{"joint box", {cable(before) + " to " + cable(after)}};
    if (before.armoured && !before.armour_far) {
        note.lines.push_back("armour from the near end insulated here");
    }
    note.lines.push_back("protective conductors joined: " + before.protective_conductor + " to " +
                         after.protective_conductor);
    return note;
}

}  // namespace toft::diagram
