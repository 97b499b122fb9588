#pragma once
// Outbuildings with circuits, looked at as the guard looks at them.

#include "guard/chain.h"
#include "guard/dark.h"
#include "study/selectivity.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <gtest/gtest.h>

#include <string>
#include <vector>

namespace toft::guard {

using support::measured;

inline site::Circuit circuit(site::CircuitKind kind, const char* name = "a circuit") {
    site::Circuit c;
    c.kind = kind;
    c.name = name;
    c.method = site::LegMethod::clipped;
    return c;
}

/// The plain job with these circuits in its shed; nothing about the building is left open.
inline site::Job job_with(std::vector<site::Circuit> circuits) {
    site::Job job = support::plain_job();
    job.buildings[1].circuits = std::move(circuits);
    job.buildings[1].use = site::Use::shed;
    job.buildings[1].spread_of_fire_risk = site::Answer::no;
    job.buildings[1].livestock = site::Answer::no;
    return job;
}

inline View view(const site::Job& job, bool own_electrode = false) {
    return {&job, &job.buildings[1], &support::catalogue(), 1, own_electrode, false, {}, true};
}

/// A 32 A fuse on the tails.
inline study::RunScheme on_tails() {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour, support::fuse(32));
    s.fed_from = site::FedFrom::tails;
    return s;
}

/// A 32 A breaker in a spare way of the house's board.
inline study::RunScheme in_the_board() {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour,
                             support::breaker("B", 32));
    s.fed_from = site::FedFrom::spare_way;
    return s;
}

inline study::RunScheme by_rcbo() {
    auto s = support::scheme(support::cable(2, 10), study::Protective::armour,
                             support::device("BS EN 61009", "B", 32));
    s.fed_from = site::FedFrom::tails;
    return s;
}

/// With the delayed 100 mA device of the tables at the head.
inline study::RunScheme behind_delayed(study::RunScheme s) {
    s.rcd = &support::catalogue().run_rcds.front();
    return s;
}

inline Darkness darkness(const site::Job& job, const study::RunScheme& scheme,
                         Amperes behind = amperes(0)) {
    const auto setting = support::prepared(job);
    const View v = view_of(setting, scheme);
    const Chain chain = chain_of(v, scheme, behind);
    Silent silent;
    study::Figures<Silent> figures;
    study::work_out(silent, setting, scheme, study::Stage::circuits, figures);
    return darkness_of({v, scheme, chain, fault_sizes(figures), setting.ib,
                        study::circuit_devices(setting, figures)});
}

/// How dark the part of that name goes in the event of that name.
inline Certainty dark(const Darkness& all, const std::string& event, const std::string& part) {
    for (const Event& e : all.events) {
        if (e.name != event) continue;
        for (std::size_t i = 0; i < all.parts.size(); ++i) {
            if (all.parts[i].name == part) return e.dark[i];
        }
    }
    ADD_FAILURE() << event << " / " << part << " is not in the table";
    return Certainty::no;
}

/// Whether the device at that station opens.
inline Certainty opens(const Darkness& all, const std::string& event, Station station) {
    for (const Event& e : all.events) {
        if (e.name != event) continue;
        for (std::size_t i = 0; i < all.openers.size(); ++i) {
            if (all.openers[i].station == station) return e.opens[i];
        }
    }
    ADD_FAILURE() << event << " has no such device";
    return Certainty::no;
}

}  // namespace toft::guard
