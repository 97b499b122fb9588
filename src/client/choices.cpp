#include "client/choices.h"

#include <fmt/format.h>

#include <algorithm>
#include <functional>

namespace toft::paper {

namespace {

using answer::SchemeAnswer;

class Chooser {
public:
    explicit Chooser(const Subject& s) : s_(s) {
        const auto sound = [](const SchemeAnswer& one) { return one.conditional_on.empty(); };
        any_sound_ = std::any_of(all().begin(), all().end(), sound);
    }

    std::vector<Choice> choose() {
        if (all().empty()) return {};
        add(cheapest([](const SchemeAnswer&) { return true; }), "the cheapest");
        if (s_.scheme < all().size()) add(s_.scheme, "the one that the other papers describe");
        add_other_path();
        add_headroom();
        add_hanging();
        return std::move(chosen_);
    }

private:
    static constexpr std::size_t none = static_cast<std::size_t>(-1);
    using Wanted = std::function<bool(const SchemeAnswer&)>;

    const std::vector<SchemeAnswer>& all() const { return s_.answer.schemes; }
    const SchemeAnswer& first() const { return all()[chosen_.front().scheme]; }

    /// Sound, or hanging on open facts where none is sound.
    bool offered(const SchemeAnswer& one) const {
        return !any_sound_ || one.conditional_on.empty();
    }

    /// Of two at one price the more dependable, then that with more headroom.
    static bool before(const SchemeAnswer& a, const SchemeAnswer& b) {
        if (a.price.total != b.price.total) return a.price.total < b.price.total;
        if (a.dependability != b.dependability) return a.dependability > b.dependability;
        return a.headroom > b.headroom;
    }

    std::size_t cheapest_of_all(const Wanted& wanted) const {
        std::size_t best = none;
        for (std::size_t i = 0; i < all().size(); ++i) {
            if (wanted(all()[i]) && (best == none || before(all()[i], all()[best]))) best = i;
        }
        return best;
    }

    std::size_t cheapest(const Wanted& wanted) const {
        return cheapest_of_all(
            [&](const SchemeAnswer& one) { return offered(one) && wanted(one); });
    }

    void add(std::size_t scheme, std::string reason) {
        if (scheme == none || chosen_.size() == most_choices) return;
        for (const Choice& one : chosen_) {
            if (one.scheme == scheme) return;
        }
        chosen_.push_back({scheme, std::move(reason)});
    }

    bool any_chosen(const Wanted& wanted) const {
        return std::any_of(chosen_.begin() + 1, chosen_.end(),
                           [&](const Choice& one) { return wanted(all()[one.scheme]); });
    }

    void add_other_path() {
        const Wanted other = [&](const SchemeAnswer& one) {
            return !earthed_differently(first(), one).empty();
        };
        const Wanted sturdier = [&](const SchemeAnswer& one) {
            return one.dependability > first().dependability;
        };
        if (any_chosen(other) || any_chosen(sturdier)) return;
        const std::size_t differs = cheapest(other);
        add(differs, "another way of earthing");
        if (differs == none) add(cheapest(sturdier), "a more dependable earth");
    }

    void add_headroom() {
        const double worth = s_.catalogue.levers.worth.more_headroom.value;
        const double dearest =
            first().price.total * (1 + s_.catalogue.handover.terms.choice_dearer.value / 100);
        const Wanted open = [&](const SchemeAnswer& one) {
            return one.price.total <= dearest && one.dependability >= first().dependability &&
                   one.headroom >= first().headroom + worth;
        };
        double most = 0;
        for (const SchemeAnswer& one : all()) {
            if (offered(one) && open(one)) most = std::max(most, one.headroom);
        }
        const Wanted near = [&](const SchemeAnswer& one) {
            return open(one) && one.headroom > most - worth;
        };
        if (!any_chosen(near)) add(cheapest(near), "more room for later");
    }

    void add_hanging() {
        if (!any_sound_) return;
        const double saving = s_.catalogue.levers.worth.least_saving.value;
        add(cheapest_of_all([&](const SchemeAnswer& one) {
                return !one.conditional_on.empty() &&
                       one.price.total <= first().price.total - saving;
            }),
            "cheaper, if what is still open turns out well");
    }

    const Subject& s_;
    bool any_sound_ = false;
    std::vector<Choice> chosen_;
};

/// How the building of that id is earthed there; empty where the scheme does not feed it.
std::string earthing_in(const SchemeAnswer& scheme, const std::string& building) {
    if (scheme.building.id == building) return scheme.building.earthing;
    for (const SchemeAnswer& part : scheme.further) {
        if (part.building.id == building) return part.building.earthing;
    }
    return "";
}

}  // namespace

std::vector<std::string> earthed_differently(const SchemeAnswer& a, const SchemeAnswer& b) {
    std::vector<std::string> differ;
    const auto look_at = [&](const SchemeAnswer& part) {
        const std::string there = earthing_in(b, part.building.id);
        if (!there.empty() && there != part.building.earthing) differ.push_back(part.building.id);
    };
    look_at(a);
    for (const SchemeAnswer& part : a.further) look_at(part);
    return differ;
}

std::vector<Choice> choices_of(const Subject& subject) { return Chooser(subject).choose(); }

}  // namespace toft::paper
