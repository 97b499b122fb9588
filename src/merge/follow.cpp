#include "merge/likeness.h"
#include "merge/merge.h"

#include <algorithm>

namespace toft::merge {

namespace {

/// The tokens of a JSON pointer, unescaped; nothing for what is none.
std::optional<std::vector<std::string>> tokens(std::string_view pointer) {
    std::vector<std::string> found;
    for (std::size_t i = 0; i < pointer.size(); ++i) {
        if (pointer[i] == '/') {
            found.emplace_back();
            continue;
        }
        if (found.empty()) return std::nullopt;
        if (pointer[i] != '~') {
            found.back() += pointer[i];
            continue;
        }
        ++i;
        if (i == pointer.size() || (pointer[i] != '0' && pointer[i] != '1')) return std::nullopt;
        found.back() += pointer[i] == '0' ? '~' : '/';
    }
    return found;
}

/// The place a token of digits names, if the list has it.
std::optional<std::size_t> place_in(const Json& list, const std::string& token) {
    if (token.empty() || token.size() > 6 || (token.size() > 1 && token[0] == '0')) return {};
    std::size_t place = 0;
    for (const char c : token) {
        if (c < '0' || c > '9') return {};
        place = 10 * place + static_cast<std::size_t>(c - '0');
    }
    return place < list.size() ? std::optional(place) : std::nullopt;
}

/// Where an item of `then` stands in `now`.
std::optional<std::size_t> found_again(const Json& then, const Json& now, std::size_t place) {
    const auto where = pairs(then, now, told({&then, &now}));
    if (where) return (*where)[place];
    for (std::size_t i = 0; i < now.size(); ++i) {
        if (same(now[i], then[place])) return i;
    }
    return std::nullopt;
}

}  // namespace

std::optional<std::string> follow(std::string_view pointer, std::string_view then,
                                  std::string_view now) {
    const auto path = tokens(pointer);
    const auto before = codec::parse_document(then);
    const auto after = codec::parse_document(now);
    if (!path || !before || !after) return std::nullopt;
    const Json* old = &*before;
    const Json* fresh = &*after;
    std::string found;
    for (const std::string& token : *path) {
        if (silent(old) || !old->is_array()) {
            found = codec::child_pointer(found, token);
            old = at(old, token);
            fresh = at(fresh, token);
            continue;
        }
        const auto place = place_in(*old, token);
        if (!place || silent(fresh) || !fresh->is_array()) return std::nullopt;
        const auto again = found_again(*old, *fresh, *place);
        if (!again) return std::nullopt;
        found = codec::child_pointer(found, std::to_string(*again));
        old = &(*old)[*place];
        fresh = &(*fresh)[*again];
    }
    return found;
}

}  // namespace toft::merge
