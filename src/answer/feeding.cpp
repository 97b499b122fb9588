#include "answer/feeding.h"

#include "base/text.h"
#include "site/built.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>

namespace toft::answer {

namespace {

std::string name_of(const site::Job& job, const std::string& id) {
    const site::Building& building = *site::find_building(job, id);
    if (building.origin) return "the house";
    return building.name.empty() ? building.id : building.name;
}

/// "from the garage", or by which run where another one starts there too.
std::string start_words(const site::Job& job, const site::Run& run) {
    const auto alike = std::count_if(job.runs.begin(), job.runs.end(), [&](const site::Run& other) {
        return other.from == run.from && other.to == run.to;
    });
    const std::string from = "from " + name_of(job, run.from);
    return alike > 1 ? fmt::format("{} over {}", from, run.id) : from;
}

/// What the whole would cost with it, in words.
std::string other_words(const site::Job& job, const OtherFeedAnswer& other) {
    const auto run = std::find_if(job.runs.begin(), job.runs.end(),
                                  [&](const site::Run& r) { return r.id == other.run; });
    const std::string start = start_words(job, *run);
    if (!other.more) {
        return other.proved ? start + " nothing sound can be built"
                            : start + " nothing sound was found, which is no proof";
    }
    if (std::abs(*other.more) < 0.5) return start + " it would cost the same";
    return fmt::format("{} it would be £{} more{}", start, fixed(*other.more, 0),
                       other.proved ? "" : ", or less: not proved");
}

}  // namespace

std::string fed_words(const site::Job& job) {
    std::string words;
    for (const site::Run& run : job.runs) {
        words += fmt::format("{}{} {}", words.empty() ? "" : ", ", name_of(job, run.to),
                             start_words(job, run));
    }
    return words;
}

std::vector<FeedAnswer> feeds_of(const site::Job& job, const tree::Feedings& found) {
    std::vector<FeedAnswer> feeds;
    if (found.ways.empty()) return feeds;
    const double best = found.ways.front().best.found->total;
    for (const tree::FeedChoice& choice : found.choices) {
        const site::Run& run = job.runs[choice.run];
        FeedAnswer feed{choice.building, run.id, run.from, {}, ""};
        feed.says = fmt::format("{} is fed {}", name_of(job, run.to), start_words(job, run));
        for (const tree::OtherFeed& other : choice.others) {
            OtherFeedAnswer said{
                job.runs[other.run].id, job.runs[other.run].from, {}, other.proved, 0};
            if (other.found) said.more = found.ways[other.way].best.found->total - best;
            feed.says += (feed.others.empty() ? ": " : "; ") + other_words(job, said);
            feed.others.push_back(std::move(said));
        }
        feeds.push_back(std::move(feed));
    }
    return feeds;
}

std::vector<std::string> not_built(const site::Job& job, const site::Job& built) {
    std::vector<std::string> ids;
    for (const site::Run& run : job.runs) {
        const bool is = std::any_of(built.runs.begin(), built.runs.end(),
                                    [&](const site::Run& other) { return other.id == run.id; });
        if (!is) ids.push_back(run.id);
    }
    return ids;
}

std::vector<TrenchAnswer> trenches_of(const site::Job& built) {
    std::map<std::string, TrenchAnswer> trenches;
    for (const site::Run& run : built.runs) {
        for (const site::Leg& leg : run.legs) {
            if (leg.trench.empty()) continue;
            TrenchAnswer& trench = trenches[leg.trench];
            trench.name = leg.trench;
            if (leg.dug_for.empty()) {
                trench.dug_for = run.id;
            } else {
                trench.beside.push_back(run.id);
            }
        }
    }
    std::vector<TrenchAnswer> all;
    for (auto& [name, trench] : trenches) {
        std::string beside;
        for (const std::string& id : trench.beside) beside += (beside.empty() ? "" : ", ") + id;
        trench.says =
            fmt::format("{} {} the trench {} with {}, which pays for digging it", beside,
                        trench.beside.size() == 1 ? "shares" : "share", name, trench.dug_for);
        all.push_back(std::move(trench));
    }
    return all;
}

const SchemeAnswer* part_of(const SchemeAnswer& scheme, const std::string& run) {
    if (scheme.run.id == run) return &scheme;
    for (const SchemeAnswer& part : scheme.further) {
        if (part.run.id == run) return &part;
    }
    return nullptr;
}

site::Job as_built(const site::Job& job, const SchemeAnswer& scheme) {
    std::vector<std::size_t> runs;
    for (std::size_t i = 0; i < job.runs.size(); ++i) {
        if (part_of(scheme, job.runs[i].id)) runs.push_back(i);
    }
    return site::as_built(job, runs);
}

}  // namespace toft::answer
