#include "paper/work_order.h"

#include "joins/terminals.h"
#include "parts/cable_words.h"
#include "parts/device_words.h"
#include "parts/ways.h"
#include "parts/words.h"
#include "study/scheme.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::paper {

namespace {

bool from_house(const RunSheet& sheet) { return sheet.run().feeder.empty(); }

bool on_tails(const RunSheet& sheet) {
    return from_house(sheet) && sheet.run().fed_from != "spare way";
}

/// Circuits of the far board that feed it.
std::string sources(const RunSheet& sheet) {
    std::string names;
    for (const parts::Way& way : parts::ways_of(*sheet.job, *sheet.stage.far, sheet.part)) {
        if (!parts::gives(way)) continue;
        names += (names.empty() ? "" : ", ") + (way.name.empty() ? "one without a name" : way.name);
    }
    return names;
}

bool isolated_far(const RunSheet& sheet) {
    return sheet.run().stretches.back().armoured && !sheet.run().stretches.back().armour_far;
}

bool old_colours(const RunSheet& sheet) {
    for (const answer::StretchAnswer& s : sheet.run().stretches) {
        for (const answer::CoreAnswer& core : s.core_list) {
            if (core.colour == "red" || core.colour == "yellow") return true;
        }
    }
    return false;
}

/// A cable lies there, which may be live.
bool cable_there(const RunSheet& sheet) {
    const auto& all = sheet.run().stretches;
    return std::any_of(all.begin(), all.end(), [](const auto& s) { return !s.laid.empty(); });
}

/// Nothing is laid: one cable, and it stays, alone.
bool all_stays(const RunSheet& sheet) {
    const auto& all = sheet.run().stretches;
    return std::all_of(all.begin(), all.end(), [](const auto& s) {
        return s.laid == study::laid_word(study::Laid::kept) && !s.separate_mm2;
    });
}

std::string isolate_words(const RunSheet& sheet) {
    if (on_tails(sheet)) {
        return "Make the tails dead at the isolator in them, or have the operator do it: a main "
               "switch of the board does not. Lock it and keep the key.";
    }
    if (!from_house(sheet)) {
        return fmt::format(
            "Switch off and lock the device that feeds {}, not its main switch "
            "alone: what comes in to that switch would stay live. Keep the key.",
            near_words(sheet));
    }
    return "Switch off the house's board by the isolator before it, or by its main switch, and "
           "lock it: with the main switch alone what comes in to it, and the tails, stay live. "
           "Keep the key.";
}

std::string far_work(const RunSheet& sheet) {
    std::string words = "Fit the board of " + far_words(sheet);
    if (!sheet.building().bonding.empty()) words += ", the bonds";
    if (sheet.building().electrode) words += ", the rod with its test point";
    words += "; make off the far end";
    if (isolated_far(sheet)) words += ": its armour INSULATED";
    return words + ".";
}

void add_isolation(const RunSheet& sheet, std::vector<std::string>& all) {
    all.push_back(isolate_words(sheet));
    const std::string fed = sources(sheet);
    if (!fed.empty()) {
        all.push_back(fmt::format("Switch off and lock what feeds the far board: {}.", fed));
    }
    all.push_back(
        "Prove the tester on a live part; prove dead what you will touch, every conductor "
        "to every other and to earth; prove the tester again.");
}

void add_told(const RunSheet& sheet, std::vector<std::string>& all) {
    for (const answer::TellAnswer& tell : sheet.part.tell) {
        if (tell.when == "after") continue;
        all.push_back(fmt::format("{}, {}: {}.", parts::capital(tell.who), tell.when, tell.why));
    }
}

std::string fed_words(const RunSheet& sheet) {
    return fmt::format("Fed from {} by {}.", near_words(sheet),
                       parts::device_words(sheet.run().device, sheet.run().phases));
}

}  // namespace

std::vector<std::string> first_of_all(const RunSheet& sheet) {
    std::vector<std::string> all;
    for (const std::string& fact : sheet.part.conditional_on) {
        all.push_back("Left undone until found out: " + fact_words(sheet.subject.answer, fact));
    }
    for (const std::string& work : sheet.part.house_work) all.push_back(work);
    add_told(sheet, all);
    return all;
}

std::vector<std::string> order_of_work(const RunSheet& sheet) {
    std::vector<std::string> all;
    const bool old = cable_there(sheet);
    if (old) {
        add_isolation(sheet, all);
        all.push_back(
            "The cable that is there was live until now: prove it dead at both ends, "
            "then part it at both ends.");
    }
    if (!all_stays(sheet)) {
        all.push_back(
            fmt::format("Find buried services, dig, lay and fix {}: both ends free, "
                        "joined to nothing.",
                        old ? "what is new" : "the cable"));
    }
    all.push_back(far_work(sheet));
    if (sheet.building().electrode) {
        all.push_back("Read the rod before anything is joined to it, and write the reading down.");
    }
    all.push_back("Do the dead tests of the test sheet on the run while its near end is free.");
    if (!old) add_isolation(sheet, all);
    all.push_back(
        "Make off the near end last: protective conductors and armour first, then "
        "neutral, then line. Tighten by the makers' figures, write down what was used, "
        "pull each conductor.");
    all.push_back("Covers on and nobody at either board: switch on; do the live tests; label.");
    return all;
}

std::vector<RunLabel> run_labels(const RunSheet& sheet) {
    const std::string far = far_words(sheet);
    const std::string near = parts::capital(near_words(sheet));
    std::vector<RunLabel> all{
        {near + ", at the device", "Feeds " + far + "."},
        {"Board of " + far, fed_words(sheet) + " Main switch and each way by name."}};
    for (const answer::BondAnswer& bond : sheet.building().bonding) {
        all.push_back(
            {"Clamp on the " + part_name(bond), "Safety electrical connection – do not remove."});
    }
    if (sheet.building().electrode) {
        all.push_back({"Rod's clamp", "Earth electrode of " + far + ": do not take off."});
        all.push_back({"Both ends", fmt::format("{} has its own earth. Nothing on the earth of {} "
                                                "may be joined to it.",
                                                far, near_words(sheet))});
    }
    if (isolated_far(sheet)) {
        all.push_back(
            {"Gland at the board of " + far, "Armour insulated here on purpose: do not earth it."});
    }
    if (sheet.run().rcd || !sheet.building().rcds.empty()) {
        all.push_back(
            {"Each RCD", "Press the test button as often as the code and the maker ask."});
    }
    if (!sources(sheet).empty()) {
        all.push_back({"Both ends", "Fed from two sides: isolate both. " + sources(sheet) + "."});
    }
    if (old_colours(sheet)) {
        all.push_back({"Both ends", "Cores of old and new colours meet here."});
    }
    return all;
}

std::vector<std::string> trench_words(const RunSheet& sheet) {
    const answer::SchemeAnswer& whole = sheet.subject.answer.schemes[sheet.subject.scheme];
    std::vector<std::string> all;
    for (const answer::TrenchAnswer& trench : whole.trenches) {
        const bool here = trench.dug_for == sheet.run().id ||
                          std::find(trench.beside.begin(), trench.beside.end(), sheet.run().id) !=
                              trench.beside.end();
        if (here) all.push_back(trench.says + ".");
    }
    return all;
}

std::string danger_words(const RunSheet& sheet) {
    std::string words =
        "Electricity kills. This work is for a competent, licensed person. Nothing is touched "
        "before it is isolated, locked and proved dead.";
    if (from_house(sheet)) {
        words +=
            " The operator's fuse and seals are not yours: only the operator, or whom they "
            "authorise, draws that fuse.";
    }
    if (!sources(sheet).empty()) {
        words += " The far board is fed from its own side too (" + sources(sheet) + ").";
    }
    if (isolated_far(sheet) && sheet.building().electrode) {
        words += " The armour is on the earth of " + near_words(sheet) + " and ends insulated at " +
                 far_words(sheet) + ": whoever touches both there touches two earths.";
    }
    return words;
}

}  // namespace toft::paper
