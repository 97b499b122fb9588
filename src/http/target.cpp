#include "http/target.h"

namespace toft::server {

namespace {

int digit(char c) {
    if (c >= '0' && c <= '9') return c - '0';
    if (c >= 'a' && c <= 'f') return c - 'a' + 10;
    if (c >= 'A' && c <= 'F') return c - 'A' + 10;
    return -1;
}

/// Bytes that follow the first of a character; -1 where none begins so.
int followers(unsigned char first) {
    if (first < 0x80) return 0;
    if (first >= 0xC2 && first < 0xE0) return 1;
    if (first >= 0xE0 && first < 0xF0) return 2;
    if (first >= 0xF0 && first < 0xF5) return 3;
    return -1;
}

bool is_text(const std::string& text) {
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto first = static_cast<unsigned char>(text[i]);
        if (first < 0x20 || first == 0x7f) return false;
        const int more = followers(first);
        if (more < 0) return false;
        for (int k = 0; k < more; ++k) {
            if (++i >= text.size() || (static_cast<unsigned char>(text[i]) & 0xC0u) != 0x80u) {
                return false;
            }
        }
    }
    return true;
}

std::vector<std::string_view> split(std::string_view text, char at) {
    std::vector<std::string_view> parts;
    for (;;) {
        const std::size_t end = text.find(at);
        parts.push_back(text.substr(0, end));
        if (end == std::string_view::npos) return parts;
        text.remove_prefix(end + 1);
    }
}

bool read_query(std::string_view text, std::map<std::string, std::string>& query) {
    if (text.empty()) return true;
    for (const std::string_view pair : split(text, '&')) {
        const std::size_t equals = pair.find('=');
        std::string spaced(
            pair.substr(equals == std::string_view::npos ? pair.size() : equals + 1));
        for (char& c : spaced) c = c == '+' ? ' ' : c;
        const auto name = undone(pair.substr(0, equals));
        const auto value = undone(spaced);
        if (!name || !value || !query.emplace(*name, *value).second) return false;
    }
    return true;
}

}  // namespace

std::optional<std::string> undone(std::string_view text) {
    std::string plain;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text[i] != '%') {
            plain += text[i];
            continue;
        }
        const int high = i + 2 < text.size() ? digit(text[i + 1]) : -1;
        const int low = i + 2 < text.size() ? digit(text[i + 2]) : -1;
        if (high < 0 || low < 0) return std::nullopt;
        plain += static_cast<char>(high * 16 + low);
        i += 2;
    }
    if (!is_text(plain)) return std::nullopt;
    return plain;
}

std::optional<Target> read_target(std::string_view target) {
    if (target.empty() || target.front() != '/') return std::nullopt;
    const std::size_t question = target.find('?');
    Target read;
    read.path = std::string(target.substr(0, question));
    for (const std::string_view part : split(std::string_view(read.path).substr(1), '/')) {
        auto plain = undone(part);
        if (!plain || *plain == ".." || *plain == ".") return std::nullopt;
        if (plain->find_first_of("/\\") != std::string::npos) return std::nullopt;
        read.parts.push_back(std::move(*plain));
    }
    if (question != std::string_view::npos &&
        !read_query(target.substr(question + 1), read.query)) {
        return std::nullopt;
    }
    return read;
}

std::optional<std::map<std::string, std::string>> matched(std::string_view pattern,
                                                          const std::vector<std::string>& parts) {
    const auto wanted = split(pattern.substr(1), '/');
    if (wanted.size() != parts.size()) return std::nullopt;
    std::map<std::string, std::string> found;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        const std::string_view one = wanted[i];
        if (one.size() > 2 && one.front() == '{') {
            if (parts[i].empty()) return std::nullopt;
            found[std::string(one.substr(1, one.size() - 2))] = parts[i];
        } else if (one != parts[i]) {
            return std::nullopt;
        }
    }
    return found;
}

}  // namespace toft::server
