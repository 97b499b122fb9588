#include "answer/unknowns.h"

#include "answer/describe.h"
#include "answer/hanging_words.h"
#include "answer/outline.h"
#include "answer/unknowns_tree.h"
#include "study/ground_memo.h"
#include "tables/find_out.h"
#include "unknown/hanging.h"

#include <algorithm>
#include <utility>

namespace toft::answer {

namespace {

using unknown::Effect;
using unknown::Hanging;

/// Groups in which facts are asked for.
enum class Place { opens, condition, saves, saves_together, matters, nothing };

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
        a.effect = unknown::effect_word(h.effect);
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
        a.ask = p.place == Place::opens || p.place == Place::condition || p.place == Place::saves ||
                p.place == Place::saves_together;
        a.why = why(p.place);
        a.hangs = hanging_words(a);
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

    bool on_condition(const std::string& fact) const {
        const auto& facts = telling_.hopes_on;
        return std::find(facts.begin(), facts.end(), fact) != facts.end();
    }

    Place place_of(const Hanging& h, const UnknownAnswer& a) const {
        if (h.opens) return Place::opens;
        if (!solver_.as_it_stands().sound() && on_condition(a.fact)) return Place::condition;
        if (h.effect == Effect::none) return Place::nothing;
        if (!a.worth || *a.worth <= 0) return Place::matters;
        return a.saves && *a.saves > 0 ? Place::saves : Place::saves_together;
    }

    static const char* why(Place place) {
        switch (place) {
            case Place::opens:
                return "alone it may make the difference between nothing sound and something";
            case Place::condition:
                return "the first scheme to hope for hangs on it";
            case Place::saves:
                return "knowing it may save more than it costs to find out";
            case Place::saves_together:
                return "together with others it may save more than it costs to find out";
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

}  // namespace

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
    if (!found.contenders.empty()) telling.hopes_on = found.contenders.front().conditional_on;
    return unknowns_told(solver, telling);
}

AskAnswer ask(const Question& question) {
    if (question.job.runs.size() > 1) return ask_tree(question);
    study::GroundMemo own;
    study::GroundMemo& memo = question.memo ? *question.memo : own;
    const search::Result found = search::search(question.catalogue, question.book, question.job, 0,
                                                solve::options_for(memo));
    const solve::RunSolver solver({question.catalogue, question.book}, question.job, found, memo);
    AskAnswer answer;
    answer.job = question.job.title;
    answer.sound = found.any_sound();
    answer.conditional = !answer.sound && !found.contenders.empty();
    if (!found.contenders.empty()) {
        const search::Contender& first = found.contenders.front();
        answer.stands = brief_words(solver.setting(first.scheme.phases), first.scheme);
        answer.total = first.total;
    }
    answer.unknowns = unknowns_of(solver, found);
    for (const int phases : study::phase_choices(question.job, 0)) {
        for (const std::string& line : solver.setting(phases).assumed) {
            if (std::find(answer.assumed.begin(), answer.assumed.end(), line) ==
                answer.assumed.end()) {
                answer.assumed.push_back(line);
            }
        }
    }
    answer.cautions = standing_cautions();
    return answer;
}

}  // namespace toft::answer
