#pragma once
// Subjects to write papers of: examples, and one with many ways or odd names.

#include "board/boards.h"
#include "page/leaves.h"
#include "paper/run_sheet.h"
#include "picture/looking.h"

#include <string>
#include <vector>

namespace toft::paper {

using picture::Example;
using picture::example;

inline Subject sheet_subject(const Example& one, std::size_t scheme = 0) {
    return {support::catalogue(), one.job, one.answer, scheme, "2026-11-29"};
}

/// All words of the blocks, tables and pictures too, without spaces.
inline std::string packed(const std::string& words) {
    std::string all;
    for (const char c : words) {
        if (c != ' ') all += c;
    }
    return all;
}

/// "what | words", a line each.
inline std::string lines_of(const std::vector<std::pair<std::string, std::string>>& lines) {
    std::string all;
    for (const auto& [what, words] : lines) all += what + " | " + words + "\n";
    return all;
}

/// Examples and runs that between them have every earthing and every kind of cable.
inline std::vector<std::string> sheet_examples() {
    return {"demo",
            "own-rod-greenhouse",
            "tt-shed",
            "three-phase-barn",
            "flat-cable-room",
            "old-garage-cable",
            "garage-gym-stable",
            "steel-container",
            "three-facts",
            "aluminium-pair-mill"};
}

/// Each run of each scheme's first of those examples.
template <class Look>
void for_each_sheet(Look look) {
    for (const std::string& name : sheet_examples()) {
        const Example& one = example(name);
        const Subject subject = sheet_subject(one);
        for (const answer::SchemeAnswer* part : runs_of(subject)) {
            look(name + " " + part->run.id, run_sheet(subject, *part));
        }
    }
}

}  // namespace toft::paper
