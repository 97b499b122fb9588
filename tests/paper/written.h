#pragma once
// Papers written of designed jobs, and what can be read on their sheets.

#include "page/leaves.h"
#include "paper/block_words.h"
#include "paper/papers.h"
#include "picture/looking.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

namespace toft::paper {

inline Subject subject_of(const picture::Example& one, std::size_t scheme = 0) {
    return {support::catalogue(), one.job, one.answer, scheme, "2026-11-29"};
}

/// A copy that a test may change.
inline picture::Example copy_of(const std::string& name) { return picture::example(name); }

inline std::string squeezed(const std::string& words) {
    std::string all;
    for (const char c : words) {
        if (c != ' ' && c != '\n') all += c;
    }
    return all;
}

/// The number or dash that hangs beside a paragraph: drawn behind its first line.
inline bool is_mark(const std::string& words) {
    return words == "–" || (words.size() == 2 && words[1] == '.');
}

/// What stands between head and foot of all sheets, without spaces and without the marks of lists.
inline std::string sheet_words(const page::Paper& paper) {
    std::vector<page::Read> all;
    for (const page::Read& one : page::read_field(page::pages(paper))) {
        if (!is_mark(one.words)) all.push_back(one);
    }
    return page::run_on(all);
}

inline bool reads(const page::Paper& paper, const std::string& words) {
    return sheet_words(paper).find(squeezed(words)) != std::string::npos;
}

/// Words before they are laid out.
inline std::string all_words(const page::Paper& paper) {
    std::string words;
    for (const page::Block& block : paper.blocks) words += words_of(block) + "\n";
    return words;
}

inline void expect_in_the_field(const page::Paper& paper) {
    const drawing::Box sheet{0, 0, page::sheet_width, page::sheet_height};
    for (const drawing::Scene& scene : page::pages(paper)) {
        EXPECT_TRUE(drawing::contains(sheet, drawing::box_of(scene.items))) << paper.name;
        for (const page::Read& one : page::read({scene})) {
            EXPECT_GE(one.box.left, page::field.left - 1) << one.words;
            EXPECT_LE(one.box.right, page::field.right + 1) << one.words;
        }
        EXPECT_EQ(picture::clashes(scene.items, sheet), "") << paper.name;
    }
}

/// Names as people give them: long, of other letters, none.
inline const std::vector<std::string>& hard_names() {
    static const std::vector<std::string> names{
        "The old engineering workshop behind the walled kitchen garden",
        "Donaudampfschifffahrtsgesellschaftskapitaenskajuetenlampenhaus",
        "Мастерская за садом, Θερμοκήπιο, 作業小屋", ""};
    return names;
}

/// The example with that name given to its building, its circuits and its title.
inline picture::Example renamed(const std::string& example, const std::string& name) {
    picture::Example one = copy_of(example);
    one.answer.job = name;
    for (site::Building& building : one.job.buildings) {
        if (!building.origin) building.name = name;
        for (site::Circuit& circuit : building.circuits) circuit.name = name;
    }
    for (answer::SchemeAnswer& scheme : one.answer.schemes) {
        scheme.building.name = name;
        for (answer::CircuitAnswer& circuit : scheme.building.circuits) circuit.name = name;
    }
    return one;
}

}  // namespace toft::paper
