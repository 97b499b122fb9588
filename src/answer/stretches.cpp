#include "answer/outline.h"

namespace toft::answer {

namespace {

using Cores = std::vector<CoreAnswer>;

/// IEC 60445 colours as they come in the cable; sleeves where a core's use differs from them.
Cores cores_of(const tables::Cable& cable, int phases, bool armoured) {
    const CoreAnswer protective{"green-yellow", "", "protective"};
    if (phases == 3) {
        Cores cores{{"brown", "", "line 1"},
                    {"black", "", "line 2"},
                    {"grey", "", "line 3"},
                    {"blue", "", "neutral"}};
        if (cable.cores == 5) cores.push_back(protective);
        return cores;
    }
    if (cable.family == tables::Family::flat_twin_and_earth) {
        return {
            {"brown", "", "line"}, {"blue", "", "neutral"}, {"bare", "green-yellow", "protective"}};
    }
    if (cable.cores == 2) return {{"brown", "", "line"}, {"blue", "", "neutral"}};
    if (!armoured) return {{"brown", "", "line"}, {"blue", "", "neutral"}, protective};
    return {{"brown", "", "line"},
            {"grey", "blue", "neutral"},
            {"black", "green-yellow", "protective"}};
}

/// Colours of before 2004, with sleeves where today's use of a colour differs.
Cores old_cores(const tables::Cable& cable, int phases) {
    if (phases == 3) {
        Cores cores{{"red", "brown", "line 1"},
                    {"yellow", "black", "line 2"},
                    {"blue", "grey", "line 3"},
                    {"black", "blue", "neutral"}};
        if (cable.cores == 5) cores.push_back({"green-yellow", "", "protective"});
        return cores;
    }
    if (cable.cores == 3) {
        return {{"red", "brown", "line"},
                {"yellow", "blue", "neutral"},
                {"blue", "green-yellow", "protective"}};
    }
    Cores cores{{"red", "brown", "line"}, {"black", "blue", "neutral"}};
    if (cable.family == tables::Family::flat_twin_and_earth) {
        cores.push_back({"bare", "green-yellow", "protective"});
    }
    return cores;
}

bool in_old_colours(const site::Run& run, const study::Stretch& laid) {
    return laid.old() && run.existing && run.existing->colours == "red and black";
}

}  // namespace

std::vector<StretchAnswer> stretches_of(const study::Setting<Silent>& setting,
                                        const study::RunScheme& scheme) {
    std::vector<StretchAnswer> answers;
    for (std::size_t i = 0; i < scheme.stretches; ++i) {
        const study::Stretch& laid = scheme.stretch[i];
        const auto& at = setting.stretches[i];
        const tables::Make& make = tables::make_of(*setting.catalogue, *laid.cable);
        StretchAnswer a;
        a.first_leg = static_cast<int>(at.first_leg) + 1;
        a.last_leg = static_cast<int>(at.first_leg + at.legs);
        a.length_m = at.length_most.number();
        a.family = tables::family_word(laid.cable->family);
        a.standard = make.standard;
        a.cores = laid.cable->cores;
        a.live_mm2 = laid.cable->section.number();
        if (study::core_serves(laid.protective)) a.cpc_mm2 = laid.cable->cpc.number();
        a.core_list = in_old_colours(*setting.run, laid)
                          ? old_cores(*laid.cable, scheme.phases)
                          : cores_of(*laid.cable, scheme.phases, make.armoured);
        a.protective_conductor = study::protective_word(laid.protective);
        a.armoured = make.armoured;
        a.armour_near = make.armoured;
        const bool last = i + 1 == scheme.stretches;
        a.armour_far = last ? scheme.armour_at_far_end()
                            : make.armoured && study::armour_serves(laid.protective);
        if (laid.separate) a.separate_mm2 = laid.separate->section.number();
        a.parallel = laid.parallel;
        if (setting.run->existing) a.laid = study::laid_word(laid.laid);
        a.overall_mm = laid.cable->overall.value.number() * 1000;
        answers.push_back(std::move(a));
    }
    return answers;
}

}  // namespace toft::answer
