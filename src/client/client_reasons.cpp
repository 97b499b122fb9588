#include "client/client_reasons.h"

#include "paper/plain_words.h"
#include "walk/choice.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::paper {

namespace {

using page::Block;

std::string counted(long ways) {
    std::string digits = std::to_string(ways);
    for (std::size_t at = digits.size(); at > 3; at -= 3) digits.insert(at - 3, ",");
    return digits;
}

/// "not so: the run …" is how an answer names a rule that was not met.
std::string reason_words(const std::string& title) {
    const std::string broken = "not so: ";
    if (title.compare(0, broken.size(), broken) != 0) return capital(title) + ".";
    return "This could not be met: " + title.substr(broken.size()) + ".";
}

page::Table fallen(const answer::Answer& answer) {
    page::Table table{{{"Why ways fell", 6}, {"Ways", 1.2, page::Side::right}}, {}};
    for (const answer::DroppedAnswer& dropped : answer.dropped) {
        table.rows.push_back({{reason_words(dropped.title), counted(dropped.count)}});
    }
    return table;
}

void add_once(std::vector<std::string>& all, const std::string& line) {
    if (std::find(all.begin(), all.end(), line) == all.end()) all.push_back(line);
}

void put_list(std::vector<Block>& blocks, const char* heading,
              const std::vector<std::string>& lines) {
    if (lines.empty()) return;
    blocks.push_back(page::Heading{heading});
    for (const std::string& line : lines) blocks.push_back(page::Words{capital(line) + ".", "–"});
}

}  // namespace

std::string residual_risk(const answer::Answer& answer, const answer::SchemeAnswer& part) {
    // Behind a building with a rod of its own another shares that rod; the walk, which argues from
    // the house, then knows only the rod.
    const bool shared = part.building.earthing == "shared electrode";
    std::string rod;
    for (const walk::Walk& walk : answer.walks) {
        if (walk.building != part.building.id) continue;
        for (const walk::Way& way : walk.ways) {
            if (part.building.earthing == walk::choice_word(way.choice)) return way.residual_risk;
            if (shared && way.choice == walk::Choice::own_electrode) rod = way.residual_risk;
        }
    }
    return rod.empty() ? "Not argued here: ask your electrician." : rod;
}

std::vector<Block> only_one(const Subject& s) {
    const answer::SearchAnswer& search = s.answer.search;
    std::vector<Block> blocks;
    blocks.push_back(page::Words{fmt::format(
        "{} ways to do it were looked at. Those that are sound besides this one differ in details "
        "that you would not notice, or cost more and give no more: none has another way of "
        "earthing, a more dependable path or worthwhile room for a price near this one.",
        counted(search.candidates))});
    if (!s.answer.dropped.empty()) blocks.push_back(fallen(s.answer));
    return blocks;
}

std::vector<Block> nothing_sound(const Subject& s) {
    std::vector<Block> blocks;
    blocks.push_back(page::Heading{"Why nothing sound was found"});
    blocks.push_back(page::Words{fmt::format("{} ways to do it were looked at; none is sound.",
                                             counted(s.answer.search.candidates))});
    if (!s.answer.dropped.empty()) blocks.push_back(fallen(s.answer));
    std::vector<std::string> changes;
    std::vector<std::string> earths;
    for (const walk::Walk& walk : s.answer.walks) {
        add_once(earths, walk.name.empty() ? walk.conclusion : walk.name + ": " + walk.conclusion);
        for (const walk::Way& way : walk.ways) {
            for (const std::string& line : way.would_change) add_once(changes, line);
        }
    }
    if (!earths.empty()) blocks.push_back(page::Heading{"How it could be earthed"});
    for (const std::string& line : earths) blocks.push_back(page::Words{line});
    put_list(blocks, "What could change the answer", changes);
    std::vector<std::string> open;
    for (const answer::UnknownAnswer& unknown : s.answer.unknowns) {
        if (!unknown.ask && unknown.effect != "decides") continue;
        add_once(open, (unknown.place.empty() ? "" : unknown.place + ": ") +
                           (unknown.question.empty() ? unknown.says : unknown.question));
    }
    put_list(blocks, "What must be found out", open);
    if (open.empty()) {
        blocks.push_back(page::Heading{"What must be found out"});
        blocks.push_back(page::Words{
            "Nothing that is unknown would by itself make it sound: what is known rules it out. "
            "Talk with your electrician about another place, another use or another way of "
            "earthing."});
    }
    blocks.push_back(page::Caution{
        "Do not build any of it meanwhile, and do not let anybody improvise: what could not be "
        "shown to be safe is not safe. A competent, licensed person decides."});
    return blocks;
}

}  // namespace toft::paper
