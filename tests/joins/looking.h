#pragma once
// Runs to draw the conductors of: examples, and the same with a cable or an earthing made up.

#include "joins/joins.h"
#include "picture/looking.h"
#include "picture/stage.h"

#include <functional>
#include <string>
#include <vector>

namespace toft::joins {

using picture::Example;
using picture::example;

inline std::vector<std::string> drawn_examples() {
    std::vector<std::string> names = support::example_names();
    for (const char* more : {"own-rod-greenhouse", "flat-cable-room", "old-garage-cable"}) {
        names.push_back(more);
    }
    for (const std::string& name : picture::drawn_job_names()) names.push_back(name);
    return names;
}

/// The part of the run in the example's first scheme with the job seen from it.
struct OneRun {
    site::Job job;
    answer::Answer answer;
};

inline OneRun one_run(const std::string& name, const std::string& run) {
    const Example& whole = example(name);
    return {answer::seen_from(whole.job, run), answer::for_run(whole.answer, run)};
}

/// Every scheme of every example, and each run of the trees.
inline void for_each_run(const std::function<void(const std::string&, const site::Job&,
                                                  const answer::SchemeAnswer&)>& look) {
    for (const std::string& name : drawn_examples()) {
        const Example& one = example(name);
        for (const answer::SchemeAnswer& scheme : one.answer.schemes) {
            look(name + " " + scheme.key, one.job, scheme);
        }
    }
    for (const char* name : {"garage-gym-stable", "lapwing-field"}) {
        const Example& one = example(name);
        for (const answer::SchemeAnswer& part : one.answer.schemes.at(0).further) {
            look(name + (" " + part.run.id), answer::seen_from(one.job, part.run.id), part);
        }
    }
}

/// All words one after another, lines joined by spaces.
inline std::string all_words(const drawing::Items& items) {
    std::string words = picture::words_in(items);
    for (char& c : words) {
        if (c == '\n') c = ' ';
    }
    return words;
}

inline bool tells(const drawing::Items& items, const std::string& words) {
    return all_words(items).find(words) != std::string::npos;
}

/// A single-phase armoured cable whose cores, armour and conductor beside it serve as the word
/// says.
inline answer::StretchAnswer armoured(const std::string& protective, bool armour_far,
                                      double separate = 0) {
    answer::StretchAnswer s;
    s.family = "armoured XLPE copper";
    s.live_mm2 = 10;
    s.length_m = 20;
    s.protective_conductor = protective;
    s.core_list = {{"brown", "", "line"}, {"blue", "", "neutral"}};
    if (protective.rfind("core", 0) == 0) {
        s.cores = 3;
        s.cpc_mm2 = 10;
        s.core_list = {{"brown", "", "line"},
                       {"grey", "blue", "neutral"},
                       {"black", "green-yellow", "protective"}};
    }
    s.armour_far = armour_far;
    if (separate > 0) s.separate_mm2 = separate;
    return s;
}

/// Flat twin and earth.
inline answer::StretchAnswer flat() {
    answer::StretchAnswer s;
    s.family = "flat twin and earth";
    s.live_mm2 = 6;
    s.cpc_mm2 = 2.5;
    s.length_m = 8;
    s.protective_conductor = "core";
    s.armoured = s.armour_near = s.armour_far = false;
    s.core_list = {
        {"brown", "", "line"}, {"blue", "", "neutral"}, {"bare", "green-yellow", "protective"}};
    return s;
}

/// The demo's first scheme with these stretches and that earthing.
inline Example made_up(std::vector<answer::StretchAnswer> stretches, const std::string& earthing) {
    Example one = example("demo");
    answer::SchemeAnswer& scheme = one.answer.schemes.at(0);
    scheme.run.stretches = std::move(stretches);
    scheme.building.earthing = earthing;
    if (earthing == "own electrode") scheme.building.electrode = answer::ElectrodeAnswer{};
    return one;
}

}  // namespace toft::joins
