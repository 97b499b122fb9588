#include "answer/unknowns.h"

#include <algorithm>
#include <utility>

namespace toft::answer {

namespace {

/// What a user would see change: nothing, the price, the scheme, or whether there is a sound one.
enum class Effect { none, price, scheme, decides };

const char* effect_word(Effect effect) {
    switch (effect) {
        case Effect::none:
            return "does not matter";
        case Effect::price:
            return "changes the price only";
        case Effect::scheme:
            return "changes the scheme";
        case Effect::decides:
            return "decides";
    }
    return "";
}

Effect between(const search::Result& a, const search::Result& b) {
    if (a.any_sound() != b.any_sound() || a.contenders.empty() != b.contenders.empty()) {
        return Effect::decides;
    }
    if (a.contenders.empty()) return Effect::none;
    const search::Contender& x = a.contenders.front();
    const search::Contender& y = b.contenders.front();
    if (x.scheme.earthing != y.scheme.earthing) return Effect::decides;
    if (x.key != y.key) return Effect::scheme;
    return x.price.total == y.price.total ? Effect::none : Effect::price;
}

}  // namespace

std::vector<UnknownAnswer> effects_of_unknowns(const Question& q,
                                               const std::vector<study::OpenFact>& open,
                                               const search::Result& found) {
    std::vector<std::pair<Effect, UnknownAnswer>> judged;
    for (const study::OpenFact& fact : open) {
        Effect worst = Effect::none;
        for (study::End end : {study::End::low, study::End::high}) {
            search::Options options;
            options.first_only = true;
            options.memo = q.memo;
            options.corner.except.emplace_back(fact.pointer, end);
            const Effect effect =
                between(found, search::search(q.catalogue, q.book, q.job, 0, options));
            if (worst < effect) worst = effect;
        }
        judged.push_back({worst,
                          {fact.pointer, fact.says, fact.unit, fact.low, fact.high, fact.stated,
                           effect_word(worst)}});
    }
    std::stable_sort(judged.begin(), judged.end(),
                     [](const auto& a, const auto& b) { return a.first > b.first; });
    std::vector<UnknownAnswer> answers;
    for (auto& [effect, answer] : judged) answers.push_back(std::move(answer));
    return answers;
}

}  // namespace toft::answer
