#include "codec/why.h"

#include "codec/object.h"
#include "codec/scheme.h"

namespace toft::codec {

Json basis_json(const tables::EarthingBasis* basis) {
    if (!basis) return nullptr;
    return object({{"kind", tables::authority_word(basis->authority)},
                   {"clause", basis->clause},
                   {"source", basis->citation->source},
                   {"locator", basis->citation->locator},
                   {"basis", basis_word(basis->citation->basis)}});
}

namespace {

Json consequences_json(const walk::Step& step, site::Earthing system) {
    Json json = Json::array();
    for (std::size_t i = 0; i < walk::choice_count; ++i) {
        const auto choice = static_cast<walk::Choice>(i);
        if (!walk::offered(choice, system)) continue;
        const walk::Consequence& c = step.ruling[choice];
        json.push_back(object({{"choice", walk::choice_word(choice)},
                               {"bearing", walk::bearing_word(c.bearing)},
                               {"why", c.why}}));
    }
    return json;
}

Json step_json(const walk::Step& step, site::Earthing system) {
    return object({{"key", step.key},
                   {"asks", step.asks},
                   {"found", step.found},
                   {"known", walk::known_word(step.ruling.known)},
                   {"fact", step.pointer.empty() ? Json() : Json(step.pointer)},
                   {"consequences", consequences_json(step, system)},
                   {"basis", basis_json(step.basis)},
                   {"would_change", step.would_change}});
}

Json way_json(const walk::Way& way) {
    return object({{"choice", walk::choice_word(way.choice)},
                   {"standing", walk::standing_word(way.standing)},
                   {"reasons", way.reasons},
                   {"residual_risk", way.residual_risk},
                   {"would_change", way.would_change}});
}

Json walk_json(const walk::Walk& walk) {
    Json steps = Json::array();
    for (const walk::Step& step : walk.steps) steps.push_back(step_json(step, walk.system));
    Json choices = Json::array();
    for (const walk::Way& way : walk.ways) choices.push_back(way_json(way));
    return object({{"building", walk.building},
                   {"conclusion", walk.conclusion},
                   {"choices", choices},
                   {"steps", steps}});
}

}  // namespace

Json walks_json(const std::vector<walk::Walk>& walks) {
    Json json = Json::array();
    for (const walk::Walk& walk : walks) json.push_back(walk_json(walk));
    return json;
}

std::string write_why(const std::string& job, const std::vector<walk::Walk>& walks) {
    const Json json =
        object({{"format", "toft-why/1"}, {"job", job}, {"walks", walks_json(walks)}});
    return json.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace toft::codec
