#include "answer/find.h"

#include "base/nearest.h"

namespace toft::answer {

namespace {

/// What may be built with one number of phases.
struct Offer {
    std::vector<search::Route> routes;
    std::vector<search::Head> heads;
};

std::vector<Offer> offers(const Question& q) {
    Silent silent;
    std::vector<Offer> offers;
    for (const int phases : study::phase_choices(q.job, q.run)) {
        const auto setting =
            study::prepare(silent, q.catalogue, q.job, run_at(q, phases), study::Corner{});
        const search::Shop shop = search::shop_for(setting);
        offers.push_back({search::routes_of(shop, setting), search::heads_of(shop, setting)});
    }
    return offers;
}

bool starts_with(const std::string& text, const std::string& start) {
    return text.compare(0, start.size(), start) == 0;
}

/// The one of `keys` nearest to the beginning of `word`; empty when there is none.
std::string nearest_of(const std::string& word, const std::vector<std::string>& keys) {
    std::string best;
    int best_distance = 0;
    for (const std::string& key : keys) {
        const int distance = word_distance(word.substr(0, key.size()), key);
        if (!best.empty() && distance >= best_distance) continue;
        best = key;
        best_distance = distance;
    }
    return best;
}

}  // namespace

std::optional<study::RunScheme> find_scheme(const Question& question, const std::string& key) {
    for (const Offer& offer : offers(question)) {
        for (const search::Route& route : offer.routes) {
            if (!starts_with(key, study::run_key(search::scheme_of(route, {})))) continue;
            for (const search::Head& head : offer.heads) {
                const study::RunScheme scheme = search::scheme_of(route, head);
                if (study::scheme_key(scheme) == key) return scheme;
            }
        }
    }
    return std::nullopt;
}

std::string nearest_scheme(const Question& question, const std::string& key) {
    std::vector<std::string> routes;
    std::vector<std::string> heads;
    for (const Offer& offer : offers(question)) {
        for (const search::Route& route : offer.routes) {
            routes.push_back(study::run_key(search::scheme_of(route, {})));
        }
        if (offer.routes.empty()) continue;
        for (const search::Head& head : offer.heads) {
            heads.push_back(study::head_key(search::scheme_of(offer.routes.front(), head)));
        }
    }
    const std::string route = nearest_of(key, routes);
    const std::string rest = key.size() > route.size() ? key.substr(route.size()) : key;
    return route + nearest_of(rest, heads);
}

}  // namespace toft::answer
