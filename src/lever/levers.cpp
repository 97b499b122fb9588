#include "lever/levers.h"

#include "lever/ideas.h"
#include "lever/words.h"
#include "site/validate.h"
#include "solve/solve.h"

#include <algorithm>
#include <limits>
#include <optional>
#include <utility>

namespace toft::lever {

namespace {

constexpr const char* in_the_price = "in the price";

/// Less is told apart by nothing but rounding.
constexpr double no_money = 1e-6;
constexpr double no_headroom = 1e-9;

double with_tax(const price::Book& book, double net) {
    return net * (1 + book.amount(price::Item::vat_percent) / 100);
}

void cost_of(const price::Book& book, const tables::LeverRow& row, std::size_t count,
             Lever& lever) {
    if (row.cost == in_the_price) {
        lever.costs = Cost::in_the_price;
        lever.cost = 0.0;
        return;
    }
    bool found = false;
    const price::Item item = price::item_of(row.cost, found);
    lever.costs = found ? Cost::of_the_book : Cost::not_priced;
    if (found) lever.cost = with_tax(book, book.amount(item)) * static_cast<double>(count);
}

/// Whether the scheme that the change leads to costs no more and has no less headroom without it.
bool does_as_well(const solve::Means& means, const site::Job& job, const Lever& lever) {
    const solve::Solution same = solve::solve_as(means, job, lever.after.schemes);
    return same.sound() && same.total <= lever.after.total + no_money &&
           same.headroom >= lever.after.headroom - no_headroom;
}

/// What opens a way, then what is priced, then the rest; the more it brings the earlier.
bool pulled_before(const Lever& a, const Lever& b) {
    if (a.opens != b.opens) return a.opens;
    if (a.net().has_value() != b.net().has_value()) return a.net().has_value();
    if (a.opens) {
        const double none = std::numeric_limits<double>::infinity();
        return a.after.total + a.cost.value_or(none) < b.after.total + b.cost.value_or(none);
    }
    return a.net().value_or(a.saves) > b.net().value_or(b.saves);
}

double brought(const Lever& lever) { return lever.net().value_or(lever.saves); }

/// One kind of change at several places.
struct Kind {
    std::vector<Change> changes;
    std::vector<Lever> levers;  ///< of each
};

class Weighing {
public:
    Weighing(const solve::Means& means, const site::Job& job, const Told& told)
        : means_(means), job_(job), told_(told) {}

    Weighed all() {
        out_.before = solve::solve(means_, job_);
        out_.proved = out_.before.proved;
        std::vector<Kind> kinds;
        for (Change& change : all_changes_of(means_.catalogue, job_)) {
            if (out_.stopped) break;
            if (!site::validate(change.job).empty()) continue;
            ++out_.tried;
            Lever lever = weighed_in(change);
            if (change.runs.empty() || job_.runs.size() == 1) {
                say(std::move(lever));
                continue;
            }
            Kind& kind = kind_of(kinds, change.key);
            kind.changes.push_back(std::move(change));
            kind.levers.push_back(std::move(lever));
        }
        for (Kind& kind : kinds) say_best(kind);
        std::stable_sort(out_.levers.begin(), out_.levers.end(), pulled_before);
        return std::move(out_);
    }

private:
    static Kind& kind_of(std::vector<Kind>& kinds, const std::string& key) {
        for (Kind& kind : kinds) {
            if (kind.changes.front().key == key) return kind;
        }
        return kinds.emplace_back();
    }

    Lever weighed_in(const Change& change) {
        Lever lever = weighed(means_, job_, out_.before, change);
        out_.proved = out_.proved && lever.after.proved;
        ++solved_;
        if (told_ && !told_(solved_)) out_.stopped = true;
        return lever;
    }

    bool worth(const Lever& lever) const {
        return worth_saying(means_.catalogue.levers.worth, out_.before, lever);
    }

    void say(Lever lever) {
        if (worth(lever)) out_.levers.push_back(std::move(lever));
    }

    /// Those places together that bring the most, where that is more than any alone; else each.
    void say_best(Kind& kind) {
        std::vector<std::size_t> every(kind.changes.size());
        std::vector<std::size_t> paying;
        for (std::size_t i = 0; i < every.size(); ++i) {
            every[i] = i;
            if (worth(kind.levers[i]) && brought(kind.levers[i]) > 0) paying.push_back(i);
        }
        std::optional<Lever> best = together(kind, every);
        if (paying.size() < every.size()) {
            const std::optional<Lever> some = together(kind, paying);
            if (some && (!best || better(*some, *best))) best = some;
        }
        if (best && worth(*best) && beats_each(*best, kind)) {
            out_.levers.push_back(std::move(*best));
            return;
        }
        for (Lever& lever : kind.levers) say(std::move(lever));
    }

    std::optional<Lever> together(const Kind& kind, const std::vector<std::size_t>& places) {
        if (places.size() < 2 || out_.stopped) return std::nullopt;
        std::vector<const Change*> parts;
        for (const std::size_t i : places) parts.push_back(&kind.changes[i]);
        const Change change = made_together(means_.catalogue, job_, parts);
        if (!site::validate(change.job).empty()) return std::nullopt;
        Lever lever = weighed_in(change);
        for (const std::size_t i : places) {
            lever.singly.push_back({kind.changes[i].runs.front(), brought(kind.levers[i])});
        }
        return lever;
    }

    static bool better(const Lever& a, const Lever& b) {
        if (a.after.sound() != b.after.sound()) return a.after.sound();
        if (a.opens) return a.after.total < b.after.total;
        return brought(a) > brought(b) + no_money;
    }

    bool beats_each(const Lever& lever, const Kind& kind) const {
        const double least = means_.catalogue.levers.worth.least_saving.value;
        return std::all_of(kind.levers.begin(), kind.levers.end(), [&](const Lever& one) {
            if (!worth(one)) return true;
            if (lever.opens) return lever.after.total + least <= one.after.total;
            return brought(lever) >= brought(one) + least;
        });
    }

    const solve::Means& means_;
    const site::Job& job_;
    const Told& told_;
    long solved_ = 0;
    Weighed out_;
};

}  // namespace

std::optional<double> Lever::net() const {
    if (!cost) return std::nullopt;
    return saves - *cost;
}

Lever weighed(const solve::Means& means, const site::Job& job, const solve::Solution& before,
              const Change& change) {
    Lever lever;
    lever.key = change.key;
    lever.job = change.job;
    lever.runs = change.runs;
    if (const tables::LeverRow* row = tables::find_lever(means.catalogue.levers, change.key)) {
        lever.words = words_of(*row, job, change);
        cost_of(means.book, *row, change.count, lever);
    }
    lever.after = solve::solve(means, change.job);
    lever.opens = lever.after.sound() && !before.sound();
    if (!lever.after.sound() || !before.sound()) return lever;
    lever.saves = before.total - lever.after.total;
    if (!change.widens && lever.saves <= no_money) lever.already = does_as_well(means, job, lever);
    lever.headroom = lever.after.headroom - before.headroom;
    lever.dependability = lever.after.dependability - before.dependability;
    return lever;
}

bool worth_saying(const tables::LeverWorth& worth, const solve::Solution& before,
                  const Lever& lever) {
    if (!lever.after.sound() || lever.already) return false;
    if (lever.opens) return true;
    const double brings = lever.net().value_or(lever.saves);
    if (brings >= worth.least_saving.value) return true;
    const bool better = lever.headroom >= worth.more_headroom.value || lever.dependability > 0;
    return better && -brings <= before.total * worth.small_cost.value / 100;
}

Weighed weigh(const solve::Means& means, const site::Job& job, const Told& told) {
    return Weighing(means, job, told).all();
}

}  // namespace toft::lever
