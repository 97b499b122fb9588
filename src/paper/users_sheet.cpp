#include "paper/users_sheet.h"

#include "base/text.h"
#include "page/pages.h"
#include "paper/papers.h"
#include "paper/plain_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::paper {

namespace {

using answer::SchemeAnswer;
using page::Block;

std::string metres_plain(const site::Fact<Metres>& fact) {
    if (!fact.known) return "";
    const std::string low = significant(fact.low.number(), 3);
    if (fact.low == fact.high) return low + " m";
    return low + " to " + significant(fact.high.number(), 3) + " m";
}

const char* method_plain(site::LegMethod method) {
    switch (method) {
        case site::LegMethod::clipped:
            return "fixed along a wall";
        case site::LegMethod::tray:
            return "on a tray";
        case site::LegMethod::free_air:
            return "in the open, off the wall";
        case site::LegMethod::in_conduit:
            return "in a pipe";
        case site::LegMethod::in_trunking:
            return "in a channel with a lid";
        case site::LegMethod::in_insulation:
            return "inside an insulated wall";
        case site::LegMethod::above_ceiling:
            return "above a ceiling";
        case site::LegMethod::buried_direct:
            return "buried";
        case site::LegMethod::buried_in_duct:
            return "in a pipe in the ground";
        case site::LegMethod::overhead:
            return "overhead";
    }
    return "";
}

/// Where a thing is planned; where exactly it came to be is written in by hand.
page::Row place(std::string what, std::string planned) {
    return {{std::move(what), std::move(planned), ""}};
}

class BuildingSheet {
public:
    BuildingSheet(const Subject& s, const SchemeAnswer& part, bool small)
        : s_(s), part_(part), small_(small) {}

    std::vector<Block> write() {
        put(page::Heading{"Electricity in " + name(), page::Level::chapter});
        say("Keep this by the board. It tells how the work was planned; whoever did it writes in "
            "where things came to be, and corrects what was done otherwise. Never open a board or "
            "a box: that is for a competent, licensed electrician.");
        places();
        earth();
        button();
        tripped();
        ask();
        call();
        return std::move(blocks_);
    }

private:
    void put(Block block) { blocks_.push_back(std::move(block)); }
    void say(std::string words, std::string mark = {}) {
        put(page::Words{std::move(words), std::move(mark), false, small_});
    }
    std::string name() const { return building_name(s_, part_.building.id); }

    std::vector<std::string> notices(const char* list) const {
        return notices_for(s_, list, {&part_});
    }

    std::string route() const {
        std::string text;
        for (const site::Leg& leg : run_of(s_, part_).legs) {
            text += (text.empty() ? "" : "; ") + leg_plain(leg);
        }
        return text.empty() ? "not stated" : text;
    }

    void places() {
        page::Table table{{{"What", 2}, {"As planned", 5}, {"Where exactly", 3}}, {}, true};
        auto& rows = table.rows;
        rows.push_back(place("Its board",
                             "its main switch turns off all that is in here; the cable "
                             "that comes in stays live"));
        rows.push_back(
            place("What feeds it",
                  fmt::format("{} {}: switch off there to cut all of it off{}",
                              device_plain(part_.run), place_plain(part_.run), second_supply())));
        rows.push_back(place("The cable, from there to here", route()));
        if (const auto& rods = part_.building.electrode) {
            rows.push_back(
                place("Earth rod",
                      fmt::format("{}, {} m long",
                                  rods->rods == 1 ? std::string("one") : std::to_string(rods->rods),
                                  significant(rods->length_m, 3))));
        }
        std::vector<std::string> bonds;
        for (const answer::BondAnswer& bond : part_.building.bonding)
            bonds.push_back(part_name(bond));
        if (!bonds.empty())
            rows.push_back(place("Wires clamped to metal", "on the " + listed(bonds)));
        std::vector<std::string> beyond;
        for (const SchemeAnswer* other : runs_of(s_)) {
            if (run_of(s_, *other).from != part_.building.id) continue;
            beyond.push_back(building_name(s_, other->building.id));
        }
        if (!beyond.empty()) {
            rows.push_back(
                place("It feeds " + listed(beyond), "what is switched off here is off there too"));
        }
        const auto sources = sources_behind(s_, part_.building.id);
        if (!sources.empty()) {
            rows.push_back(place("A second supply", listed(sources) + ": its own switch"));
        }
        put(page::Heading{"What is where"});
        put(std::move(table));
    }

    std::string second_supply() const {
        return sources_behind(s_, part_.building.id).empty()
                   ? ""
                   : "; that does not stop the second supply";
    }

    void list(const std::vector<std::string>& lines, bool numbered = false) {
        int number = 0;
        for (const std::string& line : lines) {
            say(line, numbered ? std::to_string(++number) + "." : "–");
        }
    }

    void earth() {
        put(page::Heading{"Its earth"});
        list(notices("earth"));
    }

    void button() {
        const auto lines = notices("button");
        if (lines.empty()) return;
        put(page::Heading{"The test button"});
        for (const std::string& line : lines) say(line);
    }

    void tripped() {
        put(page::Heading{"When something trips"});
        list(notices("tripped"), true);
    }

    void ask() {
        put(page::Heading{"Ask an electrician before you add"});
        std::string all;
        for (const std::string& line : notices("ask")) all += (all.empty() ? "" : "; ") + line;
        say(capital(all) + ".");
    }

    void call() {
        put(page::Heading{"Whom to call"});
        put(page::Field{"Electrician"});
        put(page::Field{"Network operator: no power, damaged cable"});
        put(page::Field{"Next inspection due"});
    }

    const Subject& s_;
    const SchemeAnswer& part_;
    bool small_;
    std::vector<Block> blocks_;
};

}  // namespace

std::string leg_plain(const site::Leg& leg) {
    const std::string length = metres_plain(leg.length);
    std::string text = (length.empty() ? "a length not known, " : length + " ") +
                       std::string(method_plain(leg.method));
    if (site::buried(leg.method)) {
        const std::string depth = metres_plain(leg.depth);
        text += depth.empty() ? ", depth not known: take care" : ", " + depth + " deep";
        if (leg.surface) text += ", under " + site::word(*leg.surface);
    } else if (leg.method == site::LegMethod::overhead) {
        const std::string height = metres_plain(leg.height);
        text += height.empty() ? ", height not known" : ", " + height + " high";
    }
    return text;
}

page::Paper users_sheet(const Subject& s) {
    page::Paper paper = blank(s, "User's sheet");
    for (const SchemeAnswer* part : runs_of(s)) {
        page::Paper alone = blank(s, paper.name);
        alone.blocks = BuildingSheet(s, *part, false).write();
        if (page::pages(alone).size() > 1) alone.blocks = BuildingSheet(s, *part, true).write();
        if (!paper.blocks.empty()) paper.blocks.push_back(page::NewPage{});
        for (Block& block : alone.blocks) paper.blocks.push_back(std::move(block));
    }
    return paper;
}

}  // namespace toft::paper
