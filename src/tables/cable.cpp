#include "tables/cable.h"

namespace toft::tables {

namespace {

/// The value among the first `count` of its kind that `word_for` gives that word.
template <class E>
std::optional<E> among(std::size_t count, const char* (*word_for)(E), const std::string& word) {
    for (std::size_t i = 0; i < count; ++i) {
        if (word == word_for(static_cast<E>(i))) return static_cast<E>(i);
    }
    return std::nullopt;
}

constexpr std::size_t metals = 3;
constexpr std::size_t insulations = 2;

}  // namespace

const char* family_word(Family family) {
    static constexpr const char* words[families] = {
        "armoured XLPE copper", "armoured PVC copper",    "armoured XLPE aluminium",
        "flat twin and earth",  "unarmoured XLPE copper", "unarmoured PVC copper"};
    return words[static_cast<std::size_t>(family)];
}

const char* metal_word(Metal metal) {
    static constexpr const char* words[metals] = {"copper", "aluminium", "steel"};
    return words[static_cast<std::size_t>(metal)];
}

const char* insulation_word(Insulation insulation) {
    static constexpr const char* words[insulations] = {"thermoplastic 70", "thermosetting 90"};
    return words[static_cast<std::size_t>(insulation)];
}

const char* laying_word(Laying laying) {
    static constexpr const char* words[layings] = {
        "clipped",   "tray",          "free air", "conduit", "trunking",
        "insulated", "above ceiling", "direct",   "duct",    "overhead"};
    return words[static_cast<std::size_t>(laying)];
}

const char* method_word(ReferenceMethod method) {
    static constexpr const char* words[reference_methods] = {"A",   "B",   "C",   "E",  "D",
                                                             "100", "101", "102", "103"};
    return words[static_cast<std::size_t>(method)];
}

std::optional<Family> family_of(const std::string& word) {
    return among<Family>(families, family_word, word);
}

std::optional<Metal> metal_of(const std::string& word) {
    return among<Metal>(metals, metal_word, word);
}

std::optional<Insulation> insulation_of(const std::string& word) {
    return among<Insulation>(insulations, insulation_word, word);
}

std::optional<Laying> laying_of(const std::string& word) {
    return among<Laying>(layings, laying_word, word);
}

std::optional<ReferenceMethod> method_of(const std::string& word) {
    return among<ReferenceMethod>(reference_methods, method_word, word);
}

}  // namespace toft::tables
