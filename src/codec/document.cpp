#include "codec/document.h"

#include <fmt/format.h>

#include <set>

namespace toft::codec {

namespace {

Fault text_fault(const char* code, std::string says) {
    return {code, "", std::move(says), "", {}};
}

int depth_of(std::string_view text) {
    int depth = 0;
    int deepest = 0;
    bool in_string = false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        if (in_string) {
            if (c == '\\') ++i;
            if (c == '"') in_string = false;
            continue;
        }
        if (c == '"') in_string = true;
        if (c == '{' || c == '[') deepest = std::max(deepest, ++depth);
        if (c == '}' || c == ']') --depth;
    }
    return deepest;
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

/// Notes keys that stand twice in one object.
class KeyWatch {
public:
    bool operator()(int, Json::parse_event_t event, Json& parsed) {
        using Event = Json::parse_event_t;
        if (event == Event::object_start) open_.emplace_back();
        if (event == Event::object_end && !open_.empty()) open_.pop_back();
        if (event == Event::key && !open_.empty()) {
            const std::string key = parsed.get<std::string>();
            if (!open_.back().insert(key).second) repeated.insert(key);
        }
        return true;
    }

    std::set<std::string> repeated;

private:
    std::vector<std::set<std::string>> open_;
};

}  // namespace

Outcome<Json> parse_document(std::string_view text) {
    if (text.size() > largest_document) {
        return failed(text_fault("too-large", fmt::format("the file has {} bytes; at most {} are read",
                                                          text.size(), largest_document)));
    }
    if (depth_of(text) > deepest_document) {
        return failed(text_fault("too-deep", fmt::format("lists and objects are nested more than {} deep",
                                                         deepest_document)));
    }
    try {
        KeyWatch watch;
        Json json = Json::parse(
            text.begin(), text.end(),
            [&watch](int depth, Json::parse_event_t event, Json& parsed) {
                return watch(depth, event, parsed);
            });
        Faults faults;
        for (const std::string& key : watch.repeated) {
            faults.push_back(text_fault(
                "duplicate-key", fmt::format("the key {} stands twice in one object", key)));
        }
        if (!faults.empty()) return failed(std::move(faults));
        return json;
    } catch (const Json::parse_error& error) {
        return failed(text_fault("not-json", fmt::format("not valid JSON at {}", place(text, error.byte))));
    } catch (const Json::exception&) {
        return failed(text_fault("not-json", "not valid JSON: a number is out of all range"));
    }
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
