#pragma once
// Example jobs with their answers, to write papers of, and what stands on a paper.

#include "page/leaves.h"
#include "paper/subject.h"
#include "support/questions.h"

#include <map>
#include <string>

namespace toft::paper {

/// A job with its answer.
struct Made {
    site::Job job;
    answer::Answer answer;

    Subject subject(std::size_t scheme = 0) const {
        return {support::catalogue(), job, answer, scheme, "2026-11-29"};
    }
};

inline Made made_of(site::Job job) {
    Made made{std::move(job), {}};
    made.answer = answer::design(support::question_of(made.job));
    return made;
}

/// examples/<name>.json, designed once for all tests of a program.
inline const Made& made(const std::string& name) {
    static std::map<std::string, Made> all;
    const auto found = all.find(name);
    if (found != all.end()) return found->second;
    return all.emplace(name, made_of(support::example_job(name, support::catalogue())))
        .first->second;
}

/// The demo with so many circuits at its outbuilding, named so.
inline Made crowded(std::size_t circuits, const std::string& name) {
    site::Job job = support::example_job("demo", support::catalogue());
    for (site::Building& building : job.buildings) {
        if (building.origin) continue;
        building.name = name;
        site::Circuit one;
        one.kind = site::CircuitKind::lighting;
        one.load_w = {true, 60, 60};
        one.length = {true, metres(8), metres(8)};
        building.circuits.clear();
        for (std::size_t i = 0; i < circuits; ++i) {
            one.name = name + " " + std::to_string(i + 1);
            building.circuits.push_back(one);
        }
    }
    return made_of(std::move(job));
}

/// A paper of just those blocks.
inline page::Paper paper_with(const Subject& subject, std::vector<page::Block> blocks) {
    page::Paper paper = blank(subject, "Blocks");
    paper.blocks = std::move(blocks);
    return paper;
}

/// What stands between head and foot of a paper's sheets, run together without spaces.
inline std::string field_words(const page::Paper& paper) {
    return page::run_on(page::read_field(page::pages(paper)));
}

inline std::string without_spaces(const std::string& words) {
    std::string all;
    for (const char c : words) {
        if (c != ' ') all += c;
    }
    return all;
}

/// Whether the paper says that, wherever its lines break.
inline bool says(const page::Paper& paper, const std::string& words) {
    return field_words(paper).find(without_spaces(words)) != std::string::npos;
}

/// How often a table of the paper has a row whose first cell is that.
inline std::size_t rows_that_begin(const page::Paper& paper, const std::string& cell) {
    std::size_t count = 0;
    for (const page::Block& block : paper.blocks) {
        const auto* table = std::get_if<page::Table>(&block);
        if (!table) continue;
        for (const page::Row& row : table->rows) {
            count += !row.cells.empty() && row.cells.front() == cell;
        }
    }
    return count;
}

/// Every letter inside its sheet.
inline bool inside_sheets(const page::Paper& paper) {
    for (const drawing::Scene& sheet : page::pages(paper)) {
        if (!drawing::contains({0, 0, sheet.width, sheet.height}, drawing::box_of(sheet.items))) {
            return false;
        }
    }
    return true;
}

}  // namespace toft::paper
