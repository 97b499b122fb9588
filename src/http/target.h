#pragma once
// What a request asks for: the path in parts and the query, percent signs undone.

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace toft::server {

struct Target {
    std::string path;                ///< as sent, without the query
    std::vector<std::string> parts;  ///< between the slashes
    std::map<std::string, std::string> query;
};

/// Nothing for what is no path from the root, holds control characters, steps up ("..") in any
/// spelling, or says a name of the query twice.
std::optional<Target> read_target(std::string_view target);

/// Percent signs undone; nothing where one is followed by no two hexadecimal digits or where
/// control characters or broken UTF-8 come out.
std::optional<std::string> undone(std::string_view text);

/// What the parts in braces of a pattern stand for; nothing where the path is another.
std::optional<std::map<std::string, std::string>> matched(std::string_view pattern,
                                                          const std::vector<std::string>& parts);

}  // namespace toft::server
