#include "answer/find.h"

#include "base/nearest.h"

namespace toft::answer {

namespace {

std::vector<study::RunScheme> buildable(const Question& q) {
    Silent silent;
    const auto setting = study::prepare(silent, q.catalogue, q.job, 0, study::Corner{});
    const search::Shop shop = search::shop_for(setting);
    std::vector<study::RunScheme> schemes;
    for (const search::Core& core : search::cores_of(shop)) {
        for (const search::Head& head : search::heads_of(shop)) {
            schemes.push_back(search::scheme_of(core, head));
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
