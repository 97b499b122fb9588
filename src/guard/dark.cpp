#include "guard/dark.h"

#include "guard/dark_parts.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::guard {

const char* certainty_word(Certainty certainty) {
    switch (certainty) {
        case Certainty::no:
            return "no";
        case Certainty::possibly:
            return "possibly";
        case Certainty::surely:
            return "surely";
    }
    return "";
}

const char* trouble_word(Trouble trouble) {
    switch (trouble) {
        case Trouble::weak_earth:
            return "weak earth fault on a circuit";
        case Trouble::solid_earth:
            return "solid earth fault on a circuit";
        case Trouble::overload:
            return "overload of a circuit";
        case Trouble::short_circuit:
            return "short circuit on a circuit";
        case Trouble::run_weak:
            return "weak earth fault on the run";
        case Trouble::run_earth:
            return "solid earth fault on the run";
        case Trouble::run_short:
            return "short circuit on the run";
        case Trouble::house_weak:
            return "weak earth fault in the house";
        case Trouble::loss:
            return "loss of the supply";
    }
    return "";
}

FaultSizes fault_sizes(const study::Figures<Silent>& f) {
    return {std::max({f.ln_far, f.lll_far, f.ll_far}), f.le_far,
            std::max({f.ln_near, f.lll_near, f.ll_near}), f.le_near};
}

namespace {

/// A circuit's name in a table of faults; one that stands for all is any of them.
std::string name_of(const View& view, std::size_t i) {
    return view.building->circuits.empty() ? "a circuit of the building" : circuit_name(view, i);
}

std::string head_name(const study::RunScheme& scheme) {
    const char* what = scheme.device->residual ? "RCBO"
                       : scheme.device->fuse() ? "fuse"
                                               : "breaker";
    return fmt::format("the {} at the head of the run", what);
}

std::vector<Opener> openers_of(const DarkCase& c) {
    std::vector<Opener> all{{Station::service, 0, "the service fuse"}};
    if (c.chain.at(Post::house)) {
        all.push_back({Station::house_rcd, 0, post_words(Post::house)});
    }
    all.push_back({Station::head, 0, head_name(c.scheme)});
    if (c.scheme.rcd) all.push_back({Station::head_rcd, 0, post_words(Post::head)});
    for (std::size_t i = 0; i < circuit_count(c.view); ++i) {
        all.push_back({Station::circuit, i, "the breaker of " + name_of(c.view, i)});
    }
    return all;
}

std::vector<Part> parts_of(const DarkCase& c) {
    std::vector<Part> all;
    for (std::size_t i = 0; i < circuit_count(c.view); ++i) {
        all.push_back({false, false, i, name_of(c.view, i)});
    }
    if (c.chain.at(Post::house)) {
        all.push_back({true, true, 0, "house: circuits behind the same RCD"});
        all.push_back({true, false, 0, "house: the rest"});
    } else {
        all.push_back({true, false, 0, "house"});
    }
    return all;
}

bool feeds(const Opener& opener, const Part& part) {
    switch (opener.station) {
        case Station::service:
            return true;
        case Station::house_rcd:
            return !part.house || part.behind_rcd;
        case Station::head:
        case Station::head_rcd:
            return !part.house;
        case Station::circuit:
            return !part.house && part.circuit == opener.circuit;
    }
    return true;
}

/// Some device in front of the building is sure to open, whichever acts first.
bool building_lost(const DarkCase& c, Trouble trouble) {
    switch (trouble) {
        case Trouble::run_earth:
        case Trouble::run_short:
        case Trouble::loss:
            return true;
        case Trouble::run_weak: {
            const Rcd* house = c.chain.at(Post::house);
            return c.chain.at(Post::head) || (house && house->there_known);
        }
        default:
            return false;
    }
}

/// The RCD of the house opens by a weak fault on the run whatever else does: what stands behind it
/// waits.
bool first_anyway(const DarkCase& c, Trouble trouble, const Opener& opener) {
    if (trouble != Trouble::run_weak || opener.station != Station::house_rcd) return false;
    const Rcd* head = c.chain.at(Post::head);
    return !head || head->delayed;
}

/// Where more than one device may open, none is sure to: another may be first.
void doubt(const DarkCase& c, const Darkness& all, Event& event) {
    const auto closed = std::count(event.opens.begin(), event.opens.end(), Certainty::no);
    if (event.opens.size() - static_cast<std::size_t>(closed) < 2) return;
    for (std::size_t i = 0; i < event.opens.size(); ++i) {
        if (event.opens[i] == Certainty::surely &&
            !first_anyway(c, event.trouble, all.openers[i])) {
            event.opens[i] = Certainty::possibly;
        }
    }
}

/// A part is as dark as the surest device that feeds it and opens; the circuit of a fault and, by a
/// fault on the run, the building are dark whichever device is first.
void darken(const DarkCase& c, const Darkness& all, Event& event) {
    const bool lost = building_lost(c, event.trouble);
    for (const Part& part : all.parts) {
        const bool own = on_circuit(event.trouble) && !part.house && part.circuit == event.circuit;
        const bool surely = own || event.trouble == Trouble::loss || (lost && !part.house);
        Certainty dark = surely ? Certainty::surely : Certainty::no;
        for (std::size_t i = 0; i < all.openers.size(); ++i) {
            if (feeds(all.openers[i], part)) dark = std::max(dark, event.opens[i]);
        }
        event.dark.push_back(dark);
    }
}

std::string event_name(const View& view, Trouble trouble, std::size_t circuit) {
    switch (trouble) {
        case Trouble::weak_earth:
            return "weak earth fault on " + name_of(view, circuit);
        case Trouble::solid_earth:
            return "solid earth fault on " + name_of(view, circuit);
        case Trouble::overload:
            return "overload of " + name_of(view, circuit);
        case Trouble::short_circuit:
            return "short circuit on " + name_of(view, circuit);
        default:
            return trouble_word(trouble);
    }
}

void add_event(const DarkCase& c, Trouble trouble, std::size_t circuit, Darkness& all) {
    Event event;
    event.trouble = trouble;
    event.circuit = circuit;
    event.name = event_name(c.view, trouble, circuit);
    for (const Opener& opener : all.openers) {
        event.opens.push_back(opening(c, trouble, circuit, opener));
    }
    doubt(c, all, event);
    darken(c, all, event);
    all.events.push_back(std::move(event));
}

}  // namespace

Darkness darkness_of(const DarkCase& c) {
    Darkness all;
    all.openers = openers_of(c);
    all.parts = parts_of(c);
    for (std::size_t i = 0; i < circuit_count(c.view); ++i) {
        for (const Trouble t : {Trouble::weak_earth, Trouble::solid_earth, Trouble::overload,
                                Trouble::short_circuit}) {
            add_event(c, t, i, all);
        }
    }
    for (const Trouble t : {Trouble::run_weak, Trouble::run_earth, Trouble::run_short}) {
        add_event(c, t, 0, all);
    }
    if (c.chain.at(Post::house)) add_event(c, Trouble::house_weak, 0, all);
    add_event(c, Trouble::loss, 0, all);
    return all;
}

std::vector<std::size_t> lost_with_others(const Darkness& darkness) {
    std::vector<std::size_t> lost;
    for (std::size_t p = 0; p < darkness.parts.size(); ++p) {
        const Part& part = darkness.parts[p];
        if (part.house) continue;
        for (const Event& event : darkness.events) {
            if (event.trouble != Trouble::weak_earth || event.circuit == part.circuit) continue;
            if (event.dark[p] == Certainty::no) continue;
            lost.push_back(part.circuit);
            break;
        }
    }
    return lost;
}

}  // namespace toft::guard
