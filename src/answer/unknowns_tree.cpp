#include "answer/unknowns_tree.h"

#include "answer/describe.h"
#include "answer/whole_words.h"
#include "base/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace toft::answer {

namespace {

using study::Corner;
using study::End;

/// Sums of money that differ by less are no difference.
constexpr double no_money = 0.005;

bool same_question(const UnknownAnswer& a, const UnknownAnswer& b) {
    return !a.question.empty() && a.question == b.question && a.effect != "does not matter" &&
           b.effect != "does not matter";
}

/// Where the same question arises at several places: what it saves to know it well at all of them.
void add_alike(const solve::TreeSolver& solver, std::vector<UnknownAnswer>& unknowns) {
    const solve::Solution& stands = solver.as_it_stands();
    if (!stands.sound()) return;
    for (UnknownAnswer& u : unknowns) {
        Corner corner;
        for (const UnknownAnswer& other : unknowns) {
            if (same_question(u, other)) corner.except.emplace_back(other.fact, End::better);
        }
        if (corner.except.size() < 2) continue;
        const solve::Solution known = solver.at(corner);
        if (known.sound()) u.saves_alike = std::max(0.0, stands.total - known.total);
    }
}

/// The facts, and what each run takes for granted, each sentence once.
void add_assumed(const Question& q, AskAnswer& answer) {
    Silent silent;
    for (std::size_t run = 0; run < q.job.runs.size(); ++run) {
        const auto setting =
            study::prepare(silent, q.catalogue, q.job, study::RunAt{run, 0, q.memo}, {});
        for (const std::string& line : setting.assumed) {
            const auto& said = answer.assumed;
            if (std::find(said.begin(), said.end(), line) == said.end()) {
                answer.assumed.push_back(line);
            }
        }
    }
    if (q.job.wishes.prefer != site::Prefer::price) {
        answer.assumed.push_back(
            "ways to build several runs are compared by price here, whatever the job prefers");
    }
}

}  // namespace

std::vector<UnknownAnswer> unknowns_of_tree(const Question& q, const solve::TreeSolver& solver) {
    const solve::Solution& stands = solver.as_it_stands();
    const solve::Solution first = stands.sound() ? stands : solver.hoped_for();
    const Against before{first, stands.sound() ? "as it stands" : "as is hoped for"};
    Telling telling;
    telling.words = [&](const solve::Solution& solution, const solve::Solution* piece) {
        const bool same = solve::same_choice(solution, first);
        return changed_words(q, solution, piece && !same ? Against{*piece, "the same"} : before);
    };
    if (!stands.sound() && first.sound()) telling.hopes_on = solver.hangs_on(first);
    std::vector<UnknownAnswer> unknowns = unknowns_told(solver, telling);
    for (UnknownAnswer& u : unknowns) {
        u.place = place_of_fact(q.job, u.fact);
        if (!u.place.empty()) u.says = u.place + ": " + u.says;
    }
    add_alike(solver, unknowns);
    return unknowns;
}

AskAnswer ask_tree(const Question& question) {
    study::GroundMemo own;
    Question q = question;
    if (!q.memo) q.memo = &own;
    const solve::TreeSolver solver({q.catalogue, q.book}, q.job, *q.memo, q.told);
    AskAnswer answer;
    answer.job = q.job.title;
    answer.sound = solver.as_it_stands().sound();
    const solve::Solution first = answer.sound ? solver.as_it_stands() : solver.hoped_for();
    answer.conditional = !answer.sound && first.sound();
    answer.stands = whole_words(q, first);
    answer.total = first.total;
    answer.unknowns = unknowns_of_tree(q, solver);
    answer.proved = solver.all_proved();
    add_assumed(q, answer);
    answer.cautions = standing_cautions();
    return answer;
}

bool none_matters(const solve::TreeSolver& solver) {
    const solve::Solution& stands = solver.as_it_stands();
    const solve::Solution hoped = solver.hoped_for();
    return stands.sound() == hoped.sound() && std::abs(stands.total - hoped.total) < no_money;
}

std::string open_in_short(const solve::TreeSolver& solver) {
    if (solver.open().empty()) return "";
    const std::string open = "what the survey leaves open is taken at its worse end";
    const solve::Solution& stands = solver.as_it_stands();
    const solve::Solution hoped = solver.hoped_for();
    if (!stands.sound()) return open + "; toft ask says what to find out first";
    if (!hoped.sound() || none_matters(solver)) return open;
    return fmt::format(
        "{}; if all of it turns out well the whole costs £{} less: toft ask says "
        "which of it to find out",
        open, fixed(stands.total - hoped.total, 0));
}

}  // namespace toft::answer
