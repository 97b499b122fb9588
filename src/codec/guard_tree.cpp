#include "codec/guard_tree.h"

#include "codec/object.h"
#include "codec/scheme.h"

namespace toft::codec {

namespace {

using guard::Certainty;

double milliamperes_of(Amperes current) { return rounded(current.number() * 1000); }

Json reasons_json(const guard::Need& need) {
    Json json = Json::array();
    for (const guard::Reason& reason : need.reasons) {
        json.push_back(object({{"why", reason.why},
                               {"sure", reason.sure},
                               {"sensitivity_ma", milliamperes_of(reason.row->sensitivity)},
                               {"basis", basis_json(&reason.row->footing)}}));
    }
    return json;
}

Json circuit_json(const answer::CircuitGuard& c) {
    const std::string instead = answer::instead_of(c.sort);
    return object({{"circuit", c.name},
                   {"fitted_ma", rounded(c.fitted_ma)},
                   {"asked_ma", c.need.asked_for() ? Json(milliamperes_of(c.need.asked)) : Json()},
                   {"reasons", reasons_json(c.need)},
                   {"type", site::word(c.sort.type)},
                   {"instead", instead.empty() ? Json() : Json(instead)},
                   {"type_sure", c.sort.sure},
                   {"type_why", c.sort.why},
                   {"type_basis", basis_json(c.sort.footing)},
                   {"leakage_ma", object({{"low", milliamperes_of(c.leakage.low)},
                                          {"high", milliamperes_of(c.leakage.high)},
                                          {"allowed", rounded(c.leakage_allowed_ma)},
                                          {"stated", c.leakage.stated}})}});
}

/// Names of what is touched, by how sure it is.
template <class Named>
Json surety_json(const std::vector<Named>& all, const std::vector<Certainty>& certainty) {
    Json json = object({{"surely", Json::array()}, {"possibly", Json::array()}});
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (certainty[i] == Certainty::no) continue;
        json[guard::certainty_word(certainty[i])].push_back(all[i].name);
    }
    return json;
}

Json event_json(const answer::GuardAnswer& guard, const guard::Event& event) {
    const bool on_circuit = guard::on_circuit(event.trouble);
    return object({{"name", event.name},
                   {"fault", guard::trouble_word(event.trouble)},
                   {"circuit", on_circuit ? Json(guard.circuits[event.circuit].name) : Json()},
                   {"opens", surety_json(guard.dark.openers, event.opens)},
                   {"dark", surety_json(guard.dark.parts, event.dark)}});
}

Json pairs_json(const std::vector<guard::Pair>& pairs) {
    Json json = Json::array();
    for (const guard::Pair& pair : pairs) {
        json.push_back(object({{"upstream", guard::post_words(pair.upstream.post)},
                               {"downstream", guard::post_words(pair.downstream.post)},
                               {"in_time", pair.time},
                               {"in_current", pair.current},
                               {"says", pair.says}}));
    }
    return json;
}

Json remarks_json(const std::vector<guard::Remark>& remarks) {
    Json json = Json::array();
    for (const guard::Remark& remark : remarks) {
        json.push_back(object({{"says", remark.says},
                               {"settled", remark.settled},
                               {"basis", basis_json(remark.footing)}}));
    }
    return json;
}

}  // namespace

Json residual_json(const answer::GuardAnswer& guard) {
    Json json = Json::array();
    for (const answer::CircuitGuard& circuit : guard.circuits) {
        json.push_back(circuit_json(circuit));
    }
    return json;
}

Json dark_json(const answer::GuardAnswer& guard) {
    Json devices = Json::array();
    for (const guard::Opener& opener : guard.dark.openers) devices.push_back(opener.name);
    Json parts = Json::array();
    for (const guard::Part& part : guard.dark.parts) {
        parts.push_back(object({{"name", part.name}, {"house", part.house}}));
    }
    Json events = Json::array();
    for (const guard::Event& event : guard.dark.events) {
        events.push_back(event_json(guard, event));
    }
    return object({{"devices", devices},
                   {"parts", parts},
                   {"events", events},
                   {"pairs", pairs_json(guard.pairs)},
                   {"remarks", remarks_json(guard.remarks)}});
}

}  // namespace toft::codec
