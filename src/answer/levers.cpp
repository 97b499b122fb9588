#include "answer/levers.h"

#include "answer/as_recommended.h"

#include "answer/describe.h"
#include "answer/outline.h"
#include "answer/unknowns.h"
#include "base/text.h"
#include "lever/levers.h"
#include "solve/tree_solver.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::answer {

namespace {

std::string pounds_words(double pounds) { return "£" + fixed(std::abs(pounds), 0); }

/// The solution in the words of the job that it was found for; of several runs what is built
/// otherwise than before.
std::string scheme_words(const Question& q, const site::Job& job, const solve::Solution& solution,
                         const solve::Solution& before) {
    if (!solution.sound()) return "";
    const Question of_job{q.catalogue, q.book, job};
    if (job.runs.size() > 1) return changed_words(of_job, solution, {before});
    Silent silent;
    const study::RunScheme& scheme = solution.schemes.front();
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

void add_places(const site::Job& job, const lever::Lever& lever, LeverAnswer& a) {
    if (job.runs.size() == 1) return;
    for (const std::size_t run : lever.runs) a.places.push_back(end_of_run(job, run));
    for (const lever::Singly& one : lever.singly) {
        a.singly.emplace_back(end_of_run(job, one.run), one.brings);
    }
    std::stable_sort(a.singly.begin(), a.singly.end(),
                     [](const auto& x, const auto& y) { return x.second > y.second; });
}

LeverAnswer lever_answer(const Question& q, const lever::Lever& lever,
                         const solve::Solution& before) {
    LeverAnswer a;
    a.key = lever.key;
    a.change = lever.words;
    a.opens = lever.opens;
    a.saves = lever.saves;
    a.cost = lever.cost;
    a.cost_says = cost_words(lever);
    if (!lever.opens) a.net = lever.net();
    a.headroom = lever.after.headroom;
    a.dependability = static_cast<int>(lever.after.dependability);
    a.scheme_key = lever.after.key;
    a.total = lever.after.total;
    a.brings = brings_words(lever);
    a.scheme = scheme_words(q, lever.job, lever.after, before);
    add_places(q.job, lever, a);
    return a;
}

void about_run(const Question& q, LeversAnswer& answer) {
    search::Options options;
    options.first_only = true;
    options.memo = q.memo;
    const search::Result found = search::search(q.catalogue, q.book, q.job, 0, options);
    answer.sound = found.any_sound();
    answer.conditional = !answer.sound && !found.contenders.empty();
    if (found.contenders.empty()) return;
    const search::Contender& first = found.contenders.front();
    Silent silent;
    answer.scheme_key = first.key;
    answer.scheme = brief_words(study::prepare(silent, q.catalogue, q.job,
                                               study::RunAt{0, first.scheme.phases, q.memo}, {}),
                                first.scheme);
    answer.total = first.total;
    answer.headroom = first.headroom;
}

/// Several runs as they stand; where nothing is sound, what is to be hoped for.
void about_tree(const Question& q, const solve::Solution& before, LeversAnswer& answer) {
    answer.sound = before.sound();
    solve::Solution first = before;
    if (!answer.sound) {
        study::GroundMemo memo;
        first = solve::TreeSolver({q.catalogue, q.book}, q.job, memo).hoped_for();
    }
    answer.conditional = !answer.sound && first.sound();
    answer.scheme_key = first.key;
    answer.scheme = whole_words(q, first);
    answer.total = first.total;
    answer.headroom = first.headroom;
}

}  // namespace

LeversAnswer levers(const Question& question) {
    const site::Job built = as_recommended(question);
    Question q{question.catalogue, question.book, built};
    q.told = question.told;
    q.memo = question.memo;
    LeversAnswer answer;
    answer.job = q.job.title;
    const lever::Weighed weighed = lever::weigh({q.catalogue, q.book}, q.job, q.told);
    if (q.job.runs.size() == 1) {
        about_run(q, answer);
    } else {
        about_tree(q, weighed.before, answer);
    }
    if (answer.sound && !unsaid_of(q).empty()) {
        answer.sound = false;
        answer.conditional = true;
    }
    answer.tried = weighed.tried;
    answer.proved = weighed.proved;
    answer.stopped = weighed.stopped;
    for (const lever::Lever& lever : weighed.levers) {
        answer.levers.push_back(lever_answer(q, lever, weighed.before));
    }
    answer.cautions = standing_cautions(q.book);
    return answer;
}

}  // namespace toft::answer
