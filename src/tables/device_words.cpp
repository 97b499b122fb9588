#include "tables/device_words.h"

#include "base/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>

namespace toft::tables {

namespace {

/// Small words, letters kept apart from figures that touch them: "B32 rcbo" is b, 32, rcbo.
std::vector<std::string> small_words(std::string_view text) {
    std::vector<std::string> all;
    bool figures = false;
    bool open = false;
    for (const char c : text) {
        const auto u = static_cast<unsigned char>(c);
        const bool figure = std::isdigit(u) || c == '-' || c == '.';
        if (!figure && !std::isalpha(u)) {
            open = false;
            continue;
        }
        if (!open || figure != figures) all.emplace_back();
        all.back() += static_cast<char>(std::tolower(u));
        open = true;
        figures = figure;
    }
    return all;
}

bool says_nothing(const std::string& word) {
    static constexpr const char* idle[] = {
        "bs", "en", "a", "amp", "fuse", "breaker", "type", "case", "circuit", "cartridge", "-"};
    return std::any_of(std::begin(idle), std::end(idle), [&](const char* i) { return word == i; });
}

std::vector<std::string> sorted_words(std::string_view text) {
    std::vector<std::string> words = small_words(text);
    words.erase(std::remove_if(words.begin(), words.end(), says_nothing), words.end());
    std::sort(words.begin(), words.end());
    return words;
}

std::string rating_of(const Device& device) { return significant(device.rating.number(), 6); }

}  // namespace

std::string device_words(const Device& device) {
    const std::string rating = rating_of(device);
    switch (device.kind) {
        case Kind::fuse:
        case Kind::rewirable:
            return fmt::format("{} {} A", device.standard, rating);
        case Kind::breaker:
            return fmt::format("{} {} A breaker", device.curve, rating);
        case Kind::rcbo:
            return fmt::format("{} {} A RCBO", device.curve, rating);
        case Kind::moulded:
            return fmt::format("{} A moulded-case breaker", rating);
    }
    return "";
}

const Device* device_by_words(const std::vector<Device>& devices, std::string_view words) {
    const std::vector<std::string> asked = sorted_words(words);
    if (asked.empty()) return nullptr;
    for (const Device& device : devices) {
        const std::string usual = device_words(device);
        const std::string full =
            fmt::format("{} {} {}", device.standard, device.curve, rating_of(device));
        if (asked == sorted_words(usual) || asked == sorted_words(usual + " " + device.standard) ||
            asked == sorted_words(full)) {
            return &device;
        }
    }
    return nullptr;
}

}  // namespace toft::tables
