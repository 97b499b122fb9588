#include "request/way.h"

#include "answer/find.h"
#include "base/nearest.h"
#include "site/built.h"

namespace toft::request {

namespace {

std::string not_built(const std::string& run) {
    return fault_text("not-built", "/run",
                      fmt::format("{} is not built in this way: another run feeds its building; "
                                  "name a way that builds it",
                                  run));
}

std::string no_such_scheme(const answer::Question& asked, const std::string& which) {
    if (which.empty()) {
        return fault_text("no-sound-scheme", "",
                          "no scheme is sound, so none is recommended; name one by its key to see "
                          "why it fell");
    }
    if (rank_like(which))
        return fault_text("unknown-scheme", "/rank", "the answer lists no scheme of that rank");
    // Only as built a job can be worked with.
    const bool choice = site::has_choice(asked.job);
    const site::Job alone = site::as_built(asked.job, {asked.run});
    answer::Question question{asked.catalogue, asked.book, choice ? alone : asked.job};
    if (!choice) question.run = asked.run;
    return fault_text("unknown-scheme", "/key", "no scheme has that key",
                      answer::nearest_scheme(question, which));
}

}  // namespace

Or<std::size_t> run_named(const site::Job& job, const std::string& name) {
    std::vector<std::string> ids;
    for (std::size_t i = 0; i < job.runs.size(); ++i) {
        const bool from_house = site::find_building(job, job.runs[i].from)->origin;
        if (name.empty() ? from_house : job.runs[i].id == name) return {i, ""};
        ids.push_back(job.runs[i].id);
    }
    return {std::nullopt, fault_text("unknown-run", "/run", "there is no run " + name,
                                     nearest_word(name, ids), ids)};
}

Or<Picked> way_of(const Work& work, const std::string& which, const std::string& run) {
    const auto named = run_named(work.job, run);
    if (!named.is) return {std::nullopt, named.faults};
    answer::Question question = work.question();
    question.run = *named.is;
    bool left_out = false;
    auto picked = pick(question, which, run, left_out);
    if (left_out) return {std::nullopt, not_built(run)};
    if (!picked) return {std::nullopt, no_such_scheme(question, which)};
    return {std::move(picked), ""};
}

answer::Question question_of(const Work& work, const Picked& picked) {
    answer::Question question{work.stock.catalogue, work.stock.book, picked.job};
    question.run = picked.run;
    question.incoming = picked.incoming ? &*picked.incoming : nullptr;
    question.bonds_beyond = picked.bonds_beyond;
    question.bought_before = picked.bought_before;
    return question;
}

Or<std::size_t> scheme_named(const answer::Answer& answer, const std::string& which) {
    if (which.empty()) return {0, ""};
    for (std::size_t i = 0; i < answer.schemes.size(); ++i) {
        const answer::SchemeAnswer& scheme = answer.schemes[i];
        if (scheme.key == which || std::to_string(scheme.rank) == which) return {i, ""};
    }
    if (answer.schemes.empty()) return {0, ""};
    return {std::nullopt, fault_text("unknown-scheme", rank_like(which) ? "/rank" : "/key",
                                     fmt::format("there are {} schemes and this is none of them",
                                                 answer.schemes.size()))};
}

}  // namespace toft::request
