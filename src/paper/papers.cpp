#include "paper/papers.h"

namespace toft::paper {

const std::vector<Kind>& kinds() {
    static const std::vector<Kind> all = {
        {"design-record", "Design record", "for the file: facts, reasons, every rule, all workings",
         design_record},
        {"test-sheet", "Test sheet", "for whoever tests: what to expect, and room for readings",
         test_sheet},
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
