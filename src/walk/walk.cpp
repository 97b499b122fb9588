#include "walk/walk.h"

#include "walk/conclusion.h"
#include "walk/metalwork.h"

#include <fmt/format.h>

#include <algorithm>

namespace toft::walk {

namespace {

const tables::EarthingBasis* basis_of(const Facts& f, const std::string& key) {
    for (const tables::EarthingBasis& row : f.catalogue->earthing_basis) {
        if (row.key == key) return &row;
    }
    return nullptr;
}

Step step_of(const Facts& f, const Question& q) {
    Step step;
    step.ruling = q.decide(f);
    if (!step.ruling.arises) return step;
    step.key = q.key;
    step.asks = q.asks;
    step.found = q.found(f);
    step.basis = basis_of(f, q.key);
    step.would_change = q.would_change(f, step.ruling);
    return step;
}

Step step_of_part(const Facts& f, std::size_t part) {
    Step step;
    step.key = fmt::format("{}-{}", part_key, part + 1);
    step.asks = fmt::format("What does this part join: the {}?", (*f.parts)[part].name);
    step.found = metal_part_found(f, part);
    step.pointer = (*f.parts)[part].pointer;
    step.ruling = metal_part(f, part);
    step.basis = basis_of(f, part_key);
    step.would_change = metal_part_changes(f, part);
    return step;
}

bool bears(const Step& step, Choice choice) {
    return step.ruling[choice].bearing != Bearing::neutral;
}

void add_once(std::vector<std::string>& words, const std::string& word) {
    if (std::find(words.begin(), words.end(), word) == words.end()) words.push_back(word);
}

Way way_of(const std::vector<Step>& steps, Choice choice, site::Earthing system) {
    Way way;
    way.choice = choice;
    way.standing = standing_of(steps, choice);
    way.residual_risk = residual_risk(choice, system);
    for (const Step& step : steps) {
        if (!bears(step, choice)) continue;
        way.reasons.push_back(step.key);
        for (const std::string& change : step.would_change) add_once(way.would_change, change);
    }
    if (way.would_change.empty()) way.would_change = steps.back().would_change;
    return way;
}

}  // namespace

Standing standing_of(const std::vector<Step>& steps, Choice choice) {
    Standing standing = Standing::open;
    bool required = false;
    for (const Step& step : steps) {
        const Bearing bearing = step.ruling[choice].bearing;
        required = required || bearing == Bearing::required;
        if (bearing == Bearing::speaks_against) standing = std::max(standing, Standing::judgement);
        if (bearing != Bearing::ruled_out) continue;
        const bool open = step.ruling.known == Known::unknown;
        standing = std::max(standing, open ? Standing::not_known : Standing::ruled_out);
    }
    return required && standing < Standing::not_known ? Standing::required : standing;
}

Walk walk(const study::Setting<Silent>& setting) {
    const Facts f = all_facts_of(setting);
    Walk out;
    out.building = f.building->id;
    out.name = f.building->name.empty() ? f.building->id : f.building->name;
    out.system = f.system;
    for (const Question& q : questions()) {
        if (std::string(q.key) == "brings-in") {
            for (std::size_t i = 0; i < f.parts->size(); ++i) {
                out.steps.push_back(step_of_part(f, i));
            }
        }
        Step step = step_of(f, q);
        if (step.ruling.arises) out.steps.push_back(std::move(step));
    }
    for (std::size_t i = 0; i < choice_count; ++i) {
        const auto choice = static_cast<Choice>(i);
        if (offered(choice, f.system)) out.ways.push_back(way_of(out.steps, choice, f.system));
    }
    out.conclusion = conclusion_of(out);
    return out;
}

}  // namespace toft::walk
