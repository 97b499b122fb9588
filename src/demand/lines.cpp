#include "demand/lines.h"

#include "base/order.h"


namespace toft::demand {

template <class L>
std::size_t least_loaded(const Lines<L>& lines, int count) {
    std::size_t least = 0;
    for (std::size_t i = 1; i < static_cast<std::size_t>(count); ++i) {
        if (plain(lines.each[i]) < plain(lines.each[least])) least = i;
    }
    return least;
}

template <class L>
std::size_t most_loaded(const Lines<L>& lines, int count) {
    std::size_t most = 0;
    for (std::size_t i = 1; i < static_cast<std::size_t>(count); ++i) {
        if (plain(lines.each[i]) > plain(lines.each[most])) most = i;
    }
    return most;
}

std::vector<int> spread(const std::vector<Spread>& circuits, int phases) {
    std::vector<int> line(circuits.size(), phases == 1 ? 0 : every_line);
    if (phases == 1) return line;
    Lines<Silent> lines;
    std::vector<std::size_t> singles;
    for (std::size_t i = 0; i < circuits.size(); ++i) {
        if (circuits[i].phases == 1) singles.push_back(i);
    }
    put_in_order(singles, [&](std::size_t a, std::size_t b) {
        if (circuits[a].later != circuits[b].later) return circuits[b].later;
        return circuits[b].full < circuits[a].full;
    });
    for (const std::size_t i : singles) {
        const std::size_t to = least_loaded(lines, 3);
        line[i] = static_cast<int>(to);
        lines.each[to] += circuits[i].full;
    }
    return line;
}

template <class L>
ValueIn<L, Amperes> neutral_current(L& ledger, const Lines<L>& lines, const Lines<L>& third,
                                    const char* of) {
    const auto& [a, b, c] = lines.each;
    const auto apart = root((squared(a - b) + squared(b - c) + squared(c - a)) / 2.0);
    const Name name{"I.N", "current of the neutral, lines at 120 degrees", 0, "", "", of};
    const auto& [d, e, f] = third.each;
    if (!(plain(d) + plain(e) + plain(f) > amperes(0))) return ledger.let(name, apart);
    const auto first =
        ledger.let({"I.N1", "neutral: what the lines differ by", 0, "", "", of}, apart);
    const auto together = ledger.let(
        {"I.N3", "neutral: third harmonics of the three lines", 0, "", "", of}, d + e + f);
    return ledger.let(name, root(squared(first) + squared(together)));
}

template std::size_t least_loaded(const Lines<Silent>&, int);
template std::size_t least_loaded(const Lines<Recording>&, int);
template std::size_t most_loaded(const Lines<Silent>&, int);
template std::size_t most_loaded(const Lines<Recording>&, int);
template Amperes neutral_current(Silent&, const Lines<Silent>&, const Lines<Silent>&, const char*);
template Traced<Amperes> neutral_current(Recording&, const Lines<Recording>&,
                                         const Lines<Recording>&, const char*);

}  // namespace toft::demand
