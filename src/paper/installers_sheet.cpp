#include "joins/joins.h"
#include "page/pages.h"
#include "paper/papers.h"
#include "paper/run_board.h"
#include "paper/run_sheet.h"
#include "paper/terminations.h"
#include "paper/work_order.h"
#include "parts/words.h"

#include <fmt/format.h>

namespace toft::paper {

namespace {

using page::Block;

void add_list(const std::vector<std::string>& lines, bool numbered, std::vector<Block>& blocks) {
    int number = 0;
    for (const std::string& line : lines) {
        blocks.push_back(page::Words{line, numbered ? std::to_string(++number) + "." : "–"});
    }
}

/// Heading and list; nothing where the list is empty.
void add_part(const char* heading, const std::vector<std::string>& lines,
              std::vector<Block>& blocks) {
    if (lines.empty()) return;
    blocks.push_back(page::Heading{heading});
    add_list(lines, false, blocks);
}

void add_head(const RunSheet& sheet, std::vector<Block>& blocks) {
    blocks.push_back(page::Heading{
        fmt::format("{}: from {} to {}", sheet.run().id, near_words(sheet), far_words(sheet)),
        page::Level::chapter});
    const answer::SchemeAnswer& part = sheet.part;
    blocks.push_back(page::Words{part.run_sentence.empty() ? part.sentence : part.run_sentence});
    page::Picture picture{joins::run_conductors(*sheet.job, part, page::field.width(), false)};
    picture.most_height = page::field.height() * 0.8;
    picture.under =
        "A sleeve goes on at each end. A cross in a gap: cut back, insulated, joined to nothing.";
    blocks.push_back(std::move(picture));
    blocks.push_back(page::Caution{danger_words(sheet)});
}

void add_ends(const RunSheet& sheet, std::vector<Block>& blocks) {
    add_part("First of all", first_of_all(sheet), blocks);
    blocks.push_back(page::Heading{"Device, cable and glands"});
    blocks.push_back(run_table(sheet));
    add_list(trench_words(sheet), false, blocks);
    blocks.push_back(page::Heading{"What goes where, and how tight"});
    blocks.push_back(page::Words{
        "Torque is the makers' to say: write down their figure / the one used.", "", false, true});
    for (page::Table& table : terminations_tables(sheet)) blocks.push_back(std::move(table));
}

void add_board(const RunSheet& sheet, std::vector<Block>& blocks) {
    blocks.push_back(page::Heading{"Board of " + far_words(sheet)});
    blocks.push_back(board_table(sheet));
    if (sheet.building().electrode) blocks.push_back(page::Field{"Rod as read, Ω, and the date"});
    page::Table ways = ways_table(sheet);
    if (ways.rows.empty()) {
        blocks.push_back(page::Words{"No circuit is known: its ways are chosen with them."});
    } else {
        blocks.push_back(std::move(ways));
    }
    add_list(ways_cautions(sheet), false, blocks);
}

void add_work(const RunSheet& sheet, std::vector<Block>& blocks) {
    blocks.push_back(page::Heading{"Order of work"});
    add_list(order_of_work(sheet), true, blocks);
    blocks.push_back(page::Heading{"Labels to put on"});
    page::Table labels{{{"Where", 2}, {"What it says", 3}}, {}};
    for (const RunLabel& label : run_labels(sheet)) {
        labels.rows.push_back({{label.where, label.words}});
    }
    blocks.push_back(std::move(labels));
    add_part("To be heeded", sheet.part.cautions, blocks);
    add_part("Needs a person", sheet.part.needs_a_person, blocks);
    page::Table signed_by{{{"Torque tool, its number", 1}, {"Built by", 1}, {"Date, signature", 1}},
                          {{{"", "", ""}}},
                          true};
    blocks.push_back(std::move(signed_by));
}

/// Rules for special things, and the ways out where one must be chosen.
void add_advice(const Subject& s, std::vector<Block>& blocks) {
    if (s.answer.advice.empty()) return;
    blocks.push_back(page::Heading{"Special things"});
    for (const special::Advice& one : s.answer.advice) {
        blocks.push_back(
            page::Words{fmt::format("{}: {}; {}", one.about, one.asks, one.says), "–"});
    }
}

}  // namespace

page::Paper installers_sheet(const Subject& s) {
    page::Paper paper = blank(s, "Installer's sheet");
    bool first = true;
    for (const answer::SchemeAnswer* part : runs_of(s)) {
        if (!first) paper.blocks.push_back(page::NewPage{});
        first = false;
        const RunSheet sheet = run_sheet(s, *part);
        add_head(sheet, paper.blocks);
        add_ends(sheet, paper.blocks);
        add_board(sheet, paper.blocks);
        add_work(sheet, paper.blocks);
    }
    add_advice(s, paper.blocks);
    paper.blocks.push_back(page::Heading{"What goes for every job"});
    for (Block& block : standing_cautions(s)) paper.blocks.push_back(std::move(block));
    return paper;
}

}  // namespace toft::paper
