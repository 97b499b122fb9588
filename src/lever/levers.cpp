#include "lever/levers.h"

#include "lever/ideas.h"
#include "site/validate.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace toft::lever {

namespace {

constexpr const char* in_the_price = "in the price";

/// Less is told apart by nothing but rounding.
constexpr double no_money = 1e-6;
constexpr double no_headroom = 1e-9;

std::string said(const tables::LeverRow& row, const std::string& where) {
    std::string words = row.says;
    const std::size_t at = words.find("{}");
    if (at != std::string::npos) words.replace(at, 2, where);
    return words;
}

double with_tax(const price::Book& book, double net) {
    return net * (1 + book.amount(price::Item::vat_percent) / 100);
}

void cost_of(const price::Book& book, const tables::LeverRow& row, Lever& lever) {
    if (row.cost == in_the_price) {
        lever.costs = Cost::in_the_price;
        lever.cost = 0.0;
        return;
    }
    bool found = false;
    const price::Item item = price::item_of(row.cost, found);
    lever.costs = found ? Cost::of_the_book : Cost::not_priced;
    if (found) lever.cost = with_tax(book, book.amount(item));
}

/// Whether the scheme that the change leads to costs no more and has no less headroom without it.
bool does_as_well(const solve::Means& means, const site::Job& job, const Lever& lever) {
    const solve::Solution same = solve::solve_as(means, job, lever.after.best->scheme);
    return same.sound() && same.total() <= lever.after.total() + no_money &&
           same.best->headroom >= lever.after.best->headroom - no_headroom;
}

/// What opens a way, then what is priced, then the rest; the more it brings the earlier.
bool pulled_before(const Lever& a, const Lever& b) {
    if (a.opens != b.opens) return a.opens;
    if (a.net().has_value() != b.net().has_value()) return a.net().has_value();
    if (a.opens) {
        const double none = std::numeric_limits<double>::infinity();
        return a.after.total() + a.cost.value_or(none) < b.after.total() + b.cost.value_or(none);
    }
    return a.net().value_or(a.saves) > b.net().value_or(b.saves);
}

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
    if (const tables::LeverRow* row = tables::find_lever(means.catalogue.levers, change.key)) {
        lever.words = said(*row, change.where);
        cost_of(means.book, *row, lever);
    }
    lever.after = solve::solve(means, change.job);
    lever.opens = lever.after.sound() && !before.sound();
    if (!lever.after.sound() || !before.sound()) return lever;
    lever.saves = before.total() - lever.after.total();
    if (!change.widens && lever.saves <= no_money) lever.already = does_as_well(means, job, lever);
    lever.headroom = lever.after.best->headroom - before.best->headroom;
    lever.dependability = lever.after.best->dependability - before.best->dependability;
    return lever;
}

bool worth_saying(const tables::LeverWorth& worth, const solve::Solution& before,
                  const Lever& lever) {
    if (!lever.after.sound() || lever.already) return false;
    if (lever.opens) return true;
    const double brings = lever.net().value_or(lever.saves);
    if (brings >= worth.least_saving.value) return true;
    const bool better = lever.headroom >= worth.more_headroom.value || lever.dependability > 0;
    return better && -brings <= before.total() * worth.small_cost.value / 100;
}

Weighed weigh(const solve::Means& means, const site::Job& job) {
    Weighed all;
    all.before = solve::solve(means, job);
    for (const Change& change : all_changes({means.catalogue, job})) {
        if (!site::validate(change.job).empty()) continue;
        ++all.tried;
        Lever lever = weighed(means, job, all.before, change);
        if (worth_saying(means.catalogue.levers.worth, all.before, lever)) {
            all.levers.push_back(std::move(lever));
        }
    }
    std::stable_sort(all.levers.begin(), all.levers.end(), pulled_before);
    return all;
}

}  // namespace toft::lever
