#include "unknown/hanging.h"

#include "tables/find_out.h"
#include "unknown/grouped.h"

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

double dearest_total(const std::vector<Piece>& pieces) {
    double most = 0;
    for (const Piece& p : pieces) most = std::max({most, p.total_low, p.total_high});
    return most;
}

bool any_piece(const std::vector<Piece>& pieces, bool sound) {
    return std::any_of(pieces.begin(), pieces.end(),
                       [sound](const Piece& p) { return p.best.sound() == sound; });
}

class Looking {
public:
    Looking(const Solver& solver, const std::vector<tables::FindOut>& rows)
        : solver_(solver), rows_(rows) {
        const std::vector<bool> alike =
            idle_among(may_be_grouped(), [&](const Group& group) { return ends_alike(group); });
        for (std::size_t i = 0; i < solver.open().size(); ++i) {
            const study::OpenFact& fact = solver.open()[i];
            well_.except.emplace_back(fact.pointer, alike[i] ? End::high : kinder_end(fact));
        }
    }

    std::vector<Hanging> all() const {
        const std::vector<bool> idle_alone =
            idle_among(may_be_grouped(), [&](const Group& group) { return alone_alike(group); });
        const std::vector<bool> idle_well =
            idle_among(may_be_grouped(), [&](const Group& group) { return well_alike(group); });
        std::vector<Hanging> all;
        for (std::size_t i = 0; i < solver_.open().size(); ++i) {
            Hanging h = unlooked(i);
            if (!solver_.stopped()) {
                h.effect = Effect::none;
                if (!idle_alone[i]) alone(h);
                if (h.effect != Effect::decides && !idle_well[i]) with_others_well(h);
            }
            all.push_back(solver_.stopped() ? unlooked(i) : std::move(h));
        }
        for (Hanging& h : all) {
            if (h.together && !solver_.stopped()) h.with = partners(h.fact, all);
        }
        return all;
    }

private:
    Hanging unlooked(std::size_t i) const {
        Hanging h;
        h.fact = solver_.open()[i];
        h.effect = Effect::unlooked;
        h.stepped = !values_of(h.fact, rows_).empty();
        return h;
    }

    /// The end of its range at which the answer is the better one with all others well.
    End kinder_end(const study::OpenFact& fact) const {
        study::Corner corner;
        corner.all = End::better;
        corner.except = {{fact.pointer, End::low}};
        const Solution low = solver_.at(corner);
        corner.except.back().second = End::high;
        const Solution high = solver_.at(corner);
        if (low.sound() != high.sound()) return low.sound() ? End::low : End::high;
        return low.sound() && low.total < high.total ? End::low : End::high;
    }

    void alone(Hanging& h) const {
        const Looked at{h.fact, {}, values_of(h.fact, rows_)};
        const study::Corner kinder = corner_in(at, h.fact.low, h.fact.high, End::better);
        const Solution& stands = solver_.as_it_stands();
        const Solution may_be = solver_.may_be(kinder, h.fact.pointer);
        const bool same = settled(solver_, stands, may_be, kinder);
        if (same && (!stands.sound() || cost_alike(kinder, stands))) return;
        h.pieces = pieces_over(solver_, at);
        h.effect = effect_of(h.pieces);
        if (h.effect == Effect::none) h.pieces.clear();
        h.opens = !stands.sound() && any_piece(h.pieces, true);
        if (stands.sound() && !h.pieces.empty()) {
            h.saves = std::max(0.0, stands.total - least_total(h.pieces));
        }
    }

    bool cost_alike(const study::Corner& kinder, const Solution& sure) const {
        return std::abs(solver_.price_at(kinder, sure) - sure.total) < no_money;
    }

    /// All others may be known to be well: does it matter then?
    void with_others_well(Hanging& h) const {
        if (solver_.open().size() < 2) return;
        Looked at{h.fact, {}, values_of(h.fact, rows_)};
        for (const auto& [pointer, end] : well_.except) {
            if (pointer != h.fact.pointer) at.others.except.emplace_back(pointer, end);
        }
        const study::Corner kinder = corner_in(at, h.fact.low, h.fact.high, End::better);
        const Solution sure = solver_.at(corner_in(at, h.fact.low, h.fact.high, End::worse));
        const bool same = settled(solver_, sure, solver_.may_be(kinder, h.fact.pointer), kinder);
        if (same && (!sure.sound() || cost_alike(kinder, sure))) return;
        const std::vector<Piece> pieces = pieces_over(solver_, at);
        if (effect_of(pieces) <= h.effect) return;
        h.effect = effect_of(pieces);
        h.together = true;
        h.pieces = pieces;
        h.closes = any_piece(pieces, false);
        if (!h.closes) h.saves_with = dearest_total(pieces) - least_total(pieces);
    }

    /// Facts that may be looked at in one: where a solution is dear, and no figure of a fact is
    /// better than its better end.
    std::vector<bool> may_be_grouped() const {
        std::vector<bool> grouped;
        for (const study::OpenFact& fact : solver_.open()) {
            grouped.push_back(solver_.dear() && !solve::ends_work_against(fact.pointer));
        }
        return grouped;
    }

    static bool alike(const Solution& a, const Solution& b) {
        return a.sound() == b.sound() && std::abs(a.total - b.total) < no_money;
    }

    /// The corner with all facts of the group read so, all others as `others` says.
    study::Corner with(const Group& group, End end, const study::Corner& others) const {
        study::Corner corner;
        corner.all = others.all;
        for (const std::size_t i : group)
            corner.except.emplace_back(solver_.open()[i].pointer, end);
        corner.except.insert(corner.except.end(), others.except.begin(), others.except.end());
        return corner;
    }

    /// At their better end together they bring nothing: what some of them bring, all bring.
    bool alike_when_well(const Group& group, const Solution& sure,
                         const study::Corner& others) const {
        return alike(sure, solver_.at(with(group, End::better, others)));
    }

    bool alone_alike(const Group& group) const {
        return alike_when_well(group, solver_.as_it_stands(), {});
    }

    bool well_alike(const Group& group) const {
        return alike_when_well(group, solver_.at(with(group, End::worse, well_)), well_);
    }

    /// Which end of its range each stands at makes no difference, all others at their better.
    bool ends_alike(const Group& group) const {
        study::Corner better;
        better.all = End::better;
        return alike(solver_.at(with(group, End::low, better)), solver_.at(better)) &&
               alike(solver_.at(with(group, End::high, better)), solver_.at(better));
    }

    /// Facts which, well themselves, are enough for this one to matter.
    std::vector<std::string> partners(const study::OpenFact& fact,
                                      const std::vector<Hanging>& all) const {
        std::vector<bool> tried;
        for (const Hanging& other : all) {
            tried.push_back(other.effect != Effect::none && other.fact.pointer != fact.pointer);
        }
        const auto none_of = [&](const Group& group) {
            study::Corner corner = with(group, End::better, {});
            corner.except.emplace_back(fact.pointer, End::better);
            return alike(solver_.as_it_stands(), solver_.at(corner));
        };
        std::vector<bool> grouped = may_be_grouped();
        const bool itself = !solve::ends_work_against(fact.pointer);
        for (std::size_t i = 0; i < all.size(); ++i) grouped[i] = grouped[i] && tried[i] && itself;
        const std::vector<bool> idle = idle_among(grouped, none_of);
        std::vector<std::string> found;
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (tried[i] && !idle[i] && is_partner(fact, all[i].fact)) {
                found.push_back(all[i].fact.pointer);
            }
        }
        return found;
    }

    bool is_partner(const study::OpenFact& fact, const study::OpenFact& other) const {
        study::Corner corner;
        corner.except = {{other.pointer, End::better}};
        const Solution without = solver_.at(corner);
        corner.except.emplace_back(fact.pointer, End::better);
        return !settled(solver_, without, solver_.at(corner), corner);
    }

    const Solver& solver_;
    const std::vector<tables::FindOut>& rows_;
    study::Corner well_;  ///< every fact at the end that is kinder with all others well
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
        case Effect::unlooked:
            return "not looked at";
    }
    return "";
}

std::vector<Hanging> hanging_on(const Solver& solver, const std::vector<tables::FindOut>& rows) {
    return Looking(solver, rows).all();
}

}  // namespace toft::unknown
