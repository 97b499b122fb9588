#include "unknown/hanging.h"

#include "tables/find_out.h"

#include <algorithm>
#include <cmath>

namespace toft::unknown {

namespace {

using solve::Solution;
using solve::Solver;
using study::End;

/// Sums of money that differ by less are no difference.
constexpr double no_money = 0.005;

std::vector<double> values_of(const study::OpenFact& fact,
                              const std::vector<tables::FindOut>& rows) {
    std::vector<double> values;
    const tables::FindOut* row = tables::find_out_for(rows, fact.pointer);
    if (!row || row->values.empty()) return values;
    values.push_back(fact.low);
    for (const double value : row->values) {
        if (value > fact.low && value < fact.high) values.push_back(value);
    }
    values.push_back(fact.high);
    return values;
}

Effect effect_of(const std::vector<Piece>& pieces) {
    if (pieces.size() > 1) return Effect::decides;
    if (pieces.empty()) return Effect::none;
    const Piece& one = pieces.front();
    return std::abs(one.total_high - one.total_low) < no_money ? Effect::none : Effect::price;
}

double least_total(const std::vector<Piece>& pieces) {
    double least = 0;
    bool any = false;
    for (const Piece& p : pieces) {
        if (!p.best.sound()) continue;
        const double total = std::min(p.total_low, p.total_high);
        least = any ? std::min(least, total) : total;
        any = true;
    }
    return least;
}

bool any_piece(const std::vector<Piece>& pieces, bool sound) {
    return std::any_of(pieces.begin(), pieces.end(),
                       [sound](const Piece& p) { return p.best.sound() == sound; });
}

class Looking {
public:
    Looking(const Solver& solver, const std::vector<tables::FindOut>& rows)
        : solver_(solver), rows_(rows) {
        study::Corner all_well;
        all_well.all = End::better;
        if (!solver.open().empty()) well_ = solver.at(all_well);
    }

    Hanging at(const study::OpenFact& fact) const {
        Hanging h;
        h.fact = fact;
        alone(h);
        if (h.effect != Effect::decides) with_others_well(h);
        return h;
    }

private:
    void alone(Hanging& h) const {
        const Looked at{h.fact, End::worse, values_of(h.fact, rows_)};
        const study::Corner kinder = corner_in(at, h.fact.low, h.fact.high, End::better);
        const Solution& stands = solver_.as_it_stands();
        const Solution may_be = solver_.at(kinder);
        const bool same = settled(solver_, stands, may_be, kinder);
        if (same && (!stands.sound() || cost_alike(kinder, stands))) return;
        h.pieces = pieces_over(solver_, at);
        h.effect = effect_of(h.pieces);
        if (h.effect == Effect::none) h.pieces.clear();
        h.opens = !stands.sound() && any_piece(h.pieces, true);
        if (stands.sound() && !h.pieces.empty()) {
            h.saves = std::max(0.0, stands.total() - least_total(h.pieces));
        }
    }

    bool cost_alike(const study::Corner& kinder, const Solution& stands) const {
        return std::abs(solver_.price_at(kinder, stands.best->scheme) - stands.total()) < no_money;
    }

    /// All others may be known to be well: does it matter then?
    void with_others_well(Hanging& h) const {
        if (solver_.open().size() < 2) return;
        const Looked at{h.fact, End::better, values_of(h.fact, rows_)};
        const study::Corner worse = corner_in(at, h.fact.low, h.fact.high, End::worse);
        const Solution sure = solver_.at(worse);
        study::Corner well;
        well.all = End::better;
        if (settled(solver_, sure, well_, well)) return;
        const std::vector<Piece> pieces = pieces_over(solver_, at);
        if (effect_of(pieces) <= h.effect) return;
        h.effect = effect_of(pieces);
        h.together = true;
        h.pieces = pieces;
        h.closes = any_piece(pieces, false);
        h.saves = std::nullopt;
        if (sure.sound() && well_.sound()) h.saves = std::max(0.0, sure.total() - well_.total());
        h.with = partners(h.fact);
    }

    /// Facts which, well themselves, are enough for this one to matter.
    std::vector<std::string> partners(const study::OpenFact& fact) const {
        std::vector<std::string> found;
        for (const study::OpenFact& other : solver_.open()) {
            if (other.pointer == fact.pointer) continue;
            study::Corner corner;
            corner.except = {{other.pointer, End::better}, {fact.pointer, End::worse}};
            const Solution without = solver_.at(corner);
            corner.except.back().second = End::better;
            if (settled(solver_, without, solver_.at(corner), corner)) continue;
            found.push_back(other.pointer);
        }
        return found;
    }

    const Solver& solver_;
    const std::vector<tables::FindOut>& rows_;
    Solution well_;  ///< with every fact at its better end
};

}  // namespace

const char* effect_word(Effect effect) {
    switch (effect) {
        case Effect::none:
            return "does not matter";
        case Effect::price:
            return "changes the price only";
        case Effect::decides:
            return "decides";
    }
    return "";
}

std::vector<Hanging> hanging_on(const Solver& solver, const std::vector<tables::FindOut>& rows) {
    std::vector<Hanging> all;
    const Looking looking(solver, rows);
    for (const study::OpenFact& fact : solver.open()) all.push_back(looking.at(fact));
    return all;
}

}  // namespace toft::unknown
