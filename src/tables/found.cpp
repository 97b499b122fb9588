#include "tables/found.h"

#include <algorithm>

namespace toft::tables {

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
