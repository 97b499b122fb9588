#include "portfolio/kinds.h"

#include "client/clients_choice.h"
#include "paper/papers.h"
#include "record/design_record.h"

namespace toft::paper {

const std::vector<Kind>& kinds() {
    static const std::vector<Kind> all = {
        {"clients-choice", "Client's choice",
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

const Kind* find_kind(std::string_view file) {
    for (const Kind& kind : kinds()) {
        if (file == kind.file) return &kind;
    }
    return nullptr;
}

}  // namespace toft::paper
