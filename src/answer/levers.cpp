#include "answer/levers.h"

#include "answer/describe.h"
#include "answer/outline.h"
#include "base/text.h"
#include "lever/levers.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::answer {

namespace {

std::string pounds_words(double pounds) { return "£" + fixed(std::abs(pounds), 0); }

/// The scheme in the words of the job that it was found for.
std::string scheme_words(const Question& q, const site::Job& job, const study::RunScheme& scheme) {
    Silent silent;
    return brief_words(study::prepare(silent, q.catalogue, job, study::RunAt{0, scheme.phases}, {}),
                       scheme);
}

std::string cost_words(const lever::Lever& lever) {
    switch (lever.costs) {
        case lever::Cost::in_the_price:
            return "in the price of the scheme";
        case lever::Cost::of_the_book:
            return pounds_words(*lever.cost) + " by itself";
        case lever::Cost::not_priced:
            break;
    }
    return "not priced: ask before you count on it";
}

/// "saves £120 in all, 12 % more headroom, a sturdier earth".
std::string brings_words(const lever::Lever& lever) {
    if (lever.opens) return "makes a sound scheme possible";
    std::string words;
    const auto add = [&](const std::string& more) { words += (words.empty() ? "" : ", ") + more; };
    const double brings = lever.net().value_or(lever.saves);
    if (std::abs(brings) >= 0.5) {
        add((brings > 0 ? "saves " : "costs ") + pounds_words(brings) +
            (lever.cost ? " in all" : " before what it costs"));
    }
    if (lever.headroom >= 0.005) add(fixed(lever.headroom * 100, 0) + " % more headroom");
    if (lever.headroom <= -0.005) add(fixed(-lever.headroom * 100, 0) + " % less headroom");
    if (lever.dependability > 0) add("a more dependable protective path");
    if (lever.dependability < 0) add("a less dependable protective path");
    return words;
}

LeverAnswer lever_answer(const Question& q, const lever::Lever& lever) {
    LeverAnswer a;
    a.key = lever.key;
    a.change = lever.words;
    a.opens = lever.opens;
    a.saves = lever.saves;
    a.cost = lever.cost;
    a.cost_says = cost_words(lever);
    if (!lever.opens) a.net = lever.net();
    a.headroom = lever.after.best->headroom;
    a.dependability = static_cast<int>(lever.after.best->dependability);
    a.scheme_key = lever.after.key;
    a.total = lever.after.total();
    a.brings = brings_words(lever);
    a.scheme = scheme_words(q, lever.job, lever.after.best->scheme);
    return a;
}

}  // namespace

LeversAnswer levers(const Question& q) {
    search::Options options;
    options.first_only = true;
    options.memo = q.memo;
    const search::Result found = search::search(q.catalogue, q.book, q.job, 0, options);
    LeversAnswer answer;
    answer.job = q.job.title;
    answer.sound = found.any_sound();
    answer.conditional = !answer.sound && !found.contenders.empty();
    if (!found.contenders.empty()) {
        const search::Contender& first = found.contenders.front();
        answer.scheme_key = first.key;
        answer.scheme = scheme_words(q, q.job, first.scheme);
        answer.total = first.total;
        answer.headroom = first.headroom;
    }
    const lever::Weighed weighed = lever::weigh({q.catalogue, q.book}, q.job);
    answer.tried = weighed.tried;
    for (const lever::Lever& lever : weighed.levers) {
        answer.levers.push_back(lever_answer(q, lever));
    }
    answer.cautions = standing_cautions();
    return answer;
}

}  // namespace toft::answer
