#include "portfolio/kinds.h"

#include "client/clients_choice.h"
#include "paper/papers.h"
#include "paper/run_sheet.h"
#include "record/design_record.h"

namespace toft::paper {

const std::vector<Kind>& kinds() {
    static const std::vector<Kind> all = {
        {"clients-choice", "Your choice",
         "for the client: two or three ways, what each gives and asks, its price", clients_choice,
         true},
        {"design-record", "Design record", "for the file: facts, reasons, every rule, all workings",
         design_record},
        {"installers-sheet", "Installer's sheet",
         "for whoever installs: conductors by colour, what goes where, in which order",
         installers_sheet},
        {"ground-sheet", "Ground sheet",
         "for whoever digs: plan, trenches, quantities, what to photograph", ground_sheet},
        {"materials", "Materials", "for whoever orders: what to buy, how it comes, how to lay it",
         materials},
        {"test-sheet", "Test sheet", "for whoever tests: what to expect, and room for readings",
         test_sheet},
        {"labels", "Labels", "to print, cut out and fix", labels},
        {"users-sheet", "User's sheet", "for the householder, to keep by the board", users_sheet},
    };
    return all;
}

page::Paper written(const Kind& kind, const Subject& s) {
    page::Paper paper = kind.write(s);
    if (s.scheme >= s.answer.schemes.size() || kind.without_scheme) return paper;
    std::string open;
    for (const std::string& fact : s.answer.schemes[s.scheme].conditional_on) {
        open += (open.empty() ? "" : "; ") + fact_words(s.answer, fact);
    }
    if (open.empty() || &kind == find_kind("design-record")) return paper;  // it frames them itself
    const std::string words =
        "Not yet known to be safe. Nothing here is dug, bought or built before this has been found "
        "out and turned out well: " +
        open + ".";
    const auto behind = paper.blocks.begin() + (paper.blocks.empty() ? 0 : 1);
    paper.blocks.insert(behind, page::Caution{words});
    return paper;
}

const Kind* find_kind(std::string_view file) {
    for (const Kind& kind : kinds()) {
        if (file == kind.file) return &kind;
    }
    return nullptr;
}

}  // namespace toft::paper
