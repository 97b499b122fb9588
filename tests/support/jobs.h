#pragma once
// A plain job for tests to vary: a house with a measured supply, one outbuilding, one run of one
// leg.

#include "site/job.h"
#include "study/scheme.h"
#include "study/setting.h"

namespace toft::support {

/// A fact measured as one figure.
template <class Q>
site::Fact<Q> measured(Q value) {
    return {true, value, value, site::Standing::measured};
}

/// A fact that the survey only brackets.
template <class Q>
site::Fact<Q> between(Q low, Q high) {
    return {true, low, high, site::Standing::assumed};
}

/// House "house" (TN-C-S, Ze 0.2 ohm, line-neutral loop 0.2 ohm, drawing 20 A at most) feeding shed
/// "shed" over run "run": 30 m buried direct, 20 A, unity power factor. Nothing that a calculation
/// needs is left open.
site::Job plain_job();

/// The same with a run of `legs`.
site::Job job_with_legs(std::vector<site::Leg> legs);

/// `job` with what nobody said stated: what the house draws, its electrode, depths. Without them
/// no answer is sound, whatever is built.
site::Job all_said(site::Job job);

/// A leg with every fact stated: 30 m, 20 °C around it, alone, 0.6 m deep, in the open, not hidden,
/// 6 m up where it hangs.
site::Leg plain_leg(site::LegMethod method, double length_m = 30);

/// A scheme on the supply's earth.
study::RunScheme scheme(const tables::Cable& cable, study::Protective protective,
                        const tables::Device& device);

/// One of several stretches.
study::Stretch stretch(const tables::Cable& cable, study::Protective protective, int parallel = 1);

/// A scheme of stretches, near to far, on the supply's earth.
study::RunScheme scheme(const std::vector<study::Stretch>& stretches, const tables::Device& device);

/// Names in `leg` the family and cores of that cable, so that the run has a stretch there.
void name_cable(site::Leg& leg, const tables::Cable& cable);

/// The same job with a supply of three phases, all of them taken to the shed.
site::Job on_three_phases(site::Job job);

/// The job's only run, prepared from the embedded tables. The job must outlive the setting.
study::Setting<Silent> prepared(const site::Job& job, const study::Corner& corner = {});

}  // namespace toft::support
