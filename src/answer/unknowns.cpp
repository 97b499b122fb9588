#include "answer/unknowns.h"

#include "answer/as_recommended.h"

#include "answer/describe.h"
#include "answer/hanging_words.h"
#include "answer/outline.h"
#include "base/text.h"
#include "study/ground_memo.h"
#include "tables/find_out.h"
#include "unknown/hanging.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace toft::answer {

namespace {

using unknown::Effect;
using unknown::Hanging;

/// Groups in which facts are asked for.
enum class Place { opens, unsaid, condition, saves, saves_together, unlooked, matters, nothing };

struct Placed {
    Place place = Place::nothing;
    UnknownAnswer answer;
};

/// Pounds with tax that the minutes cost at the book's price of an hour.
double trouble(const price::Book& book, double minutes) {
    const double tax = 1 + book.amount(price::Item::vat_percent) / 100;
    return minutes / 60 * book.amount(price::Item::labour_hour) * tax;
}

class Asking {
public:
    Asking(const solve::Solver& solver, const Telling& telling)
        : solver_(solver), telling_(telling) {}

    Placed placed(const Hanging& h) const {
        Placed p;
        UnknownAnswer& a = p.answer;
        a.fact = h.fact.pointer;
        a.says = h.fact.says;
        a.unit = h.fact.unit;
        a.low = h.fact.low;
        a.high = h.fact.high;
        a.stated = h.fact.stated;
        a.effect = unknown::effect_word(unsaid(a.fact) ? Effect::decides : h.effect);
        a.stepped = h.stepped;
        a.together = h.together;
        a.with = h.with;
        a.saves = h.saves;
        a.saves_with = h.saves_with;
        const solve::Solution* first = nullptr;
        for (const unknown::Piece& piece : h.pieces) {
            a.pieces.push_back(piece_of(piece, first));
            if (!first && piece.best.sound()) first = &piece.best;
        }
        how_to(a);
        p.place = place_of(h, a);
        a.ask = p.place < Place::matters;
        a.why = why(p.place);
        if (p.place != Place::unlooked) a.hangs = hanging_words(a);
        return p;
    }

private:
    PieceAnswer piece_of(const unknown::Piece& piece, const solve::Solution* first) const {
        PieceAnswer a{piece.low, piece.high,      piece.best.sound(), piece.best.key,
                      "",        piece.total_low, piece.total_high};
        if (a.sound) a.words = telling_.words(piece.best, first);
        return a;
    }

    void how_to(UnknownAnswer& a) const {
        const auto* row = tables::find_out_for(solver_.means().catalogue.find_out, a.fact);
        if (!row) return;
        a.question = row->question;
        a.how = row->how;
        a.by = row->by;
        a.minutes = row->minutes;
        const bool alone = a.saves && *a.saves > 0;
        if (!alone && !a.saves_with) return;
        a.worth = (alone ? *a.saves : *a.saves_with) - trouble(solver_.means().book, a.minutes);
    }

    /// Neither scheme nor price turns on it, and yet nothing is known to be safe without it.
    bool unsaid(const std::string& fact) const {
        const auto& facts = telling_.unsaid;
        return std::find(facts.begin(), facts.end(), fact) != facts.end();
    }

    bool on_condition(const std::string& fact) const {
        const auto& facts = telling_.hopes_on;
        return std::find(facts.begin(), facts.end(), fact) != facts.end();
    }

    Place place_of(const Hanging& h, const UnknownAnswer& a) const {
        if (h.opens) return Place::opens;
        if (unsaid(a.fact)) return Place::unsaid;
        if (!solver_.as_it_stands().sound() && on_condition(a.fact)) return Place::condition;
        if (h.effect == Effect::none) return Place::nothing;
        if (h.effect == Effect::unlooked) return Place::unlooked;
        if (!a.worth || *a.worth <= 0) return Place::matters;
        return a.saves && *a.saves > 0 ? Place::saves : Place::saves_together;
    }

    static const char* why(Place place) {
        switch (place) {
            case Place::opens:
                return "alone it may make the difference between nothing sound and something";
            case Place::unsaid:
                return "until it is known a rule is not known to be met, whatever is built";
            case Place::condition:
                return "the first scheme to hope for hangs on it";
            case Place::saves:
                return "knowing it may save more than it costs to find out";
            case Place::saves_together:
                return "together with others it may save more than it costs to find out";
            case Place::unlooked:
                return "stopped before it was looked at: it may matter";
            case Place::matters:
                return "finding it out costs more than it may save";
            case Place::nothing:
                break;
        }
        return "neither scheme nor price hangs on it, alone or with all others well";
    }

    const solve::Solver& solver_;
    const Telling& telling_;
};

/// By place, then by worth, then by the trouble.
bool asked_before(const Placed& a, const Placed& b) {
    if (a.place != b.place) return a.place < b.place;
    const bool decides_a = a.answer.effect == "decides";
    const bool decides_b = b.answer.effect == "decides";
    const double worth_a = a.answer.worth.value_or(0);
    const double worth_b = b.answer.worth.value_or(0);
    if (a.place == Place::matters && decides_a != decides_b) return decides_a;
    if (worth_a != worth_b) return worth_a > worth_b;
    return a.answer.minutes < b.answer.minutes;
}

using study::Corner;
using study::End;

/// Sums of money that differ by less are no difference.
constexpr double no_difference = 0.005;

bool same_question(const UnknownAnswer& a, const UnknownAnswer& b) {
    return !a.question.empty() && a.question == b.question && a.effect != "does not matter" &&
           b.effect != "does not matter";
}

/// Where the same question arises at several places: what it saves to know it well at all of them.
void add_alike(const solve::TreeSolver& solver, std::vector<UnknownAnswer>& unknowns) {
    const solve::Solution& stands = solver.as_it_stands();
    if (!stands.sound() || solver.stopped()) return;
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

std::vector<std::string> unsaid_of(const Question& q) {
    std::vector<std::string> facts;
    Silent silent;
    for (std::size_t run = 0; run < q.job.runs.size(); ++run) {
        study::add_unsaid(
            study::prepare(silent, q.catalogue, q.job, study::RunAt{run, 0, q.memo}, {}), facts);
    }
    return facts;
}

std::vector<UnknownAnswer> unknowns_told(const solve::Solver& solver, const Telling& telling) {
    const Asking asking(solver, telling);
    std::vector<Placed> all;
    for (const Hanging& h : unknown::hanging_on(solver, solver.means().catalogue.find_out)) {
        all.push_back(asking.placed(h));
    }
    std::stable_sort(all.begin(), all.end(), asked_before);
    std::vector<UnknownAnswer> answers;
    for (Placed& p : all) answers.push_back(std::move(p.answer));
    return answers;
}

std::vector<UnknownAnswer> unknowns_of(const solve::RunSolver& solver,
                                       const search::Result& found) {
    Telling telling;
    telling.words = [&](const solve::Solution& solution, const solve::Solution*) {
        const study::RunScheme& scheme = solution.schemes.front();
        return brief_words(solver.setting(scheme.phases), scheme);
    };
    study::add_unsaid(solver.setting(study::phase_choices(solver.job(), 0).front()),
                      telling.unsaid);
    if (!found.contenders.empty()) telling.hopes_on = found.contenders.front().conditional_on;
    return unknowns_told(solver, telling);
}

std::vector<UnknownAnswer> unknowns_of_tree(const Question& q, const solve::TreeSolver& solver) {
    const solve::Solution& stands = solver.as_it_stands();
    const solve::Solution first = stands.sound() ? stands : solver.hoped_for();
    const Against before{first, stands.sound() ? "as it stands" : "as is hoped for"};
    Telling telling;
    telling.words = [&](const solve::Solution& solution, const solve::Solution* piece) {
        const bool same = solve::same_choice(solution, first);
        return changed_words(q, solution, piece && !same ? Against{*piece, "the same"} : before);
    };
    telling.unsaid = unsaid_of(q);
    if (!stands.sound() && first.sound()) telling.hopes_on = solver.hangs_on(first);
    std::vector<UnknownAnswer> unknowns = unknowns_told(solver, telling);
    for (UnknownAnswer& u : unknowns) {
        u.place = place_of_fact(q.job, u.fact);
        if (!u.place.empty()) u.says = u.place + ": " + u.says;
    }
    add_alike(solver, unknowns);
    return unknowns;
}

bool none_matters(const solve::TreeSolver& solver) {
    const solve::Solution& stands = solver.as_it_stands();
    const solve::Solution hoped = solver.hoped_for();
    return stands.sound() == hoped.sound() && std::abs(stands.total - hoped.total) < no_difference;
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

namespace {

AskAnswer ask_tree(const Question& question) {
    const site::Job built = as_recommended(question);
    study::GroundMemo own;
    Question q{question.catalogue, question.book, built};
    q.told = question.told;
    q.memo = question.memo ? question.memo : &own;
    const solve::TreeSolver solver({q.catalogue, q.book}, q.job, *q.memo, q.told);
    AskAnswer answer;
    answer.job = q.job.title;
    answer.sound = solver.as_it_stands().sound();
    const solve::Solution first = answer.sound ? solver.as_it_stands() : solver.hoped_for();
    answer.conditional = !answer.sound && first.sound();
    answer.stands = whole_words(q, first);
    answer.total = first.total;
    answer.unknowns = unknowns_of_tree(q, solver);
    if (answer.sound && !unsaid_of(q).empty()) {
        answer.sound = false;
        answer.conditional = true;
    }
    answer.proved = solver.all_proved();
    answer.stopped = solver.stopped();
    add_assumed(q, answer);
    const std::string taken = feeding_taken(question.job, built);
    if (!taken.empty()) answer.assumed.push_back(taken);
    answer.cautions = standing_cautions(question.book);
    return answer;
}

}  // namespace

AskAnswer ask(const Question& question) {
    if (question.job.runs.size() > 1) return ask_tree(question);
    study::GroundMemo own;
    study::GroundMemo& memo = question.memo ? *question.memo : own;
    const search::Result found = search::search(question.catalogue, question.book, question.job, 0,
                                                solve::options_for(memo));
    std::function<bool()> go_on;
    if (question.told) go_on = [&] { return question.told(0); };
    const solve::RunSolver solver({question.catalogue, question.book}, question.job, found, memo,
                                  go_on);
    AskAnswer answer;
    answer.job = question.job.title;
    answer.sound = found.any_sound() &&
                   solver.setting(study::phase_choices(question.job, 0).front()).unsaid.empty();
    answer.conditional = !answer.sound && !found.contenders.empty();
    if (!found.contenders.empty()) {
        const search::Contender& first = found.contenders.front();
        answer.stands = brief_words(solver.setting(first.scheme.phases), first.scheme);
        answer.total = first.total;
    }
    answer.unknowns = unknowns_of(solver, found);
    answer.stopped = solver.stopped();
    for (const int phases : study::phase_choices(question.job, 0)) {
        for (const std::string& line : solver.setting(phases).assumed) {
            if (std::find(answer.assumed.begin(), answer.assumed.end(), line) ==
                answer.assumed.end()) {
                answer.assumed.push_back(line);
            }
        }
    }
    answer.cautions = standing_cautions(question.book);
    return answer;
}

}  // namespace toft::answer
