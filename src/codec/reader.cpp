#include "codec/reader.h"

#include "base/text.h"

#include <algorithm>
#include <cmath>

namespace toft::codec {

namespace {

constexpr std::size_t longest_text = 200;
constexpr std::size_t longest_shown = 80;

const char* kind_of(const Json& node) {
    if (node.is_string()) return "text";
    if (node.is_number()) return "a number";
    if (node.is_boolean()) return "true or false";
    if (node.is_array()) return "a list";
    if (node.is_object()) return "an object";
    return "nothing";
}

/// Foreign text fit to stand in a sentence: not too long, control characters as "?".
std::string shown(std::string text) {
    if (text.size() > longest_shown) {
        std::size_t end = longest_shown;
        while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xc0) == 0x80) --end;
        text = text.substr(0, end) + "…";
    }
    for (char& c : text) {
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) c = '?';
    }
    return text;
}

constexpr double farthest = 2000;
constexpr std::size_t most_places = 100;
constexpr const char* one_place =
    "two numbers of -2000 to 2000, metres east and north of the house";

bool is_place(const Json& node) {
    const auto coordinate = [](const Json& n) {
        return n.is_number() && std::fabs(n.get<double>()) <= farthest;
    };
    return node.is_array() && node.size() == 2 && coordinate(node.at(0)) && coordinate(node.at(1));
}

}  // namespace

void Reader::note(Fault fault) {
    if (faults_.size() < most_faults) faults_.push_back(std::move(fault));
}

void Reader::fault(const char* code, const char* key, std::string says, std::string nearest,
                   std::vector<std::string> allowed) {
    note({code, *key ? child_pointer(pointer_, key) : pointer_, std::move(says), std::move(nearest),
          std::move(allowed)});
}

const Json* Reader::at(const char* key, bool required) {
    asked_.push_back(key);
    if (!node_.is_object()) return nullptr;
    const auto found = node_.find(key);
    if (found != node_.end() && !found->is_null()) return &*found;
    if (required) fault("missing", key, fmt::format("{} is missing; it must be stated", key));
    return nullptr;
}

std::string Reader::text(const char* key, bool required) {
    const Json* node = at(key, required);
    if (!node) return {};
    if (!node->is_string()) {
        fault("wrong-kind", key, fmt::format("{} must be text, not {}", key, kind_of(*node)));
        return {};
    }
    const std::string& s = node->get_ref<const std::string&>();
    if (s.empty() || s.size() > longest_text) {
        fault("out-of-range", key, fmt::format("{} must have 1 to {} bytes", key, longest_text));
        return {};
    }
    for (const char c : s) {
        if (static_cast<unsigned char>(c) < 0x20 || c == 0x7f) {
            fault("out-of-range", key, fmt::format("{} holds a control character", key));
            return {};
        }
    }
    return s;
}

std::string Reader::listed(const char* key, const std::vector<std::string>& allowed,
                           bool required) {
    const std::string s = text(key, required);
    if (s.empty() || std::find(allowed.begin(), allowed.end(), s) != allowed.end()) return s;
    fault("unknown-word", key, fmt::format("\"{}\" is not a word for {}", shown(s), key),
          nearest_word(s, allowed), allowed);
    return {};
}

site::Answer Reader::answer(const char* key) {
    const Json* node = at(key, false);
    if (!node) return site::Answer::unknown;
    if (!node->is_boolean()) {
        fault("wrong-kind", key,
              fmt::format("{} must be true, false or null (unknown), not {}", key, kind_of(*node)));
        return site::Answer::unknown;
    }
    return node->get<bool>() ? site::Answer::yes : site::Answer::no;
}

std::optional<double> Reader::ranged(const Json& node, const std::string& pointer, Range range) {
    if (!node.is_number()) {
        note({"wrong-kind",
              pointer,
              fmt::format("must be a number, not {}", kind_of(node)),
              "",
              {}});
        return std::nullopt;
    }
    const double value = node.get<double>();
    if (!std::isfinite(value) || value < range.low || value > range.high) {
        note({"out-of-range",
              pointer,
              fmt::format("{} is outside {} to {}", significant(value, 9),
                          significant(range.low, 9), significant(range.high, 9)),
              "",
              {}});
        return std::nullopt;
    }
    if (range.whole && value != std::floor(value)) {
        note({"out-of-range",
              pointer,
              fmt::format("{} is not a whole number", significant(value, 9)),
              "",
              {}});
        return std::nullopt;
    }
    return value;
}

std::optional<double> Reader::number(const char* key, Range range, bool required) {
    const Json* node = at(key, required);
    if (!node) return std::nullopt;
    return ranged(*node, child_pointer(pointer_, key), range);
}

site::Fact<double> Reader::known(const char* key, Range range) {
    const Json* node = at(key, false);
    if (!node) return {};
    const std::string pointer = child_pointer(pointer_, key);
    if (node->is_object()) return detailed(*node, pointer, range);
    const auto value = ranged(*node, pointer, range);
    if (!value) return {};
    return {true, *value, *value, site::Standing::measured};
}

site::Fact<double> Reader::detailed(const Json& node, const std::string& pointer, Range range) {
    Reader inner(node, pointer, faults_);
    const auto value = inner.number("value", range);
    const auto low = inner.number("low", range);
    const auto high = inner.number("high", range);
    const auto standing = inner.word<site::Standing>("basis");
    const auto spread = inner.word<site::Spread>("spread");
    inner.finish();
    const bool single = inner.has("value");
    const bool both = inner.has("low") && inner.has("high");
    if (single == both || (single && (inner.has("low") || inner.has("high")))) {
        inner.fault("wrong-kind", "", "state either value, or both low and high", "",
                    {"value", "low and high"});
        return {};
    }
    if (single && spread) {
        inner.fault("contradiction", "spread", "one figure has no spread: state low and high");
    }
    if (single && value) return {true, *value, *value, standing.value_or(site::Standing::measured)};
    if (!low || !high) return {};
    if (*low > *high) {
        inner.fault("out-of-range", "", "low is above high; swap them");
        return {};
    }
    return {true, *low, *high, standing.value_or(site::Standing::assumed),
            spread.value_or(site::Spread::even)};
}

std::optional<Reader> Reader::object(const char* key, bool required) {
    const Json* node = at(key, required);
    if (!node) return std::nullopt;
    if (!node->is_object()) {
        fault("wrong-kind", key, fmt::format("{} must be an object, not {}", key, kind_of(*node)));
        return std::nullopt;
    }
    return Reader(*node, child_pointer(pointer_, key), faults_);
}

std::vector<Reader> Reader::objects(const char* key, std::size_t most) {
    std::vector<Reader> readers;
    const Json* node = at(key, false);
    if (!node) return readers;
    if (!node->is_array()) {
        fault("wrong-kind", key, fmt::format("{} must be a list, not {}", key, kind_of(*node)));
        return readers;
    }
    if (node->size() > most) {
        fault("too-many", key,
              fmt::format("{} holds {} entries; at most {} are read", key, node->size(), most));
        return readers;
    }
    const std::string list = child_pointer(pointer_, key);
    for (std::size_t i = 0; i < node->size(); ++i) {
        const std::string pointer = fmt::format("{}/{}", list, i);
        if (node->at(i).is_object()) {
            readers.emplace_back(node->at(i), pointer, faults_);
        } else {
            note({"wrong-kind",
                  pointer,
                  fmt::format("must be an object, not {}", kind_of(node->at(i))),
                  "",
                  {}});
        }
    }
    return readers;
}

std::optional<Place> Reader::place(const char* key) {
    const Json* node = at(key, false);
    if (!node) return std::nullopt;
    if (is_place(*node)) return Place{node->at(0).get<double>(), node->at(1).get<double>()};
    fault("wrong-kind", key, fmt::format("{} must be {}", key, one_place));
    return std::nullopt;
}

std::vector<Place> Reader::places(const char* key) {
    std::vector<Place> found;
    const Json* node = at(key, false);
    if (!node) return found;
    if (!node->is_array()) {
        fault("wrong-kind", key,
              fmt::format("{} must be a list of places, each {}", key, one_place));
        return found;
    }
    if (node->empty() || node->size() > most_places) {
        fault("too-many", key,
              fmt::format("{} holds {} places; 1 to {} are read: leave it out, or keep the corners "
                          "only",
                          key, node->size(), most_places));
        return found;
    }
    for (std::size_t i = 0; i < node->size(); ++i) {
        if (is_place(node->at(i))) {
            found.push_back({node->at(i).at(0).get<double>(), node->at(i).at(1).get<double>()});
        } else {
            note({"wrong-kind",
                  fmt::format("{}/{}", child_pointer(pointer_, key), i),
                  fmt::format("a place is {}", one_place),
                  "",
                  {}});
        }
    }
    return found;
}

std::vector<std::string> Reader::list_of(const char* key, const std::vector<std::string>& allowed) {
    std::vector<std::string> found;
    const Json* node = at(key, false);
    if (!node) return found;
    if (!node->is_array() || node->size() > 64) {
        fault("wrong-kind", key, fmt::format("{} must be a list of words", key));
        return found;
    }
    for (std::size_t i = 0; i < node->size(); ++i) {
        const Json& entry = node->at(i);
        const std::string s = entry.is_string() ? entry.get<std::string>() : std::string();
        if (std::find(allowed.begin(), allowed.end(), s) != allowed.end()) {
            found.push_back(s);
            continue;
        }
        const std::string pointer = fmt::format("{}/{}", child_pointer(pointer_, key), i);
        if (entry.is_string()) {
            note({"unknown-word", pointer,
                  fmt::format("\"{}\" is not a word for {}", shown(s), key),
                  nearest_word(s, allowed), allowed});
        } else {
            note({"wrong-kind", pointer, fmt::format("must be text, not {}", kind_of(entry)), "",
                  allowed});
        }
    }
    return found;
}

const Json* Reader::takes(const char* key) { return at(key, false); }

void Reader::finish() {
    if (!node_.is_object()) return;
    for (const auto& [key, value] : node_.items()) {
        if (faults_.size() >= most_faults) return;
        if (std::find(asked_.begin(), asked_.end(), key) != asked_.end()) continue;
        note({"unknown-key", child_pointer(pointer_, key),
              fmt::format("there is no key \"{}\" here", shown(key)), nearest_word(key, asked_),
              asked_});
    }
}

}  // namespace toft::codec
