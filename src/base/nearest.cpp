#include "base/nearest.h"

#include <algorithm>

namespace toft {

namespace {

constexpr std::size_t longest_compared = 64;

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

/// The letters and figures of a word alone: "TN-CS" and "TN-C-S" are the same to the ear.
std::string sound_of(std::string_view word) {
    std::string sound;
    for (const char c : word.substr(0, longest_compared)) {
        if (c != ' ' && c != '-' && c != '_') sound += lower(c);
    }
    return sound;
}

}  // namespace

int word_distance(std::string_view a, std::string_view b) {
    a = a.substr(0, longest_compared);
    b = b.substr(0, longest_compared);
    const std::size_t rows = a.size() + 1;
    const std::size_t columns = b.size() + 1;
    std::vector<int> d(rows * columns);
    const auto at = [&](std::size_t i, std::size_t j) -> int& { return d[i * columns + j]; };
    for (std::size_t i = 0; i < rows; ++i) at(i, 0) = static_cast<int>(i);
    for (std::size_t j = 0; j < columns; ++j) at(0, j) = static_cast<int>(j);
    for (std::size_t i = 1; i < rows; ++i) {
        for (std::size_t j = 1; j < columns; ++j) {
            const bool same = lower(a[i - 1]) == lower(b[j - 1]);
            at(i, j) = std::min({at(i - 1, j) + 1, at(i, j - 1) + 1, at(i - 1, j - 1) + !same});
            if (i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) &&
                lower(a[i - 2]) == lower(b[j - 1])) {
                at(i, j) = std::min(at(i, j), at(i - 2, j - 2) + 1);
            }
        }
    }
    return at(a.size(), b.size());
}

std::string nearest_word(std::string_view word, const std::vector<std::string>& allowed) {
    word = word.substr(0, longest_compared);
    std::string best;
    int best_distance = 0;
    for (const std::string& candidate : allowed) {
        const int distance = word_distance(word, candidate);
        const auto length = static_cast<int>(std::max(word.size(), candidate.size()));
        if (2 * distance > length) continue;
        if (sound_of(word) == sound_of(candidate)) return candidate;
        if (best.empty() || distance < best_distance) {
            best = candidate;
            best_distance = distance;
        }
    }
    return best;
}

}  // namespace toft
