#include "answer/find.h"

#include "base/nearest.h"

namespace toft::answer {

namespace {

std::vector<study::RunScheme> buildable(const Question& q) {
    Silent silent;
    std::vector<study::RunScheme> schemes;
    for (const int phases : study::phase_choices(q.job, 0)) {
        const auto setting =
            study::prepare(silent, q.catalogue, q.job, study::RunAt{0, phases}, study::Corner{});
        const search::Shop shop = search::shop_for(setting);
        const auto heads = search::heads_of(shop, setting);
        for (const search::Route& route : search::routes_of(shop, setting)) {
            for (const search::Head& head : heads)
                schemes.push_back(search::scheme_of(route, head));
        }
    }
    return schemes;
}

}  // namespace

std::optional<study::RunScheme> find_scheme(const Question& question, const std::string& key) {
    for (const study::RunScheme& scheme : buildable(question)) {
        if (study::scheme_key(scheme) == key) return scheme;
    }
    return std::nullopt;
}

std::string nearest_scheme(const Question& question, const std::string& key) {
    std::string best;
    int best_distance = 0;
    for (const study::RunScheme& scheme : buildable(question)) {
        const std::string other = study::scheme_key(scheme);
        const int distance = word_distance(key, other);
        if (!best.empty() && distance >= best_distance) continue;
        best = other;
        best_distance = distance;
    }
    return best;
}

}  // namespace toft::answer
