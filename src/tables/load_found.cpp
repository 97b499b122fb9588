#include "tables/sheet.h"

#include <algorithm>

namespace toft::tables {

namespace {

std::string or_none(const std::string& word) { return word == "-" ? std::string() : word; }

}  // namespace

void read_found(EmbeddedFiles files, Catalogue& c, Faults& faults) {
    Sheet sheet(files, "found/found.csv", c.citations, faults);
    for (std::size_t i = 0; i < sheet.rows(); ++i) {
        c.found.push_back({sheet.word(i, "found"), sheet.word(i, "at"), sheet.word(i, "earthing"),
                           sheet.word(i, "cable"), sheet.word(i, "weight"),
                           sheet.word(i, "verdict"), sheet.word(i, "wrong"),
                           sheet.word(i, "danger"), sheet.word(i, "first"),
                           or_none(sheet.word(i, "item")), or_none(sheet.word(i, "tell")),
                           sheet.word(i, "clause"), sheet.cite(i)});
    }
}

std::vector<std::string> found_words(const std::vector<FoundRow>& rows,
                                     const std::vector<std::string>& at) {
    std::vector<std::string> words;
    for (const FoundRow& row : rows) {
        if (std::find(at.begin(), at.end(), row.at) == at.end()) continue;
        if (std::find(words.begin(), words.end(), row.found) == words.end()) {
            words.push_back(row.found);
        }
    }
    return words;
}

}  // namespace toft::tables
