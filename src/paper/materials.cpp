#include "paper/materials.h"

#include "base/text.h"
#include "paper/papers.h"
#include "paper/plain_words.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::paper {

namespace {

using page::Heading;
using page::Table;
using page::Words;

std::string quantity_words(const ware::Row& row) {
    const std::string figure = significant(std::round(row.quantity * 100) / 100, 8);
    if (row.unit == "each") return figure;
    const bool pairs = row.unit == "pair" && row.quantity > 1;
    return figure + " " + row.unit + (pairs ? "s" : "");
}

/// The rows of a group, numbered on from `number`; what is to be said of one stands below.
void add_group(page::Paper& paper, const ware::List& list, ware::Group group, int& number) {
    Table table{{{"No.", 0.6, page::Side::right},
                 {"What", 5.6},
                 {"Size", 2.7},
                 {"Quantity", 1.5, page::Side::right},
                 {"To ask for", 3.8}},
                {}};
    std::vector<Words> notes;
    for (const ware::Row& row : list.rows) {
        if (row.group != group) continue;
        const std::string mark = std::to_string(++number);
        table.rows.push_back({{mark, capital(row.what), row.size, quantity_words(row), row.order}});
        if (!row.note.empty()) {
            Words note{capital(row.note) + ".", mark};
            note.small = true;
            notes.push_back(std::move(note));
        }
    }
    if (table.rows.empty()) return;
    paper.blocks.push_back(Heading{capital(ware::group_word(group))});
    paper.blocks.push_back(std::move(table));
    for (Words& note : notes) paper.blocks.push_back(std::move(note));
}

void add_handling(page::Paper& paper, const ware::List& list) {
    if (list.handling.empty()) return;
    paper.blocks.push_back(Heading{"Cutting and laying the cable"});
    Table table{{{"Run to", 3}, {"Cable", 5}, {"To cut", 2.4}, {"Smallest radius of a bend", 3}},
                {}};
    for (const ware::Handling& one : list.handling) {
        table.rows.push_back({{one.to, one.cable, one.cut, one.bend}});
    }
    paper.blocks.push_back(std::move(table));
    for (const ware::Handling& one : list.handling) {
        if (one.pull.empty()) continue;
        paper.blocks.push_back(Words{fmt::format("Pull through the duct to {}: {}. An estimate: "
                                                 "feel the pull, stop when it grows.",
                                                 one.to, one.pull),
                                     "–"});
    }
}

std::string rests_on(const char* name, const Citation* citation) {
    if (!citation) return "";
    return fmt::format("{}: {}, {}, {}. ", name, basis_word(citation->basis), citation->source,
                       citation->locator);
}

void add_grounds(page::Paper& paper, const tables::Ware& ware) {
    std::string words;
    if (!ware.glands.empty()) words += rests_on("Glands", ware.glands.front().citation);
    words += rests_on("Type of gland", ware.gland_types[0].citation);
    if (!ware.ducts.empty()) words += rests_on("Ducts", ware.ducts.front().citation);
    words += rests_on("Fill of a duct", ware.duct_fill.citation);
    if (!ware.supports.empty()) words += rests_on("Cleats", ware.supports.back().citation);
    if (!ware.bends.empty()) words += rests_on("Bends", ware.bends.front().citation);
    words += rests_on("Pulling forces", ware.stocking.citation);
    words += rests_on("Friction", ware.friction_dry.citation);
    Words small{words};
    small.small = true;
    paper.blocks.push_back(Heading{"What the choices rest on"});
    paper.blocks.push_back(std::move(small));
}

}  // namespace

page::Paper materials_of(const Subject& s, const ware::List& list) {
    page::Paper paper = blank(s, "Materials");
    paper.blocks.push_back(Heading{"Materials for " + s.answer.job, page::Level::chapter});
    paper.blocks.push_back(Words{s.answer.schemes[s.scheme].sentence});
    paper.blocks.push_back(page::Caution{
        "Chosen from nominal diameters, from which makers differ. Hold glands, ducts and cleats "
        "against the cable in hand, follow the makers' instructions, and measure the route again "
        "before cable is cut: cut cable is not taken back."});
    if (list.rows.empty()) paper.blocks.push_back(Words{"Nothing is to be bought."});
    int number = 0;
    for (int group = 0; group < ware::groups; ++group) {
        add_group(paper, list, static_cast<ware::Group>(group), number);
    }
    add_handling(paper, list);
    paper.blocks.push_back(Heading{"How to read it"});
    paper.blocks.push_back(
        Words{"Quantities are those the price counts: cable with its tails and allowance. What the "
              "price has nothing for says so. Spoil, plant and surfaces stand on the ground sheet, "
              "prices in the client's paper."});
    add_grounds(paper, s.catalogue.ware);
    return paper;
}

page::Paper materials(const Subject& s) {
    return materials_of(s, ware::list_of(s.catalogue, s.job, s.answer.schemes[s.scheme]));
}

}  // namespace toft::paper
