#include "request/picked.h"

#include "answer/find.h"
#include "answer/first.h"
#include "site/built.h"

namespace toft::request {

bool rank_like(const std::string& which) {
    return !which.empty() && which.size() < 5 &&
           which.find_first_not_of("0123456789") == std::string::npos;
}

std::size_t place_of(const site::Job& job, const std::string& run) {
    std::size_t place = 0;
    while (job.runs[place].id != run) ++place;
    return place;
}

std::optional<Picked> pick(const answer::Question& question, const std::string& which,
                           const std::string& run, bool& left_out) {
    const bool by_key = !which.empty() && !rank_like(which);
    if (by_key && question.job.runs.size() == 1) {
        const auto scheme = answer::find_scheme(question, which);
        if (!scheme) return std::nullopt;
        return Picked{question.job, question.run, *scheme, {}, false};
    }
    const answer::Answer whole = answer::first(question, "").answer;
    for (const answer::SchemeAnswer& way : whole.schemes) {
        if (!which.empty() && !by_key && std::to_string(way.rank) != which) continue;
        const answer::SchemeAnswer* part = run.empty() ? &way : answer::part_of(way, run);
        left_out = !part;
        if (left_out) return std::nullopt;
        Picked picked{answer::as_built(question.job, way),
                      0,
                      part->scheme,
                      part->incoming,
                      part->bonds_beyond,
                      part->bought_before};
        picked.run = place_of(picked.job, part->run.id);
        if (!by_key) return picked;
        answer::Question of_run{question.catalogue, question.book, picked.job};
        of_run.run = picked.run;
        of_run.incoming = picked.incoming ? &*picked.incoming : nullptr;
        const auto scheme = answer::find_scheme(of_run, which);
        if (!scheme) return std::nullopt;
        picked.scheme = *scheme;
        return picked;
    }
    return std::nullopt;
}

std::optional<Shown> shown_run(const site::Job& stated, const answer::Answer& whole,
                               std::size_t& index, std::size_t run, bool named) {
    const std::string& asked = stated.runs[run].id;
    if (!site::has_choice(stated)) return Shown{site::as_built(stated), asked, whole};
    if (whole.schemes.empty()) return Shown{site::as_built(stated, {run}), asked, whole};
    const answer::SchemeAnswer& way = whole.schemes[index];
    const std::string id = named ? asked : way.run.id;
    if (!answer::part_of(way, id)) return std::nullopt;
    Shown shown{answer::as_built(stated, way), id, whole};
    shown.answer.schemes.clear();
    std::size_t place = 0;
    for (std::size_t i = 0; i < whole.schemes.size(); ++i) {
        if (whole.schemes[i].not_built != way.not_built) continue;
        if (i == index) place = shown.answer.schemes.size();
        shown.answer.schemes.push_back(whole.schemes[i]);
    }
    index = place;
    return shown;
}

}  // namespace toft::request
