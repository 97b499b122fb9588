#include "codec/document.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>

namespace toft::codec {

namespace {

Fault text_fault(const char* code, std::string says) { return {code, "", std::move(says), "", {}}; }

/// How deep and how crowded a text is, seen without parsing it.
struct Shape {
    std::size_t deepest = 0;    ///< objects and lists in each other
    std::size_t most_keys = 0;  ///< in one object
};

Shape shape_of(std::string_view text) {
    Shape shape;
    std::vector<std::size_t> keys;  // so far, of each open object or list
    bool in_string = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (in_string) {
            if (c == '\\') ++i;
            if (c == '"') in_string = false;
            continue;
        }
        if (c == '"') in_string = true;
        if (c == '{' || c == '[') keys.push_back(0);
        if ((c == '}' || c == ']') && !keys.empty()) keys.pop_back();
        if (c == ':' && !keys.empty()) shape.most_keys = std::max(shape.most_keys, ++keys.back());
        shape.deepest = std::max(shape.deepest, keys.size());
    }
    return shape;
}

std::string place(std::string_view text, std::size_t byte) {
    int line = 1;
    int column = 1;
    for (std::size_t i = 0; i + 1 < byte && i < text.size(); ++i) {
        ++column;
        if (text[i] == '\n') {
            ++line;
            column = 1;
        }
    }
    return fmt::format("line {}, column {}", line, column);
}

/// Hears a text value by value, before any tree is made: stops at one value too many, and notes the
/// pointers of keys that stand twice in one object. (The library's own callbacks cost the square of
/// a list's length.)
class Watch {
public:
    explicit Watch(std::size_t most_values) : most_values_(most_values) {}

    bool null() { return step(); }
    bool boolean(bool) { return step(); }
    bool number_integer(Json::number_integer_t) { return step(); }
    bool number_unsigned(Json::number_unsigned_t) { return step(); }
    bool number_float(Json::number_float_t, const std::string&) { return step(); }
    bool string(std::string&) { return step(); }
    bool binary(Json::binary_t&) { return step(); }
    bool start_object(std::size_t) { return open(false); }
    bool start_array(std::size_t) { return open(true); }
    bool end_object() { return close(); }
    bool end_array() { return close(); }
    bool parse_error(std::size_t byte, const std::string&, const Json::exception& error) {
        constexpr int lowest = 100;
        constexpr int highest = 199;  // of the library's numbers for errors of syntax
        if (error.id >= lowest && error.id <= highest) misplaced = byte;
        return false;
    }

    bool key(std::string& name) {
        open_.back().key = name;
        if (open_.back().keys.insert(name).second || repeated.size() >= most_faults) return true;
        std::string pointer;
        for (const Place& place : open_) {
            pointer = child_pointer(pointer, place.list ? std::to_string(place.index) : place.key);
        }
        repeated.insert(pointer);
        return true;
    }

    std::set<std::string> repeated;
    std::optional<std::size_t> misplaced;  ///< where the text is no JSON
    bool crowded = false;                  ///< it holds more values than are read

private:
    struct Place {
        bool list = false;
        std::size_t index = 0;
        std::string key;
        std::set<std::string> keys;
    };

    bool open(bool list) {
        open_.emplace_back();
        open_.back().list = list;
        return count();
    }
    bool close() {
        open_.pop_back();
        return pass();
    }
    bool step() {
        pass();
        return count();
    }
    bool pass() {
        if (!open_.empty()) ++open_.back().index;
        return true;
    }
    bool count() {
        crowded = ++values_ > most_values_;
        return !crowded;
    }

    std::size_t most_values_;
    std::size_t values_ = 0;
    std::vector<Place> open_;
};

/// What forbids even parsing `text`; nothing when it may be parsed.
Faults unfit(std::string_view text, const Bounds& bounds) {
    if (text.size() > bounds.bytes) {
        return {text_fault(
            "too-large",
            fmt::format("the file is too large: at most {} bytes are read", bounds.bytes))};
    }
    const Shape shape = shape_of(text);
    if (shape.deepest > bounds.depth) {
        return {text_fault("too-deep", fmt::format("lists and objects are nested more than {} deep",
                                                   bounds.depth))};
    }
    if (shape.most_keys > bounds.keys) {
        return {text_fault("too-many", fmt::format("an object holds {} keys; at most {} are read",
                                                   shape.most_keys, bounds.keys))};
    }
    return {};
}

}  // namespace

Outcome<Json> parse_document(std::string_view text, const Bounds& bounds) {
    Faults faults = unfit(text, bounds);
    if (!faults.empty()) return failed(std::move(faults));
    Watch watch(bounds.values);
    const bool valid = Json::sax_parse(text.begin(), text.end(), &watch);
    if (watch.crowded) {
        return failed(text_fault(
            "too-many",
            fmt::format("the text holds more than {} values; no more are read", bounds.values)));
    }
    Json json = valid ? Json::parse(text.begin(), text.end(), nullptr, false)
                      : Json(Json::value_t::discarded);
    if (json.is_discarded()) {
        return failed(text_fault(
            "not-json", watch.misplaced
                            ? fmt::format("not valid JSON at {}", place(text, *watch.misplaced))
                            : "not valid JSON: a number is out of all range"));
    }
    for (const std::string& pointer : watch.repeated) {
        faults.push_back({"duplicate-key",
                          pointer,
                          "this key stands twice in one object; leave one out",
                          "",
                          {}});
    }
    if (!faults.empty()) return failed(std::move(faults));
    return json;
}

std::string child_pointer(const std::string& pointer, std::string_view key) {
    std::string out = pointer + "/";
    for (char c : key) {
        if (c == '~') {
            out += "~0";
        } else if (c == '/') {
            out += "~1";
        } else {
            out += c;
        }
    }
    return out;
}

}  // namespace toft::codec
