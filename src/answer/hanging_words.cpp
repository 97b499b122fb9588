#include "answer/hanging_words.h"

#include "base/text.h"
#include "unknown/pieces.h"

#include <fmt/format.h>

#include <cmath>

namespace toft::answer {

namespace {

/// Sums of money that differ by less are the same in words.
constexpr double no_money = 0.5;

std::string money(double pounds) { return "£" + fixed(pounds, 0); }

std::string figure(const UnknownAnswer& fact, double value) {
    const std::string unit = fact.unit.empty() ? "" : " " + fact.unit;
    return significant(value, 4) + unit;
}

/// Where one piece ends and the next begins; the place between them in few digits.
double switch_at(const PieceAnswer& before, const PieceAnswer& after) {
    return unknown::shortest_between(before.high, after.low);
}

/// The values that a piece holds, of those that there are.
std::string stepped_words(const UnknownAnswer& fact, std::size_t i) {
    const PieceAnswer& p = fact.pieces[i];
    if (i == 0) return "up to " + figure(fact, p.high);
    if (i + 1 == fact.pieces.size()) return "from " + figure(fact, p.low);
    return fmt::format("from {} to {}", significant(p.low, 4), figure(fact, p.high));
}

bool single(const PieceAnswer& piece) { return piece.low == piece.high; }

/// "up to 0.62 ohm", "from 0.62 to 0.7 ohm", "above", "at 10 mm2", "if yes".
std::string where(const UnknownAnswer& fact, std::size_t i) {
    const PieceAnswer& p = fact.pieces[i];
    if (fact.unit == "no or yes") return p.high > 0 ? "if yes" : "if no";
    if (single(p)) return "at " + figure(fact, p.low);
    const bool first = i == 0;
    const bool last = i + 1 == fact.pieces.size();
    if (first && last) return "throughout";
    if (fact.stepped) return stepped_words(fact, i);
    const double high = last ? p.high : switch_at(p, fact.pieces[i + 1]);
    if (first) return "up to " + figure(fact, high);
    const double low = switch_at(fact.pieces[i - 1], p);
    if (last) return "above " + figure(fact, low);
    return fmt::format("from {} to {}", significant(low, 4), figure(fact, high));
}

std::string price_words(const PieceAnswer& p, const PieceAnswer* first) {
    if (std::abs(p.total_high - p.total_low) >= no_money) {
        return fmt::format("{} to {}", money(std::min(p.total_low, p.total_high)),
                           money(std::max(p.total_low, p.total_high)));
    }
    if (!first || !first->sound || std::abs(first->total_high - first->total_low) >= no_money) {
        return money(p.total_low);
    }
    const double more = p.total_low - first->total_low;
    if (std::abs(more) < no_money) return "at the same price";
    return money(std::abs(more)) + (more > 0 ? " more" : " less");
}

/// Two sound answers with nothing but money between them need no words for either.
std::string piece_words(const UnknownAnswer& fact, std::size_t i) {
    const PieceAnswer& p = fact.pieces[i];
    if (!p.sound) return where(fact, i) + ": nothing is sound";
    const PieceAnswer* first = i > 0 ? &fact.pieces.front() : nullptr;
    return fmt::format("{}: {}, {}", where(fact, i), p.words, price_words(p, first));
}

}  // namespace

std::string hanging_words(const UnknownAnswer& fact) {
    if (fact.pieces.empty()) return "";
    std::string text = fact.together ? "once other facts are known to be well: " : "";
    for (std::size_t i = 0; i < fact.pieces.size(); ++i) {
        text += (i > 0 ? "; " : "") + piece_words(fact, i);
    }
    return text;
}

}  // namespace toft::answer
