#include "published/guard_methods.h"

#include "guard/chain.h"
#include "guard/need.h"
#include "support/catalogue.h"
#include "support/jobs.h"

#include <algorithm>
#include <stdexcept>

namespace toft::published {

namespace {

using support::PublishedCase;

template <class E>
E named(const PublishedCase& c, const std::string& key) {
    std::string wanted = c.word(key);
    std::replace(wanted.begin(), wanted.end(), '-', ' ');
    const auto& words = site::words<E>();
    const auto found = std::find(words.begin(), words.end(), wanted);
    if (found == words.end()) throw std::runtime_error("no such word: " + wanted);
    return static_cast<E>(found - words.begin());
}

guard::View view_of(const site::Job& job) {
    guard::View view;
    view.job = &job;
    view.building = &job.buildings[1];
    view.catalogue = &support::catalogue();
    return view;
}

}  // namespace

Results residual_need(const PublishedCase& c) {
    site::Job job = support::plain_job();
    job.buildings[1].use = named<site::Use>(c, "use");
    site::Circuit circuit;
    circuit.kind = named<site::CircuitKind>(c, "kind");
    circuit.method = site::LegMethod::clipped;
    if (c.numbers.count("In")) {
        circuit.device = site::NamedDevice{"BS EN 60898", "C", amperes(c.number("In"))};
    }
    job.buildings[1].circuits = {circuit};
    return {{"IdN", guard::need_of(view_of(job), circuit).asked.number()}};
}

Results residual_pair(const PublishedCase& c) {
    const site::Job job = support::plain_job();
    guard::Rcd front;
    front.sensitivity = amperes(c.number("IdN.front"));
    front.delayed = c.word("front") == "delayed";
    guard::Rcd own;
    own.sensitivity = amperes(c.number("IdN.own"));
    return {{"apart", guard::selective(view_of(job), front, own) ? 1.0 : 0.0},
            {"ratio", front.sensitivity / own.sensitivity}};
}

}  // namespace toft::published
