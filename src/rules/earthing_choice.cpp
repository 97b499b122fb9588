#include "rules/earthing_choice.h"

#include "finding/judge.h"
#include "walk/step.h"

#include <array>
#include <string_view>
#include <tuple>
#include <type_traits>

namespace toft::rules {

const RuleInfo earthing_choice_rule{
    .name = "earthing-choice",
    .title = "the building may take its earth from there, given what it is and what stands in it",
    .clause = "411.3.1.2, 542.1.2, ESQCR 9(4), 702, 705, 708, 709, 722.411.4.1",
    .reads =
        "the supply's earthing, the building's use, construction, metalwork, floor and animals",
};

namespace {

walk::Choice choice_of(study::BuildingEarthing earthing) {
    switch (earthing) {
        case study::BuildingEarthing::supply_earth:
            return walk::Choice::supply_earth;
        case study::BuildingEarthing::shared_electrode:
            return walk::Choice::shared_electrode;
        case study::BuildingEarthing::own_electrode:
            break;
    }
    return walk::Choice::own_electrode;
}

Verdict verdict_of(walk::Bearing bearing) {
    switch (bearing) {
        case walk::Bearing::ruled_out:
            return Verdict::fails;
        case walk::Bearing::speaks_against:
            return Verdict::caution;
        case walk::Bearing::speaks_for:
        case walk::Bearing::neutral:
        case walk::Bearing::required:
            break;
    }
    return Verdict::meets;
}

using Decide = walk::Ruling (*)(const walk::Facts&);

/// The steps of the walk by which this rule judges, in their order; null after the last.
struct Steps {
    std::array<Decide, std::tuple_size_v<std::decay_t<decltype(walk::questions())>> + 1> decide{};
};

Steps steps_of_this_rule() {
    Steps steps;
    std::size_t count = 0;
    for (const walk::Question& question : walk::questions()) {
        if (std::string_view(question.rule) != earthing_choice_rule.name) continue;
        steps.decide[count++] = question.decide;
    }
    return steps;
}

/// What these steps object: the heaviest, known facts before unknown ones, then the earlier.
struct Objection {
    Verdict verdict = Verdict::meets;
    bool known = false;
    const char* why = "";
};

Objection objection_to(walk::Choice choice, const walk::Facts& facts) {
    static const Steps steps = steps_of_this_rule();
    Objection heaviest;
    for (const Decide* decide = steps.decide.data(); *decide; ++decide) {
        const walk::Ruling ruling = (*decide)(facts);
        const Verdict verdict = verdict_of(ruling[choice].bearing);
        const bool known = ruling.known != walk::Known::unknown;
        if (verdict == Verdict::meets || verdict < heaviest.verdict) continue;
        if (verdict == heaviest.verdict && (heaviest.known || !known)) continue;
        heaviest = {verdict, known, ruling[choice].why};
    }
    return heaviest;
}

}  // namespace

template <class L>
Finding<L> earthing_choice(L&, const Case<L>& c) {
    const Objection objection =
        objection_to(choice_of(c.scheme.earthing), walk::facts_of(c.setting));
    const bool electrode = c.scheme.earthing != study::BuildingEarthing::supply_earth;
    const bool free = objection.verdict == Verdict::meets;
    return plain_finding<L>(earthing_choice_rule, objection.verdict,
                            free && electrode ? "an electrode serves anywhere" : objection.why);
}

template Finding<Silent> earthing_choice(Silent&, const Case<Silent>&);
template Finding<Recording> earthing_choice(Recording&, const Case<Recording>&);

}  // namespace toft::rules
