#include "unknown/pieces.h"

#include <cmath>

namespace toft::unknown {

namespace {

using solve::Solution;
using solve::Solver;
using study::End;

/// How often a range is halved at the most, and how often a gap between pieces after that: a
/// figure alone takes one solution, a part of the range several.
struct Halvings {
    int of_range = 7;
    int of_gap = 6;
};
constexpr Halvings usual;
constexpr Halvings where_dear{5, 8};

/// Sums of money that differ by less are told apart by nothing but lines rounded to the penny.
constexpr double rounding = 0.05;
/// … nor does a price that goes straight leave its line by more.
constexpr double beside_line = 0.25;

bool yes_or_no(const study::OpenFact& fact) { return fact.unit == "no or yes"; }

/// Ranges over decades are halved by ratio.
double middle(double low, double high) {
    return low > 0 && high > 8 * low ? std::sqrt(low * high) : (low + high) / 2;
}

class Halving {
public:
    Halving(const Solver& solver, const Looked& at)
        : solver_(solver), at_(at), most_(solver.dear() ? where_dear : usual) {}

    std::vector<Piece> run() {
        const double low = at_.fact.low;
        const double high = at_.fact.high;
        if (yes_or_no(at_.fact)) {
            add(0, 0, at(0, 0, End::low));
            add(1, 1, at(1, 1, End::high));
        } else if (!at_.values.empty()) {
            for (const double value : at_.values) add(value, value, at(value, value, End::worse));
        } else {
            halve(low, high, 0);
            end_points(low, high);
            narrow_gaps();
        }
        return std::move(pieces_);
    }

private:
    Solution at(double low, double high, End end) const {
        return solver_.at(corner_in(at_, low, high, end));
    }

    void halve(double low, double high, int depth) {
        const Solution sure = at(low, high, End::worse);
        const study::Corner kinder = corner_in(at_, low, high, End::better);
        const Solution may_be = solver_.may_be(kinder, at_.fact.pointer);
        if (settled(solver_, sure, may_be, kinder) && steady(low, high, sure)) {
            return add(low, high, sure);
        }
        if (depth == most_.of_range) return;
        const double between = middle(low, high);
        halve(low, between, depth + 1);
        halve(between, high, depth + 1);
    }

    /// Whether the price goes straight from one end to the other. Where it goes by steps, as when a
    /// final circuit takes a thicker cable, another scheme may come first in between.
    bool steady(double low, double high, const Solution& best) const {
        if (!best.sound()) return true;
        const double mean = (total(low, best) + total(high, best)) / 2;
        return std::abs(total((low + high) / 2, best) - mean) <= beside_line;
    }

    /// Moves the ends of neighbours towards each other while the answer is theirs; what else comes
    /// first between them is a piece of its own.
    void narrow_gaps() {
        const std::vector<Piece> rough = std::move(pieces_);
        pieces_.clear();
        for (std::size_t i = 0; i < rough.size(); ++i) {
            if (i > 0) bridge(rough[i - 1].high, rough[i].low, rough[i].best, 0);
            add(rough[i].low, rough[i].high, rough[i].best);
        }
    }

    /// From the end of the last piece to `high`, where `after` comes first.
    void bridge(double low, double high, const Solution& after, int depth) {
        if (depth == most_.of_gap || solve::same_choice(pieces_.back().best, after)) return;
        const double between = middle(low, high);
        const Solution here = at(between, between, End::worse);
        bridge(low, between, here, depth + 1);
        add(between, between, here);
        bridge(between, high, after, depth + 1);
    }

    /// What holds at an end alone is a piece of its own.
    void end_points(double low, double high) {
        if (pieces_.empty() || pieces_.front().low > low) {
            const std::vector<Piece> others = std::move(pieces_);
            pieces_.clear();
            add(low, low, at(low, low, End::worse));
            for (const Piece& piece : others) add(piece.low, piece.high, piece.best);
        }
        if (pieces_.back().high < high) add(high, high, at(high, high, End::worse));
    }

    /// Takes a piece, or lets the last one grow where the answer stays.
    void add(double low, double high, const Solution& best) {
        if (!pieces_.empty() && solve::same_choice(pieces_.back().best, best)) {
            Piece& last = pieces_.back();
            last.high = high;
            last.total_high = total(high, best);
            return;
        }
        pieces_.push_back({low, high, best, total(low, best), total(high, best)});
    }

    double total(double value, const Solution& best) const {
        if (!best.sound()) return 0;
        const End end = !yes_or_no(at_.fact) ? End::worse : value > 0 ? End::high : End::low;
        return solver_.price_at(corner_in(at_, value, value, end), best);
    }

    const Solver& solver_;
    const Looked& at_;
    Halvings most_;
    std::vector<Piece> pieces_;
};

}  // namespace

study::Corner corner_in(const Looked& at, double low, double high, End end) {
    study::Corner corner = at.others;
    corner.except.emplace_back(at.fact.pointer, end);
    if (low != at.fact.low || high != at.fact.high) {
        corner.within.push_back({at.fact.pointer, low, high});
    }
    return corner;
}

bool settled(const Solver& solver, const Solution& sure, const Solution& may_be,
             const study::Corner& kinder) {
    if (solve::same_choice(sure, may_be)) return true;
    if (!sure.sound() || !may_be.sound()) return false;
    switch (solver.prefer()) {
        case site::Prefer::headroom:
            return false;
        case site::Prefer::dependability:
            if (sure.dependability < may_be.dependability) return false;
            break;
        case site::Prefer::price:
            break;
    }
    return solver.price_at(kinder, sure) <= may_be.total + rounding;
}

std::vector<Piece> pieces_over(const Solver& solver, const Looked& at) {
    return Halving(solver, at).run();
}

double shortest_between(double low, double high) {
    if (low >= high) return low;
    for (double step = std::pow(10.0, std::ceil(std::log10(high - low)) + 1); step > 0;
         step /= 10) {
        const double multiple = std::ceil(low / step - 1e-9) * step;
        if (multiple <= high) return multiple;
    }
    return low;
}

}  // namespace toft::unknown
