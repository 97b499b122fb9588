#include "record/parts.h"
#include "record/stated.h"

#include "base/text.h"
#include "tables/rulebook.h"

#include <fmt/format.h>

#include <cmath>
#include <iterator>

namespace toft::paper {

using page::Heading;
using page::Row;
using page::Table;
using page::Words;

void append(Blocks& blocks, Blocks more) {
    blocks.insert(blocks.end(), std::make_move_iterator(more.begin()),
                  std::make_move_iterator(more.end()));
}

Blocks listed(const std::string& heading, const std::vector<std::string>& lines) {
    if (lines.empty()) return {};
    Blocks blocks{Heading{heading}};
    for (const std::string& line : lines) blocks.push_back(Words{line, "–"});
    return blocks;
}

namespace {

std::string range_words(const answer::UnknownAnswer& unknown) {
    if (!std::isfinite(unknown.low) || !std::isfinite(unknown.high)) return "any";
    std::string words = significant(unknown.low, 4) + " to " + significant(unknown.high, 4);
    if (!unknown.unit.empty()) words += " " + unknown.unit;
    return words;
}

Blocks open_facts(const Subject& s) {
    if (s.answer.unknowns.empty()) return {};
    Table table{{{"Open", 5}, {"May be", 3}, {"What hangs on it", 5}}, {}};
    for (const answer::UnknownAnswer& unknown : s.answer.unknowns) {
        std::string fact = unknown.says.empty() ? unknown.fact : unknown.says;
        if (!unknown.place.empty()) fact += ", " + unknown.place;
        table.rows.push_back(
            {{fact, range_words(unknown), unknown.hangs.empty() ? unknown.effect : unknown.hangs}});
    }
    return {Heading{"Still open, and judged at the worse end"}, std::move(table)};
}

}  // namespace

Blocks record_of_facts(const Subject& s) {
    Blocks blocks{Heading{"What was stated"}};
    Table table{{{"Fact", 5}, {"Value", 5}, {"How known", 3}}, {}};
    for (const FactGroup& group : facts_of(s.job)) {
        table.rows.push_back({{group.about}, true});
        for (const StatedFact& fact : group.facts) {
            table.rows.push_back({{fact.fact, fact.value, fact.known}});
        }
    }
    blocks.push_back(std::move(table));
    append(blocks, listed("Stated, but read by no calculation", s.job.unused));
    append(blocks, listed("Taken for granted", s.answer.assumed));
    append(blocks, open_facts(s));
    return blocks;
}

namespace {

/// What the step means for the ways, each meaning once.
std::string follows(const walk::Walk& walk, const walk::Step& step) {
    std::string words;
    for (std::size_t i = 0; i < walk.ways.size(); ++i) {
        const walk::Consequence& c = step.ruling[walk.ways[i].choice];
        if (*c.why == '\0') continue;
        std::string names;
        bool told = false;
        for (std::size_t k = 0; k < walk.ways.size(); ++k) {
            const walk::Consequence& other = step.ruling[walk.ways[k].choice];
            if (other.bearing != c.bearing || std::string(other.why) != c.why) continue;
            told = told || k < i;
            names += (names.empty() ? "" : " and ") +
                     std::string(walk::choice_word(walk.ways[k].choice));
        }
        if (told) continue;
        if (!words.empty()) words += "; ";
        words += names + ": ";
        if (c.bearing != walk::Bearing::neutral)
            words += std::string(walk::bearing_word(c.bearing)) + ", ";
        words += c.why;
    }
    return words.empty() ? "nothing" : words;
}

std::string stands_on(const walk::Step& step) {
    if (!step.basis) return "";
    const Citation& c = *step.basis->citation;
    return fmt::format("{}, {} ({}: {})", tables::authority_word(step.basis->authority),
                       step.basis->clause, c.source, basis_word(c.basis));
}

Table steps_of(const walk::Walk& walk) {
    Table table{{{"", 1}, {"Asked", 5}, {"Found", 5}, {"What follows", 7}, {"Whose word", 4}},
                {},
                false,
                true};
    int number = 0;
    for (const walk::Step& step : walk.steps) {
        const bool open = step.ruling.known == walk::Known::unknown;
        table.rows.push_back({{std::to_string(++number), step.asks,
                               step.found + (open ? " (not known: at its worse end)" : ""),
                               follows(walk, step), stands_on(step)}});
    }
    return table;
}

Table ways_of(const walk::Walk& walk) {
    Table table{{{"Way", 3}, {"Stands", 2}, {"Risk left", 6}, {"Would change it", 5}}, {}};
    for (const walk::Way& way : walk.ways) {
        std::string change;
        for (const std::string& one : way.would_change)
            change += (change.empty() ? "" : "; ") + one;
        table.rows.push_back({{walk::choice_word(way.choice), walk::standing_word(way.standing),
                               way.residual_risk, change.empty() ? "nothing known" : change}});
    }
    return table;
}

}  // namespace

Blocks record_of_earthing(const Subject& s) {
    Blocks blocks;
    for (const walk::Walk& walk : s.answer.walks) {
        blocks.push_back(Heading{"How " + walk.name + " is to be earthed"});
        blocks.push_back(Words{walk.conclusion, {}, true});
        blocks.push_back(ways_of(walk));
        blocks.push_back(steps_of(walk));
    }
    return blocks;
}

Blocks record_of_sources(const Subject& s) {
    Table table{{{"Source", 4}, {"Title", 9}, {"Basis", 3}}, {}, false, true};
    for (const answer::SourceAnswer& source : s.answer.sources) {
        table.rows.push_back({{source.key, source.title, source.basis}});
    }
    return {
        Heading{"What the figures rest on"},
        Words{fmt::format("Rules: {}. Data: {}. \"memory\" marks a figure that was recalled and "
                          "not seen: look it up before it is relied on. \"common practice\" "
                          "marks a habit of the trade that no rule lays down.",
                          s.answer.edition, s.answer.data_version)},
        std::move(table)};
}

}  // namespace toft::paper
