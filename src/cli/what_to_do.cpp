#include "cli/what_to_do.h"

#include "answer/describe.h"
#include "base/together.h"
#include "cli/layout.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::cli {

namespace {

using answer::SchemeAnswer;

void replace(std::string& text, const std::string& what, const std::string& by) {
    const std::size_t at = text.find(what);
    if (at != std::string::npos && !what.empty()) text.replace(at, what.size(), by);
}

/// Buildings that are fed alike, each perhaps on a line of its own.
struct AlikeRuns {
    std::string says;  ///< but for the line and the name of the board that feeds
    std::string in_full;
    std::vector<std::string> names;
    std::vector<std::string> feeders;
};

AlikeRuns alone(const SchemeAnswer& part) {
    AlikeRuns one{part.run_sentence, "", {part.building.name}, {part.run.feeder}};
    if (part.run.line > 0) {
        replace(one.says, answer::phases_words(part.run), "");
        one.names.front() += fmt::format(" (L{})", part.run.line);
    }
    one.in_full = one.says;
    if (!part.run.feeder.empty()) {
        replace(one.says, "the board of " + part.run.feeder, "the board before it");
    }
    return one;
}

std::vector<AlikeRuns> alike_runs(const SchemeAnswer& s) {
    std::vector<AlikeRuns> all{alone(s)};
    for (const SchemeAnswer& part : s.further) {
        AlikeRuns one = alone(part);
        const auto same = std::find_if(
            all.begin(), all.end(), [&](const AlikeRuns& other) { return other.says == one.says; });
        if (same == all.end()) {
            all.push_back(std::move(one));
        } else {
            same->names.push_back(one.names.front());
            same->feeders.push_back(one.feeders.front());
        }
    }
    return all;
}

}  // namespace

std::string what_to_do(const SchemeAnswer& s) {
    if (s.further.empty()) return wrapped("  ", s.sentence, 2);
    std::string text;
    for (const AlikeRuns& alike : alike_runs(s)) {
        const bool one_feeder =
            std::all_of(alike.feeders.begin(), alike.feeders.end(),
                        [&](const std::string& f) { return f == alike.feeders.front(); });
        std::string names = names_together(alike.names);
        if (alike.names.size() > 1) names += ", each";
        text += wrapped("  - ", names + ": " + (one_feeder ? alike.in_full : alike.says), 4);
    }
    return text;
}

}  // namespace toft::cli
