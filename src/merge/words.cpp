#include "merge/words.h"

#include "merge/likeness.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::merge {

namespace {

constexpr std::size_t longest_value = 60;  // bytes that a sentence can bear

std::string spaced(std::string key) {
    std::replace(key.begin(), key.end(), '_', ' ');
    return key;
}

std::string joined(const std::string& words, const std::string& more) {
    return words.empty() ? more : words + ", " + more;
}

/// "buildings" has items that are each a "building".
std::string one_of(const std::string& list) {
    std::string one = spaced(list);
    if (one.size() > 1 && one.back() == 's') one.pop_back();
    return one;
}

std::string value_words(const Json* value) {
    if (silent(value)) return "not stated";
    const std::string text = value->is_string() ? value->get<std::string>() : value->dump();
    if (text.size() <= longest_value) return text;
    return value->is_array() ? "another list" : "something else";
}

}  // namespace

Where at_key(const Where& where, const std::string& key) {
    return {codec::child_pointer(where.pointer, key), joined(where.words, spaced(key)), key};
}

Where at_item(const Where& where, const Json& item, const std::size_t* index) {
    std::string name = item.contains("name") && item["name"].is_string()
                           ? item["name"].get<std::string>()
                           : called(item);
    if (name.empty() && index) name = std::to_string(*index + 1);
    std::string before = where.words;
    const std::string key = spaced(where.last);
    if (before.size() >= key.size()) before.resize(before.size() - key.size());
    return {codec::child_pointer(where.pointer, index ? std::to_string(*index) : "-"),
            before + one_of(where.last) + " " + name, ""};
}

std::string clash_words(const Where& where, const Json* was, const Json* yours,
                        const Json* theirs) {
    const std::string place = where.words.empty() ? "the job" : where.words;
    if (!yours) return fmt::format("{}: you took it out; meanwhile it was changed", place);
    if (!theirs) return fmt::format("{}: you changed it; meanwhile it was taken out", place);
    return fmt::format("{}: {} before; you say {}, meanwhile it became {}", place, value_words(was),
                       value_words(yours), value_words(theirs));
}

}  // namespace toft::merge
